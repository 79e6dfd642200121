/**
 * Rows of cell texts in a csv text: commas, quotes doubled inside quotes, a line
 * feed or carriage return with line feed after each row.
 *
 * @example csvRows('a,"b, c"\n') // [["a", "b, c"]]
 */
export function csvRows(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain, end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g,
  )) {
    row.push(quoted === undefined ? (plain as string) : quoted.replaceAll('""', '"'));
    if (end === ",") continue;
    rows.push(row);
    row = [];
  }
  // The end of the text, after the last line feed, matches once more as an empty row.
  return rows.slice(0, -1);
}
