import { normalText, type Records, shortened } from "../core";
import * as text from "../sentences/made/records";

/** Columns that are named before the rest are counted. */
const MOST_NAMED = 5;

/**
 * Columns of days that are left alone, of which a formula that tells nothing of columns can be told. Not
 * those of numbers and texts, which may be anything: Check lists them. Null where there are none.
 *
 * @param asked columns that the question itself names, as "Season" or "Season + Place"
 */
export function columnsLeftAlone(
  { troubles }: Pick<Records, "troubles">,
  asked: readonly string[],
): string | null {
  const named = new Set(asked.flatMap((one) => one.split("+")).map(normalText));
  const headers = troubles
    .filter((one) => one.code === "column-left" && one.holds === "day")
    .map(({ column }) => column)
    .filter((header) => !named.has(normalText(header)))
    // The order of the columns tells nothing.
    .sort();
  if (headers.length === 0) return null;
  const more = headers.length - MOST_NAMED;
  const first = headers.slice(0, MOST_NAMED).map((header) => shortened(header));
  return text.columnsLeftAlone({
    columns: more > 0 ? [...first, text.moreColumns({ more })] : first,
  });
}
