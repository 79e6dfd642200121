import { describe, expect, it } from "vitest";
import type { InputFault } from "../../src/core/faults/input-error";
import { noneHeld } from "../../src/sentences/made/batches";
import { rowsLeftOutOfCell } from "../../src/sentences/made/records";
import * as take from "../../src/sentences/made/take-columns";
import { noSuchColumn } from "../../src/sentences/made/take-faults";
import { ask, askRows, askTable } from "../support/ask";
import { plainHeader } from "../support/plain-header";
import { refusal } from "../support/refusal";

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
    // An answer may have another remark already, which then stands in the same row behind it.
    const other = rows.length === used.length ? String(used.at(-1)?.[0]) : "";
    expect(rows.slice(0, -1)).toEqual(other === "" ? used : used.slice(0, -1));
    const said = String(rows.at(-1)?.[0]);
    // The second is that of answers whose sentences still stand in core.
    expect(
      [rowsLeftOutOfCell({ rows: 1 }), "1 row left out: see BATCH_CHECK"].some((text) =>
        said.startsWith(text),
      ),
    ).toBe(true);
    expect(said).toContain(other);
    expect(
      rows
        .at(-1)
        ?.slice(1)
        .every((cell) => cell === ""),
    ).toBe(true);
  });

  it.each([
    [undefined, { code: "argument-missing", argument: "records", needs: "table" }],
    ["", { code: "argument-missing", argument: "records", needs: "table" }],
    ["#REF!", { ...firstCell, shown: "#REF!" }],
    ["Loading...", { ...firstCell, shown: null }],
    [7, { code: "no-header", begins: 7 }],
    [[["Name"], ["x"]], { code: "no-header", begins: "Name" }],
  ] as readonly (readonly [unknown, InputFault])[])(
    "refuses the records %j in one sentence",
    (records, fault) => {
      expect(() => ask(name, args(records))).toThrow(refusal(name, fault));
    },
  );

  it("answers with its header alone where the table has no rows", () => {
    const [header, ...rows] = askRows(name, args([HEADER]));
    expect(header).toEqual(plain[0]);
    const last = rows.map(([first, ...others]) => [first, others.every((cell) => cell === "")]);
    // Looking back always ends with how many ranges held, here none.
    expect(last).toEqual(name === "BATCH_LOOKBACK" ? [[noneHeld(), true]] : []);
  });
});

const firstCell = { code: "not-ready-yet", argument: "records", row: 1, column: "1" } as const;
const NO_DAY: InputFault = { code: "argument-missing", argument: "asOf", needs: "day" };
const noNumber = (argument: string, found: number | string): InputFault => ({
  code: "argument-unreadable",
  argument,
  wanted: "number",
  found,
});

describe("arguments that make no answer possible", () => {
  it.each(["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE", "BATCH_READY"])("%s needs a day", (name) => {
    expect(() => ask(name, [RECORDS, "", ""])).toThrow(refusal(name, NO_DAY));
    expect(() => ask(name, [RECORDS, ""])).toThrow(refusal(name, NO_DAY));
    expect(() => ask(name, [RECORDS, "", "soon"])).toThrow(
      refusal(name, {
        code: "argument-unreadable",
        argument: "asOf",
        wanted: "day",
        found: "soon",
      }),
    );
  });

  it.each(["BATCH_STAGES", "BATCH_STEPS", "BATCH_READY"])(
    "%s needs a level that can be",
    (name) => {
      expect(() => ask(name, [RECORDS, "", AS_OF, 3])).toThrow(
        refusal(name, { code: "level-out-of-range", argument: "level", found: 3 }),
      );
      expect(ask(name, [RECORDS, "", AS_OF, ""])).toEqual(ask(name, [RECORDS, "", AS_OF, 0.8]));
    },
  );

  it("BATCH_DUE looks 7 days ahead unless told", () => {
    expect(ask("BATCH_DUE", [RECORDS, "", AS_OF])).toEqual(
      ask("BATCH_DUE", [RECORDS, "", AS_OF, 7]),
    );
    expect(() => ask("BATCH_DUE", [RECORDS, "", AS_OF, -1])).toThrow(
      refusal("BATCH_DUE", noNumber("daysAhead", -1)),
    );
  });

  it("BATCH_LOOKBACK needs a day, whole days before it, and a level that can be", () => {
    const look = (...args: unknown[]) => ask("BATCH_LOOKBACK", [RECORDS, "", ...args]);
    expect(() => look("", 30)).toThrow(refusal("BATCH_LOOKBACK", NO_DAY));
    for (const none of [undefined, "", 0]) {
      expect(() => look(AS_OF, none)).toThrow(
        refusal("BATCH_LOOKBACK", { code: "below-one-day", argument: "daysBefore", found: 0 }),
      );
    }
    for (const value of [-1, 2.5, "soon"]) {
      expect(() => look(AS_OF, value)).toThrow(
        refusal("BATCH_LOOKBACK", noNumber("daysBefore", value)),
      );
    }
    expect(() => look(AS_OF, 30, 1)).toThrow(
      refusal("BATCH_LOOKBACK", { code: "level-out-of-range", argument: "level", found: 1 }),
    );
  });

  it("TAKE_SUMMARY needs a column that is there", () => {
    expect(() => ask("TAKE_SUMMARY", [RECORDS, ""])).toThrow(
      refusal("TAKE_SUMMARY", { code: "argument-missing", argument: "by", needs: "name" }),
    );
    const known = (RECORDS[0] as string[]).join(", ");
    expect(() => ask("TAKE_SUMMARY", [RECORDS, "Tide"])).toThrow(
      `TAKE_SUMMARY: ${noSuchColumn({ argument: "by", name: "Tide", known })}`,
    );
  });

  it("BATCH_CHECK takes them left out", () => {
    expect(askRows("BATCH_CHECK", [RECORDS]).length).toBeGreaterThan(1);
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
      const [, trouble] = askRows("BATCH_CHECK", [records, "", AS_OF]);
      expect(trouble?.slice(0, 2)).toEqual([2, "Grafted on"]);
      expect(() => ask("BATCH_STAGES", [RECORDS, "", new Date(at)])).toThrow(
        refusal("BATCH_STAGES", {
          code: "not-ready-yet",
          argument: "asOf",
          row: null,
          column: null,
          shown: "#NUM!",
        }),
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
