/* Longer than most: what a header says is one order of rules, in which names go before steps. */
import type { BatchFact, HeaderPart } from "../words";
import type { HeaderParts } from "./header-parts";

/** What a header means by its parts: a fact, a step by its key, or something that no column of ours holds. */
export type PartsMeaning =
  | { readonly kind: "fact"; readonly fact: BatchFact; readonly sure: boolean }
  | {
      readonly kind: "step";
      readonly key: StepConcept;
      /** What it holds where neither header nor cells say so. */
      readonly usual: "day" | "count";
      readonly sure: boolean;
      /** Whether it is read where its place in the row and its cells agree, though it isn't sure. */
      readonly likely: boolean;
    }
  /** "Days since scions were cut", which take rates are compared by. */
  | { readonly kind: "scions cut" }
  | { readonly kind: "other" };

/** Known steps by their key, and three that only some timetables have, under names of their own. */
export type StepConcept =
  | "sowing"
  | "germination"
  | "grafting"
  | "first release"
  | "bud break"
  | "take count"
  | "first flush"
  | "flush hardening"
  | "union closed"
  | "ready"
  | "potting"
  | "wrap off"
  | "cut back"
  | "cuttings set"
  | "rooting";

const OTHER: PartsMeaning = { kind: "other" };
const SCIONS_CUT: PartsMeaning = { kind: "scions cut" };

/** Counts of the living later than this are no takes (our choice; takes are counted 21 to 45 days on). */
const LATEST_TAKES = 56;

/**
 * What a header's parts mean together; null where they mean nothing. What is said of people, places and
 * names goes before steps ("Grafting by"), what became of plants before what was done to them ("Grafts alive").
 */
export function partsMeaning(header: HeaderParts): PartsMeaning | null {
  // "Non repris", "tidak jadi" are the others.
  if (header.isNot) return null;
  return asName(header) ?? asStep(header);
}

function asName(header: HeaderParts): PartsMeaning | null {
  const { says, unknown, aspect } = header;
  const has = (...parts: readonly HeaderPart[]) => parts.some((part) => says.has(part));
  // "Variety / zorv": two things, of which one is not known.
  const isHalfKnown = header.isTwo && unknown > 0;
  const fact = (name: BatchFact, sure = unknown < 2): PartsMeaning => ({
    kind: "fact",
    fact: name,
    sure: sure && !isHalfKnown,
  });
  if (has("cutBack") && has("garden")) return OTHER;
  // What is done to a stock, and plants put out of a shade house, are no names.
  if (has("cutBack") || (has("cut") && has("stock"))) return null;
  if (has("out", "loosen", "takeOff") && has("place") && !has("wrap", "film")) return null;
  if (has("measure", "rest") || (has("customer") && !has("gone"))) return OTHER;
  if (has("person") && has("meantFor")) return OTHER;
  // "Sem." is sown, too, unless another step is said with it.
  if (has("weekUnit") && aspect === null && (!has("sow", "planted") || has("graft", "gone")))
    return OTHER;
  if (has("closed") && !has("union")) return fact("closed");
  if (has("note")) return fact("note");
  const scions = has("scion", "bud");
  if (scions && has("cut", "cutting", "gone")) return SCIONS_CUT;
  if (has("garden") && !has("batch", "gone", "dead", "alive", "take", "ready"))
    return fact("scionSource", says.size > 1 || aspect !== null);
  const from = has("source");
  const of = header.endsWithOf && !has("aside");
  if (scions && (from || of) && !has("alive", "take")) return fact("scionSource");
  if (has("scion") && has("place")) return fact("scionSource");
  if (from && has("graft") && has("bud", "stock")) return fact("scionSource");
  const earlier =
    from || header.opensWithOf || has("stock", "sow", "planted", "germinate", "garden");
  if (has("batch") && earlier) return fact("fromLot");
  if (from && has("sow", "planted", "seed", "germinate", "take")) return fact("fromLot");
  if (has("batch") && has("container")) return fact("batch", false);
  if (has("grafter") || (has("graft") && has("by", "person"))) return fact("grafter");
  if (has("kind") && has("crop")) return fact("crop");
  if (has("kind") && !has(...KINDS_OF_OTHER))
    return fact("method", unknown === 0 && header.words > 1);
  if (has("stock") && (has("scion") || (has("variety") && header.isTwo))) return OTHER;
  // "Rootstock raised, date": the day of the stocks; "Stock for sale": plants.
  if (has("stock") && (aspect === "day" || has("ready", "gone"))) return null;
  if (has("stock")) return fact("rootstock");
  if (has("variety")) return fact("variety", unknown < 2 && !has("dead", "gone", "alive"));
  if (has("crop")) return fact("crop");
  if (has("batch") && !has("gone", "dead", "alive")) {
    return fact("batch", unknown === 0 && !has("scion", "seed"));
  }
  // "To shadehouse" over days: plants that go there.
  if (has("place") && header.opensWithOf && aspect !== "count" && says.size === 1) return null;
  if (has("place") && !has(...OF_PLANTS))
    return fact("place", unknown < 2 && !from && !header.opensWithOf && !has("code"));
  if (has("person", "by") && !has(...OF_PLANTS)) {
    return fact("grafter", says.size === 1 && has("by") && unknown === 0);
  }
  if (has("code") && !has(...OF_PLANTS)) return fact("batch");
  if (has("scion") && !has(...OF_PLANTS)) return fact("variety", false);
  return null;
}

/** Of these there are kinds, too. */
const KINDS_OF_OTHER: readonly HeaderPart[] = [
  "container",
  "wrap",
  "place",
  "pot",
  "seed",
  "sow",
  "planted",
  "stock",
  "variety",
  "scion",
  "person",
];

/** Words that say what was done to plants or became of them. */
const OF_PLANTS: readonly HeaderPart[] = [
  "alive",
  "take",
  "dead",
  "gone",
  "ready",
  "graft",
  "sow",
  "planted",
  "seed",
  "begin",
  "germinate",
  "pot",
];

/** Whether a header surely names a step, and whether it likely does. */
interface Sureness {
  readonly sure: boolean;
  readonly likely: boolean;
}

/** Longer than most: a rule a step, the surer before those that share a word with it. */
function asStep(header: HeaderParts): PartsMeaning | null {
  const { says, unknown, aspect } = header;
  const has = (...parts: readonly HeaderPart[]) => parts.some((part) => says.has(part));
  const step = (
    key: StepConcept,
    usual: "day" | "count" = "day",
    { sure = unknown === 0, likely = unknown < 2 }: Partial<Sureness> = {},
  ): PartsMeaning => ({ kind: "step", key, usual, sure, likely });
  if (has("dead")) return { kind: "fact", fact: "culled", sure: unknown === 0 };
  // "Good takes" are takes.
  if (has("ready") && has("take")) return step("take count", "count", { sure: false });
  if (has("ready") || (has("gone") && has("meantFor"))) {
    // "Good seed", "Ready to graft" are fit for something else than leaving.
    return step("ready", "count", {
      sure: unknown < 2 && !has("seed", "germinate", "graft", "bud", "sow", "planted"),
    });
  }
  if (has("shoot") && has("gone", "out", "burst", "loosen")) return step("bud break");
  if (has("harden", "place") && has("out", "loosen", "takeOff") && !has("wrap", "film")) {
    // "Out of the nursery" may be sold.
    const sure = unknown === 0 && (has("harden") || !has("out"));
    return step("flush hardening", "day", { sure, likely: sure });
  }
  if (has("gone", "out")) {
    if (aspect === "day") return OTHER;
    // "Saída de mudas" says what went out.
    const plainly = has("gone") || aspect === "count";
    const sure = unknown === 0 && plainly && !has("alive", "take");
    return { kind: "fact", fact: "dispatched", sure };
  }
  const living = has("alive", "take");
  // "Sem fita" is without; what sprouts of a shoot has germinated no more.
  if (has("sow") && has("wrap", "film")) return null;
  if (has("germinate") && has("shoot")) return step("bud break", "day", { sure: false });
  if (has("loosen", "takeOff") && (has("wrap", "film", "container") || !living))
    return release(header);
  if (has("graft") && has("germinate"))
    return step("take count", "count", { sure: false, likely: false });
  const late = (header.afterDays ?? 0) > LATEST_TAKES || (header.turn ?? 1) > 1;
  if (living) {
    const seedlings = has("alive") && has("sow", "planted", "seed", "germinate");
    return step("take count", "count", {
      sure: unknown === 0 && !late && !seedlings,
      likely: unknown < 2 && !late && !seedlings,
    });
  }
  if (has("cutBack", "cut"))
    return step("cut back", "day", {
      sure: unknown === 0 && has("cutBack", "stock"),
      likely: unknown < 2 && (has("cutBack") || aspect === "day"),
    });
  if (has("union")) return step("union closed");
  if (has("burst") && has("check", "germinate", "sow", "planted", "seed"))
    return step("germination", "count", { sure: false, likely: false });
  if (has("burst") || (has("begin") && has("bud", "shoot"))) return step("bud break");
  if (has("harden")) return step("flush hardening");
  if (has("flush")) {
    const first = aspect !== "count" && header.turn !== 2;
    return step("first flush", "day", {
      sure: unknown === 0 && first,
      likely: unknown < 2 && first,
    });
  }
  if (has("check") && !has("germinate", "sow", "planted", "seed", "pot", "ready")) {
    return step("take count", "count", { sure: false, likely: unknown < 2 && !late });
  }
  if (has("pot") && has("seed")) return step("sowing", "count", { sure: false, likely: false });
  if (has("pot")) return step("potting");
  if (has("cutting")) return step("cuttings set");
  if (has("graft")) return step("grafting");
  if (has("root")) return step("rooting", "count");
  if (has("germinate"))
    return step("germination", "count", { sure: unknown === 0 && !has("container") });
  // "Planted in bags" may be sown or potted.
  if (has("planted") && has("container") && !has("seed")) {
    return step("potting", "day", { sure: false, likely: false });
  }
  if (has("sow", "planted", "seed")) {
    return step("sowing", has("sow", "planted", "begin") ? "day" : "count");
  }
  if (has("begin") && !has("container")) return step("sowing", "day", { likely: unknown === 0 });
  if (has("bud"))
    return step("grafting", "count", {
      sure: unknown === 0 && (aspect === "count" || has("aside")),
    });
  if (has("container"))
    return step("potting", "day", { sure: unknown === 0 && has("begin"), likely: unknown < 2 });
  if (has("shoot") && aspect !== "count") return step("bud break", "day", { sure: false });
  if (has("stock")) return step("sowing", "day", { sure: false });
  if (has("place")) return step("flush hardening", "day", { sure: false });
  return null;
}

/** The first opening of the wrap, or the day on which it came off. */
function release({ says, unknown, turn }: HeaderParts): PartsMeaning {
  const off = turn === 1 ? false : turn !== null || says.has("takeOff");
  // A film that is opened may be the cap or what binds the bud.
  const isFilm = says.has("film") && !says.has("wrap") && !says.has("takeOff") && turn === null;
  return {
    kind: "step",
    key: off && !says.has("container") ? "wrap off" : "first release",
    usual: "day",
    likely: unknown === 0 && !says.has("takeOff") && (turn ?? 1) === 1 && !isFilm,
    // "Destape", "buka": opened, but the wrap, the cap or the bag?
    sure:
      unknown === 0 &&
      !isFilm &&
      (turn !== null || says.has("wrap") || says.has("film") || says.has("container")) &&
      !(says.has("takeOff") && says.has("container")),
  };
}
