import { parseArgs } from "node:util";
import * as text from "../sentences/made/program-faults";
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

const MOST_DAYS_AHEAD = 3660;

/** @throws PersonError when the words make no sense */
export function readReportOptions(words: readonly string[]): ReportOptions {
  const { values, positionals } = parse(words);
  if (positionals.length > 1) {
    throw new PersonError(text.oneFile({ files: positionals }));
  }
  const daysAhead = values["days-ahead"];
  if (
    daysAhead !== undefined &&
    (!/^\d+$/.test(daysAhead) || Number(daysAhead) > MOST_DAYS_AHEAD)
  ) {
    throw new PersonError(
      text.needsNumber({
        option: "--days-ahead",
        most: String(MOST_DAYS_AHEAD),
        found: daysAhead,
      }),
    );
  }
  const asOf = values["as-of"] === undefined ? undefined : serialOfIso(values["as-of"]);
  if (asOf === null || (asOf !== undefined && !Number.isInteger(asOf))) {
    throw new PersonError(text.needsDay({ found: values["as-of"] ?? "" }));
  }
  const locale = values.locale ?? "en_GB";
  if (!/^[a-z]{2,3}(?:[_-][A-Za-z]{2,4})?$/.test(locale)) {
    throw new PersonError(text.needsLocale({ found: locale }));
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
    throw new PersonError(text.needsColumn({ found: words }));
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
    const [why = ""] = (error as Error).message.split(/[.\n]/);
    throw new PersonError(text.unknownWords({ why }));
  }
}
