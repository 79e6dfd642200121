import { parseArgs } from "node:util";
import * as text from "../../sentences/made/program-faults";
import { PersonError } from "../person-error";

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
  const { values, positionals } = parse(words);
  if (positionals.length > 1) {
    throw new PersonError(text.oneFile({ files: positionals }));
  }
  const locale = values.locale ?? "en_GB";
  if (!/^[a-z]{2,3}(?:[_-][A-Za-z]{2,4})?$/.test(locale)) {
    throw new PersonError(text.needsLocale({ found: locale }));
  }
  if (values.zone !== undefined && !isZone(values.zone)) {
    throw new PersonError(text.needsZone({ found: values.zone }));
  }
  const seed = wholeNumber("--seed", values.seed, 2 ** 31);
  return {
    help: values.help ?? false,
    opensBrowser: !values["no-open"],
    port: wholeNumber("--port", values.port, 65_535) ?? 0,
    locale,
    dist: values.dist ?? "dist",
    ...(positionals[0] === undefined ? {} : { file: positionals[0] }),
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
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        help: { type: "boolean", short: "h" },
        "no-open": { type: "boolean" },
        port: { type: "string" },
        locale: { type: "string" },
        zone: { type: "string" },
        seed: { type: "string" },
        dist: { type: "string" },
      },
    });
  } catch (error) {
    const [why = ""] = (error as Error).message.split(/[.\n]/);
    throw new PersonError(text.unknownWords({ why }));
  }
}

function wholeNumber(option: string, found: string | undefined, most: number): number | undefined {
  if (found === undefined) return undefined;
  if (/^\d+$/.test(found) && Number(found) <= most) return Number(found);
  throw new PersonError(text.needsNumber({ option, most: String(most), found }));
}

function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
