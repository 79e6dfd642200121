import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { canDo, jobKind } from "../../../src/core/work/crew";
import { skillReader } from "../../../src/core/work/read-skills";

const TIMETABLE = builtInTimetable();
const read = skillReader({ timetable: TIMETABLE, stepKeys: stepKeys() });

function stepKeys(): ReadonlySet<string> {
  return new Set(TIMETABLE.methods.flatMap(({ steps }) => steps.map(({ key }) => key)));
}

const MANGO = "Mango cleft graft";
const COCOA = "Cocoa cleft graft";
const PATCH = "Cocoa green patch bud";
const RUBBER = "Rubber green bud";

const grafting = (...methods: readonly string[]) =>
  methods.map((method) => ["grafting", method] as const);

/**
 * Who may do what, as supervisors write it (invented, from memory, no source): of grafting, taking the
 * count and sowing, by method, what is allowed.
 */
const SKILLS: readonly (readonly [
  written: string,
  may: readonly (readonly [step: string, method: string])[],
  mayNot: readonly (readonly [step: string, method: string])[],
])[] = [
  ["grafting (mango)", grafting(MANGO), [...grafting(COCOA), ["sowing", MANGO]]],
  ["mango cleft", grafting(MANGO), [...grafting(COCOA), ["take count", MANGO]]],
  ["mango grafting", grafting(MANGO), grafting(RUBBER)],
  ["Grafting: mango, cocoa", grafting(MANGO, PATCH), grafting(RUBBER)],
  ["cleft grafting", grafting(MANGO, COCOA), grafting(RUBBER)],
  ["cocoa budding", grafting(PATCH), grafting(COCOA)],
  ["all but rubber budding", [...grafting(MANGO), ["sowing", RUBBER]], grafting(RUBBER)],
  ["everything except sowing", grafting(MANGO), [["sowing", COCOA]]],
  ["all, not grafting", [["sowing", COCOA]], grafting(COCOA, MANGO)],
  ["not rubber", grafting(MANGO), [...grafting(RUBBER), ["sowing", RUBBER]]],
  [
    "take count (cocoa); sowing",
    [
      ["take count", COCOA],
      ["sowing", MANGO],
    ],
    [["take count", MANGO]],
  ],
  ["mango", [...grafting(MANGO), ["sowing", MANGO]], grafting(COCOA)],
  ["tout sauf greffe d'hévéa", grafting(MANGO), grafting(RUBBER)],
  ["injertar (mango)", grafting(MANGO), grafting(COCOA)],
  ["todo menos injerto de caucho", [["sowing", RUBBER]], grafting(RUBBER)],
  ["sambung kakao", grafting(COCOA), grafting(MANGO)],
  // "Nobody may do First release", where the cell said "Release".
  ["Release; grafting", [["first release", COCOA], ...grafting(COCOA)], [["take count", COCOA]]],
  ["take counts", [["take count", COCOA]], [["first release", COCOA]]],
  ["all but release", grafting(COCOA), [["first release", COCOA]]],
];

describe("the tasks that somebody may do", () => {
  it.each(SKILLS)("of %j", (written, may, mayNot) => {
    const { skills, unknown } = read([written]);
    expect(unknown).toEqual([]);
    const person = { name: "Ana", skills, hundredthsADay: 800, off: [] };
    const able = ([step, method]: readonly [string, string]) =>
      canDo(person, jobKind(step, method));
    expect(may.filter((one) => !able(one))).toEqual([]);
    expect(mayNot.filter(able)).toEqual([]);
  });

  it("are all where nothing is said, and none that can't be read", () => {
    expect(read([])).toEqual({ skills: null, unknown: [] });
    expect(read(["all"]).skills).toBeNull();
    const { skills, unknown } = read(["juggling, grafting (guava)"]);
    expect(unknown).toEqual(["juggling", "grafting (guava)"]);
    expect([...(skills ?? [])]).toEqual([]);
  });
});
