import { describe, expect, it } from "vitest";
import { columnChoices } from "../../../src/core/records/column-choices";
import { headerWords, targetKey } from "../../../src/core/records/header-words";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";

describe("columnChoices", () => {
  const timetable = builtInTimetable();
  const words = headerWords(
    timetable.methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
  );
  const [leaveAlone, ...choices] = columnChoices(timetable);

  it("offers to leave a column alone first", () => {
    expect(leaveAlone).toBe("Leave alone");
  });

  it.each(choices)("is understood word for word: %s", (choice) => {
    const best = words.understand(choice)[0];
    expect(best?.openAspect).toBe(false);
    expect(best?.sureness).toBeGreaterThanOrEqual(2);
  });

  it("says no two things with different words for the same", () => {
    const keys = choices.map((choice) => {
      const best = words.understand(choice)[0];
      return best === undefined ? choice : targetKey(best.target);
    });
    expect(new Set(keys).size).toBe(choices.length);
  });
});
