import { allLanguages } from "../../core/words/all-languages";
import type { LanguageWords } from "../../core/words/language-words";
import type { Dice } from "./dice";
import type { Habit } from "./habit";
import { paired } from "./habits-of-columns";
import {
  holdsCounts,
  holdsDays,
  type Role,
  type Sheet,
  type TableColumn,
  withTables,
} from "./sheet";

function withColumns(
  sheet: Sheet,
  change: (column: TableColumn, index: number, columns: readonly TableColumn[]) => TableColumn,
): Sheet {
  return withTables(sheet, (table) => ({ ...table, columns: table.columns.map(change) }));
}

/** Words that a language has for a column; none where it lacks them. */
function wordsFor(role: Role, words: LanguageWords): readonly string[] {
  if (role.kind === "own") return [];
  if (role.kind === "fact") return words.facts[role.fact];
  const step = words.steps[role.step];
  if (step === undefined) return [];
  if (role.kind === "count") return step.count;
  // A step that isn't counted needs no word that says "day".
  return step.count.length === 0 ? [...step.day, ...plainNames(words, role.step)] : step.day;
}

/** Names of a step that can't be another: a "tape off" is asked about, and no word for the first opening. */
function plainNames({ steps, notPlain }: LanguageWords, step: string): readonly string[] {
  return (steps[step]?.name ?? [step]).filter((name) => !notPlain.includes(name));
}

function otherWord(role: Role, languages: readonly LanguageWords[], dice: Dice): string | null {
  const words = wordsFor(role, dice.pick(languages));
  return words.length === 0 ? null : capital(dice.pick(words));
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

const otherWords: Habit = {
  name: "headers in other words",
  at: {
    headers: (sheet, dice) => {
      const languages = dice.chance(0.3) ? allLanguages : [dice.pick(allLanguages)];
      const share = dice.pick([0.3, 1]);
      const known = new Map<string, string>();
      // Tables under one another mostly share a header.
      const sharedWords = dice.chance(0.7);
      return withTables(sheet, (table) => {
        if (!sharedWords) known.clear();
        return {
          ...table,
          columns: table.columns.map((column) => {
            const key = JSON.stringify(column.role);
            if (!known.has(key)) {
              const word = dice.chance(share) ? otherWord(column.role, languages, dice) : null;
              known.set(key, word ?? column.upper);
            }
            return { ...column, upper: known.get(key) as string };
          }),
        };
      });
    },
  },
};

/** What the lower row of a header says, by language: the day's word and the count's. */
const PARTS: readonly (readonly [language: string, day: string, count: string])[] = [
  ["English", "Date", "No."],
  ["English", "Day", "Number"],
  ["English", "date", "qty"],
  ["French", "Date", "Nb"],
  ["French", "Jour", "Qté"],
  ["Spanish", "Fecha", "Cant."],
  ["Portuguese", "Data", "Qtd."],
  ["Indonesian", "Tgl", "Jml"],
];

const twoRows: Habit = {
  name: "a header of two rows",
  at: {
    headers: (sheet, dice) => {
      const [language, day, count] = dice.pick(PARTS);
      const words = allLanguages.find((one) => one.language === language) as LanguageWords;
      const factsBelow = dice.chance(0.3);
      const names = new Map<string, string>();
      const nameOf = (step: string) => {
        const own = names.get(step) ?? capital(dice.pick(plainNames(words, step)));
        names.set(step, own);
        return own;
      };
      return withColumns(paired(sheet), (column, index, columns) => {
        const { role } = column;
        if (role.kind === "fact" || role.kind === "own") {
          return factsBelow ? { ...column, upper: "", lower: column.upper } : column;
        }
        if (role.kind === "day") return { ...column, upper: nameOf(role.step), lower: day };
        const before = columns[index - 1]?.role;
        // Merged cells hold their text once, in the first.
        const merged = before?.kind === "day" && before.step === role.step;
        return { ...column, upper: merged ? "" : nameOf(role.step), lower: count };
      });
    },
  },
};

/** Changes the header texts; in a header of two rows the lower ones are left. */
function decorated(
  name: string,
  change: (text: string, column: TableColumn, dice: Dice) => string,
): Habit {
  return {
    name,
    at: {
      headers: (sheet, dice) =>
        withColumns(sheet, (column) =>
          column.upper === "" ? column : { ...column, upper: change(column.upper, column, dice) },
        ),
    },
  };
}

const COUNT_UNITS = ["(no.)", "(no)", "[no.]", "(plants)", "(nb)", "(qty)", "n°", "(n.º)", "#"];
const DAY_UNITS = ["(date)", "(day)", "- date", "(dd/mm/yyyy)", "(m/d/yy)", "(jj/mm/aaaa)"];

const units = decorated("units in headers", (text, column, dice) => {
  if (column.lower !== "" || !dice.chance(0.6)) return text;
  if (holdsCounts(column)) return `${text} ${dice.pick(COUNT_UNITS)}`;
  return holdsDays(column) ? `${text} ${dice.pick(DAY_UNITS)}` : text;
});

const lineBreaks = decorated("line breaks in headers", (text, _, dice) =>
  text.replace(/ /g, (space) => (dice.chance(0.6) ? dice.pick(["\n", "\r\n", " \n"]) : space)),
);

const capitals = decorated("headers in capitals", (text) => text.toUpperCase());

const spaces = decorated("stray spaces in headers", (text, _, dice) =>
  dice.pick([text, ` ${text}`, `${text} `, `${text}\u00a0`, text.replace(/ /g, "  "), `${text}:`]),
);

export const habitsOfHeaders: readonly Habit[] = [
  otherWords,
  twoRows,
  units,
  lineBreaks,
  capitals,
  spaces,
];
