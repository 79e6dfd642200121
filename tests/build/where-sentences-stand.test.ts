import { describe, expect, it } from "vitest";
import { whereSentencesStand } from "../../src/build/where-sentences-stand";

/** As TypeScript 7.0 prints them. */
const NOT_THERE = `src/wording/takes.ts(7,32): error TS2339: Property 'tooMany' does not exist on type 'typeof import("/home/a/.build/types/sentences/made/takes-page")'.`;
const NO_MEMBER = `src/wording/writing.ts(2,10): error TS2305: Module '"../sentences/made/writing-asked"' has no exported member 'late'.`;
const NOT_IN_MAP = `src/wording/takes.ts(6,14): error TS2740: Type '{}' is missing the following properties from type 'SentencesOf<TakesRemark>': "care-today", "no-grafting-day"`;
const OTHER = `src/core/takes/grouping.ts(5,9): error TS2304: Cannot find name 'tooMany'.`;

describe("what TypeScript says of a sentence that is missing", () => {
  it.each([
    [NOT_THERE, "takesPage"],
    [NO_MEMBER, "writingAsked"],
    [`${NOT_THERE}\n${NO_MEMBER}\n${NOT_THERE}`, "takesPage, writingAsked"],
    [NOT_IN_MAP, "its capability"],
  ])("%s", (complaints, group) => {
    const hint = whereSentencesStand(`${OTHER}\n${complaints}`);
    expect(hint).toContain(`src/sentences/english.ts, in the group ${group}:`);
  });

  it("is not told where it says something else", () => {
    expect(whereSentencesStand(OTHER)).toBeNull();
  });
});
