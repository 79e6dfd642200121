import { shortened } from "../cells/quoted";

const MOST_NAMES = 6;

/** Names for a sentence, in order and each once; of many the first and how many more. @example "B1, B2 and 3 more" */
export function namesText(names: readonly string[], most = MOST_NAMES): string {
  const each = [...new Set(names)].sort();
  const more = each.length - most;
  return `${each.slice(0, most).map(shortened).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** A part of a remark: what there is to say, and of which names; null where of none. @example "not in it: B1, B2" */
export function namesRemark(what: string, names: readonly string[], most = MOST_NAMES) {
  return names.length === 0 ? null : `${what}: ${namesText(names, most)}`;
}
