import { cellText } from "../../core";
import { type HeaderLine, headerLines, valueLines } from "../words/corpus";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import { type Role, roleKey, type TableColumn, withTables } from "./sheet";

/**
 * Words that strangers to our lists write: headers and names of methods from the seen part of
 * tests/checks/office-words (invented and from memory, as its SOURCE.md says), and names spelt as its
 * groups of spellings show. Headers that no honest reader could be sure of are left to check:words.
 */
const MEANINGS: Readonly<Record<string, string>> = {
  batch: "batch",
  fromLot: "from lot",
  variety: "variety",
  rootstock: "rootstock",
  method: "method",
  place: "place",
  grafter: "grafter",
  scionSource: "scion source",
  culled: "culled",
  dispatched: "dispatched",
  closed: "closed",
  note: "note",
  "day of sowing": "start day",
  "count of sowing": "start count",
  "day of germination": "germination day",
  "count of germination": "germination count",
  "day of grafting": "grafting day",
  "count of grafting": "grafting count",
  "day of first release": "first release day",
  "day of bud break": "bud break day",
  "day of take count": "take count day",
  "count of take count": "takes",
  "day of first flush": "flush day",
  "day of flush hardening": "hardening day",
  "day of union closed": "union closed day",
  "day of ready": "ready day",
  "count of ready": "ready count",
};
const LANGUAGES = ["en", "fr", "es", "pt", "id"] as const;
/** Of a header of two rows, which a table of one can't have. */
const TWO_ROWS = "//";

/** Nuts, stones and cuttings are started elsewhere: the sample sows cocoa. */
const ofThisCrop = ({ meaning, crop }: HeaderLine) =>
  !meaning.startsWith("start ") || crop === "cocoa" || crop === "mixed";

const headers = headerLines("seen").filter(
  (line) =>
    line.kind === "records" &&
    line.must === "right" &&
    !line.header.includes(TWO_ROWS) &&
    ofThisCrop(line),
);
const methods = valueLines("seen").filter(
  ({ kind, must, crop, is }) =>
    kind === "method" && must === "same" && crop === "cocoa" && is === "cleft graft",
);

/** The words of one language that the corpus has for a column and the row has not used; our own where it has none. */
function strangersHeader(role: Role, language: string, used: ReadonlySet<string>): string[] {
  const meaning = MEANINGS[roleKey(role)];
  return headers
    .filter((line) => line.language === language && line.meaning === meaning)
    .map(({ header }) => header)
    .filter((header) => !used.has(header.toLowerCase()));
}

const renamedHeaders: Habit = {
  name: "headers in a stranger's words",
  at: {
    headers: (sheet, dice) => {
      const language = dice.pick(LANGUAGES);
      const used = new Set<string>();
      return withTables(sheet, (table) => ({
        ...table,
        columns: table.columns.map((column): TableColumn => {
          const words = strangersHeader(column.role, language, used);
          const upper = words.length === 0 ? column.upper : dice.pick(words);
          used.add(upper.toLowerCase());
          return { ...column, upper };
        }),
      }));
    },
  },
};

/** The columns whose names people spell in more ways than one. */
const NAMES: ReadonlySet<string> = new Set([
  "variety",
  "rootstock",
  "place",
  "grafter",
  "scionSource",
]);
/** So many cells bear a name before one of them is spelt otherwise, so that its commonest spelling stays. */
const FEWEST_ALIKE = 4;

const renamedValues: Habit = {
  name: "methods and names in a stranger's words",
  at: {
    cells: (sheet, dice) => {
      const spelling = cellText(dice.pick(methods).spelling);
      return withTables(sheet, (table) => ({
        ...table,
        rows: table.columns.reduce((rows, { role }, index) => {
          const key = roleKey(role);
          if (key !== "method" && !NAMES.has(key)) return rows;
          const seen = new Map<string, number>();
          return rows.map((row) => {
            const text = row.kind === "batch" ? cellText(row.cells[index] ?? "") : "";
            if (row.kind !== "batch" || text === "") return row;
            const times = (seen.get(text) ?? 0) + 1;
            seen.set(text, times);
            if (key === "method")
              return withCell(row, index, text === COCOA_CLEFT ? spelling : text);
            return times % FEWEST_ALIKE === 0 ? withCell(row, index, respelt(text, dice)) : row;
          });
        }, table.rows),
      }));
    },
  },
};

const COCOA_CLEFT = "Cocoa cleft graft";

function withCell<Row extends { readonly cells: readonly unknown[] }>(
  row: Row,
  at: number,
  cell: string,
): Row {
  return { ...row, cells: row.cells.map((one, index) => (index === at ? cell : one)) };
}

/** A name as another hand spells it: one name to any person (groups G101 to G146 of the corpus). */
function respelt(name: string, dice: Dice): string {
  return dice.pick([
    name.toUpperCase(),
    name.toLowerCase(),
    `${name} `,
    name.replace(/ /g, "  "),
    name.replace(/(?<=\p{L}) (?=\p{N})|(?<=\p{N}) (?=\p{L})/gu, "-"),
    name.replace(/(?<=\p{L}) (?=\p{N})/gu, ""),
    name.replace(/[a-z]/gi, (letter) => String.fromCharCode(letter.charCodeAt(0) + 0xfee0)),
  ]);
}

/** Kept apart from all other habits: nobody can read every word, and the others are read whole. */
export const strangersWords: readonly Habit[] = [renamedHeaders, renamedValues];
