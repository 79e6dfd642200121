import { FakeSheet } from "@mcpher/gas-fakes/src/services/spreadsheetapp/fakesheet.js";

interface Properties {
  readonly sheetId: number;
}
interface EmulatedSheet {
  /** Ours: what the Sheet was made with. */
  __made?: Properties;
  readonly __parent?: {
    /** Theirs: properties of a sheet as the workbook last answered; undefined when it is gone. */
    __getSheetMeta(id: number): { readonly properties: Properties } | undefined;
    __disruption(): void;
  };
}

/**
 * Makes a Sheet of the emulator tell what its tab is by now, as the platform's does. In the emulator
 * one variable goes on saying what another has changed: with neither of the two, the job stops at Set
 * up, where a tab is made, renamed and looked for; that was not the add-in's fault.
 */
export function mendMethods(): void {
  propertiesAsTheyAre();
  changesAreSeen();
}

/** Sheet.getName, getMaxRows, getIndex …: from the workbook, not from what the Sheet was made with. */
function propertiesAsTheyAre(): void {
  Object.defineProperty(FakeSheet.prototype, "__properties", {
    configurable: true,
    get(this: EmulatedSheet) {
      const own = this.__made;
      return own && (this.__parent?.__getSheetMeta(own.sheetId)?.properties ?? own);
    },
    set(this: EmulatedSheet, properties: Properties) {
      this.__made = properties;
    },
  });
}

/**
 * Sheet.setName, setFrozenRows, insertRowsAfter, deleteRows, moveColumns …: the workbook is read anew
 * after them. Other methods of the emulator do so themselves.
 */
function changesAreSeen(): void {
  const prototype = FakeSheet.prototype as { __batchUpdate: (request: object) => unknown };
  const theirs = prototype.__batchUpdate;
  prototype.__batchUpdate = function (this: EmulatedSheet, request: object) {
    const answer = theirs.call(this as never, request);
    this.__parent?.__disruption();
    return answer;
  };
}
