import { builtInTimetable } from "../../core";
import { everyWord } from "../../core/words";

/** Keys of the steps that a meaning of the corpus may be known by: methods start and end differently. */
const STEPS: Readonly<Record<string, readonly string[]>> = {
  start: ["sowing", "cuttings set"],
  sowing: ["sowing"],
  germination: ["germination"],
  potting: ["potting", "potting on"],
  grafting: ["grafting"],
  "first release": ["first release"],
  "full release": ["full release"],
  "bud break": ["bud break"],
  "take count": ["take count", "rooting"],
  flush: ["first flush"],
  "union closed": ["union closed"],
  "cut back": ["cut back"],
  hardening: ["hardening", "flush hardening"],
  ready: ["ready"],
};

/** What a records table or a log may hold besides steps, by its key in the reader. */
const FACTS: Readonly<Record<string, string>> = {
  batch: "fact batch",
  "from lot": "fact fromLot",
  variety: "fact variety",
  rootstock: "fact rootstock",
  crop: "fact crop",
  method: "fact method",
  place: "fact place",
  grafter: "fact grafter",
  "scion source": "fact scionSource",
  culled: "fact culled",
  dispatched: "fact dispatched",
  closed: "fact closed",
  note: "fact note",
  "event day": "event eventDay",
  "event step": "event eventStep",
  "event count": "event eventCount",
  "event person": "event eventPerson",
  "event reason": "event eventReason",
};

/** The columns of the smaller tables, by the names of their readers' fields; of two either is right. */
const FIELDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  orders: {
    order: "order",
    customer: "customer",
    variety: "variety",
    wanted: "wanted",
    "by day": "by",
    delivered: "delivered",
    closed: "closed",
  },
  crew: {
    person: "person",
    tasks: "tasks",
    "hours a day": "hours",
    "working days": "days",
    "off from": "offFrom off",
    "off to": "offTo",
  },
  "closed days": { "closed from": "day", "closed to": "to" },
  places: { place: "place", holds: "holds" },
  prices: { item: "item", price: "price", per: "per" },
};

/**
 * Meanings that only some methods have a step for: left alone they are right, and read as that step, too. The
 * sources of our methods' second release have the wrap off at it.
 */
const ALSO: Readonly<Record<string, readonly string[]>> = {
  "full release": ["second release"],
  "full release day": ["step second release day"],
};

/** What a meaning for which the product has no column or step of its own may be read as all the same. */
export function alsoRight(meaning: string): readonly string[] {
  return ALSO[meaning] ?? [];
}

/** The keys that a meaning may be read as; none where the product has no column for it. */
export function keysOf(kind: string, meaning: string): readonly string[] {
  const fields = FIELDS[kind];
  if (fields !== undefined && meaning === "note") return [meaning];
  if (fields !== undefined) return fields[meaning]?.split(" ") ?? [];
  if (meaning in FACTS) return [FACTS[meaning] as string];
  if (meaning === "takes") return stepColumns("take count", "count");
  const [, step, what] = /^(.*) (day|count)$/.exec(meaning) ?? [];
  return step === undefined ? [] : stepColumns(step, what as "day" | "count");
}

function stepColumns(step: string, what: "day" | "count"): readonly string[] {
  return stepKeys(step).map((key) => `step ${key} ${what}`);
}

/** The keys by which the product knows a step of the corpus; none where neither its words nor its methods do. */
export function stepKeys(step: string): readonly string[] {
  const known = new Set([
    ...everyWord(({ steps }) => Object.keys(steps)),
    ...builtInTimetable().methods.flatMap(({ steps }) => steps.map(({ key }) => key)),
  ]);
  return (STEPS[step] ?? []).filter((key) => known.has(key));
}
