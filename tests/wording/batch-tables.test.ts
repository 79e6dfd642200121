import { describe, expect, it } from "vitest";
import { balances } from "../../src/core/balance/balances";
import type { Cell } from "../../src/core/cells/cell";
import { dueTasks } from "../../src/core/due/due-tasks";
import { stagesOf } from "../../src/core/projection/batch-stages";
import { stepsOf } from "../../src/core/projection/batch-steps";
import { lookback } from "../../src/core/projection/lookback";
import { readyPlants } from "../../src/core/projection/ready-plants";
import { builtInTimetable } from "../../src/core/timetable/read-timetable";
import * as header from "../../src/sentences/made/batch-columns";
import * as text from "../../src/sentences/made/batches";
import { rowsLeftOutOfCell } from "../../src/sentences/made/records";
import {
  balanceTable,
  dueTable,
  lookbackTable,
  readyTable,
  stagesTable,
  stepsTable,
} from "../../src/wording/batch-tables";
import { dayWords } from "../../src/wording/days";
import { groupText } from "../../src/wording/takes";
import { reading } from "../core/records/reading";
import { rowsByName } from "../support/answers";
import { day } from "../support/days";

const HEADER = ["Batch", "Variety", "Place", "Sown", "Seeds sown", "Grafted on", "Grafts made"];
const OUTCOME = ["Take count day", "Takes", "Ready on", "Ready plants", "Dispatched", "Closed"];
const ROWS: readonly (readonly Cell[])[] = [
  ["B1", "Alba", "Bay 1", "", "", "2026-10-20", 100, "2026-11-20", 80, "", "", "", ""],
  ["B2", "", "Bay 2", "", "", "2026-11-18", 60, "", "", "", "", "", ""],
];
const question = (rows = ROWS, asOf = "2026-11-25") => ({
  records: reading([[...HEADER, ...OUTCOME], ...rows]),
  ...{ timetable: builtInTimetable(), asOf: day(asOf), level: 0.8 },
});
const LOG = reading([
  ["Day", "Batch", "Step", "Count"],
  ["2026-11-18", "B1", "Grafting", 100],
  ["2026-11-19", "B1", "Sweeping", ""],
]);

describe("every table of batches", () => {
  const asked = { ...question(), records: LOG };
  it.each([
    ["stages", () => stagesTable(stagesOf(asked))],
    ["steps", () => stepsTable(stepsOf(asked))],
    ["ready", () => readyTable(readyPlants(asked))],
    ["lookback", () => lookbackTable(lookback({ ...asked, daysBefore: 30 }))],
    [
      "due",
      () =>
        dueTable({
          ...dueTasks({ ...asked, daysAhead: 60 }),
          remarks: stagesOf(asked).remarks,
        }),
    ],
    ["balance", () => balanceTable(balances(asked.records, asked.timetable))],
  ])("of %s says what was left out, and each row fills its columns", (_, table) => {
    const answer = table();
    expect(answer.remark?.startsWith(rowsLeftOutOfCell({ rows: 1 }))).toBe(true);
    expect(rowsByName(answer).length).toBeGreaterThan(0);
    for (const row of answer.rows) {
      expect(
        row.some((value) => value === undefined || (typeof value === "object" && value !== null)),
      ).toBe(false);
    }
  });
});

describe("the stages as a table", () => {
  it("say in words what should be looked at", () => {
    const rows: readonly (readonly Cell[])[] = [
      ["B1", "Alba", "Bay 1", "", "", "2026-05-09", 100],
      ["B2", "Alba", "Bay 1", "", "", "2026-10-01", 100],
      ["B3", "Alba", "Bay 1", "", "", "2026-12-10", ""],
    ];
    const table = rowsByName(stagesTable(stagesOf(question(rows))));
    expect(table.map((row) => row[header.remark()])).toEqual([
      text.setAside({ since: dayWords(day("2026-05-09")) }),
      text.nextLate({
        step: "Take count",
        by: dayWords(day("2026-11-05")),
        since: dayWords(day("2026-10-01")),
      }),
      text.planned(),
    ]);
  });
});

describe("plants ready as a table", () => {
  it("call all together and a blank variety by name", () => {
    const varieties = readyTable(readyPlants(question())).rows.map(([, variety]) => variety);
    expect(new Set(varieties)).toEqual(new Set([groupText(""), "Alba", text.all()]));
  });
});

describe("the look back as a table", () => {
  const grafted = (name: string, on: string, more: readonly Cell[] = []) =>
    [name, "Alba", "Bay 1", "", "", on, 100, "", "", ...more] as const;
  const table = (rows: readonly (readonly Cell[])[], daysBefore: number) =>
    lookbackTable(lookback({ ...question(rows), daysBefore }));
  const names = (answer: ReturnType<typeof table>) => answer.rows.map(([name]) => name);
  const finished = Array.from({ length: 6 }, (_, at) =>
    grafted(`F${at}`, "2025-11-01", [`2026-02-1${at}`, 60 + 4 * at]),
  );

  it("closes with how many ranges held, and with the plain rule, which had nothing to go by", () => {
    const rows = [
      grafted("B1", "2026-05-01", ["2026-08-18", 65]),
      grafted("B2", "2026-05-01", ["2026-06-20", 3]),
    ];
    const answer = table(rows, 200);
    expect(rowsByName(answer).map((row) => [row[header.batch()], row[header.dayHeld()]])).toEqual([
      ["B1", text.yes()],
      ["B2", text.no()],
      [text.held(), text.heldOf({ held: 1, all: 2 })],
      [text.plainRule({ days: "none", plants: "none" }), null],
    ]);
    expect(answer.rows.at(-1)?.slice(1)).toEqual(Array(8).fill(null));
  });

  it("says how many cannot be judged, why, and how a plain rule did", () => {
    const rows = [
      ...finished,
      grafted("dead", "2026-05-01", ["", "", "", "yes"]),
      grafted("B1", "2026-05-01", ["2026-08-12", 72]),
      grafted("not yet", "2026-11-20"),
    ];
    const late = lookback({ ...question(rows), daysBefore: 200 });
    expect(names(lookbackTable({ ...late, notYet: 3, goneOn: 2 }))).toEqual([
      ...["dead", "B1", text.held(), text.closedUndated({ batches: 1 })],
      ...[text.wentOn({ batches: 2 }), text.notJudgedYet({ batches: 3 })],
      text.plainRule({
        days: late.plain.days?.did ?? "none",
        plants: late.plain.plants?.did ?? "none",
      }),
    ]);
    const [dayHeld, countHeld] = lookbackTable(late).rows.at(-1)?.slice(7) ?? [];
    expect([dayHeld, countHeld]).toEqual([
      text.heldOf({ held: 1, all: 2 }),
      text.heldOf({ held: 1, all: 2 }),
    ]);
  });

  it("says that nothing can be judged yet", () => {
    expect(names(table([grafted("B1", "2026-11-01")], 10))).toEqual([
      text.noneHeld(),
      text.notJudgedYet({ batches: 1 }),
    ]);
  });

  it("says so where nothing was forecast", () => {
    const table = lookbackTable(lookback({ ...question([]), daysBefore: 100 }));
    expect(table.rows).toEqual([[text.noneHeld(), ...Array(8).fill(null)]]);
  });
});

describe("the due list as a table", () => {
  it("has the status in words, hours to a tenth and blanks for what is not known", () => {
    const { rows } = dueTasks({ ...question(), daysAhead: 60 });
    const table = rowsByName(dueTable({ rows, remarks: [] }));
    expect(table.map((row) => row[header.task()])).toEqual(rows.map(({ step }) => step.name));
    const words = { late: text.late(), due: text.due(), coming: text.coming() };
    expect(table.map((row) => row[header.status()])).toEqual(
      rows.map(({ status }) => words[status]),
    );
    for (const row of table) {
      expect(row[header.hours()]).not.toBe(0);
      expect(row[header.caution()]).not.toBe("");
    }
  });
});

describe("the balance as a table", () => {
  it("says what is odd in whole sentences", () => {
    const gone = (dispatched: number, closed: Cell) =>
      [
        "",
        "",
        "",
        "",
        "2026-06-01",
        100,
        "2026-07-01",
        80,
        "2026-10-01",
        70,
        dispatched,
        closed,
      ] as const;
    const rows: readonly (readonly Cell[])[] = [
      ["B1", ...gone(120, "")],
      ["B2", ...gone(30, "yes")],
      ["B3", "Alba", "Bay 1", "", "", "2026-11-18", ""],
    ];
    const table = rowsByName(balanceTable(balances(question(rows).records, builtInTimetable())));
    expect(table.map((row) => row[header.remarks()])).toEqual([
      `${text.moreLeft()} ${text.leftAfterCount({ left: 120, standing: 0 })}`,
      text.closedWith({ plants: 40 }),
      text.noPlantsCounted(),
    ]);
  });
});
