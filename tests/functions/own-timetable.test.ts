import { describe, expect, it } from "vitest";
import type { TimetableFault } from "../../src/core";
import { registry } from "../../src/functions/registry";
import * as text from "../../src/sentences/made/records";
import { morePlaces } from "../../src/sentences/made/timetable";
import { faultPlace, timetableRemark } from "../../src/wording/timetable";
import { askRows } from "../support/ask";

/**
 * A nursery with steps of its own, invented, as an office writes it. One table of words serves every
 * function: a step that a function's timetable lacks is named there, and the rest goes on.
 */
const RECORDS = [
  [
    "Batch",
    "Variety",
    "Graft date",
    "Grafts made",
    "1st tape release",
    "2nd tape release",
    "Alive",
  ],
  ["T1", "Alba", "2026-09-01", 120, "2026-09-22", "2026-10-06", 96],
  ["T2", "Nera", "2026-09-08", 80, "2026-09-29", "2026-10-13", 61],
  ["T3", "Alba", "2026-10-20", 150, "2026-11-10", "", ""],
];
const STEPS = [
  ["Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"],
  ["Grafting", "", "", "", "", "yes", ""],
  ["First release", "Grafting", 18, 21, 28, "", ""],
  ["Full release", "First release", 10, 14, 21, "", ""],
  ["Take count", "Full release", 5, 7, 14, "yes", 80],
  ["Ready", "Take count", 60, 75, 90, "yes", 95],
];
const WORDS = [
  ["First release day", "1st tape release"],
  ["Full release day", "2nd tape release"],
  ["Takes", "Alive"],
];
const GIVEN: Readonly<Record<string, unknown>> = {
  records: RECORDS,
  asOf: "2026-11-25",
  columns: WORDS,
  by: "Variety",
  evenFor: "1st tape release",
  daysBefore: 20,
  crew: [
    ["Person", "Hours a day"],
    ["Ana", 6],
  ],
  places: [
    ["Place", "Holds"],
    ["Bay 1", 500],
  ],
  prices: [
    ["Item", "Price"],
    ["scion", 0.5],
  ],
  orders: [
    ["Order", "Variety", "Wanted", "By"],
    ["O1", "Alba", 60, "2027-03-01"],
  ],
  wanted: 60,
  readyBy: "2027-09-01",
  method: "",
};
const UNKNOWN = text.noSuchColumnsOfCell({
  told: [text.toldAs({ header: "2nd tape release", name: "Full release day" })],
});

const withRecords = registry.filter(({ parameters }) =>
  parameters.some(({ name }) => name === "records"),
);

const plain = (text: string) => text.replace(/ +/g, " ").replace(/^ | $/gm, "").trim();

/** All that a function says, by arguments of these names. */
function said(name: string, given: Readonly<Record<string, unknown>>): string {
  const parameters = registry.find((one) => one.name === name)?.parameters ?? [];
  const rows = askRows(
    name,
    parameters.map((one) => given[one.name] ?? ""),
  );
  return rows.flat().map(String).join("\n");
}

describe("one table of words and one timetable for all", () => {
  it("are arguments of every function that reads records", () => {
    for (const { parameters } of withRecords) {
      const names = parameters.map(({ name }) => name);
      expect(names).toContain("columns");
      expect(names).toContain("timetable");
    }
  });

  it.each(withRecords.map(({ name }) => name))("%s reads with the own timetable", (name) => {
    expect(said(name, { ...GIVEN, timetable: STEPS })).not.toContain("Full release day");
  });

  // Four of the made tabs showed #ERROR! for such a step.
  it.each(withRecords.map(({ name }) => name))(
    "%s names a step that its timetable lacks",
    (name) => {
      const answer = said(name, GIVEN);
      if (name === "BATCH_CHECK") expect(answer).toContain("Full release day");
      else expect(answer).toContain(UNKNOWN);
    },
  );

  it("leave alone a column that was given an unknown name, whatever its header says", () => {
    const words = [["Secnd release", "Grafts made"]];
    const answer = said("BATCH_BALANCE", { ...GIVEN, timetable: STEPS, columns: words });
    expect(answer).toContain(text.toldAs({ header: "Grafts made", name: "Secnd release" }));
    expect(answer).not.toContain("120");
  });
});

describe("a row of the timetable that can't be read", () => {
  const FAULTS: readonly TimetableFault[] = [
    { row: 7, column: "usual", found: "monthly", code: "no-number", leftOut: "row" },
    {
      row: 8,
      column: "after",
      found: "Feeding",
      code: "after-left-out",
      after: "Feeding",
      leftOut: "row",
    },
  ];
  const faulty = [
    ...STEPS,
    ["Feeding", "Grafting", "", "monthly", "", "", ""],
    ["Washing", "Feeding", 1, 2, 3, "", ""],
  ];
  const given = { ...GIVEN, timetable: faulty };

  it.each(withRecords.map(({ name }) => name))("%s names it, and the rest goes on", (name) => {
    const answer = said(name, given);
    if (name === "BATCH_CHECK") {
      for (const fault of FAULTS) expect(answer).toContain(faultPlace(fault));
      return;
    }
    const remark = timetableRemark(FAULTS, "cell");
    expect(answer.split(remark)).toHaveLength(2);
    // What is left of the answer is that by the rows that can be read.
    expect(plain(answer.replace(remark, ""))).toBe(
      plain(said(name, { ...GIVEN, timetable: STEPS })),
    );
  });

  it("is named by an order's plan without records too", () => {
    const answer = said("ORDER_PLAN", { ...given, records: "", columns: "" });
    expect(answer).toContain(timetableRemark(FAULTS, "cell"));
  });

  it("is named up to three, then counted", () => {
    const four = [...faulty, ["Airing", "Feeding", 1, 2, 3], ["Shading", "Feeding", 1, 2, 3]];
    expect(said("BATCH_DUE", { ...GIVEN, timetable: four })).toContain(morePlaces({ more: 1 }));
  });
});
