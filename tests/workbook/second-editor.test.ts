/*
 * Longer than most: actions, edits, and how a table is rebuilt from the log, which only together
 * show that nothing is lost.
 */
import { afterAll, expect, it } from "vitest";
import { dueRow, setDue } from "./due-list";
import { EVERY_CALL } from "./every-call";
import { callsOf } from "./faults/fail-in-turn";
import {
  type Nursery,
  openNursery,
  type Sheet,
  smallRecords,
  smallRow,
  tab,
  takesOf,
} from "./nursery";

/** Of calls in a row that only look, one in so many. */
const ONE_LOOK_OF = 9;
const SMALL = { newRows: 40 };
const REQUEST = takesOf("B2", { note: "dry" });
const ORDER = {
  ...{ order: "N-1", customer: "Ana", variety: "Amberlow", wanted: 40, by: "2027-10-01" },
  sure: [],
};
const JOBS = ["Date", "Batch", "What was done", "How many", "Remarks"];

interface Action {
  readonly table: string;
  /** @returns the workbook, and the table as it was before anything of the action or for it was written */
  prepare(): { nursery: Nursery; before: string };
  run(nursery: Nursery): void;
}

const records = () =>
  openNursery(
    [
      smallRecords(
        smallRow({ Batch: "B3", Sown: "2026-11-01", "Seeds sown": 50 }),
        smallRow({ Batch: "B4", Sown: "2026-11-02", "Seeds sown": 60, Note: "water daily" }),
      ),
    ],
    SMALL,
  ).ready();
const orders = () =>
  openNursery(
    [
      smallRecords(),
      tab("Orders", [
        ["Order", "Customer", "Variety", "Wanted", "By", "Delivered"],
        ["O-1", "Bo", "", 10, "2027-09-01"],
        ["O-2", "Cy", "Corvane", 20, "2027-08-01"],
        ["O-3", "Di", "", 30, "2027-07-01", 5],
      ]),
    ],
    SMALL,
  ).ready();
const jobs = () =>
  openNursery(
    [
      tab("Records", [
        JOBS,
        ["2026-07-20", "B2", "Sown", 100, "from the shed"],
        ["2026-07-30", "B2", "Germination", 90],
        ["2026-10-24", "B2", "Grafting", 80],
        ["2026-10-25", "B9", "Sown", 70],
      ]),
    ],
    SMALL,
  ).ready();

function prepared(nursery: Nursery, table: string, more: (nursery: Nursery) => void = () => {}) {
  const before = content(nursery, table);
  more(nursery);
  return { nursery, before };
}

const tick = (nursery: Nursery, batch: string, count: number) =>
  setDue(nursery, dueRow(nursery, batch), { Done: true, Count: count });
const lastId = (nursery: Nursery) => ({
  logId: String(nursery.values("Write log").slice(2).at(-1)?.[0]),
});

type WritingCall =
  | readonly ["sidebarRecord", typeof REQUEST]
  | readonly ["sidebarAddOrder", typeof ORDER];

/** A call that writes into a table. */
function written(open: () => Nursery, table: string, [name, request]: WritingCall): Action {
  const prepare = () => prepared(open(), table);
  return { table, prepare, run: ({ w }) => void w.run(name, request) };
}

/** What such a call wrote, taken back. */
function takenBack(open: () => Nursery, table: string, [name, request]: WritingCall): Action {
  const prepare = () => prepared(open(), table, (nursery) => void nursery.ask(name, request));
  return {
    ...{ table, prepare },
    run: (nursery) => void nursery.w.run("sidebarTakeBack", lastId(nursery)),
  };
}

const ACTIONS: Record<string, Action> = {
  record: written(records, "Records", ["sidebarRecord", REQUEST]),
  "take back": takenBack(records, "Records", ["sidebarRecord", REQUEST]),
  "record a line": written(jobs, "Records", ["sidebarRecord", REQUEST]),
  "take a line back": takenBack(jobs, "Records", ["sidebarRecord", REQUEST]),
  "add order": written(orders, "Orders", ["sidebarAddOrder", ORDER]),
  "take order back": takenBack(orders, "Orders", ["sidebarAddOrder", ORDER]),
  "write two ticks": {
    table: "Records",
    prepare: () =>
      prepared(records(), "Records", (nursery) => {
        tick(nursery, "B1", 50);
        tick(nursery, "B2", 60);
      }),
    run: ({ w }) => tried(() => w.call("writeTicked")),
  },
  "take a tick back": {
    table: "Records",
    prepare: () =>
      prepared(records(), "Records", (nursery) => {
        tick(nursery, "B2", 60);
        nursery.w.call("writeTicked");
        setDue(nursery, dueRow(nursery, "B2"), { Done: false });
      }),
    run: ({ w }) => tried(() => w.call("writeTicked")),
  },
};

/** What another person does to the table. Rows 2 and 4 are the first and the third below the header. */
const EDITS: Record<string, (sheet: Sheet) => void> = {
  "puts a row in at the top": (sheet) => sheet.insertRowsAfter(1, 1),
  "puts a row in below": (sheet) => sheet.insertRowsAfter(4, 1),
  "deletes the first row": (sheet) => sheet.deleteRows(2, 1),
  "deletes the second row": (sheet) => sheet.deleteRows(3, 1),
  sorts: (sheet) => {
    const range = sheet.getRange(2, 1, sheet.getLastRow() - 1, sheet.getLastColumn());
    const rows: unknown[][] = range.getValues();
    range.setValues([...rows].reverse());
  },
  "puts a column in": (sheet) => sheet.insertColumnsAfter(2, 1),
  "deletes a column": (sheet) => sheet.deleteColumns(3, 1),
  "moves a column": (sheet) => sheet.moveColumns(sheet.getRange("B1"), 5),
};

function tried(run: () => void): void {
  try {
    run();
  } catch {
    // What it says is not asked here; what stands in the sheet and in the log is.
  }
}

/**
 * All cells of a table, without rows that hold nothing: one that is put in, or stays where a line was
 * taken back from between others, is nothing that was lost.
 */
function content(nursery: Nursery, table: string): string {
  const rows = nursery
    .values(table)
    .map((row) => withoutEnd(row.map(String), (cell) => cell === ""));
  return JSON.stringify(rows.filter((row) => row.length > 0));
}

function withoutEnd<Item>(items: readonly Item[], isNothing: (item: Item) => boolean): Item[] {
  let end = items.length;
  while (end > 0 && isNothing(items[end - 1] as Item)) end -= 1;
  return items.slice(0, end);
}

/** Puts back what the log says was written and not taken back: from the log alone. */
function rebuild(nursery: Nursery, table: string): void {
  const sheet = nursery.sheet(table);
  const log = nursery.sheet("Write log").getDataRange().getValues().slice(2) as unknown[][];
  // Found before anything is put back, since the name of a row may be part of it.
  const foundCells = [...log].reverse().flatMap((line) => {
    const [id, , , , cell, header, batch, , before, after, state] = line;
    if (state !== "written" && state !== "not known") return [];
    const write = log.filter((one) => one[0] === id);
    const found =
      state === "written"
        ? positionOf(sheet, String(header), String(batch), write)
        : sheet.getRange(String(cell));
    return found === null || !same(found.getValue(), after) ? [] : [{ found, before }];
  });
  for (const { found, before } of foundCells) {
    found.setValue(typeof before === "string" && before !== "" ? `'${before}` : before);
  }
}

/** The cell under a header in the row that bears a name; of several the one that was written. */
function positionOf(sheet: Sheet, header: string, name: string, write: readonly unknown[][]) {
  const values: unknown[][] = sheet.getDataRange().getValues();
  const headers = (values[0] ?? []).map(String);
  const column = headers.indexOf(header);
  const names = headers.findIndex((one) => one === "Batch" || one === "Order");
  const hits = (row: readonly unknown[]) =>
    write.filter((line) => same(row[headers.indexOf(String(line[5]))], line[9])).length;
  const rows = values
    .flatMap((row, at) => (row[names] === name ? [{ at, hits: hits(row) }] : []))
    .sort((a, b) => b.hits - a.hits);
  const [row] = rows;
  return row === undefined || column === -1 ? null : sheet.getRange(row.at + 1, column + 1);
}

function same(one: unknown, other: unknown): boolean {
  const plain = (value: unknown) =>
    Object.prototype.toString.call(value) === "[object Date]" ? Number(value) : value;
  return plain(one) === plain(other);
}

/** The calls before which the editor acts. */
function callsToMeet(nursery: Nursery, run: Action["run"]): { calls: number[]; total: number } {
  const names = callsOf(nursery, () => run(nursery));
  const total = names.length;
  // Between two looks nothing changes but what the look saw: the window is around writes.
  const near = (at: number) => names.slice(at, at + 2).some((name) => /set|flush/.test(name));
  const calls = names.flatMap((_, at) =>
    EVERY_CALL || near(at) || at % ONE_LOOK_OF === 0 ? [at + 1] : [],
  );
  return { calls, total };
}

const counted: string[] = [];
afterAll(() => console.log(counted.join("\n")));

it.each(Object.entries(ACTIONS))(
  "%s: whatever another person moves meanwhile, the log tells the table as it was",
  (name, { table, prepare, run }) => {
    const { nursery: model, before: untouched } = prepare();
    const start = model.saved();
    const { calls, total } = callsToMeet(model, run);
    const wrong: string[] = [];
    let runs = 0;
    for (const [round, [edit, act]] of Object.entries(EDITS).entries()) {
      const expected = editedAlone(start, untouched, table, act);
      // One edit meets every second call, the next one the others.
      for (const n of EVERY_CALL ? calls : calls.filter((_, at) => at % 2 === round % 2)) {
        const nursery = openNursery(start, SMALL);
        nursery.w.meter.reset();
        nursery.w.meter.beforeCall(n, () => act(nursery.sheet(table)));
        run(nursery);
        runs += 1;
        const log = nursery
          .values("Write log")
          .slice(2)
          .map((line) => `${line[4]}:${line[10]}`);
        rebuild(nursery, table);
        if (content(nursery, table) !== expected) {
          wrong.push(`${edit} before call ${n}: ${log.join(" ")}`);
        }
        nursery.w.close();
      }
    }
    counted.push(
      `${name}: ${runs} runs, before ${calls.length} of ${total} calls, ${wrong.length} wrong`,
    );
    expect(wrong).toEqual([]);
  },
  EVERY_CALL ? 3_600_000 : 300_000,
);

/** The table as it is when the other person alone has acted, before anything was written. */
function editedAlone(
  start: ReturnType<Nursery["saved"]>,
  untouched: string,
  table: string,
  act: (sheet: Sheet) => void,
): string {
  const nursery = openNursery(start, SMALL);
  // Whatever stood there for the action to be taken back goes first.
  rebuild(nursery, table);
  expect(content(nursery, table)).toBe(untouched);
  act(nursery.sheet(table));
  const edited = content(nursery, table);
  nursery.w.close();
  return edited;
}
