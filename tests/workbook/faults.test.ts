import { describe, expect, it } from "vitest";
import { type Nursery, openNursery, SETTINGS, smallRecords, takesOf } from "./nursery";

const OWN = [
  ...[SETTINGS, "Nursery timetable", "Due list", "Stages", "Ready by month", "Takes", "Checks"],
  "Write log",
];
const ONCE = { tab: "Records", columns: [], methods: [] };
const REQUEST = takesOf("B1", { note: "dry", who: "Orrin" });

/** What a writing action must leave behind, whatever call fails. */
interface Action {
  prepare(): Nursery;
  /** @returns whether it said that it worked */
  run(nursery: Nursery): boolean;
  /** The tabs that have to be what they were, or what they become. */
  readonly tabs: readonly string[];
  /** Whether it can be done over and over. */
  readonly repeats?: true;
}

type Kind = "failAt" | "failAfter";

const answered = (nursery: Nursery, name: string, request: unknown): boolean =>
  (nursery.w.run(name, request) as { ok: boolean }).ok;

const called = (nursery: Nursery, name: string): boolean => {
  try {
    nursery.w.call(name);
    return true;
  } catch {
    return false;
  }
};

const bare = () => openNursery([smallRecords()], { live: false });
const set = () => bare().ready();

const ACTIONS: Record<string, Action> = {
  record: { prepare: set, run: (n) => answered(n, "sidebarRecord", REQUEST), tabs: [] },
  "take back": {
    prepare() {
      const nursery = set();
      nursery.ask("sidebarRecord", REQUEST);
      return nursery;
    },
    run: (n) => answered(n, "sidebarTakeBack", { logId: n.value("Write log", "A3") }),
    tabs: [],
  },
  "write ticked": {
    prepare() {
      const nursery = set();
      const due = nursery.sheet("Due list");
      const row = nursery.values("Due list").findIndex((one) => one[5] === "Take count") + 1;
      due.getRange(row, 1, 1, 4).setValues([[true, 60, "Orrin", "dry"]]);
      return nursery;
    },
    run: (n) => called(n, "writeTicked"),
    tabs: [],
  },
  refresh: {
    prepare: set,
    run: (n) => called(n, "refreshDueList"),
    tabs: ["Due list"],
    repeats: true,
  },
  "set up": {
    prepare: bare,
    run: (n) => answered(n, "sidebarSetUp", ONCE),
    tabs: OWN,
  },
  "set up again": {
    prepare: set,
    run: (n) => answered(n, "sidebarSetUp", ONCE),
    tabs: OWN,
    repeats: true,
  },
};

/** The log's lines by what became of them. */
function logStates(nursery: Nursery): string[] {
  if (!nursery.tabs().includes("Write log")) return [];
  return nursery
    .values("Write log")
    .slice(2)
    .map((row) => String(row.at(-1)));
}

/** A tab without the minute at which it was made. */
function whole(nursery: Nursery, tab: string): string {
  return nursery.snapshot(tab).replace(/\d{4}-\d\d-\d\d \d\d:\d\d/g, "");
}

/** What is wrong after a call failed; empty when all is well. */
function wrongs(
  nursery: Nursery,
  records: readonly string[],
  before: ReadonlyMap<string, string>,
): string[] {
  const wrong: string[] = [];
  const stands = nursery.snapshot("Records");
  if (!records.includes(stands)) wrong.push("records half written");
  if (!nursery.w.lock.isFree()) wrong.push("lock kept");
  const filled = nursery.value("Records", "L2") !== "";
  const states = new Set(logStates(nursery));
  if (filled && states.size > 0 && !states.has("written") && !states.has("writing")) {
    wrong.push(`log says ${[...states]} of what stands in the records`);
  }
  if (!filled && states.has("written")) wrong.push("log says written of what is not there");
  for (const [tab, content] of before) {
    if (!nursery.tabs().includes(tab)) wrong.push(`${tab} is gone`);
    else if (whole(nursery, tab) !== content) wrong.push(`${tab} is not whole`);
  }
  return wrong;
}

/**
 * Lets every service call of an action fail in turn, and then runs it once more without a fault.
 *
 * @returns what went wrong, each with the numbers of the calls that failed
 */
function failInTurn({ prepare, run, tabs, repeats }: Action, kind: Kind): Record<string, string> {
  const model = prepare();
  const unchanged = model.snapshot("Records");
  model.w.meter.reset();
  expect(run(model)).toBe(true);
  const total = model.w.meter.total;
  const records = [unchanged, model.snapshot("Records")];
  const found = new Map<string, number[]>();
  for (let n = 1; n <= total; n += 1) {
    // What can be done again and again needs no workbook of its own: it must work after each fault.
    const nursery = repeats ? model : prepare();
    const before = new Map(
      tabs.filter((tab) => nursery.tabs().includes(tab)).map((tab) => [tab, whole(nursery, tab)]),
    );
    nursery.w.meter.reset();
    nursery.w.meter[kind](n);
    run(nursery);
    const problems = wrongs(nursery, records, before);
    nursery.w.meter.reset();
    if (!run(nursery) && logStates(nursery).length === 0) problems.push("never works again");
    const left = nursery.tabs().filter((tab) => / \((new|old)\)/.test(tab));
    if (left.length > 0) problems.push("a tab is left behind for good");
    // One fault must not be counted at every later one.
    for (const tab of left) nursery.remove(tab);
    for (const problem of problems) found.set(problem, [...(found.get(problem) ?? []), n]);
    if (!repeats) nursery.w.close();
  }
  return Object.fromEntries([...found].map(([problem, calls]) => [problem, calls.join(" ")]));
}

describe.each([
  ["does nothing", "failAt", Object.keys(ACTIONS)],
  // The answer of a call that did its work gets lost on the way.
  ["does its work", "failAfter", ["record", "take back", "write ticked", "refresh"]],
] as const)("a service call that %s and throws", (_, kind, names) => {
  it.each(names)(
    "in %s leaves records and our tabs whole, the log true and the lock free",
    (name) => {
      expect(failInTurn(ACTIONS[name] as Action, kind)).toEqual({});
    },
    300_000,
  );
});
