import { parseArgs } from "node:util";
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

export const PAGE_HELP = `Usage: npm start -- [FILE] [options]

Opens a workbook (.xlsx) or a table (.csv) in a page of your browser, with the add-in at work in
it: its sheet functions, its menu and its sidebar. Nothing leaves this computer. The file itself
is only read: Save in the page writes a copy beside it, under a new name each time. Without FILE
an invented nursery is opened.

  --no-open        print the address and leave the browser alone
  --port N         the port to use (else a free one)
  --locale CODE    how dates and decimals are written: en_GB (usual), en_US, fr_FR ...
  --zone NAME      the spreadsheet's time zone, such as Asia/Kolkata (else the browser's)
  --seed N         draw the order of answers to the sidebar from this number (else any order)
  --dist DIR       folder of the built add-in (dist)
  --help           this text

It runs until you press Ctrl+C.
`;

/** @throws PersonError when the words make no sense */
export function readPageOptions(words: readonly string[]): PageOptions {
  const { values, positionals } = parse(words);
  if (positionals.length > 1) {
    throw new PersonError(`One file at a time: got ${positionals.join(" and ")}`);
  }
  const locale = values.locale ?? "en_GB";
  if (!/^[a-z]{2,3}(?:[_-][A-Za-z]{2,4})?$/.test(locale)) {
    throw new PersonError(`--locale needs a code such as en_GB or fr_FR, got "${locale}"`);
  }
  if (values.zone !== undefined && !isZone(values.zone)) {
    throw new PersonError(`--zone needs a name such as Asia/Kolkata, got "${values.zone}"`);
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
    throw new PersonError(
      `${forReport} belongs to the report in the terminal: npm run report -- ${words.join(" ")}`,
    );
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
    const [sentence] = (error as Error).message.split(/[.\n]/);
    throw new PersonError(`${sentence} (--help lists the options)`);
  }
}

function wholeNumber(name: string, text: string | undefined, most: number): number | undefined {
  if (text === undefined) return undefined;
  if (/^\d+$/.test(text) && Number(text) <= most) return Number(text);
  throw new PersonError(`${name} needs a whole number from 0 to ${most}, got "${text}"`);
}

function isZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat("en", { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
