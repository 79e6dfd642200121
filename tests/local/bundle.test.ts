import { describe, expect, it } from "vitest";
import { loadBundle } from "../../src/local/bundle";
import { readCatalogue } from "../../src/local/catalogue";
import { FAKE_CODE, fakeBundle } from "./fake-bundle";

const settings = { spreadsheetZone: "Asia/Kolkata", scriptZone: "UTC", locale: "en_GB" };
const give = (body: string) => {
  const code = `/** @customfunction */ function GIVES(a, b) { ${body} }`;
  return loadBundle(code, settings).functions[0]?.call;
};

describe("readCatalogue", () => {
  it("reads description and parameters as the formula helper shows them", () => {
    expect(readCatalogue(FAKE_CODE).find(({ name }) => name === "PEEK")).toEqual({
      name: "PEEK",
      description:
        "Shows what came in: instanceof proves that values are of this script's own realm.",
      parameters: [
        { name: "values", description: "what to show, one or more" },
        { name: "more", description: "" },
      ],
    });
  });
});

describe("loadBundle", () => {
  it("offers top-level functions marked @customfunction and no others", () => {
    const names = fakeBundle().functions.map(({ name }) => name);
    expect(names).toContain("PEEK");
    expect(names).not.toContain("INSIDE");
    expect(names).not.toContain("PRIVATE_");
    expect(names).not.toContain("onOpen");
  });

  // The list: developers.google.com/apps-script/guides/v8-runtime, section on limitations.
  it.each(
    `setTimeout setInterval TextEncoder TextDecoder ReadableStream fetch FormData Blob URL
     URLSearchParams atob btoa crypto window navigator performance process structuredClone
     queueMicrotask require Buffer SharedArrayBuffer Atomics`.split(/\s+/),
  )("has no %s, like the real host", (name) => {
    expect(give(`return typeof ${name};`)?.()).toBe("undefined");
  });

  it("has the language, console and the services of a custom function", () => {
    expect(
      give(
        "return [typeof Intl, typeof Promise, typeof console.log, typeof globalThis].join();",
      )?.(),
    ).toBe("object,function,function,object");
    expect(give("return SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone();")?.()).toBe(
      "Asia/Kolkata",
    );
    expect(give("return Session.getScriptTimeZone();")?.()).toBe("UTC");
  });

  it("formats a date in a zone, and refuses text and letters that it does not know", () => {
    // 18:30 UTC is midnight at UTC+5:30.
    const date = "new Date(Date.UTC(2026, 4, 1, 18, 30, 7))";
    expect(
      give(`return Utilities.formatDate(${date}, 'Asia/Kolkata', "yyyy-MM-dd'T'HH:mm:ss");`)?.(),
    ).toBe("2026-05-02T00:00:07");
    expect(() => give("return Utilities.formatDate('2026-05-01', 'UTC', 'yyyy');")?.()).toThrow(
      /signature/,
    );
    expect(() => give(`return Utilities.formatDate(${date}, 'UTC', 'YYYY');`)?.()).toThrow(/YYYY/);
  });

  it("starts every load in a fresh context", () => {
    const code = "var n = 0; /** @customfunction */ function COUNT_UP() { return ++n; }";
    const first = loadBundle(code, settings).functions[0];
    expect([first?.call(), first?.call()]).toEqual([1, 2]);
    expect(loadBundle(code, settings).functions[0]?.call()).toBe(1);
  });

  it("refuses a file without custom functions, and one that does not load", () => {
    expect(() => loadBundle("function a() {}", settings)).toThrow(/no function marked/);
    expect(() => loadBundle("import x from 'y';", settings)).toThrow(/import/);
  });
});
