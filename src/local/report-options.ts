import { parseArgs } from "node:util";
import { PersonError } from "./person-error";
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

export const REPORT_HELP = `Usage: npm run report -- [FILE] [options]

Opens a workbook (.xlsx) or a table (.csv) with the records of batches, calculates the due
list, the stages, the take rates and the check of the records with the add-in's own sheet
functions, prints them, and writes the calculated workbook beside them. FILE itself is only
read. Without FILE an invented nursery is opened.

  --as-of YYYY-MM-DD   the day to look from (else the workbook's As-of day, else today)
  --sheet NAME         the tab that holds the records (else it is found by its header)
  --column "OUR NAME=THEIR HEADER"   how to read a column whose header can't be guessed, such as
                       "Takes=Living in May"; once for each such column
  --days-ahead N       how far the due list looks ahead (else the workbook's Days ahead, else 7)
  --locale CODE        how dates and decimals are written: en_GB (usual), en_US, fr_FR ...
  --people             also the take rates of each grafter, by name
  --out DIR            folder for the calculated workbook (out)
  --help               this text
`;

const MOST_DAYS_AHEAD = 3660;

/** @throws PersonError when the words make no sense */
export function readReportOptions(words: readonly string[]): ReportOptions {
  const { values, positionals } = parse(words);
  if (positionals.length > 1) {
    throw new PersonError(`One file at a time: got ${positionals.join(" and ")}`);
  }
  const daysAhead = values["days-ahead"];
  if (
    daysAhead !== undefined &&
    (!/^\d+$/.test(daysAhead) || Number(daysAhead) > MOST_DAYS_AHEAD)
  ) {
    throw new PersonError(
      `--days-ahead needs a whole number of days from 0 to ${MOST_DAYS_AHEAD}, got "${daysAhead}"`,
    );
  }
  const asOf = values["as-of"] === undefined ? undefined : serialOfIso(values["as-of"]);
  if (asOf === null || (asOf !== undefined && !Number.isInteger(asOf))) {
    throw new PersonError(`--as-of needs a day as YYYY-MM-DD, got "${values["as-of"]}"`);
  }
  const locale = values.locale ?? "en_GB";
  if (!/^[a-z]{2,3}(?:[_-][A-Za-z]{2,4})?$/.test(locale)) {
    throw new PersonError(`--locale needs a code such as en_GB or fr_FR, got "${locale}"`);
  }
  return {
    help: values.help ?? false,
    locale,
    out: values.out ?? "out",
    people: values.people ?? false,
    columns: (values.column ?? []).map(toldColumn),
    ...(positionals[0] === undefined ? {} : { file: positionals[0] }),
    ...(daysAhead === undefined ? {} : { daysAhead: Number(daysAhead) }),
    ...(asOf === undefined ? {} : { asOf }),
    ...(values.sheet === undefined ? {} : { sheet: values.sheet }),
  };
}

/** Our names hold no "=", headers may. */
function toldColumn(words: string): readonly [name: string, header: string] {
  const at = words.indexOf("=");
  const [name, header] = [words.slice(0, at).trim(), words.slice(at + 1).trim()];
  if (at < 0 || name === "" || header === "") {
    throw new PersonError(`--column needs "our name=their header", got "${words}"`);
  }
  return [name, header];
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        help: { type: "boolean", short: "h" },
        "as-of": { type: "string" },
        sheet: { type: "string" },
        column: { type: "string", multiple: true },
        "days-ahead": { type: "string" },
        locale: { type: "string" },
        out: { type: "string" },
        people: { type: "boolean" },
      },
    });
  } catch (error) {
    const [sentence] = (error as Error).message.split(/[.\n]/);
    throw new PersonError(`${sentence} (--help lists the options)`);
  }
}
