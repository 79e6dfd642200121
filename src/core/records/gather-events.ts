import type { CivilDay } from "../dates";
import { totalOf } from "../mathematics";
import { type Batch, type PlantsGone, TEXT_FACTS, type TextFact } from "./batch";
import { likeName } from "./batch-names";
import type { LogEvent } from "./read-log";
import type { Trouble } from "./trouble";

/** Batches put together from more than their own row, and what is to be said of that. */
export interface BatchesFound {
  readonly batches: readonly Batch[];
  readonly troubles: readonly Trouble[];
}

interface Draft {
  batch: Batch | null;
  readonly events: LogEvent[];
}

/**
 * Puts the lines of a log to the batches they speak of. A batch that only the log knows becomes a
 * batch of its own.
 *
 * Of several counts of one step the last by its day counts; plants culled and dispatched add up;
 * the person of the grafting is the grafter; the place is the last that is named. What the
 * batch's own row says comes first.
 *
 * @param stepKeys the steps of the outcome, which hold those of the rows and of the events
 */
export function gatherEvents(
  batches: readonly Batch[],
  events: readonly LogEvent[],
  stepKeys: readonly string[],
): BatchesFound {
  if (events.length === 0) return { batches, troubles: [] };
  const troubles: Trouble[] = [];
  const drafts = new Map<string, Draft>();
  const rows: Draft[] = batches.map((batch) => ({ batch, events: [] }));
  for (const draft of rows) {
    const key = likeName((draft.batch as Batch).name);
    if (!drafts.has(key)) drafts.set(key, draft);
  }
  for (const event of events) {
    const key = likeName(event.batch);
    let draft = drafts.get(key);
    if (draft === undefined) {
      draft = { batch: null, events: [] };
      drafts.set(key, draft);
      rows.push(draft);
      if (batches.length > 0) {
        troubles.push({ ...whereNamed(event), code: "batch-not-in-table" });
      }
    } else troubles.push(...speltOtherwise(draft, event));
    draft.events.push(event);
  }
  return {
    batches: rows.map(({ batch, events: own }) => together(batch, own, stepKeys)),
    troubles,
  };
}

function together(
  batch: Batch | null,
  events: readonly LogEvent[],
  stepKeys: readonly string[],
): Batch {
  const days = stepKeys.map((_, index) => batch?.days[index] ?? null);
  const counts = stepKeys.map((_, index) => batch?.counts[index] ?? null);
  const facts = Object.fromEntries(TEXT_FACTS.map((fact) => [fact, batch?.[fact] ?? ""])) as Record<
    TextFact,
    string
  >;
  let culled = batch?.culled ?? null;
  const cullings: PlantsGone[] = [];
  let dispatched = batch?.dispatched ?? null;
  let received = batch?.received ?? null;
  let closed = batch?.closed ?? false;
  let closedOn = batch?.closedOn ?? null;
  const notDone = [...(batch?.notDone ?? [])];
  // Without a day a line counts as the first: a dated one is surer.
  const inOrder = [...events].sort((a, b) => (a.day ?? 0) - (b.day ?? 0) || a.row - b.row);
  for (const event of inOrder) {
    for (const fact of TEXT_FACTS) {
      const text = event.facts[fact] ?? "";
      if (text !== "" && (fact === "place" || facts[fact] === "")) facts[fact] = text;
    }
    const { what, count, day } = event;
    if (what.kind === "step") {
      if (what.isNotDone) {
        notDone.push(what.key);
        continue;
      }
      const index = stepKeys.indexOf(what.key);
      if (batch?.counts[index] == null && count !== null) counts[index] = count;
      if (batch?.days[index] == null && day !== null) days[index] = day;
      if (what.key === "grafting" && facts.grafter === "") facts.grafter = event.person;
    } else if (what.kind === "culled") {
      culled = (culled ?? 0) + (count ?? 0);
      if (count !== null) cullings.push({ plants: count, day, reason: event.reason });
    }
    if (what.kind === "dispatched") dispatched = (dispatched ?? 0) + (count ?? 0);
    else if (what.kind === "splitOff" && count !== null) received = (received ?? 0) + count;
    else if (what.kind === "closed") {
      closed = true;
      closedOn ??= day;
    }
  }
  const first = events[0];
  const last = counts.reduce<number>((found, count, at) => (count === null ? found : at), -1);
  const lastDay = days[last] ?? null;
  const since = cullings.filter(({ day }) => lastDay !== null && day !== null && day > lastDay);
  return {
    row: batch?.row ?? first?.row ?? 1,
    table: batch?.table ?? first?.table ?? 0,
    name: batch?.name ?? first?.batch ?? "",
    ...facts,
    culled,
    ...(cullings.length > 0 && {
      cullings,
      culledSinceCount: totalOf(since.map(({ plants }) => plants)),
    }),
    dispatched,
    given: batch?.given ?? 0,
    givenBeforeCount: batch?.givenBeforeCount ?? 0,
    received,
    closed,
    closedOn,
    days: days as readonly (CivilDay | null)[],
    counts,
    notDone,
  };
}

function whereNamed({ row, batch }: LogEvent): Pick<Trouble, "row" | "column" | "found"> {
  return { row, column: "", found: batch };
}

function speltOtherwise(draft: Draft, event: LogEvent): readonly Trouble[] {
  const name = draft.batch?.name ?? draft.events[0]?.batch ?? "";
  const bare = (text: string) => text.toLowerCase().replace(/\s+/g, "");
  if (bare(name) === bare(event.batch)) return [];
  return [{ ...whereNamed(event), code: "batch-spelt-otherwise", name }];
}
