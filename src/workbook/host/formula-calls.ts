/** A call of a function within a formula, its arguments as they are written. */
export interface FormulaCall {
  readonly name: string;
  readonly arguments: readonly string[];
}

/** Texts and names of tabs, in which brackets and commas say nothing. */
const QUOTED = /"(?:[^"]|"")*"|'(?:[^']|'')*'/g;

/**
 * The calls of our functions in a formula, whose names have a "_". Between arguments stands ";" in some
 * locales, where a comma is the decimal mark.
 *
 * @example callsIn("=SUM(BATCH_DUE(A1:B9, , C1))")[0].arguments[2] // " C1"
 */
export function callsIn(formula: string): readonly FormulaCall[] {
  const bare = formula.replace(QUOTED, (quoted) => "_".repeat(quoted.length));
  return [...bare.matchAll(/([A-Z]+(?:_[A-Z]+)+)\(/gi)].map((match) => {
    const from = match.index + match[0].length;
    const marks: { readonly mark: string; readonly at: number }[] = [];
    let depth = 1;
    let at = from;
    for (; at < bare.length && depth > 0; at += 1) {
      const mark = bare.charAt(at);
      if (mark === "(" || mark === "{") depth += 1;
      else if (mark === ")" || mark === "}") depth -= 1;
      else if (depth === 1 && (mark === "," || mark === ";")) marks.push({ mark, at });
    }
    const separator = marks.some(({ mark }) => mark === ";") ? ";" : ",";
    const end = depth === 0 ? at - 1 : at;
    const ends = [...marks.filter(({ mark }) => mark === separator).map((one) => one.at), end];
    return {
      name: (match[1] as string).toUpperCase(),
      arguments: ends.map((one, index) =>
        formula.slice(index === 0 ? from : (ends[index - 1] as number) + 1, one),
      ),
    };
  });
}
