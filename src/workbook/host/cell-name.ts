/** "A" for 1, "AA" for 27. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let left = column; left > 0; left = Math.floor((left - 1) / 26)) {
    letters = String.fromCharCode(65 + ((left - 1) % 26)) + letters;
  }
  return letters;
}

/** "F12". Row and column from 1. */
export function cellName({ row, column }: { readonly row: number; readonly column: number }) {
  return `${columnLetters(column)}${row}`;
}

/** Row and column, from 1, of a cell such as "F12"; null when it is no cell's name. */
export function rowAndColumn(
  cell: string,
): { readonly row: number; readonly column: number } | null {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(cell) ?? [];
  if (letters === undefined) return null;
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return { row: Number(row), column };
}
