import * as text from "../../sentences/made/program-faults";
import { PersonError } from "../person-error";
import { localeAsked, programWords, wholeNumberAsked } from "../program-words";

/** What the person asked of the local page. */
export interface PageOptions {
  readonly help: boolean;
  /** As it was typed; undefined for the sample nursery. */
  readonly file?: string;
  readonly opensBrowser: boolean;
  /** 0 for any free one. */
  readonly port: number;
  /** How the workbook writes dates of two numbers and decimals, such as "en_GB" or "fr_FR". */
  readonly locale: string;
  /** The spreadsheet's time zone; undefined for that of the browser. */
  readonly zone?: string;
  /** Draws the order of answers to the sidebar; undefined for any order. */
  readonly seed?: number;
  /** Folder of the built add-in, as it was typed. */
  readonly dist: string;
}

/** @throws PersonError when the words make no sense */
export function readPageOptions(words: readonly string[]): PageOptions {
  const { values, ...file } = parse(words);
  const locale = localeAsked(values.locale);
  if (values.zone !== undefined && !isZone(values.zone)) {
    throw new PersonError(text.needsZone({ found: values.zone }));
  }
  const seed = wholeNumberAsked("--seed", values.seed, 2 ** 31);
  return {
    help: values.help ?? false,
    opensBrowser: !values["no-open"],
    port: wholeNumberAsked("--port", values.port, 65_535) ?? 0,
    locale,
    dist: values.dist ?? "dist",
    ...file,
    ...(values.zone === undefined ? {} : { zone: values.zone }),
    ...(seed === undefined ? {} : { seed }),
  };
}

/** What only the report knows. */
const REPORT_WORDS = /^--(?:as-of|sheet|days-ahead|out)(?:=|$)/;

function parse(words: readonly string[]) {
  const forReport = words.find((word) => REPORT_WORDS.test(word));
  if (forReport !== undefined) {
    throw new PersonError(text.forReport({ word: forReport, words: words.join(" ") }));
  }
  return programWords(words, {
    help: { type: "boolean", short: "h" },
    "no-open": { type: "boolean" },
    port: { type: "string" },
    locale: { type: "string" },
    zone: { type: "string" },
    seed: { type: "string" },
    dist: { type: "string" },
  });
}

function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
