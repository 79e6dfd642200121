import * as text from "../sentences/made/program-faults";
import { PersonError } from "./person-error";
import { localeAsked, programWords, wholeNumberAsked } from "./program-words";
import { serialOfIso } from "./serial-day";

/** What the person asked the report for. */
export interface ReportOptions {
  readonly help: boolean;
  /** As it was typed; undefined for the sample nursery. */
  readonly file?: string;
  /** Serial day number. */
  readonly asOf?: number;
  readonly sheet?: string;
  /** What was told of headers, words in cells and names, as the functions' argument `columns` takes it. */
  readonly columns: readonly ToldWord[];
  /** Whole days. */
  readonly daysAhead?: number;
  /** How the workbook writes dates of two numbers and decimals, such as "en_GB" or "fr_FR". */
  readonly locale: string;
  /** Whether the grafters' takes are set beside one another, by name. */
  readonly people: boolean;
  /** Folder for the calculated workbook, as it was typed. */
  readonly out: string;
}

/** Our name, the person's word, and what that is. */
export type ToldWord = readonly [name: string, word: string, as: ToldAs];
// A format of the add-in's, in no language.
const TOLD_AS = { column: "header", word: "value", apart: "not the same" } as const;
type ToldAs = (typeof TOLD_AS)[keyof typeof TOLD_AS];

const MOST_DAYS_AHEAD = 3660;

/** @throws PersonError when the words make no sense */
export function readReportOptions(words: readonly string[]): ReportOptions {
  const { values, ...file } = parse(words);
  const daysAhead = wholeNumberAsked("--days-ahead", values["days-ahead"], MOST_DAYS_AHEAD);
  const asOf = values["as-of"] === undefined ? undefined : serialOfIso(values["as-of"]);
  if (asOf === null || (asOf !== undefined && !Number.isInteger(asOf))) {
    throw new PersonError(text.needsDay({ found: values["as-of"] ?? "" }));
  }
  const locale = localeAsked(values.locale);
  return {
    help: values.help ?? false,
    locale,
    out: values.out ?? "out",
    people: values.people ?? false,
    columns: (["column", "word", "apart"] as const).flatMap((option) =>
      (values[option] ?? []).map((words) => toldWord(option, words)),
    ),
    ...file,
    ...(daysAhead === undefined ? {} : { daysAhead }),
    ...(asOf === undefined ? {} : { asOf }),
    ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
  };
}

/** Our names hold no "=", words may. */
function toldWord(option: keyof typeof TOLD_AS, words: string): ToldWord {
  const at = words.indexOf("=");
  const [name, word] = [words.slice(0, at).trim(), words.slice(at + 1).trim()];
  if (at < 0 || name === "" || word === "") {
    const needs = { column: text.needsColumn, word: text.needsWord, apart: text.needsApart };
    throw new PersonError(needs[option]({ found: words }));
  }
  return [name, word, TOLD_AS[option]];
}

function parse(words: readonly string[]) {
  return programWords(words, {
    help: { type: "boolean", short: "h" },
    "as-of": { type: "string" },
    sheet: { type: "string" },
    column: { type: "string", multiple: true },
    word: { type: "string", multiple: true },
    apart: { type: "string", multiple: true },
    "days-ahead": { type: "string" },
    locale: { type: "string" },
    out: { type: "string" },
    people: { type: "boolean" },
  });
}
