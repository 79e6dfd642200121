import { describe, expect, it } from "vitest";
import { doneByParts } from "../../../src/core/records/done-by-parts";
import { builtInTimetable } from "../../../src/core/timetable/read-timetable";

const done = doneByParts(
  builtInTimetable().methods.flatMap(({ steps }) => steps.map(({ name }) => name)),
);

// Seen words of tests/checks/office-words, which its SOURCE.md tells of.
describe("what a log's own words say was done", () => {
  it.each([
    ["Tape loosened", "first release"],
    ["1er desserrage", "first release"],
    ["count grafts alive", "take count"],
    ["conteo prend.", "take count"],
    ["rempotage", "potting on"],
    ["grft", "grafting"],
    ["pot up", "potting on"],
    ["mise en pot", "potting on"],
    ["heading back", "cut back"],
    ["bent over", "cut back"],
  ])("%s is %s", (word, key) => {
    expect(done(word)).toEqual({ kind: "step", key });
  });

  it.each([["saída de mudas"], ["salida de plantas"], ["diambil petani"]])(
    "%s is what left",
    (word) => {
      expect(done(word)).toEqual({ kind: "dispatched" });
    },
  );

  it.each([["dead"], ["dumped"], ["thrown away"]])("%s is culling", (word) => {
    expect(done(word)).toEqual({ kind: "culled" });
  });

  // A film may be the cap or what binds the bud; who planted may have sown or potted.
  it.each([["buka plastik okulasi"], ["plantio"], ["Tanam polybag"]])("%s is not sure", (word) => {
    expect(done(word)).toBeNull();
  });

  it.each([
    ["not ready"],
    ["survivors"],
    ["count alive"],
    ["départ plants"],
    ["graft count"],
    ["sowing & potting"],
    ["Tape off"],
  ])("%s may be another thing", (word) => {
    expect(done(word)).toBeNull();
  });

  // Left out and named in Check: a wrap that came off is no first opening, and "opened" alone says neither.
  it.each([["déligature"], ["destape"], ["weeding"], [""]])("%s is not sure", (word) => {
    expect(done(word)).toBeNull();
  });
});
