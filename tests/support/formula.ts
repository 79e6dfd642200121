/** @example columnAt("AB") // 27 */
export const columnAt = (letters: string) =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const REFERENCE =
  /^(?:(?<name>\w+|'[\w ]+')!)?(?<from>[A-Z]+)(?<top>\d*)(?::(?<to>[A-Z]+)(?<end>\d*))?$/;

/** The rows of a tab; '' is the tab in which the formula itself stands. */
export type Tab = (name: string) => readonly (readonly unknown[])[];

/** What an argument of a formula stands for. */
function standsFor(text: string, tab: Tab): unknown {
  if (text === "") return "";
  if (/^\d+(?:\.\d+)?$/.test(text)) return Number(text);
  if (text.startsWith('"')) return text.slice(1, -1);
  const day = /^DATE\((\d+), (\d+), (\d+)\)$/.exec(text);
  if (day !== null) return new Date(Date.UTC(Number(day[1]), Number(day[2]) - 1, Number(day[3])));
  const { name = "", from = "", top, to, end } = REFERENCE.exec(text)?.groups ?? {};
  if (from === "") throw new Error(`not read: ${text}`);
  const rows = tab(name.replaceAll("'", "")).slice(
    top ? Number(top) - 1 : 0,
    end ? Number(end) : undefined,
  );
  const cells = rows.map((row) => row.slice(columnAt(from), columnAt(to ?? from) + 1));
  return to === undefined ? cells[0]?.[0] : cells;
}

/** The arguments between a formula's brackets, split at commas outside quotes and brackets. */
const split = (formula: string) =>
  (formula.slice(formula.indexOf("(") + 1, -1).match(/(?:"[^"]*"|\([^)]*\)|[^,"(])+/g) ?? []).map(
    (one) => one.trim(),
  );

/** What a formula such as "=BATCH_CHECK(Records!A1:B9)" gives its function. */
export function argumentsIn(formula: string, tab: Tab): unknown[] {
  return split(formula).map((one) => standsFor(one, tab));
}
