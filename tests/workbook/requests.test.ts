import { describe, expect, it } from "vitest";
import { SIDEBAR_CALLS } from "../../src/build/stubs";
import type { CallResult, SidebarCallName } from "../../src/wire/calls";
import { wholeNumber } from "../../src/workbook/answers/fields";
import { sidebarAnswers } from "../../src/workbook/answers/sidebar-answers.table";
import { type Nursery, openNursery, smallRecords, tab } from "./nursery";

/** What no page of ours sends, but anyone who sees the page can. */
const NEVER_SENT = [undefined, null, true, -1, 1.5, 1e300, "", "=1+1", [], [null], {}, [{}]];

/** A sentence that the language made of a slip of ours, not we of theirs. */
const SLIP = /\b(undefined|null) \(|is not (a function|iterable)|Cannot (read|convert|destructure)/;

function sent(nursery: Nursery, name: SidebarCallName, request: unknown): CallResult<unknown> {
  return nursery.w.run(name, request) as CallResult<unknown>;
}

const fieldsOf = (name: SidebarCallName) => Object.keys(sidebarAnswers[name].asked ?? {});

describe("a request that no page of ours sends", () => {
  it.each(SIDEBAR_CALLS)(
    "to %s is answered or refused in a sentence, never tripped over",
    (name) => {
      const nursery = openNursery([
        smallRecords(),
        tab("Orders", [
          ["Order", "Customer", "Variety", "Wanted", "By"],
          ["O-1", "Bo", "", 10, "2027-09-01"],
        ]),
      ]).ready();
      const requests = [
        ...NEVER_SENT,
        ...NEVER_SENT.map((value) =>
          Object.fromEntries(fieldsOf(name).map((field) => [field, value])),
        ),
      ].filter((request) => request !== undefined);
      for (const request of requests) {
        const result = sent(nursery, name, request);
        const said = JSON.stringify(result);
        expect(said, JSON.stringify(request)).not.toMatch(SLIP);
        if (!result.ok) expect("fault" in result || result.error !== "", said).toBe(true);
      }
    },
  );
});

describe("a whole number that the page sends", () => {
  const days = wholeNumber({ least: 0, most: 3660, usual: 7 });

  it.each([0, 14, 3660])("is %d", (sentNumber) => {
    expect(days(sentNumber)).toBe(sentNumber);
  });

  it.each([-1, 3661, 1.5, Number.NaN, "14", null, undefined, [14]])(
    "is the usual one for %j",
    (wrong) => {
      expect(days(wrong)).toBe(7);
    },
  );
});
