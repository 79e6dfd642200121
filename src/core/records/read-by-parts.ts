import type { ColumnSeen, TableKind } from "./column-match";
import type { ByParts, ColumnTarget } from "./column-target";
import type { ColumnValues } from "./column-values";
import { OF_GRAFTING } from "./settled-by-values";

type Reading = Pick<
  ColumnSeen,
  "target" | "sureness" | "others" | "afterDays" | "isLikely" | "isOther" | "isSaid" | "scionsCut"
>;

const UNKNOWN: Reading = {
  target: null,
  sureness: 1,
  others: [],
  afterDays: 0,
  isLikely: false,
  isOther: false,
  isSaid: false,
};

/**
 * A column read by the parts of its header, where its cells do not speak against it; else left alone,
 * with what it may be.
 */
export function readByParts(
  parts: ByParts | null,
  values: () => ColumnValues,
  kind: TableKind,
): Reading {
  if (parts === null) return UNKNOWN;
  if (parts.target === null) {
    const { holds } = values();
    const used = parts.isScionsCut && (holds === "day" || holds === "count");
    return { ...UNKNOWN, isOther: true, ...(used ? { isSaid: true, scionsCut: true } : {}) };
  }
  const { afterDays } = parts;
  const ask = (...others: readonly ColumnTarget[]): Reading => ({
    ...UNKNOWN,
    afterDays,
    others,
    isLikely: parts.likely,
  });
  const take = (target: ColumnTarget): Reading =>
    parts.sure ? { ...UNKNOWN, target, sureness: 2, afterDays } : ask(target);
  const { target } = parts;
  if (kind === "log") return inLog(target, take, ask);
  if (target.kind === "event") return UNKNOWN;
  const { holds, plainly, ownDays, numbers, texts } = values();
  if (target.kind === "fact") {
    if (target.fact === "culled" || target.fact === "dispatched") {
      return holds === "count" || holds === null ? take(target) : UNKNOWN;
    }
    if (holds === "day" && ownDays && target.fact !== "closed") return UNKNOWN;
    if (holds === "day" && plainly && NEVER_DAYS.has(target.fact)) return UNKNOWN;
    if (
      holds === "day" &&
      (target.fact === "place" || target.fact === "fromLot") &&
      areDays(texts)
    ) {
      return UNKNOWN;
    }
    const number = target.fact === "batch" || target.fact === "place" || target.fact === "fromLot";
    if (holds === "count" && plainly) {
      if (!number) return ask(target);
      if (target.fact === "place" && numbers.some((one) => one !== null && one > MOST_PLACES)) {
        return ask(target);
      }
    }
    return take(target);
  }
  const { key, what } = target;
  const day: ColumnTarget = { kind: "step", key, what: "day" };
  const count: ColumnTarget = { kind: "step", key, what: "count" };
  const said = parts.aspect ?? what;
  if (holds === null) return take(said === "day" ? day : count);
  if (holds === "text" && plainly) return key === "grafting" ? ask(...OF_GRAFTING) : UNKNOWN;
  // "S-4" may be a week, or the lot that "Seed" of some sort came from.
  if (holds === "day" && !parts.sure && parts.aspect === null && areCodes(texts)) {
    return { ...ask(day), isLikely: false };
  }
  if (holds === "day" && (plainly || said === "day")) return take(day);
  if (parts.aspect === "day" || !parts.isCounted) return ask(day);
  return take(count);
}

/** Names of these do not look like days, as "1-2" for a bed does. */
const NEVER_DAYS: ReadonlySet<string> = new Set([
  "variety",
  "rootstock",
  "crop",
  "method",
  "grafter",
]);

/** "1-2" and "S-4" may be names; "12/05/26" has a day, a month and a year. */
const WHOLE_DAY = /^\d{1,4}[/.-](?:\d{1,2}|\p{L}{3,})[/.-]\d{2,4}$/u;

const CODE = /^\p{L}{1,2}[- ]?\d{1,3}$/u;

function areCodes(texts: readonly string[]): boolean {
  return texts.filter((text) => CODE.test(text)).length * 2 > texts.length;
}

function areDays(texts: readonly string[]): boolean {
  return texts.filter((text) => WHOLE_DAY.test(text)).length * 2 > texts.length;
}

/** Places with numbers for names are few; more than these are plants (our choice). */
const MOST_PLACES = 200;

/** A log has no columns of steps, and one of whoever did the work. */
function inLog(
  target: ColumnTarget,
  take: (target: ColumnTarget) => Reading,
  ask: (target: ColumnTarget) => Reading,
): Reading {
  if (target.kind !== "fact") return UNKNOWN;
  if (target.fact === "grafter") return ask({ kind: "event", fact: "eventPerson" });
  return take(target);
}
