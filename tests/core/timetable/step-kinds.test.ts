import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { faultsOf, timetableOf } from "./typed-timetable";

const kindsOf = (text: string) =>
  timetableOf(text).timetable.methods.flatMap(({ steps }) => steps.map(({ kind }) => kind));

describe("the kind of a step", () => {
  it.each([
    ["Job", "job"],
    ["must", "job"],
    ["facultatif", "look"],
    ["Observación", "look"],
    ["contagem", "count"],
    ["wajib", "job"],
  ])("is what its timetable says: %s", (word, kind) => {
    expect(
      kindsOf(`Step | After | Usual day | Kind\nSowing | | | \nTurning | Sowing | 5 | ${word}`),
    ).toEqual(["job", kind]);
  });

  it("is that of most nurseries where its timetable does not say", () => {
    const rows = `
      Step          | After    | Usual day | Counted
      Sowing        |          |           | yes
      Up            | Sowing   | 10        | yes
      Graft         | Sowing   | 90        | yes
      Tape off      | Graft    | 14        |
      Buds moving   | Graft    | 14        |
      Weeding       | Graft    | 20        |
      Takes counted | Graft    | 30        | yes`;
    expect(kindsOf(rows)).toEqual(["job", "count", "job", "job", "look", "job", "count"]);
  });

  it("is named where it is none, and the step keeps the usual one", () => {
    const rows = "Step | After | Usual day | Kind\nSowing | | |\nTape off | Sowing | 14 | perhaps";
    expect(faultsOf(rows)).toEqual(["3 kind no-such-kind Tape off"]);
    expect(kindsOf(rows)).toEqual(["job", "job"]);
  });

  it("is a job at every release and cut of the built-in methods", () => {
    const steps = builtInTimetable().methods.flatMap((method) => method.steps);
    const kinds = new Map(steps.map(({ key, kind }) => [key, kind]));
    expect(Object.fromEntries(kinds)).toMatchObject({
      ...{ "first release": "job", "cut back": "job", grafting: "job", "take count": "count" },
      ...{ ready: "count", "bud break": "look", "first flush": "look" },
    });
  });
});

describe("a caution that a nursery's own timetable leaves blank", () => {
  const cautionsOf = (text: string) =>
    timetableOf(text).timetable.methods.flatMap(({ steps }) => steps.map(({ caution }) => caution));

  it("is that of the built-in step, and a caution of their own stays", () => {
    const [sowing, grafting, release, weeding] = cautionsOf(`
      Method            | Step     | After    | Usual day | Caution
      Cocoa cleft graft | Sowing   |          |           |
      Cocoa cleft graft | Grafting | Sowing   | 90        | Ours
      Cocoa cleft graft | Tape off | Grafting | 14        |
      Cocoa cleft graft | Weeding  | Grafting | 20        |`);
    expect(sowing).toMatch(/pulp/);
    expect(grafting).toBe("Ours");
    expect(release).toMatch(/away from the hand/);
    expect(weeding).toBe("");
  });

  it("is none of another crop's", () => {
    const [sowing, grafting] = cautionsOf(`
      Method    | Step     | After  | Usual day
      Plum bench | Sowing   |        |
      Plum bench | Grafting | Sowing | 90`);
    expect(sowing).not.toMatch(/pulp|nuts/);
    expect(grafting).toMatch(/knives/);
  });
});
