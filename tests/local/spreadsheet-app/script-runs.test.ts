import { describe, expect, it } from "vitest";
import { argumentsText, resultText } from "../../../src/local/spreadsheet-app/run-values";
import { opened, thrown } from "./opened";

const CODE = `
var loads = 0;
function countLoads() { return ++loads; }
function onOpen() {
  var ui = SpreadsheetApp.getUi();
  ui.createMenu('Nursery').addItem('Do it', 'doIt').addSeparator()
    .addSubMenu(ui.createMenu('More').addItem('Else', 'doElse')).addToUi();
}
function opensSidebar() {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Sidebar').setTitle('Hello'));
}
function opensOther() { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Nowhere')); }
function asks() {
  var ui = SpreadsheetApp.getUi();
  var answer = ui.alert('Sure?', 'It is written.', ui.ButtonSet.YES_NO);
  ui.alert('Just so');
  SpreadsheetApp.getActive().toast('Done', 'Nursery', 3);
  return [answer === ui.Button.YES, answer === ui.Button.NO, String(answer)];
}
function kinds() {
  var range = SpreadsheetApp.getActive().getSheetByName('Main').getRange('A1:B1');
  range.setValues([[new Date(0), 'x']]);
  var values = range.getValues();
  return [values instanceof Array, values[0] instanceof Array, values[0][0] instanceof Date,
    typeof setTimeout, SpreadsheetApp.getActive().getSheets() instanceof Array];
}
function echo(value) { return value; }
function hasOwnValues(value) { return value instanceof Array && value[0] instanceof Object; }
function gives(what) {
  return { day: { a: [new Date(0)] }, map: new Map(), nothing: undefined, list: [1, 'x', null, { a: true }],
    call: { f: function () {} } }[what];
}
function private_() { return 1; }
function fails() { throw new Error('not like this'); }
function keeps() {
  var store = PropertiesService.getDocumentProperties();
  store.setProperty('a', '1');
  var large = '';
  try { store.setProperty('b', new Array(10000).join('x')); } catch (e) { large = e.name; }
  return [store.getProperty('a'), store.getProperty('none'), store.getKeys().join(), large];
}
function formats() {
  return [Utilities.formatDate(new Date(0), 'Asia/Kolkata', 'yyyy-MM-dd HH:mm'), Utilities.getUuid().length];
}
`;

describe("a run of a script", () => {
  it("starts in a fresh context, with values of that context", () => {
    const { workbook } = opened({ code: CODE });
    expect([workbook.call("countLoads"), workbook.call("countLoads")]).toEqual([1, 1]);
    expect(workbook.call("kinds")).toEqual([true, true, true, "undefined", true]);
    expect(() => workbook.call("nowhere")).toThrow("Script function not found: nowhere");
  });

  it("shows menus, pages, toasts and questions on the desk", () => {
    const { workbook } = opened({ code: CODE, pages: { Sidebar: "<p>hi</p>" } });
    workbook.open();
    expect(workbook.desk.menus.get("Nursery")?.items).toEqual([
      { label: "Do it", calls: "doIt" },
      null,
      { title: "More", items: [{ label: "Else", calls: "doElse" }] },
    ]);
    workbook.call("opensSidebar");
    expect(workbook.desk.sidebars).toEqual([{ title: "Hello", content: "<p>hi</p>" }]);
    expect(thrown(() => workbook.call("opensOther"))).toEqual({
      name: "Exception",
      message: "No HTML file named Nowhere was found.",
    });
    workbook.desk.answers.push("YES");
    expect(workbook.call("asks")).toEqual([true, false, "YES"]);
    expect(workbook.desk.alerts).toEqual([
      { title: "Sure?", prompt: "It is written.", buttons: "YES_NO" },
      { title: "", prompt: "Just so", buttons: "OK" },
    ]);
    expect(workbook.desk.toasts).toEqual([{ message: "Done", title: "Nursery" }]);
  });

  it("may not open a sidebar or ask from a trigger", () => {
    const { workbook } = opened({ code: CODE.replaceAll("function onOpen", "function openMenu") });
    const limited = workbook.begin("limited");
    // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
    const ui = (limited.globals.SpreadsheetApp as any).getUi();
    expect(thrown(() => ui.alert("x")).message).toBe(
      "You do not have permission to call Ui.alert.",
    );
    expect(thrown(() => ui.showSidebar({})).message).toMatch(/permission/);
    limited.end();
  });

  it("keeps small texts by name and refuses large ones", () => {
    const { workbook } = opened({ code: CODE });
    expect(workbook.call("keeps")).toEqual(["1", null, "a", "Exception"]);
  });

  it("formats days and makes names", () => {
    const { workbook } = opened({ code: CODE });
    expect(workbook.call("formats")).toEqual(["1970-01-01 05:30", 36]);
  });
});

describe("calls from the sidebar", () => {
  it("copies what passes, into values of the script's own context", () => {
    const { workbook } = opened({ code: CODE });
    const sent = [{ a: [1, null] }];
    const back = workbook.run("echo", sent);
    expect(back).toEqual(sent);
    expect(back).not.toBe(sent);
    expect(workbook.run("hasOwnValues", sent)).toBe(true);
    expect(workbook.run("gives", "list")).toEqual([1, "x", null, { a: true }]);
  });

  // Source: the guide on client-to-server communication, and a developer's article on both ways.
  it("gives null for a Date, a Map or a function anywhere in the result", () => {
    const { workbook } = opened({ code: CODE });
    for (const what of ["day", "map", "call", "nothing"])
      expect(workbook.run("gives", what)).toBeNull();
  });

  it("refuses arguments that may not pass, and private functions", () => {
    const { workbook } = opened({ code: CODE });
    expect(() => workbook.run("echo", { made: new Date(0) })).toThrow(
      "Failed due to illegal value in property: made",
    );
    expect(() => workbook.run("private_")).toThrow("Script function not found: private_");
    expect(() => workbook.run("fails")).toThrow("not like this");
  });

  it("names the property that is at fault", () => {
    const illegal = "Failed due to illegal value in property: ";
    expect(() => argumentsText([new Date(0)])).toThrow(`${illegal}0`);
    expect(() => argumentsText([1, { a: [1, () => 1] }])).toThrow(`${illegal}1`);
    const round: Record<string, unknown> = {};
    round.self = round;
    expect(() => argumentsText([round])).toThrow(`${illegal}self`);
    expect(argumentsText([undefined, [undefined], { a: undefined }])).toBe("[null,[null],{}]");
    const twice = { a: 1 };
    expect(resultText([twice, twice])).toBe('[{"a":1},{"a":1}]');
  });
});
