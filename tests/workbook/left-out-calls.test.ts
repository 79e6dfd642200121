import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RequestOf, SidebarCallName } from "../../src/wire/calls";
import { type Made, type Nursery, openNursery, tab } from "./nursery";

/**
 * No answer of the page is silent about a batch: of those whose method is not known each is named in it, or it
 * is counted as it would be under its own.
 */
const METHOD = "Cocoa cleft graft";
const HEAD = [
  ...["Batch", "Variety", "Method", "Place", "Grafter", "Sown", "Seeds sown"],
  ...["Germination day", "Germinated", "Grafted on", "Grafts made"],
  ...["Take count day", "Takes", "Ready on", "Ready plants"],
];
// biome-ignore format: a row a batch
const BATCHES: readonly (readonly Made[])[] = [
  ["Q-71", "Nera", METHOD, "Bay 2", "Orlen", "2026-04-01", 210, "", "", "2026-07-02", 170, "2026-08-04", 131, "2026-10-25", 120],
  ["Q-72", "Alba", METHOD, "Bay 1", "Timsa", "2026-05-10", 190, "", "", "2026-08-10", 150, "2026-09-12", 118, "", ""],
  ["Q-73", "Alba", METHOD, "Bay 3", "Orlen", "2026-06-01", 200, "", "", "2026-09-01", 155, "2026-10-03", 127, "", ""],
  ["Q-74", "Nera", METHOD, "Bay 3", "Timsa", "2026-07-15", 200, "", "", "2026-10-14", 149, "", "", "", ""],
  ["Q-75", "Rossa", METHOD, "Bay 2", "", "2026-09-01", 205, "2026-09-20", 180, "", "", "", "", "", ""],
];
const nameOf = (batch: readonly Made[]) => String(batch[0]);

const OTHER_TABS = [
  tab("Orders", [
    ["Order", "Variety", "Wanted", "By"],
    ["O1", "Alba", 150, "2026-12-20"],
    ["O2", "Nera", 90, "2027-01-15"],
  ]),
  tab("Crew", [
    ["Person", "Hours a day"],
    ["Mirel", 8],
  ]),
];
const opened = (batches: readonly (readonly Made[])[]) =>
  openNursery([tab("Records", [HEAD, ...batches]), ...OTHER_TABS]).ready();

/** What the page asks from which records are answered. */
const ASKED: { readonly [Name in SidebarCallName]?: RequestOf<Name> } = {
  sidebarToday: { daysAhead: 700 },
  sidebarCalendar: { daysAhead: 700 },
  sidebarAhead: null,
  sidebarOrders: null,
  sidebarPlanOrder: {
    ...{ variety: "", wanted: 20, by: "2027-12-01", assurance: 0.8 },
    ...{ method: METHOD, harvest: "" },
  },
  sidebarWork: { days: 60 },
  sidebarTakes: { by: "Variety" },
  sidebarCompareTakes: { by: "Grafter", evenFor: "Variety", period: "month" },
  sidebarLosses: { by: "Variety" },
  sidebarCheck: null,
};
/** Where an answer says what it leaves out, and which methods there are. */
const SAID = ["remark", "remarks", "reasonsRemarks", "leftOut", "withoutMethod", "methods"];
/** What goes by no method: the last month's takes, and what goes with takes, the word under Method among it. */
const BY_NO_METHOD = ["takes", "reasons"];
const bare = (answer: unknown) =>
  JSON.stringify(answer, (key, value) =>
    [...SAID, ...BY_NO_METHOD].includes(key) ? undefined : value,
  );
const ask = (nursery: Nursery, name: string) =>
  nursery.ask(name as SidebarCallName, ASKED[name as SidebarCallName] as never);

const unreadMethod = fc.constantFrom("Jackfruit marcot", "Cleft");
const somebody = fc
  .array(fc.option(unreadMethod, { freq: 2 }), {
    minLength: BATCHES.length,
    maxLength: BATCHES.length,
  })
  .filter((methods) => methods.some((one) => one === null) && methods.some((one) => one !== null));
const cases = fc.sample(somebody, { numRuns: 3, seed: 20261125 });

describe.each(cases.map((methods) => [methods] as const))("where methods are %j", (methods) => {
  const damaged = BATCHES.map((batch, at) =>
    batch.map((cell, column) => (HEAD[column] === "Method" ? (methods[at] ?? cell) : cell)),
  );
  const unread = BATCHES.filter((_, at) => methods[at] !== null).map(nameOf);
  const rest = BATCHES.filter((batch) => !unread.includes(nameOf(batch)));

  it("each call names every batch of an unknown method, or counts it", () => {
    const [found, sound] = [opened(damaged), opened(BATCHES)];
    const silent = Object.keys(ASKED).filter((name) => {
      const answer = ask(found, name);
      // Lines of a calendar are folded.
      const said = JSON.stringify(answer).replaceAll("\\r\\n ", "");
      const rows = said.match(/"rows":\[[\d,]*\]/g)?.join() ?? "";
      const isNamed = (batch: string) =>
        name === "sidebarCheck"
          ? new RegExp(`\\b${BATCHES.findIndex((one) => nameOf(one) === batch) + 2}\\b`).test(rows)
          : said.includes(batch);
      return !unread.every(isNamed) && bare(answer) !== bare(ask(sound, name));
    });
    expect(silent).toEqual([]);
  });

  it("each call that goes by methods answers the rest as without them", () => {
    const [found, without] = [opened(damaged), opened(rest)];
    for (const name of ["sidebarToday", "sidebarAhead", "sidebarPlanOrder", "sidebarWork"]) {
      expect([name, bare(ask(found, name))]).toEqual([name, bare(ask(without, name))]);
    }
  });
});
