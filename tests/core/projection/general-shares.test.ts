import { describe, expect, it } from "vitest";
import { builtInTimetable, readyPlants } from "../../../src/core";
import { openDoor } from "../../../src/door/index";
import * as text from "../../../src/sentences/made/records";
import { askRows, askTable } from "../../support/ask";
import { day } from "../../support/days";
import { hostIn } from "../../support/host";

const AS_OF = "2026-11-25";
const COCOA = "Cocoa cleft graft";
const MANGO = "Mango cleft graft";
const HEADER = [
  ...["Batch", "Method", "Sown", "Seeds sown", "Germinated", "Grafted on", "Grafts made", "Ready"],
];
const row = (name: string, method: string, sown: string, grafted = "") => [
  ...[name, method, sown, 100, 90, grafted],
  grafted === "" ? "" : 72,
  "",
];
/** Sown in August: to be grafted soon, and to be ready after. */
const TO_GRAFT = row("B1", COCOA, "2026-08-28");
const GRAFTED = row("B2", MANGO, "2026-03-01", "2026-11-10");
const share = (step: string, kept: number, ...methods: readonly string[]) =>
  text.generalShare({ step, kept, mean: kept, own: "no", methods });
const sentence = (...shares: readonly string[]) => text.generalShares({ shares });
const lastOf = (name: string, args: unknown[]) =>
  askTable(name, args)
    .map((found) => String(Object.values(found)[0]))
    .at(-1) ?? "";

/** The three answers that count on such shares, of the same records. */
const ANSWERS = {
  BATCH_READY: (rows: unknown[][], timetable: unknown) => [[HEADER, ...rows], timetable, AS_OF],
  ORDER_OUTLOOK: (rows: unknown[][], timetable: unknown) => [
    [
      ["Order", "Wanted", "By"],
      ["O1", 5, "2027-09-01"],
    ],
    ...[[HEADER, ...rows], timetable, AS_OF],
  ],
  WORK_NEEDS: (rows: unknown[][], timetable: unknown) => [[HEADER, ...rows], timetable, AS_OF, 30],
} as const;

// Siyag 2014, Table 2.3, of tree nurseries in general: 20 % graded out, 10 % lost in the beds.
describe("shares of nurseries in general that an answer counts on", () => {
  it.each(["BATCH_READY", "ORDER_OUTLOOK"] as const)(
    "are said by %s with their steps and methods, each once",
    (name) => {
      expect(lastOf(name, ANSWERS[name]([TO_GRAFT, ["B3", ...TO_GRAFT.slice(1)]], ""))).toContain(
        sentence(share("Grafting", 0.8, COCOA), share("Ready", 0.9, COCOA)),
      );
    },
  );

  it("are only those still to come, by all methods that use them", () => {
    const said = lastOf("BATCH_READY", ANSWERS.BATCH_READY([TO_GRAFT, GRAFTED], ""));
    expect(said).toContain(
      sentence(share("Grafting", 0.8, COCOA), share("Ready", 0.9, COCOA, MANGO)),
    );
  });

  it("are in what the work needs where a need counts on them, and are not where none does", () => {
    const needs = (...rows: unknown[][]) => lastOf("WORK_NEEDS", ANSWERS.WORK_NEEDS(rows, ""));
    expect(needs(TO_GRAFT)).toContain(sentence(share("Grafting", 0.8, COCOA)));
    expect(needs(GRAFTED)).not.toContain(share("Ready", 0.9, MANGO));
  });

  it("are the plan's own where nothing stands and more has to be started", () => {
    const sold = ["B9", COCOA, "2025-08-28", 100, 90, "2025-11-25", 72, "2026-03-20"];
    const rows = askTable("ORDER_OUTLOOK", [
      [
        ["Order", "Crop", "Wanted", "By"],
        ["O1", "Cocoa", 500, "2028-09-01"],
      ],
      ...[[HEADER, sold], "", AS_OF],
    ]);
    expect(String(Object.values(rows.at(-1) ?? {})[0])).toContain(
      sentence(share("Grafting", 0.8, COCOA), share("Ready", 0.9, COCOA)),
    );
  });

  it("are none once the nursery's timetable has its own", () => {
    const own = askRows("TIMETABLE", [COCOA]).map((cells) =>
      cells.map((cell, at) =>
        at === 7 && ["Grafting", "Ready"].includes(String(cells[1])) ? 70 : cell,
      ),
    );
    expect(openDoor(hostIn("Etc/UTC")).timetable(own).methods).toHaveLength(1);
    for (const name of Object.keys(ANSWERS) as (keyof typeof ANSWERS)[]) {
      const said = askRows(name, ANSWERS[name]([TO_GRAFT], own))
        .flat()
        .join(" ");
      expect(said).not.toContain(share("Ready", 0.7, COCOA));
      expect(said).not.toContain(share("Grafting", 0.7, COCOA));
    }
  });

  it("stand beside what the nursery's own counts make of them", () => {
    const counted = ["B4", "B5", "B6", "B7"].map((name) => [
      ...[name, COCOA, "2026-05-01", 300, 250, "2026-08-01", 240, "2026-11-20"],
    ]);
    const timetable = builtInTimetable();
    const table = [HEADER, ...counted, TO_GRAFT];
    const records = openDoor(hostIn("Etc/UTC")).records(table, {
      ...{ timetable, asOf: day(AS_OF), columns: undefined },
    });
    const { remarks } = readyPlants({ records, timetable, asOf: day(AS_OF), level: 0.8 });
    const mean = remarks.flatMap((one) =>
      one.code === "general-shares"
        ? one.shares.filter(({ step }) => step === "Grafting").map((share) => share.mean)
        : [],
    );
    expect(mean).toHaveLength(1);
    expect(mean[0]).toBeGreaterThan(0.85);
    expect(mean[0]).toBeLessThan(240 / 250);
    const said = text.generalShare({
      ...{ step: "Grafting", kept: 0.8, mean: mean[0] ?? 0, own: "yes", methods: [COCOA] },
    });
    expect(lastOf("BATCH_READY", ANSWERS.BATCH_READY([...counted, TO_GRAFT], ""))).toContain(said);
  });
});
