import { describe, expect, it } from "vitest";
import { noneHeld } from "../../src/sentences/made/batches";
import { rowsLeftOutOfCell } from "../../src/sentences/made/records";
import * as take from "../../src/sentences/made/take-columns";
import { noSuchColumn } from "../../src/sentences/made/take-faults";
import { ask, askRows, askTable } from "../support/ask";
import { plainHeader } from "../support/plain-header";

const HEADER = ["Batch", "Variety", "Grafted on", "Grafts made", "Takes", "Closed"];
const ROWS = [
  ["B1", "Alba", "2026-10-01", 100, 80, ""],
  ["B2", "Nera", "2026-11-01", 60, "", ""],
  ["B3", "Alba", "2026-11-20", 40, "", ""],
];
const RECORDS = [HEADER, ...ROWS];
const AS_OF = "2026-11-25";
const QUESTIONS: readonly (readonly [string, (records: unknown) => unknown[]])[] = [
  ["BATCH_STAGES", (records) => [records, "", AS_OF]],
  ["BATCH_STEPS", (records) => [records, "", AS_OF]],
  ["BATCH_DUE", (records) => [records, "", AS_OF]],
  ["BATCH_READY", (records) => [records, "", AS_OF]],
  ["BATCH_LOOKBACK", (records) => [records, "", AS_OF, 30]],
  ["BATCH_BALANCE", (records) => [records]],
  ["TAKE_SUMMARY", (records) => [records, "Variety"]],
];

describe.each(QUESTIONS)("%s over a range", (name, args) => {
  const plain = askRows(name, args(RECORDS));

  it("gives the same answer open-ended, with hundreds of blank rows below", () => {
    const blank = HEADER.map(() => "");
    expect(ask(name, args([...RECORDS, ...Array.from({ length: 996 }, () => blank)]))).toEqual(
      plain,
    );
  });

  it("gives the same answer below three title lines, columns shuffled, two more beside", () => {
    const order = [4, 2, 0, 5, 3, 1];
    const shuffled = RECORDS.map((row, at) => [
      at === 0 ? "Weather" : "rain",
      ...order.map((column) => row[column] as string),
      at === 0 ? "" : 7,
    ]);
    const titles = [["Hillside"], ["Grafts of 2026"], []];
    expect(ask(name, args([...titles, ...shuffled]))).toEqual(plain);
  });

  it("gives the same answer with a row of sums, a heading and a note among its rows", () => {
    const rows = [HEADER, ["Bay 1"], ...ROWS, ["Total", "", "", 200, 80, ""], ["", "rain", ""]];
    expect(ask(name, args(rows))).toEqual(plain);
  });

  it("says when it left rows out, in its last row, and where to look", () => {
    const log = [
      ["Day", "Batch", "Variety", "Step", "Count"],
      ["2026-10-01", "B1", "Alba", "Grafting", 100],
      ["2026-11-01", "B1", "Alba", "Take count", 80],
    ];
    const used = askRows(name, args(log));
    const lost = ["2026-11-02", "", "Alba", "Grafting", 7];
    const rows = askRows(name, args([...log, lost]));
    expect(rows.slice(0, -1)).toEqual(used);
    // The second is that of answers whose sentences still stand in core.
    expect([rowsLeftOutOfCell({ rows: 1 }), "1 row left out: see BATCH_CHECK"]).toContain(
      rows.at(-1)?.[0],
    );
    expect(
      rows
        .at(-1)
        ?.slice(1)
        .every((cell) => cell === ""),
    ).toBe(true);
  });

  it.each([
    [undefined, "records is missing: give the range of your table"],
    ["", "records is missing: give the range of your table"],
    ["#REF!", "records shows #REF! at row 1, column 1"],
    ["Loading...", "records is still loading at row 1, column 1"],
    [
      7,
      'records has no header row in its first ten rows that names a batch or a step; it starts with "7"',
    ],
    [
      [["Name"], ["x"]],
      'records has no header row in its first ten rows that names a batch or a step; it starts with "Name"',
    ],
  ])("refuses the records %j in one sentence", (records, sentence) => {
    expect(() => ask(name, args(records))).toThrow(new Error(`${name}: ${sentence}`));
  });

  it("answers with its header alone where the table has no rows", () => {
    const [header, ...rows] = askRows(name, args([HEADER]));
    expect(header).toEqual(plain[0]);
    const last = rows.map(([first, ...others]) => [first, others.every((cell) => cell === "")]);
    // Looking back always ends with how many ranges held, here none.
    expect(last).toEqual(name === "BATCH_LOOKBACK" ? [[noneHeld(), true]] : []);
  });
});

describe("arguments that make no answer possible", () => {
  it.each(["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE", "BATCH_READY"])("%s needs a day", (name) => {
    expect(() => ask(name, [RECORDS, "", ""])).toThrow(`${name}: asOf is missing: give a day`);
    expect(() => ask(name, [RECORDS, ""])).toThrow(`${name}: asOf is missing: give a day`);
    expect(() => ask(name, [RECORDS, "", "soon"])).toThrow(
      `${name}: asOf must be a day; found "soon"`,
    );
  });

  it.each(["BATCH_STAGES", "BATCH_STEPS", "BATCH_READY"])(
    "%s needs a level that can be",
    (name) => {
      expect(() => ask(name, [RECORDS, "", AS_OF, 3])).toThrow(
        `${name}: level must lie between 0 and 1, such as 0.8 or 80%; found 3`,
      );
      expect(ask(name, [RECORDS, "", AS_OF, ""])).toEqual(ask(name, [RECORDS, "", AS_OF, 0.8]));
    },
  );

  it("BATCH_DUE looks 7 days ahead unless told", () => {
    expect(ask("BATCH_DUE", [RECORDS, "", AS_OF])).toEqual(
      ask("BATCH_DUE", [RECORDS, "", AS_OF, 7]),
    );
    expect(() => ask("BATCH_DUE", [RECORDS, "", AS_OF, -1])).toThrow(
      "BATCH_DUE: daysAhead must be a whole number, 0 or more; found -1",
    );
  });

  it("BATCH_LOOKBACK needs a day, whole days before it, and a level that can be", () => {
    const look = (...args: unknown[]) => ask("BATCH_LOOKBACK", [RECORDS, "", ...args]);
    expect(() => look("", 30)).toThrow("BATCH_LOOKBACK: asOf is missing: give a day");
    for (const none of [undefined, "", 0]) {
      expect(() => look(AS_OF, none)).toThrow(
        "BATCH_LOOKBACK: daysBefore must be 1 or more whole days",
      );
    }
    for (const [value, found] of [
      [-1, "-1"],
      [2.5, "2.5"],
      ["soon", '"soon"'],
    ]) {
      expect(() => look(AS_OF, value)).toThrow(
        `BATCH_LOOKBACK: daysBefore must be a whole number, 0 or more; found ${found}`,
      );
    }
    expect(() => look(AS_OF, 30, 1)).toThrow("BATCH_LOOKBACK: level must lie between 0 and 1");
  });

  it("TAKE_SUMMARY needs a column that is there", () => {
    expect(() => ask("TAKE_SUMMARY", [RECORDS, ""])).toThrow("TAKE_SUMMARY: by is missing");
    const known = (RECORDS[0] as string[]).join(", ");
    expect(() => ask("TAKE_SUMMARY", [RECORDS, "Tide"])).toThrow(
      `TAKE_SUMMARY: ${noSuchColumn({ argument: "by", name: "Tide", known })}`,
    );
  });

  it("BATCH_CHECK takes them left out", () => {
    expect(askTable("BATCH_CHECK", [RECORDS]).length).toBeGreaterThan(0);
  });
});

describe("a date cell outside the years 1 to 9999", () => {
  // The ends of what a script's Date can hold: the day after the last one can't be told any more.
  it.each([8.64e15, -8.64e15, -62_200_000_000_000])(
    "at %d ms gives an answer, and is listed",
    (at) => {
      const records = [HEADER, ["B1", "Alba", new Date(at), 100, "", ""]];
      for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE", "BATCH_READY"]) {
        expect(askRows(name, [records, "", AS_OF]).length).toBeGreaterThan(0);
      }
      const troubles = askTable("BATCH_CHECK", [records, "", AS_OF]);
      expect(troubles[0]).toMatchObject({ Row: 2, Column: "Grafted on" });
      expect(() => ask("BATCH_STAGES", [RECORDS, "", new Date(at)])).toThrow(
        /^BATCH_STAGES: asOf /,
      );
    },
  );
});

describe("text that looks like a formula", () => {
  it("comes out as the text that went in, never cut or run together", () => {
    const records = [
      ["Batch", "Variety", "Place", "Grafts made", "Takes"],
      ["=1+1", "+cmd", "@here", 10, 5],
      ["-B2", "<b>x</b>", "'007", 10, 5],
    ];
    const stages = askTable("BATCH_STAGES", [records, "", AS_OF]);
    expect(stages.map(({ Batch, Variety, Place }) => [Batch, Variety, Place])).toEqual([
      ["=1+1", "+cmd", "@here"],
      ["-B2", "<b>x</b>", "'007"],
    ]);
    expect(
      askTable("TAKE_SUMMARY", [records, "Variety"])
        .map(({ Variety }) => Variety)
        .sort(),
    ).toEqual(["+cmd", "<b>x</b>"]);
  });
});

describe("blank and 0", () => {
  it("are different everywhere", () => {
    const row = (taken: unknown) => [HEADER, ["B1", "Alba", "2026-10-01", 100, taken, ""]];
    const stage = (taken: unknown) => askTable("BATCH_STAGES", [row(taken), "", AS_OF]);
    expect(stage("")[0]).toMatchObject({ Plants: 100, "Last step": "Grafting" });
    expect(stage(0)).toEqual([]);
    const summary = (taken: unknown) => askTable("TAKE_SUMMARY", [row(taken), "Variety"])[0];
    expect(summary("")).toMatchObject({
      [plainHeader(take.batches())]: 0,
      [plainHeader(take.takeRate())]: "",
      [plainHeader(take.from())]: "",
      [plainHeader(take.to())]: "",
    });
    expect(summary(0)).toMatchObject({
      [plainHeader(take.batches())]: 1,
      [plainHeader(take.takeRate())]: 0,
      [plainHeader(take.from())]: 0,
    });
  });
});
