import { describe, expect, it } from "vitest";
import { opened, thrown } from "./opened";

const CODE = `
function writeTwo() {
  var lock = LockService.getDocumentLock();
  lock.waitLock(1000);
  try {
    var sheet = SpreadsheetApp.getActive().getSheetByName('Main');
    sheet.getRange('A1').setValue('one');
    sheet.getRange('A2').setValue('two');
  } finally {
    lock.releaseLock();
  }
}
function forgetsLock() { return LockService.getDocumentLock().tryLock(10); }
function tries() { return LockService.getDocumentLock().tryLock(10); }
function catches() {
  try { SpreadsheetApp.getActive().getSheetByName('Main').getRange('A1').setValue(1); }
  catch (e) { return [e instanceof Error, e.name, e.message]; }
}
`;

describe("the meter", () => {
  it("counts calls by name", () => {
    const { workbook } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.call("writeTwo");
    expect(Object.fromEntries(workbook.meter.calls)).toEqual({
      "LockService.getDocumentLock": 1,
      "Lock.waitLock": 1,
      "SpreadsheetApp.getActive": 1,
      "Spreadsheet.getSheetByName": 1,
      "Sheet.getRange": 2,
      "Range.setValue": 2,
      "Lock.releaseLock": 1,
    });
    expect(workbook.meter.total).toBe(9);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8, 9])("fails at call %i, once, before anything is done", (n) => {
    const { workbook, main } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.meter.failAt(n);
    expect(thrown(() => workbook.call("writeTwo")).name).toBe("Exception");
    expect(main.getRange("A1:A2").getValues().flat()).toEqual([
      n > 6 ? "one" : "",
      n > 8 ? "two" : "",
    ]);
    expect(workbook.lock.isFree()).toBe(true);
    workbook.call("writeTwo");
    expect(main.getRange("A2").getValue()).toBe("two");
  });

  it("fails after the call has done its work, when told so", () => {
    const { workbook, main } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.meter.failAfter(6, "timed out");
    expect(thrown(() => workbook.call("writeTwo")).message).toBe("timed out");
    expect(main.getRange("A1").getValue()).toBe("one");
  });

  it("cuts a script off: nothing works from a call on, and the lock comes free all the same", () => {
    const { workbook, main } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.meter.stopAt(8);
    expect(() => workbook.call("writeTwo")).toThrow();
    expect(workbook.lock.isFree()).toBe(true);
    workbook.meter.reset();
    expect(main.getRange("A1:A2").getValues().flat()).toEqual(["one", ""]);
  });

  it("lets another person act just before a call", () => {
    const { workbook, main } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.meter.before("Range.setValue", () => workbook.type("Main", "C1", "in between"));
    workbook.meter.beforeCall(1, () => workbook.type("Main", "C2", "first"));
    workbook.call("writeTwo");
    expect(main.getRange("C1:C2").getValues().flat()).toEqual(["in between", "first"]);
    expect(() => workbook.meter.failAt(0)).toThrow(/call number 0/);
  });

  it("throws errors that the script can catch as its own", () => {
    const { workbook } = opened({ code: CODE });
    workbook.meter.reset();
    workbook.meter.failAt(4, "not now");
    expect(workbook.call("catches")).toEqual([true, "Exception", "not now"]);
  });
});

describe("the lock of the document", () => {
  interface Lock {
    tryLock(milliseconds: number): boolean;
    waitLock(milliseconds: number): void;
    releaseLock(): void;
    hasLock(): boolean;
  }
  const lockOf = ({ globals }: { globals: object }) =>
    (globals as { LockService: { getDocumentLock(): Lock } }).LockService.getDocumentLock();

  it("excludes two runs from each other", () => {
    const { workbook, run } = opened({ code: CODE });
    const mine = lockOf(run);
    const other = workbook.begin();
    const theirs = lockOf(other);
    expect([mine.tryLock(10), mine.hasLock(), theirs.tryLock(10), theirs.hasLock()]).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect(thrown(() => theirs.waitLock(10))).toEqual({
      name: "Exception",
      message: "Lock timeout: another process was holding the lock for too long.",
    });
    theirs.releaseLock();
    expect(mine.hasLock()).toBe(true);
    expect(workbook.call("tries")).toBe(false);
    mine.releaseLock();
    expect([mine.hasLock(), theirs.tryLock(10)]).toEqual([false, true]);
    other.end();
    expect(workbook.lock.isFree()).toBe(true);
  });

  it("comes free when a run ends without giving it back", () => {
    const { workbook } = opened({ code: CODE });
    expect([workbook.call("forgetsLock"), workbook.call("forgetsLock")]).toEqual([true, true]);
  });
});
