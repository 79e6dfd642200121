/** What a sheet calls its columns. @param column from 0 @example columnLetter(27) // "AB" */
export function columnLetter(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? columnLetter(before - 1) : "") + String.fromCharCode(65 + (column % 26));
}
