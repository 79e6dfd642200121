/** A grid as a person sees it, typed as text: "|" between cells, a line a row. Dates stay text. */
export function sheetValues(text: string): (string | number)[][] {
  return text
    .trim()
    .split("\n")
    .map((line) =>
      line.split("|").map((cell) => {
        const value = cell.trim();
        return /^-?\d+(\.\d+)?$/.test(value) ? Number(value) : value;
      }),
    );
}

/** Cases of a test as a table, all of them texts. */
export function textCases(table: string): string[][] {
  return sheetValues(table).map((row) => row.map(String));
}
