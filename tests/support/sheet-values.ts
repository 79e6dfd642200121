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
