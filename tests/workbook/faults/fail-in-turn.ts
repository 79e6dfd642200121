/* Longer than most: one run of an action with a call that fails, and all that is then asked of the workbook. */

import { expect } from "vitest";
import { BEING_MADE } from "../../../src/workbook/host/mark";
import { EVERY_CALL } from "../every-call";
import { type Nursery, openNursery, smallRecords, withoutMinute } from "../nursery";

/** An action that writes, and what it must leave behind whatever call fails. */
export interface Action {
  /** A workbook in which it finds work. */
  prepare(): Nursery;
  /** @returns whether it said that it worked */
  run(nursery: Nursery): boolean;
  /** The tabs that have to be what they were, or what they become. */
  readonly tabs: readonly string[];
  /** The table that it writes into, and a cell that it fills; "Records" and L2 if left out. */
  readonly table?: { readonly tab: string; readonly cell: string };
  /** Whether it makes so many calls that of several looks in a row one is enough. */
  readonly long?: true;
}

/**
 * How a call fails: it does nothing and throws, once; it does its work and throws, once, as when the
 * answer gets lost; it and all that follow throw, as when the script is cut off.
 */
export type Kind = "failAt" | "failAfter" | "stopAt";

export const answered = (nursery: Nursery, name: string, request: unknown): boolean =>
  (nursery.w.run(name, request) as { ok: boolean }).ok;

export const called = (nursery: Nursery, name: string): boolean => {
  try {
    nursery.w.call(name);
    return true;
  } catch {
    return false;
  }
};

/** Tabs of a few rows make the same calls as long ones, in less time. */
const SMALL = { newRows: 60 };

export const bare = () => openNursery([smallRecords()], SMALL);

/** The log's lines by what became of them. */
function logStates(nursery: Nursery): string[] {
  if (!nursery.tabs().includes("Write log")) return [];
  return nursery
    .values("Write log")
    .slice(2)
    .map((row) => String(row.at(-1)));
}

/** A tab without the minute at which it was made; links by the name of where they lead, as numbers of tabs are by chance. */
function whole(nursery: Nursery, tab: string): string {
  const led = (link: string, id: string) =>
    nursery.tabs().find((name) => String(nursery.sheet(name).getSheetId()) === id) ?? link;
  return withoutMinute(nursery.snapshot(tab)).replace(/#gid=(\d+)/g, led);
}

const RECORDS = { tab: "Records", cell: "L2" };

/** Table and log, which must tell the same. */
function recordWrongs(
  nursery: Nursery,
  { tab, cell }: typeof RECORDS,
  records: readonly string[],
  cutOff: boolean,
): string[] {
  const wrong: string[] = [];
  const states = new Set(logStates(nursery));
  // A script that is cut off can undo nothing: the next one does, and the log says so till then.
  if (cutOff && (states.has("writing") || states.has("taking back"))) return wrong;
  if (!records.includes(nursery.snapshot(tab))) wrong.push("records half written");
  const filled = nursery.value(tab, cell) !== "";
  const says = states.has("written");
  if (filled !== says) wrong.push(`log says ${[...states]}, ${filled ? "" : "not "}written`);
  return wrong;
}

/** What an action's tabs hold before it and after it. */
interface Contents {
  readonly before: ReadonlyMap<string, string>;
  readonly after: ReadonlyMap<string, string>;
}

function contentsOf(nursery: Nursery, tabs: readonly string[]): Map<string, string> {
  const there = nursery.tabs();
  return new Map(
    tabs.filter((tab) => there.includes(tab)).map((tab) => [tab, whole(nursery, tab)]),
  );
}

/** Whether each tab is there if it was, as it was or as it becomes, or says that it is being made. */
function tabWrongs(nursery: Nursery, { before, after }: Contents, mayBeHalf: boolean): string[] {
  const there = nursery.tabs();
  return [...after.keys()].flatMap((tab) => {
    if (!there.includes(tab)) return before.has(tab) ? [`${tab} is gone`] : [];
    if (mayBeHalf && isHalfMade(nursery, tab)) return [];
    const content = whole(nursery, tab);
    const isWhole = content === before.get(tab) || content === after.get(tab);
    return isWhole ? [] : [`${tab} is not whole`];
  });
}

/** Whether a tab says in its first cell that it is not whole, and what makes it so. */
export function isHalfMade(nursery: Nursery, tab: string): boolean {
  return String(nursery.value(tab, "A1")).includes(`${BEING_MADE} `);
}

/** The names of the service calls that something makes, in their order; a thousand at the most. */
export function callsOf(nursery: Nursery, run: () => void): readonly string[] {
  const { meter } = nursery.w;
  meter.reset();
  const names: string[] = [];
  const before = new Map<string, number>();
  for (let n = 1; n <= 1000; n += 1) {
    meter.beforeCall(n, () => {
      const name = [...meter.calls].find(([one, times]) => before.get(one) !== times)?.[0] ?? "";
      before.set(name, meter.calls.get(name) ?? 0);
      names.push(name);
    });
  }
  run();
  return names;
}

/** Calls without an effect, which leave the same whether they fail before or after. */
const LOOKS = /\.(get|is|format)/;

/**
 * The numbers of an action's calls that are to fail: all of them; of those whose answer gets lost, the
 * ones that do something. Where the script is cut off, and in an action of hundreds of calls, one of
 * several looks in a row is enough, since nothing changes between them.
 */
export function callsToFail(
  model: Nursery,
  { run, long }: Pick<Action, "run" | "long">,
  kind: Kind,
): number[] {
  const names = callsOf(model, () => expect(run(model)).toBe(true));
  expect(names).toHaveLength(model.w.meter.total);
  const does = names.map((name) => !LOOKS.test(name));
  return names.flatMap((_, at) => {
    const wanted = kind === "failAfter" ? does[at] : !long || does[at] || (does[at + 1] ?? true);
    return wanted ? [at + 1] : [];
  });
}

/** Of an action's calls one in so many fails in the tests; `npm run check:faults` lets all of them fail. */
const ONE_OF = 4;
/**
 * Two to the power of 32 by the golden ratio (multiplicative hashing: Knuth, The Art of Computer Programming 3,
 * 6.4; from memory): it scatters numbers in a row, so that no call of a loop is always passed over.
 */
const SCATTER = 2654435769;

const isTried = (n: number) => EVERY_CALL || Math.imul(n, SCATTER) >>> 0 < 2 ** 32 / ONE_OF;

/** Tabs that an action left behind half made. */
const HALF_MADE = / \(being (?:made|replaced)\)/;

/** Text that two workbooks share which differ in nothing that a script can see but chance and ids. */
function stateOf(nursery: Nursery): string {
  const { sheets, sheetOrder, styles } = nursery.w.book.workbook.save();
  const tabs = sheetOrder.map((id) => ({ ...sheets[id], id: "" }));
  const ids = new Map<string, string>();
  return JSON.stringify(tabs, (key, value) =>
    key === "s" && typeof value === "string" ? styles[value] : value,
  ).replace(UUID, (id) => {
    const known = ids.get(id) ?? `id ${ids.size}`;
    ids.set(id, known);
    return known;
  });
}
const UUID = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

/** What is still wrong when an action, after a fault, runs once more without one. */
function wrongsForGood(
  nursery: Nursery,
  { run, table = RECORDS }: Action,
  records: readonly string[],
  contents: Contents,
): string[] {
  nursery.w.meter.reset();
  // What was done in spite of the fault can't be done twice.
  const again = run(nursery);
  return [
    ...(again || logStates(nursery).length > 0 ? [] : ["never works again"]),
    ...recordWrongs(nursery, table, records, false).map((one) => `${one}, for good`),
    ...(again ? tabWrongs(nursery, contents, false).map((one) => `${one}, for good`) : []),
    ...(nursery.tabs().some((tab) => HALF_MADE.test(tab)) ? ["a tab is left"] : []),
  ];
}

/** What to let fail, and in what. */
interface Faults {
  /** The workbook before the action. */
  readonly start: ReturnType<Nursery["saved"]>;
  readonly run: (nursery: Nursery) => unknown;
  /** The numbers of the calls that fail, each in a run of its own. */
  readonly calls: readonly number[];
  readonly kind: Kind;
  /** What is wrong with the workbook that is left behind, also when it goes on without a fault. */
  judge(nursery: Nursery): readonly string[];
}

/**
 * Lets calls of an action fail, one in each run. Most calls are looks, so that many faults leave the same
 * workbook behind: such a workbook is judged once.
 *
 * @returns what went wrong, each with the numbers of the calls that failed
 */
export function wrongsAfter({ start, run, calls, kind, judge }: Faults): Record<string, string> {
  const found = new Map<string, number[]>();
  const judged = new Map<string, readonly string[]>();
  let untouched: string | null = null;
  let nursery: Nursery | null = null;
  for (const n of calls.filter(isTried)) {
    nursery ??= openNursery(start, SMALL);
    untouched ??= stateOf(nursery);
    nursery.w.meter[kind](n);
    run(nursery);
    nursery.w.meter.reset();
    const isFree = nursery.w.lock.isFree();
    const state = stateOf(nursery);
    const known = isFree ? judged.get(state) : undefined;
    const wrong = known ?? judge(nursery);
    if (isFree) judged.set(state, wrong);
    for (const one of isFree ? wrong : ["lock kept", ...wrong]) {
      found.set(one, [...(found.get(one) ?? []), n]);
    }
    // A workbook in which nothing was touched serves for the next fault, too.
    if (known && state === untouched) continue;
    nursery.w.close();
    nursery = null;
  }
  return Object.fromEntries([...found].map(([problem, of]) => [problem, of.join(" ")]));
}

/**
 * Lets every service call of an action fail in turn, and then runs it once more without a fault.
 *
 * @returns what went wrong, each with the numbers of the calls that failed
 */
export function failInTurn(action: Action, kind: Kind): Record<string, string> {
  const { prepare, run, tabs, table = RECORDS } = action;
  const model = prepare();
  const start = model.saved();
  const unchanged = model.snapshot(table.tab);
  const before = contentsOf(model, tabs);
  const calls = callsToFail(model, action, kind);
  const contents = { before, after: contentsOf(model, tabs) };
  const records = [unchanged, model.snapshot(table.tab)];
  return wrongsAfter({
    ...{ start, run, calls, kind },
    judge: (nursery) => [
      ...recordWrongs(nursery, table, records, kind === "stopAt"),
      ...tabWrongs(nursery, contents, true),
      ...wrongsForGood(nursery, action, records, contents),
    ],
  });
}
