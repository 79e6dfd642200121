import { describe, expect, it } from "vitest";
import { targetKey } from "../../../src/core/records/column-target";
import { headerWords } from "../../../src/core/records/header-words";
import { recordedSteps } from "../../../src/core/timetable/beside-steps";
import { choiceOf, columnChoices } from "../../../src/core/timetable/column-choices";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";
import { timetableOf } from "./typed-timetable";

describe("columnChoices", () => {
  const timetable = builtInTimetable();
  const words = headerWords(timetable.methods.flatMap(recordedSteps).map(({ name }) => name));
  const [leaveAlone, ...choices] = columnChoices(timetable);

  it("offers to leave a column alone first", () => {
    expect(leaveAlone).toBe("Leave alone");
  });

  it.each(choices)("is understood word for word: %s", (choice) => {
    const best = words.understand(choice)[0];
    expect(best?.openAspect).toBe(false);
    expect(best?.sureness).toBeGreaterThanOrEqual(2);
  });

  // A foreman read "Take count count" and "Grafting count".
  it("calls the columns as nurseries do", () => {
    expect(choices).toEqual(
      expect.arrayContaining([
        "Sown",
        "Seeds sown",
        "Germination day",
        "Germinated",
        "Grafted on",
        "Grafts made",
        "First release day",
        "Take count day",
        "Takes",
        "Ready on",
        "Ready plants",
        "Rooting day",
        "Plants counted at Rooting",
      ]),
    );
    expect(choices.filter((choice) => / count$/i.test(choice))).toEqual([]);
  });

  it("says no two things with different words for the same", () => {
    const keys = choices.map((choice) => {
      const best = words.understand(choice)[0];
      return best === undefined ? choice : targetKey(best.target);
    });
    expect(new Set(keys).size).toBe(choices.length);
  });
});

describe("columns of a nursery's own steps", () => {
  const names = ["Greffage", "Survival count", "Plants moved", "Ready"];
  const { timetable } = timetableOf(
    `Method | Step | After | From day | Usual day | By day | Counted | Kept of 100
     Own    | Greffage | | | | | yes |
${names
  .slice(1)
  .map((name, at) => `Own | ${name} | ${names[at]} | 1 | 2 | 3 | yes | 90`)
  .join("\n")}`,
  );
  const words = headerWords(names);

  it("keep their words, and lead back to the step", () => {
    expect(timetable.methods[0]?.steps).toHaveLength(names.length);
    const choices = columnChoices(timetable);
    expect(choices).toContain("Greffage day");
    expect(choices).toContain("Plants counted at Survival count");
    for (const { key } of timetable.methods[0]?.steps ?? []) {
      for (const what of ["day", "count"] as const) {
        const choice = choiceOf({ target: { kind: "step", key, what } }, timetable);
        expect(choices).toContain(choice);
        expect(words.understand(choice)[0]?.target).toEqual({ kind: "step", key, what });
      }
    }
  });
});
