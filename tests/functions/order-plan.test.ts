import { describe, expect, it } from "vitest";
import { ask, askTable } from "../support/ask";

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
const remarks = (rows: Record<string, unknown>[]) => rows.map((row) => row.Remark).join(" ");

describe("ORDER_PLAN", () => {
  it("says plants, days and needs step by step, and the needs in all", () => {
    const rows = plan(100, "2027-09-01", TIMETABLE, "plum BUDDING");
    expect(rows.map((row) => row.Step)).toEqual(["Sowing", "Budding", "Ready", "All"]);
    const [sowing, budding, ready, all] = rows;
    const seeds = sowing?.Plants as number;
    const buds = budding?.Plants as number;
    // 0.0283 pods a seed and 38.1 cm a plant; pods and buds are whole.
    expect(sowing?.Needs).toBe(`seed ${seeds}; pod ${Math.ceil(seeds * 0.0283)}; bag ${seeds}`);
    const metres = Math.ceil(buds * 3.81 - 1e-6) / 10;
    expect(budding?.Needs).toBe(`bud ${Math.ceil(buds * 1.1)}; strip ${metres} m; bag ${buds}`);
    expect(ready?.Needs).toBe("spirit 200 ml");
    expect(all?.Needs).toBe(
      `seed ${seeds}; pod ${Math.ceil(seeds * 0.0283)}; bag ${seeds + buds}; bud ${Math.ceil(buds * 1.1)}; strip ${metres} m; spirit 200 ml`,
    );
    expect(ready?.["Do by"]).toBe("2027-09-01");
  });

  it("says the plain division beside the number with safety", () => {
    const [sowing] = plan(100, "2027-09-01", TIMETABLE, "");
    // 100 ÷ (0.8 × 0.9) = 138.9.
    expect(sowing?.Remark).toBe(
      `Plain division by what is kept: 139; ${(sowing?.Plants as number) - 139} more to have enough in 89.2 of 100.`,
    );
  });

  it("says what the assurance is made of", () => {
    expect(plan(100, "2027-09-01", TIMETABLE, "")[2]?.Remark).toContain(
      // The day on which both would have √0.8 = 0.894 is surer by a little; the plants need not be.
      "Both together in 80 of 100: enough plants in 89.2 of 100, ready by the day in 89.7 of 100",
    );
  });

  it("plans the first of varieties of which either will do, and says so", () => {
    const asked = (variety: string) =>
      plan(100, "2027-09-01", TIMETABLE, "", 0.8, RECORDS, "", "2026-11-25", variety);
    const [sowing, ...others] = asked("Alba or Nera");
    const [alone, ...rest] = asked("Alba");
    expect(sowing).toEqual({
      ...alone,
      Remark: String(alone?.Remark).replace(
        /\.$/,
        ". Planned for Alba, the first of those that will do.",
      ),
    });
    expect(others).toEqual(rest);
  });

  it("says once that the records have no batch of a variety: a new one, or a slip", () => {
    const asked = (variety: string) =>
      plan(100, "2027-09-01", TIMETABLE, "", 0.8, RECORDS, "", "2026-11-25", variety);
    const said = "The records have no batch of Ablá: planned as for any variety";
    expect(asked("Ablá").map(({ Remark }) => String(Remark).includes(said))).toEqual([
      ...[true, false, false, false],
    ]);
    for (const known of ["Alba", "ALBA ", "Alba or Ablá", ""]) {
      expect(remarks(asked(known))).not.toContain("no batch of");
    }
  });

  it("counts all varieties that will do among what stands", () => {
    const records = [
      RECORDS[0],
      ["B1", "Alba", "2026-06-01", 300, "2026-08-01", 240],
      ["B3", "Nera", "2026-06-01", 300, "2026-08-01", 240],
    ];
    const standing = (variety: string) => {
      const [sowing] = plan(
        ...[400, "2026-12-30", TIMETABLE, "", 0.8, records, "", "2026-11-25", variety],
      );
      return Number(/what stands can meet (\d+)/.exec(String(sowing?.Remark))?.[1]);
    };
    expect(standing("Alba or Nera")).toBeGreaterThan(1.5 * standing("Nera"));
    expect(standing("Nera")).toBeGreaterThan(0);
  });

  it("takes the first method where none is named, and refuses one that is not known", () => {
    expect(plan(100, "2027-09-01", TIMETABLE, "")).toEqual(
      plan(100, "2027-09-01", TIMETABLE, "Plum budding"),
    );
    expect(() => ask("ORDER_PLAN", [100, "2027-09-01", TIMETABLE, "Kiwi"])).toThrow(
      'ORDER_PLAN: method "Kiwi" is not known; known are: Plum budding',
    );
  });

  it.each([
    [0, "ORDER_PLAN: wanted must be a whole number from 1 to 1000000; found 0"],
    ["", "ORDER_PLAN: wanted must be a whole number from 1 to 1000000; found 0"],
    [2.5, "ORDER_PLAN: wanted must be a whole number, 0 or more; found 2.5"],
    [1e9, "ORDER_PLAN: wanted must be a whole number from 1 to 1000000; found 1000000000"],
  ])("refuses %s wanted in one sentence", (wanted, sentence) => {
    expect(() => ask("ORDER_PLAN", [wanted, "2027-09-01", TIMETABLE, ""])).toThrow(
      new Error(sentence),
    );
  });
});

describe("ORDER_PLAN when it is too late", () => {
  it("says so from a day given, with the earliest day and that a new start can meet none", () => {
    const [sowing, budding] = plan(
      ...[100, "2026-12-31", TIMETABLE, "", 0.8, "", "", "2026-11-25"],
    );
    expect(sowing?.Remark).toMatch(
      /Too late: the start was due by \d+ \w+ 2026\. Started on 25 Nov 2026, 100 can be met by \d+ \w+ 2027\. By 31 Dec 2026 a new start can meet none\.$/,
    );
    expect(String(budding?.Remark)).toContain("The day is past");
  });

  it("plans the earliest day it names without complaint", () => {
    const late = plan(100, "2026-12-31", TIMETABLE, "", 0.8, "", "", "2026-11-25");
    const earliest = /can be met by (\d+ \w+ \d+)/.exec(String(late[0]?.Remark))?.[1];
    const again = plan(100, earliest, TIMETABLE, "", 0.8, "", "", "2026-11-25");
    expect(remarks(again)).not.toContain("Too late");
    expect(again[0]?.["Do by"]).toBe("2026-11-25");
  });

  it("takes the latest day of the records where none is given, and counts what stands", () => {
    const [sowing] = plan(100, "2026-12-31", TIMETABLE, "", 0.8, RECORDS);
    expect(sowing?.Remark).toMatch(
      /Started on 1 Nov 2026, .*a new start can meet none; what stands can meet 100, if not promised to others\.$/,
    );
    // Of Nera nothing will be ready by then.
    const nera = plan(100, "2026-12-31", TIMETABLE, "", 0.8, RECORDS, "", "", "nera");
    expect(nera[0]?.Remark).toContain("what stands can meet 0,");
  });

  it("promises nothing by a day that is past", () => {
    const [sowing, , ready] = plan(
      ...[100, "2026-11-20", TIMETABLE, "", 0.8, RECORDS, "", "2026-11-25"],
    );
    expect(sowing?.Remark).toMatch(
      /The day asked for is past\. Started on 25 Nov 2026, 100 can be met by \d+ \w+ 2027\.$/,
    );
    expect(ready?.Remark).toContain("The day is past");
  });

  it("knows nothing of late without a day and without records", () => {
    expect(remarks(plan(100, "1999-12-31", TIMETABLE, ""))).not.toMatch(/late|past/);
  });
});

describe("ORDER_PLAN and the harvest", () => {
  const sowing = (harvest: unknown, method = "") =>
    String(
      plan(...[100, "2027-09-01", TIMETABLE, method, 0.8, "", "", "", "", harvest])[0]?.Remark,
    );

  it("says when seed would be taken outside the months given, and the last day inside", () => {
    // Sown in May 2027.
    expect(sowing("Oct-Mar")).toContain(
      "Seed would be taken outside the harvest months (Oct-Mar); the last day inside is 31 Mar 2027",
    );
    expect(sowing("October to March, May – August")).not.toContain("harvest");
    expect(sowing("May")).not.toContain("harvest");
  });

  it("reads a table of crops, and the example's months of a place", () => {
    const table = [
      ["Crop", "Main crop", "Mid crop"],
      ["Plum", "Dec-Feb", "Aug"],
    ];
    expect(sowing(table)).toContain("outside the harvest months (Dec-Feb, Aug)");
    // Ghana: Sep-Mar and May-Aug; Malaysia: Oct-Dec and Apr-May; Togo: Oct-Mar and Apr-Sep.
    expect(sowing("Colombia")).not.toContain("harvest");
    expect(sowing("Indonesia")).not.toContain("harvest");
    expect(sowing("Haiti")).not.toContain("harvest");
    expect(sowing("Jamaica")).not.toContain("harvest");
  });

  it("says nothing of a crop that the table does not name while it names others", () => {
    const two = [...TIMETABLE, ["Pear graft", "Sowing", "", "", "", "", "yes", "", "seed 1"]];
    const remark = (harvest: unknown) =>
      String(plan(100, "2027-09-01", two, "", 0.8, "", "", "", "", harvest)[0]?.Remark);
    expect(remark([["Pear", "Dec"]])).not.toContain("harvest");
    expect(
      remark([
        ["Pear", "May"],
        ["Plum", "Dec"],
      ]),
    ).toContain("(Dec)");
  });

  it.each([
    ["soon", 'ORDER_PLAN: harvest must hold months such as "Oct-Mar, May-Aug"; found "soon"'],
    [
      [
        ["Ghana", "Sep-Mar"],
        ["Togo", "Oct-Mar"],
      ],
      "ORDER_PLAN: harvest holds 2 places or crops; give the rows of yours alone",
    ],
  ])("refuses %j in one sentence", (harvest, sentence) => {
    expect(() => sowing(harvest)).toThrow(new Error(sentence));
  });
});
