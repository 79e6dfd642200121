/**
 * Those parts of the emulator (npm @mcpher/gas-fakes 2.0.2, which brings no types) that the check
 * names: what is not here is used by the add-in alone, as Apps Script.
 */

declare module "@mcpher/gas-fakes/src/services/*/app.js" {}

declare module "@mcpher/gas-fakes/src/services/spreadsheetapp/fakespreadsheetapp.js" {
  export const FakeSpreadsheetApp: { readonly prototype: object };
}

declare module "@mcpher/gas-fakes/src/services/spreadsheetapp/fakespreadsheet.js" {
  export const FakeSpreadsheet: { readonly prototype: object };
}

declare module "@mcpher/gas-fakes/src/services/spreadsheetapp/fakesheet.js" {
  export const FakeSheet: { readonly prototype: object };
}

declare module "@mcpher/gas-fakes/src/services/utilities/fakeutilities.js" {
  export const newFakeUtilities: () => object;
}

declare module "@mcpher/gas-fakes/src/support/auth.js" {
  export const Auth: {
    setSettings(settings: { readonly documentId: string }): void;
    setManifest(manifest: { readonly timeZone: string }): void;
  };
}
