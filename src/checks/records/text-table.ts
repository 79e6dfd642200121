/** A table in plain text: the first column to the left, the others to the right. */
export function textTable(
  header: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): string {
  const texts = [header, ...rows.map((row) => row.map(String))];
  const widths = header.map((_, column) =>
    texts.reduce((widest, row) => Math.max(widest, (row[column] ?? "").length), 0),
  );
  return texts
    .map((row) =>
      row
        .map((text, column) =>
          column === 0 ? text.padEnd(widths[0] ?? 0) : text.padStart(widths[column] ?? 0),
        )
        .join("  "),
    )
    .join("\n");
}

/** @example share(49, 50) // "98.0 %" */
export function shareText(part: number, whole: number): string {
  return whole === 0 ? "-" : `${((100 * part) / whole).toFixed(1)} %`;
}
