/** A formula that names cells of its own row names those of the row to which it came. */
export function movedFormula(formula: string, from: number | undefined, to: number): string {
  return formula.replace(
    /(?<![A-Za-z0-9_$'"!])(\$?[A-Z]{1,3})(\d+)(?![A-Za-z0-9_("'])/g,
    (cell, letters, row) => (Number(row) === from ? `${letters}${to}` : cell),
  );
}
