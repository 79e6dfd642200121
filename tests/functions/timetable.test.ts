import { describe, expect, it } from "vitest";
import * as header from "../../src/sentences/made/batch-columns";
import { ask, askRows } from "../support/ask";

const RECORDS = [
  ["Batch", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ["B1", "2026-06-01", 300, "2026-09-01", 200],
  ["B2", "2026-11-01", 300, "", ""],
];
const AS_OF = "2026-11-25";

describe("TIMETABLE", () => {
  it("reads back identically: its answer as the timetable argument changes no other answer", () => {
    const steps = askRows("TIMETABLE", []);
    for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE"]) {
      const built = ask(name, [RECORDS, "", AS_OF]);
      expect(ask(name, [RECORDS, steps, AS_OF])).toEqual(built);
      // Pasted below a title, in an open-ended range, a column moved.
      const pasted = [["Our steps"], ...steps, ...Array.from({ length: 200 }, () => [""])].map(
        (row) => ["", ...row],
      );
      expect(ask(name, [RECORDS, pasted, AS_OF])).toEqual(built);
    }
    expect(ask("BATCH_CHECK", [RECORDS, steps, AS_OF])).toEqual(
      ask("BATCH_CHECK", [RECORDS, "", AS_OF]),
    );
  });

  it("gives one method by name, whatever its capitals", () => {
    const rows = askRows("TIMETABLE", ["cocoa CLEFT graft"]);
    const [header, ...all] = askRows("TIMETABLE", []);
    expect(rows).toEqual([header, ...all.filter(([method]) => method === "Cocoa cleft graft")]);
    expect(rows).toEqual(askRows("TIMETABLE", [[["Cocoa cleft graft"]]]));
    expect(askRows("TIMETABLE", [""])).toEqual([header, ...all]);
  });

  it.each([
    [
      "Kiwi",
      'TIMETABLE: method "Kiwi" is not known; known are: Cocoa cleft graft, Cocoa green patch bud, Mango stone graft, Mango cleft graft, Citrus T-bud, Cashew softwood graft, Rubber green bud, Avocado cleft graft, Coffee hypocotyl graft, Rooted cutting',
    ],
    [7, "TIMETABLE: method must be a text; found 7"],
    ["#N/A", "TIMETABLE: method shows #N/A"],
    ["Loading...", "TIMETABLE: method is still loading"],
  ])("refuses the method %j in one sentence", (method, sentence) => {
    expect(() => ask("TIMETABLE", [method])).toThrow(new Error(sentence));
  });

  it("leaves no source empty, and says of unsourced values that they have none", () => {
    const [header, ...steps] = askRows("TIMETABLE", []) as string[][];
    const source = header?.indexOf("Source") as number;
    for (const step of steps) {
      expect(step[source]).toMatch(/common practice, no source|\d{4}|CPCRI|IASRI/i);
    }
  });
});

describe("a nursery's own timetable", () => {
  it("decides the days, the shares and the cautions", () => {
    const own = [
      ["Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"],
      ["Sowing", "", "", "", "", "yes", ""],
      ["Ready", "Sowing", 30, 30, 30, "yes", 100],
    ];
    const records = [
      ["Batch", "Sown", "Seeds sown"],
      ["B1", "2026-11-01", 300],
    ];
    const [names, row] = askRows("BATCH_STAGES", [records, own, AS_OF]) as [string[], unknown[]];
    const at = (name: string) => row[names.indexOf(name)];
    expect(at(header.method())).toBe("This nursery's method");
    expect([at(header.fewestReady()), at(header.mostReady())]).toEqual([300, 300]);
    expect(at(header.readyLikely())).toEqual(new Date("2026-12-01T00:00:00Z"));
  });

  it("is refused with a fault by all but BATCH_CHECK, which lists it", () => {
    const broken = [
      ["Step", "After", "From day", "Usual day", "By day"],
      ["Sowing", "", "", "", ""],
      ["Ready", "Sowing", 9, 5, 7],
    ];
    for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE"]) {
      expect(() => ask(name, [RECORDS, broken, AS_OF])).toThrow(
        new Error(
          `${name}: timetable row 3, Usual day: the days of Ready must rise from From day to Usual day to By day`,
        ),
      );
    }
    const rows = askRows("BATCH_CHECK", [RECORDS, broken, AS_OF]);
    expect(rows.some((row) => row[1] === "Timetable row 3, Usual day")).toBe(true);
  });

  it.each([1_000_000, 2.5])("with a step of %s days is refused in one clear sentence", (days) => {
    const own = [
      ["Step", "After", "From day", "Usual day", "By day"],
      ["Sowing", "", "", "", ""],
      ["Ready", "Sowing", 0, 1, days],
    ];
    for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE"]) {
      expect(() => ask(name, [RECORDS, own, AS_OF])).toThrow(/^\w+: timetable row 3, By day: /);
    }
  });
});
