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
  /** What was told of columns: our name, the header in the sheet. */
  readonly columns: readonly (readonly [name: string, header: string])[];
  /** Whole days. */
  readonly daysAhead?: number;
  /** How the workbook writes dates of two numbers and decimals, such as "en_GB" or "fr_FR". */
  readonly locale: string;
  /** Whether the grafters' takes are set beside one another, by name. */
  readonly people: boolean;
  /** Folder for the calculated workbook, as it was typed. */
  readonly out: string;
}

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
    columns: (values.column ?? []).map(toldColumn),
    ...file,
    ...(daysAhead === undefined ? {} : { daysAhead }),
    ...(asOf === undefined ? {} : { asOf }),
    ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
  };
}

/** Our names hold no "=", headers may. */
function toldColumn(words: string): readonly [name: string, header: string] {
  const at = words.indexOf("=");
  const [name, header] = [words.slice(0, at).trim(), words.slice(at + 1).trim()];
  if (at < 0 || name === "" || header === "") {
    throw new PersonError(text.needsColumn({ found: words }));
  }
  return [name, header];
}

function parse(words: readonly string[]) {
  return programWords(words, {
    help: { type: "boolean", short: "h" },
    "as-of": { type: "string" },
    sheet: { type: "string" },
    column: { type: "string", multiple: true },
    "days-ahead": { type: "string" },
    locale: { type: "string" },
    out: { type: "string" },
    people: { type: "boolean" },
  });
}
