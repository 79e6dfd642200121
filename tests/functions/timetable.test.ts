import { describe, expect, it } from "vitest";
import type { InputFault } from "../../src/core/faults/input-error";
import { builtInMethods } from "../../src/core/timetable/built-in-methods";
import * as header from "../../src/sentences/made/batch-columns";
import { faultPlace } from "../../src/wording/timetable";
import { ask, askRows } from "../support/ask";
import { refusal } from "../support/refusal";
import { daysThatFall } from "../support/timetable-faults";

const RECORDS = [
  ["Batch", "Sown", "Seeds sown", "Grafted on", "Grafts made"],
  ["B1", "2026-06-01", 300, "2026-09-01", 200],
  ["B2", "2026-11-01", 300, "", ""],
];
const AS_OF = "2026-11-25";

const METHODS = builtInMethods.map(({ name }) => name);
const RUBBER = ["Rubber green bud", "Rubber budded stump"];
const NOT_READY = { code: "not-ready-yet", argument: "method", row: null, column: null };

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
    ["Kiwi", { code: "unknown-method", name: "Kiwi", known: METHODS }],
    ["Rubber", { code: "methods-fit", name: "Rubber", fitting: RUBBER }],
    [7, { code: "argument-unreadable", argument: "method", wanted: "text", found: 7 }],
    ["#N/A", { ...NOT_READY, shown: "#N/A" }],
    ["Loading...", { ...NOT_READY, shown: null }],
  ] as readonly (readonly [unknown, InputFault])[])(
    "refuses the method %j in one sentence",
    (method, fault) => {
      expect(() => ask("TIMETABLE", [method])).toThrow(refusal("TIMETABLE", fault));
    },
  );

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

  it("is refused where no method is left, by all but BATCH_CHECK, which lists why", () => {
    const broken = [
      ["Step", "After", "From day", "Usual day", "By day"],
      ["Sowing", "", "", "", ""],
      ["Ready", "Sowing", 9, 5, 7],
    ];
    const fault = daysThatFall;
    for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE"]) {
      expect(() => ask(name, [RECORDS, broken, AS_OF])).toThrow(
        refusal(name, { code: "timetable-unusable", fault, more: 0 }),
      );
    }
    const rows = askRows("BATCH_CHECK", [RECORDS, broken, AS_OF]);
    expect(rows.some((row) => row[1] === faultPlace(fault))).toBe(true);
  });

  it.each([1_000_000, 2.5])("with a step of %s days is refused in one clear sentence", (days) => {
    const own = [
      ["Step", "After", "From day", "Usual day", "By day"],
      ["Sowing", "", "", "", ""],
      ["Ready", "Sowing", 0, 1, days],
    ];
    for (const name of ["BATCH_STAGES", "BATCH_STEPS", "BATCH_DUE"]) {
      expect(() => ask(name, [RECORDS, own, AS_OF])).toThrow(
        refusal(name, {
          code: "timetable-unusable",
          more: 0,
          fault: {
            row: 3,
            column: "by",
            found: String(days),
            step: "Ready",
            leftOut: "method",
            ...(days === 2.5 ? { code: "days-not-whole" } : { code: "too-many-days", most: 3660 }),
          },
        } as InputFault),
      );
    }
  });
});
