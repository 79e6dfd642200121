import { type Cell, type CivilDay, civilDay, type Grid, gridOf } from "../../core";
import { allLanguages } from "../../core/words/all-languages";
import { DAY_LOCALES, NAMED_FORMS, namedDay, numbersOf } from "./day-writing";
import type { Dice } from "./dice";

const HEADERS: readonly string[] = allLanguages.flatMap((words) => [
  ...Object.values(words.facts).flat(),
  ...Object.values(words.steps).flatMap(({ name, day, count }) => [...name, ...day, ...count]),
  ...words.dayWords,
  ...words.countWords,
]);

const WORDS: readonly string[] = allLanguages.flatMap((words) => [
  ...[words.totals, words.about, words.dozen, words.trays, words.moved, words.splitOff].flat(),
  ...[words.nothing, words.yes, words.no, words.early, words.middle, words.late, words.week].flat(),
  ...words.months.flat(),
]);

/** Texts that have broken programs: signs of formulas, names that objects have, odd letters. */
const NASTY: readonly string[] = [
  "=1+1",
  "+1",
  "-1",
  "@SUM(A1)",
  "'",
  '"',
  "\\",
  "\0",
  "%s",
  "{x}",
  "<script>",
  "&amp;",
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "null",
  "undefined",
  "NaN",
  "Infinity",
  "-Infinity",
  "[object Object]",
  "1e309",
  "1e5",
  "0x1F",
  "-0",
  "00012",
  "1,2,3",
  "#N/A",
  "#REF!",
  "#DIV/0!",
  "#",
  "##",
  "(((",
  "[",
  "*",
  "?",
  ".",
  ",",
  "/",
  "//",
  "-/-",
  "\u202e312",
  "\ufeff",
  "\u200b",
  "👩‍🌾",
  "\ud800",
  "ﬀ",
  "İ",
  "ß",
  "①②",
  "Ⅻ",
  "½",
  "3½",
  "⅓",
  "٣١٢",
  "三百",
  "１２/３/２６",
  "9/9/9999",
  "0/0/0",
  "31/31/31",
  "29/2/2025",
  "32 Jan",
  "W53 2025",
  "2025-W99",
  "wk 0",
  "99 99 9999",
  "1 1 1 1 1",
  "- - -",
  "12 x",
  "x 12",
  "9999999 x 9999999",
  "100000000000000000000",
  "312 (",
  "312 )",
  "(312)",
  "~~300",
  "about about 300",
  "300++",
  "%",
  "50 %",
  "500 %",
  "1.2.3",
  "1.200,5",
  "12:30",
  "T12:00",
  "2026-09-03T99:99",
  "yes",
  "TRUE",
];

/** Far longer than any real text; what is slow on one letter shows on ten thousand. */
const LONG: readonly ((dice: Dice) => string)[] = [
  (dice) => dice.pick(["a", "1", " ", "1 ", "1,", "(", "é", "x1", "- ", "\u0301"]).repeat(10_000),
  (dice) => `${dice.pick(["1 ", "1.", "a. ", "20 x "]).repeat(50)}${dice.pick(["!", "x", "\n"])}`,
  (dice) => dice.pick(HEADERS).concat(" ").repeat(40),
];

/** A table as no office would keep it, though most hold a header of sorts. */
export function randomGrid(dice: Dice): Grid {
  const columnCount = dice.between(1, 12);
  const rowCount = dice.between(0, 24);
  const rows = Array.from({ length: rowCount }, () => randomRow(dice, columnCount));
  if (rowCount > 0 && dice.chance(0.9)) {
    const headers = dice.chance(0.6) ? 1 : dice.between(1, 4);
    for (let one = 0; one < headers; one += 1) {
      rows[dice.below(Math.min(rowCount, one === 0 ? 6 : rowCount))] = headerRow(dice, columnCount);
    }
  }
  return gridOf(rows);
}

function headerRow(dice: Dice, columnCount: number): Cell[] {
  const log = dice.chance(0.25) ? ["Day", "Batch", "Step", "Count", "Person", "Note"] : [];
  return Array.from({ length: columnCount }, (_, column) => {
    if (log[column] !== undefined) return log[column];
    return dice.chance(0.85) ? dice.pick(HEADERS) : randomCell(dice);
  });
}

function randomRow(dice: Dice, columnCount: number): Cell[] {
  if (dice.chance(0.08)) return [];
  if (dice.chance(0.08)) return [randomCell(dice)];
  const name = dice.chance(0.7) ? [`B-${dice.between(1, 12)}`] : [];
  const filled = dice.pick([0.3, 0.7, 1]);
  const cells = Array.from({ length: columnCount }, () =>
    dice.chance(filled) ? randomCell(dice) : "",
  );
  return dice.chance(0.5) ? [...name, ...cells].slice(0, columnCount) : cells;
}

function randomCell(dice: Dice): Cell {
  const day = (civilDay(2026, 1, 1) as CivilDay) + dice.between(-900, 900);
  const makes: readonly (() => Cell)[] = [
    () => "",
    () => dice.pick([" ", "\u00a0", "\n", "\t"]),
    () => dice.between(0, 400),
    () => dice.between(0, 400),
    () => dice.between(-50, 50_000),
    () => dice.between(-1000, 1000) / 8,
    () =>
      dice.pick([0.5, 1e21, Number.MAX_SAFE_INTEGER + 2, Number.MAX_VALUE, 5e-324, -0, 45474.75]),
    () => dice.chance(0.5),
    () => ({ day: day as CivilDay }),
    () => ({ day: day as CivilDay }),
    () => ({ day: dice.pick([-800_000, 0, 3_000_000]) as CivilDay }),
    () => namedDay(day as CivilDay, dice.pick(NAMED_FORMS), dice.pick(DAY_LOCALES)),
    () =>
      numbersOf(day as CivilDay, dice.pick(["day-first", "month-first"]), {
        mark: dice.pick(["/", ".", "-", " "]),
        shortYear: dice.chance(0.5),
        padded: dice.chance(0.5),
      }),
    () => `${dice.between(1, 31)}/${dice.between(1, 14)}`,
    () => dice.pick(HEADERS),
    () => dice.pick(WORDS),
    () => dice.pick(NASTY),
    () => dice.pick(NASTY),
    () => `${dice.pick(WORDS)} ${dice.between(0, 2030)}`,
    () => `${dice.between(0, 400)} ${dice.pick(WORDS)}`,
    () => `B-${dice.between(1, 12)}`,
    () => (dice.chance(0.1) ? dice.pick(LONG)(dice) : ""),
    // Another function's cell that hasn't finished.
    () => (dice.chance(0.02) ? "Loading..." : ""),
  ];
  return dice.pick(makes)();
}
