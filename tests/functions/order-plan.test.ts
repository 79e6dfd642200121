/* Longer than most: each plan is worked out by hand beside its case, from one table of steps. */
import { describe, expect, it } from "vitest";
import {
  builtInTimetable,
  isoDay,
  plannedOrder,
  type Records,
  type Timetable,
} from "../../src/core";
import type { InputFault } from "../../src/core/faults/input-error";
import type { PlannedOrderLine } from "../../src/core/orders/planned-order";
import { openDoor } from "../../src/door/index";
import * as faults from "../../src/sentences/made/order-faults";
import * as words from "../../src/sentences/made/order-plan";
import * as text from "../../src/sentences/made/orders";
import { dayWords } from "../../src/wording/days";
import { needsWords, planWarning } from "../../src/wording/order-plan";
import { ask, askRows, askTable } from "../support/ask";
import { day } from "../support/days";
import { hostIn } from "../support/host";
import { refusal } from "../support/refusal";

const TIMETABLE = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100", "Needs"],
  ["Plum budding", "Sowing", "", "", "", "", "yes", "", "seed 1; pod 0.0283; bag 1"],
  ["Plum budding", "Budding", "Sowing", 50, 60, 80, "yes", 80, "bud 1.1; strip 38.1 cm; bag 1"],
  ["Plum budding", "Ready", "Budding", 20, 30, 45, "yes", 90, "spirit 2 ml"],
];
const RECORDS = [
  ["Batch", "Variety", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ["B1", "Alba", "2026-06-01", 300, "2026-08-01", 240],
  ["B2", "Nera", "2026-11-01", 300, "", ""],
];
const plan = (...args: unknown[]) => askTable("ORDER_PLAN", args);
const need = (item: string, amount: number, unit = "") => ({ item, amount, unit });
/** The plan by core, as the function hands it over. */
const planned = (
  [wanted, readyBy, records, variety = ""]: readonly [number, string, unknown, string?],
  asOf: string | null = null,
) => {
  const door = openDoor(hostIn("Etc/UTC"));
  const timetable = door.timetable(TIMETABLE);
  return plannedOrder({
    wanted,
    readyBy: day(readyBy),
    timetable,
    methodName: null,
    assurance: 0.8,
    records:
      records === null
        ? null
        : door.records(records, {
            timetable,
            asOf: asOf === null ? null : day(asOf),
            columns: undefined,
          }),
    asOf: asOf === null ? null : day(asOf),
    variety,
    harvest: null,
  });
};
const remarks = (rows: Record<string, unknown>[]) => rows.map((row) => row.Remark).join(" ");

const outOfRange = (found: number): InputFault => ({
  code: "wanted-out-of-range",
  argument: "wanted",
  most: 1_000_000,
  found,
});

describe("ORDER_PLAN", () => {
  it("says plants, days and needs step by step, and the needs in all", () => {
    const rows = plan(100, "2027-09-01", TIMETABLE, "plum BUDDING");
    expect(rows.map((row) => row.Step)).toEqual(["Sowing", "Budding", "Ready", text.all()]);
    const [sowing, budding, ready, all] = rows;
    const seeds = sowing?.Plants as number;
    const buds = budding?.Plants as number;
    // 0.0283 pods a seed and 38.1 cm a plant; pods and buds are whole.
    const pods = need("pod", Math.ceil(seeds * 0.0283));
    expect(sowing?.Needs).toBe(needsWords([need("seed", seeds), pods, need("bag", seeds)]));
    const metres = Math.ceil(buds * 3.81 - 1e-6) / 10;
    const budsOf = [need("bud", Math.ceil(buds * 1.1)), need("strip", metres, "m")];
    expect(budding?.Needs).toBe(needsWords([...budsOf, need("bag", buds)]));
    const spirit = need("spirit", 200, "ml");
    expect(ready?.Needs).toBe(needsWords([spirit]));
    const bags = need("bag", seeds + buds);
    expect(all?.Needs).toBe(needsWords([need("seed", seeds), pods, bags, ...budsOf, spirit]));
    expect(ready?.["Do by"]).toBe("2027-09-01");
  });

  it("says the plain division beside the number with safety", () => {
    const [sowing] = plan(100, "2027-09-01", TIMETABLE, "");
    // 100 ÷ (0.8 × 0.9) = 138.9.
    expect(sowing?.Remark).toBe(
      words.plainAndMore({
        plants: 139,
        more: (sowing?.Plants as number) - 139,
        chance: words.of100({ chance: "89.2" }),
      }),
    );
  });

  it("says what the assurance is made of", () => {
    expect(plan(100, "2027-09-01", TIMETABLE, "")[2]?.Remark).toContain(
      // The day on which both would have √0.8 = 0.894 is surer by a little; the plants need not be.
      words.chances({
        both: words.of100({ chance: "80" }),
        plants: words.of100({ chance: "89.2" }),
        days: words.of100({ chance: "89.7" }),
      }),
    );
  });

  it("plans the first of varieties of which either will do, and says so", () => {
    const asked = (variety: string) =>
      plan(100, "2027-09-01", TIMETABLE, "", 0.8, RECORDS, "", "2026-11-25", variety);
    const [sowing, ...others] = asked("Alba or Nera");
    const [alone, ...rest] = asked("Alba");
    expect(sowing).toEqual({
      ...alone,
      Remark: `${alone?.Remark} ${words.firstVariety({ variety: "Alba" })}`,
    });
    expect(others).toEqual(rest);
  });

  it("says once that the records have no batch of a variety: a new one, or a slip", () => {
    const asked = (variety: string) =>
      plan(100, "2027-09-01", TIMETABLE, "", 0.8, RECORDS, "", "2026-11-25", variety);
    const unknown = words.unknownVarietyMeant({ variety: "Ablá", nearest: ["Alba"] });
    expect(asked("Ablá").map(({ Remark }) => String(Remark).includes(unknown))).toEqual([
      ...[true, false, false, false],
    ]);
    expect(remarks(asked("Zulu"))).toContain(words.unknownVariety({ variety: "Zulu" }));
    for (const known of ["Alba", "ALBA ", "Alba or Ablá", ""]) {
      expect(remarks(asked(known))).not.toContain(unknown);
    }
  });

  it("counts all varieties that will do among what stands", () => {
    const records = [
      RECORDS[0],
      ["B1", "Alba", "2026-06-01", 300, "2026-08-01", 240],
      ["B3", "Nera", "2026-06-01", 300, "2026-08-01", 240],
    ];
    const standing = (variety: string) => {
      const { steps } = planned([400, "2026-12-30", records, variety], "2026-11-25");
      const warnings = steps.flatMap((step) => step.warnings);
      const stands = warnings.find(({ code }) => code === "standing-can");
      return stands?.code === "standing-can" ? stands.plants : Number.NaN;
    };
    expect(standing("Alba or Nera")).toBeGreaterThan(1.5 * standing("Nera"));
    expect(standing("Nera")).toBeGreaterThan(0);
  });

  it("takes the first method where none is named, and refuses one that is not known", () => {
    expect(plan(100, "2027-09-01", TIMETABLE, "")).toEqual(
      plan(100, "2027-09-01", TIMETABLE, "Plum budding"),
    );
    expect(() => ask("ORDER_PLAN", [100, "2027-09-01", TIMETABLE, "Kiwi"])).toThrow(
      refusal("ORDER_PLAN", { code: "unknown-method", name: "Kiwi", known: ["Plum budding"] }),
    );
  });

  it.each([
    [0, outOfRange(0)],
    ["", outOfRange(0)],
    [2.5, { code: "argument-unreadable", argument: "wanted", wanted: "number", found: 2.5 }],
    [1e9, outOfRange(1e9)],
  ] as readonly (readonly [unknown, InputFault])[])(
    "refuses %s wanted in one sentence",
    (wanted, fault) => {
      expect(() => ask("ORDER_PLAN", [wanted, "2027-09-01", TIMETABLE, ""])).toThrow(
        refusal("ORDER_PLAN", fault),
      );
    },
  );
});

// Siyag 2014 has them of tree nurseries in general, Table 2.3: 20 % graded out, 10 % lost in the beds.
describe("shares that every method counts on, whatever its crop", () => {
  const COCOA = "Cocoa cleft graft";
  const general = (kept: number, mean: number | null = null) => ({
    ...{ code: "general-share" as const, kept, mean },
  });
  const shares = (timetable: Timetable, records: Records | null = null) =>
    plannedOrder({
      ...{ wanted: 100, readyBy: day("2027-09-01"), timetable, methodName: COCOA, assurance: 0.8 },
      ...{ records, asOf: day("2026-11-25"), variety: "", harvest: null },
    }).steps.flatMap(({ step, facts }) => {
      const said = facts.filter(({ code }) => code === "general-share");
      return said.map((fact) => [step.name, fact]);
    });
  const door = openDoor(hostIn("Etc/UTC"));
  const rows = () => askRows("TIMETABLE", [COCOA]);
  const withKept = (step: string, kept: number) =>
    rows().map((row) => row.map((cell, at) => (row[1] === step && at === 7 ? kept : cell)));

  it("are said at their steps, in a timetable made of ours too", () => {
    const both = [
      ["Grafting", general(0.8)],
      ["Ready", general(0.9)],
    ];
    expect(shares(builtInTimetable())).toEqual(both);
    expect(shares(door.timetable(rows()))).toEqual(both);
    const remark = String(
      plan(100, "2027-09-01", "", COCOA).find((one) => one.Step === "Grafting")?.Remark,
    );
    expect(remark).toContain(words.generalShare({ kept: 0.8, mean: 0.8, own: "no" }));
  });

  it("are not, once the nursery has its own", () => {
    expect(shares(door.timetable(withKept("Grafting", 70)))).toEqual([["Ready", general(0.9)]]);
    const plum = planned([100, "2027-09-01", null]).steps.flatMap(({ facts }) => facts);
    expect(plum.map(({ code }) => code)).not.toContain("general-share");
  });

  it("stand beside what the nursery's own counts make of them", () => {
    const counted = [
      ["Batch", "Sown", "Seeds sown", "Germinated", "Grafted on", "Grafts made"],
      ...["B1", "B2", "B3"].map((name) => [name, "2026-06-01", 300, 250, "2026-09-01", 240]),
    ];
    const records = door.records(counted, {
      timetable: builtInTimetable(),
      asOf: null,
      columns: undefined,
    });
    const [grafting, ready] = shares(builtInTimetable(), records);
    const { mean } = (grafting as [string, { mean: number }])[1];
    // Between the timetable's 0.8 and the 240 of 250 that were counted.
    expect(mean).toBeGreaterThan(0.81);
    expect(mean).toBeLessThan(0.96);
    expect(ready).toEqual(["Ready", general(0.9)]);
  });
});

describe("an order planned when it is too late", () => {
  const codesOf = (line: PlannedOrderLine | undefined) => line?.warnings.map(({ code }) => code);

  it("says so from a day given, with the earliest day and that a new start can meet none", () => {
    const { steps } = planned([100, "2026-12-31", null], "2026-11-25");
    expect(steps[0]?.warnings).toMatchObject([
      { code: "start-was-due" },
      { code: "started-now", asOf: day("2026-11-25"), wanted: 100 },
      { code: "new-start-none", by: day("2026-12-31") },
    ]);
    expect(codesOf(steps[1])).toEqual(["day-past"]);
  });

  it("is said in the step's remark", () => {
    const rows = plan(...[100, "2026-12-31", TIMETABLE, "", 0.8, "", "", "2026-11-25"]);
    const { steps } = planned([100, "2026-12-31", null], "2026-11-25");
    for (const one of steps[0]?.warnings ?? []) {
      expect(rows[0]?.Remark).toContain(planWarning(one));
    }
    expect(rows[1]?.Remark).toContain(words.dayPast());
  });

  it("plans the earliest day it names without complaint", () => {
    const [first] = planned([100, "2026-12-31", null], "2026-11-25").steps;
    const now = first?.warnings.find(({ code }) => code === "started-now");
    const earliest = now?.code === "started-now" ? isoDay(now.earliest) : "";
    const again = planned([100, earliest, null], "2026-11-25").steps;
    expect(again.flatMap(codesOf)).toEqual([]);
    expect(again[0]?.doBy).toBe(day("2026-11-25"));
  });

  it("takes the latest day of the records where none is given, and counts what stands", () => {
    const [sowing] = planned([100, "2026-12-31", RECORDS]).steps;
    expect(sowing?.warnings.slice(1)).toMatchObject([
      { code: "started-now", asOf: day("2026-11-01") },
      { code: "standing-can", plants: 100 },
    ]);
    // Of Nera nothing will be ready by then.
    const [nera] = planned([100, "2026-12-31", RECORDS, "nera"]).steps;
    expect(nera?.warnings.at(-1)).toMatchObject({ code: "standing-can", plants: 0 });
  });

  it("promises nothing by a day that is past", () => {
    const { steps } = planned([100, "2026-11-20", RECORDS], "2026-11-25");
    expect(codesOf(steps[0])).toEqual(["asked-day-past", "started-now"]);
    expect(codesOf(steps[2])).toEqual(["day-past"]);
  });

  it("knows nothing of late without a day and without records", () => {
    expect(planned([100, "1999-12-31", null]).steps.flatMap(codesOf)).toEqual([]);
  });
});

describe("ORDER_PLAN and the harvest", () => {
  const sowing = (harvest: unknown, method = "") =>
    String(
      plan(...[100, "2027-09-01", TIMETABLE, method, 0.8, "", "", "", "", harvest])[0]?.Remark,
    );

  const outside = (months: string, last: string) => words.outsideHarvest({ months, last });
  const outsideStart = outside("\n", "\n").split("\n")[0] as string;

  it("says when seed would be taken outside the months given, and the last day inside", () => {
    // Sown in May 2027.
    expect(sowing("Oct-Mar")).toContain(outside("Oct-Mar", dayWords(day("2027-03-31"))));
    expect(sowing("October to March, May – August")).not.toContain(outsideStart);
    expect(sowing("May")).not.toContain(outsideStart);
  });

  it("reads a table of crops, and the example's months of a place", () => {
    const table = [
      ["Crop", "Main crop", "Mid crop"],
      ["Plum", "Dec-Feb", "Aug"],
    ];
    expect(sowing(table)).toContain(outside("Dec-Feb, Aug", dayWords(day("2027-02-28"))));
    // Ghana: Sep-Mar and May-Aug; Malaysia: Oct-Dec and Apr-May; Togo: Oct-Mar and Apr-Sep.
    expect(sowing("Colombia")).not.toContain(outsideStart);
    expect(sowing("Indonesia")).not.toContain(outsideStart);
    expect(sowing("Haiti")).not.toContain(outsideStart);
    expect(sowing("Jamaica")).not.toContain(outsideStart);
  });

  it("says nothing of a crop that the table does not name while it names others", () => {
    const two = [...TIMETABLE, ["Pear graft", "Sowing", "", "", "", "", "yes", "", "seed 1"]];
    const remark = (harvest: unknown) =>
      String(plan(100, "2027-09-01", two, "", 0.8, "", "", "", "", harvest)[0]?.Remark);
    expect(remark([["Pear", "Dec"]])).not.toContain(outsideStart);
    expect(
      remark([
        ["Pear", "May"],
        ["Plum", "Dec"],
      ]),
    ).toContain(outside("Dec", dayWords(day("2026-12-31"))));
  });

  it.each([
    ["soon", `ORDER_PLAN: ${faults.noHarvest({ found: "soon" })}`],
    [
      [
        ["Ghana", "Sep-Mar"],
        ["Togo", "Oct-Mar"],
      ],
      `ORDER_PLAN: ${faults.severalHarvests({ places: "2" })}`,
    ],
  ])("refuses %j in one sentence", (harvest, sentence) => {
    expect(() => sowing(harvest)).toThrow(new Error(sentence));
  });
});
