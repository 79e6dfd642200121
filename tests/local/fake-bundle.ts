import type { ICellData } from "@univerjs/core";
import { type Bundle, loadBundle } from "../../src/local/bundle";
import { openWorkbook } from "../../src/local/engine";
import type { SheetCell } from "../../src/local/sheet-cells";
import { workbookData } from "../../src/local/workbook-data";

/** Stands for the built add-in: one classic script, its custom functions at the top level. */
export const FAKE_CODE = `
var hidden = (function () {
  /** @customfunction */
  function INSIDE() { return 1; }
  return { inside: INSIDE };
})();

/**
 * Shows what came in: instanceof proves that values are of this script's own realm.
 * @param {any} values - what to <b>show</b>,
 *   one or more
 * @param {any} more
 * @return {string} never shown
 * @customfunction
 */
function PEEK(values, more) {
  function show(x) {
    if (x instanceof Array) return x.map(show);
    if (x instanceof Date) return { day: x.toISOString() };
    return x === undefined ? 'undefined' : x;
  }
  return JSON.stringify(show(Array.prototype.slice.call(arguments)));
}
/** @customfunction */
function SIZE_OF(range) { return Array.isArray(range) ? range.length + ' x ' + range[0].length : typeof range; }
/** @customfunction */
function SAME(range) { return range; }
/** @customfunction */
function DAYS_FROM(first, count) {
  var rows = [];
  for (var i = 0; i < count; i++) rows.push([new Date(first.getTime() + i * 86400000), i, i === 0, '', '=row' + i]);
  return rows;
}
/** @customfunction */
function AT_INSTANT(text) { return new Date(text); }
/** @customfunction */
function FAIL(text) { throw new Error('FAIL: ' + text); }
/** @customfunction */
function FAIL_PLAIN() { throw 'a bare string'; }
/** @customfunction */
function GIVE(what) {
  return { list: [1, 2], ragged: [[1, 2], [3]], empty: [], nan: [[NaN]], object: {}, promise: Promise.resolve(1) }[what];
}
/** @customfunction */
function ZONE_DAY(day) {
  return Utilities.formatDate(day, SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone(), 'yyyy-MM-dd');
}
/** Not for a sheet: the underscore makes it private. @customfunction */
function PRIVATE_(x) { return x; }
function onOpen() { SpreadsheetApp.getUi(); }
`;

export function fakeBundle(spreadsheetZone = "UTC"): Bundle {
  const scriptZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return loadBundle(FAKE_CODE, { spreadsheetZone, scriptZone, locale: "en_GB" });
}

/** A tab "A" with these rows, calculated; gives its cells and a way to change one. */
export async function calculated(
  rows: readonly (readonly (ICellData | undefined)[])[],
  bundle = fakeBundle(),
) {
  const workbook = openWorkbook(workbookData("test", [{ name: "A", rows }]), bundle);
  await workbook.settled();
  const cell = (row: number, column: number): SheetCell | null | undefined =>
    workbook.sheets()[0]?.rows[row]?.[column];
  return {
    cell,
    value: (row: number, column: number) => cell(row, column)?.value,
    async enter(row: number, column: number, data: ICellData) {
      workbook.enter("A", { row, column }, data);
      await workbook.settled();
    },
    close: () => workbook.close(),
  };
}
