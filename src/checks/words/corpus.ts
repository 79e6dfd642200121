import { readFileSync } from "node:fs";
import path from "node:path";

/** A line of headers.csv; tests/checks/office-words/SOURCE.md says what each field holds. */
export interface HeaderLine {
  readonly table: string;
  readonly language: string;
  readonly crop: string;
  readonly kind: string;
  readonly header: string;
  readonly meaning: string;
  /** "right", or "asked-is-fine" where no honest reader could be sure. */
  readonly must: string;
  /** Cells of the first three rows. */
  readonly examples: readonly string[];
  readonly common: boolean;
}

/** A line of values.csv. */
export interface ValueLine {
  readonly id: string;
  readonly group: string;
  readonly kind: string;
  readonly language: string;
  readonly crop: string;
  readonly spelling: string;
  readonly is: string;
  readonly must: string;
  readonly apartFrom: string;
  readonly common: boolean;
}

/**
 * The parts of the corpus: of the unseen one nothing but counts may be shown, "tables" are more of those
 * that stand beside the records, and have headers alone.
 */
export type Part = "seen" | "practice" | "unseen" | "tables";

const FOLDER = "tests/checks/office-words";
/** Beginnings of the names of a part's files; SOURCE.md beside them says who wrote which. */
const FILES: Readonly<Record<Part, readonly string[]>> = {
  seen: ["", "opened/"],
  practice: ["practice/a-", "practice/b-", "practice/c-", "practice/d-", "practice/e-"],
  unseen: ["unseen/"],
  tables: ["../office-tables/"],
};

export function headerLines(part: Part): readonly HeaderLine[] {
  return csv(part, "headers.csv").map((field) => ({
    table: field("table"),
    language: field("language"),
    crop: field("crop"),
    kind: field("kind"),
    header: field("header"),
    meaning: field("meaning"),
    must: field("must"),
    examples: [1, 2, 3].map((row) => field(`example ${row}`)),
    common: field("common") === "yes",
  }));
}

export function valueLines(part: Part): readonly ValueLine[] {
  return csv(part, "values.csv").map((field) => ({
    id: field("id"),
    group: field("group"),
    kind: field("kind"),
    language: field("language"),
    crop: field("crop in words") || field("crop"),
    spelling: field("spelling"),
    is: field("is"),
    must: field("must"),
    apartFrom: field("keep apart from"),
    common: field("common") === "yes",
  }));
}

/** @throws Error when a line lacks a field: a corpus that is not read whole scores nothing */
function csv(part: Part, name: string): readonly ((field: string) => string)[] {
  return FILES[part].flatMap((beginning) => linesIn(path.join(FOLDER, `${beginning}${name}`)));
}

function linesIn(file: string): readonly ((field: string) => string)[] {
  const [header = [], ...rows] = csvRows(readFileSync(file, "utf8"));
  return rows.map((row) => {
    if (row.length !== header.length) throw new Error(`${file}: a line has ${row.length} fields`);
    return (field) => {
      const value = row[header.indexOf(field)];
      if (value === undefined) throw new Error(`${file} has no field ${field}`);
      return value;
    };
  });
}

/** Fields by RFC 4180, outer blanks kept. */
function csvRows(text: string): readonly string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  for (const [, quoted, plain = "", end] of text.matchAll(
    /(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g,
  )) {
    row.push(quoted?.replaceAll('""', '"') ?? plain);
    if (end === ",") continue;
    if (row.length > 1 || row[0] !== "") rows.push(row);
    row = [];
  }
  return rows;
}
