import { type Cell, type Grid, gridOf } from "../../core";
import type { HeaderLine } from "./corpus";

/** Between the two rows of a header. */
const OVER = "//";

/** A table of the corpus as cells: its header of one or two rows, and three rows of examples. */
export function officeTable(columns: readonly HeaderLine[]): Grid {
  const headers = columns.map(({ header }) => header);
  const rows = [0, 1, 2].map((row) => columns.map(({ examples }) => cellOf(examples[row] ?? "")));
  if (!headers.some((header) => header.includes(OVER))) return gridOf([headers, ...rows]);
  const parts = headers.map((header) => {
    const [upper = "", lower] = header.split(OVER).map((part) => part.trim());
    return lower === undefined ? { upper: "", lower: upper } : { upper, lower };
  });
  // A merged cell's word stands in the first of its columns alone.
  const uppers = parts.map(({ upper }, at) => (upper === parts[at - 1]?.upper ? "" : upper));
  return gridOf([uppers, parts.map(({ lower }) => lower), ...rows]);
}

/** As a sheet takes it when it is typed or imported: plain whole numbers are numbers, all else stays text. */
function cellOf(text: string): Cell {
  return /^(?:0|[1-9]\d*)$/.test(text) ? Number(text) : text;
}

/** How each of the corpus's languages writes numbers and dates. */
const LOCALES: Readonly<Record<string, string>> = {
  en: "en_GB",
  fr: "fr_FR",
  es: "es_ES",
  pt: "pt_BR",
  id: "id_ID",
};

export function localeOf(language: string): string {
  const locale = LOCALES[language];
  if (locale === undefined) throw new Error(`no locale for the language ${language}`);
  return locale;
}
