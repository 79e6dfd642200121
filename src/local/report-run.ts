import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { cantWriteCopy, notBuilt } from "../sentences/made/program-faults";
import { report as reportHelp } from "../sentences/made/program-help";
import * as text from "../sentences/made/report";
import { answerOf, draftOf, withFormats } from "./answer-tab";
import { freeName, withAsOf } from "./as-of-cell";
import { loadBundle } from "./bundle";
import { shownText } from "./cell-text";
import { columnsRead } from "./columns-read";
import { columnsSection } from "./columns-section";
import { openWorkbook } from "./engine";
import { foremostRows } from "./foremost-rows";
import { linesBelow } from "./lines-below";
import { PersonError } from "./person-error";
import { fileAsked } from "./program-words";
import { readApart } from "./read-apart";
import { recordsTabs, timetableSheet } from "./records-sheet";
import { filledCells, wholeColumns } from "./references";
import { type ReportOptions, readReportOptions } from "./report-options";
import { type ResultTab, resultTabs } from "./result-tabs";
import { serialOfIso } from "./serial-day";
import { settingReference } from "./settings-tab";
import type { SheetCell, SheetCells } from "./sheet-cells";
import { TAB_NAMES } from "./tab-names.table";
import { textTable } from "./tables";
import { wordsSection } from "./words-section";
import { type SheetDraft, workbookData } from "./workbook-data";
import { wrapText } from "./wrap-text";
import { writeXlsx } from "./xlsx-out";

/** Where the report runs, and how it speaks. */
export interface ReportSurroundings {
  /** The project's folder, with dist/ and sample-sheets/ in it. */
  readonly root: string;
  /** Folders in which a file that is named without one is looked for, the first one first. */
  readonly folders: readonly string[];
  /** Today as YYYY-MM-DD. */
  readonly today: string;
  /** The time zone of this process. */
  readonly zone: string;
  readonly print: (text: string) => void;
  readonly progress: (text: string) => void;
}

type Row = readonly (SheetCell | null)[];

const BUILT_FILE = "dist/Code.js";
const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";
const LINE_WIDTH = 120;

/**
 * Opens a nursery's file, lets the add-in calculate it, prints the answers and writes the
 * calculated copy.
 * @param words the words after the program's name
 * @throws PersonError when something is wrong that the person can mend
 */
export async function runReport(words: readonly string[], at: ReportSurroundings): Promise<void> {
  const options = readReportOptions(words);
  if (options.help) return at.print(reportHelp());

  const file = findFile(options.file, at);
  at.progress(text.calculating({ file: path.basename(file) }));
  const code = builtFile(at);
  const settings = { spreadsheetZone: at.zone, scriptZone: at.zone, locale: options.locale };
  const bundle = loadBundle(code, settings);
  const addInNames = new Set(bundle.functions.map(({ name }) => name.toUpperCase()));
  const opened = await readApart(file, addInNames);
  const { drafts, records, from, isBlank } = recordsTabs(opened, bundle, options);
  const timetable = timetableSheet(opened);
  const asOf = withAsOf(drafts, options.asOf, serialOfIso(at.today) ?? 0);
  const tabs = resultTabs({
    records: wholeColumns(records),
    filledRecords: filledCells(records),
    columns: options.columns,
    timetable: timetable ? wholeColumns(timetable) : "",
    asOf: asOf.reference,
    daysAhead: String(options.daysAhead ?? settingReference(opened, "Days ahead") ?? 7),
    level: settingReference(opened, "Level") ?? "",
    places: filledTab(opened, "places"),
    prices: filledTab(opened, "prices"),
    orders: filledTab(opened, "orders"),
    crew: filledTab(opened, "crew"),
    closedDays: filledTab(opened, "closedDays"),
    assurance: settingReference(opened, "Assurance") ?? "",
    people: options.people,
  }).map((tab) => ({ ...tab, name: freeName(tab.name, asOf.drafts) }));

  const workbook = openWorkbook(
    workbookData(path.basename(file), [
      ...tabs.map((tab) => draftOf(tab, tab.name)),
      ...asOf.drafts,
    ]),
    bundle,
  );
  await workbook.settled();
  const sheets = workbook.sheets();
  workbook.close();

  const results = sheets.map((sheet) => {
    const tab = tabs.find(({ name }) => name === sheet.name);
    return tab ? withFormats(sheet, tab.shares) : sheet;
  });
  refuseIfNothingWorked(tabs, results);

  const day = shownText(
    results.find(({ name }) => name === asOf.sheet)?.rows[asOf.row]?.[asOf.column],
  );
  at.print(
    text.asOf({
      file: path.basename(file),
      day,
      tabs: from.length,
      names: from,
      records: records.name,
      own: timetable ? "yes" : "no",
      timetable: timetable?.name ?? "",
    }),
  );
  if (isBlank) at.print(text.noBatchesYet());
  for (const tab of tabs) at.print(section(tab, results));
  const read = columnsRead(code, {
    drafts: opened,
    tabs: from,
    timetable: timetable?.name ?? null,
    told: options.columns,
    settings,
  });
  if (read.columns.length > 0) at.print(columnsSection(read, LINE_WIDTH));
  if (read.words.length > 0) at.print(wordsSection(read.words, LINE_WIDTH));
  at.print(text.made({ file: save(results, { file, options, at, addInNames }) }));
}

/** The columns of the tab with such a table by its name, '' where there is none or it has nothing under its header. */
function filledTab(drafts: readonly SheetDraft[], kind: keyof typeof TAB_NAMES): string {
  const names = TAB_NAMES[kind].split(", ");
  const tab = drafts.find((draft) => names.includes(withoutAccents(draft.name)));
  return tab === undefined || tab.rows.length < 2 ? "" : wholeColumns(tab);
}

function withoutAccents(name: string): string {
  return name.trim().toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");
}

function findFile(named: string | undefined, at: ReportSurroundings): string {
  return named === undefined ? path.join(at.root, SAMPLE) : fileAsked(named, at.folders);
}

function builtFile(at: ReportSurroundings): string {
  const file = path.join(at.root, BUILT_FILE);
  if (!existsSync(file)) {
    throw new PersonError(notBuilt({ file: BUILT_FILE }));
  }
  return readFileSync(file, "utf8");
}

/** If no answer came out, the table itself is at fault, and one sentence says it best. */
function refuseIfNothingWorked(tabs: readonly ResultTab[], results: readonly SheetCells[]): void {
  const troubles = tabs.map((tab) => {
    const sheet = results.find(({ name }) => name === tab.name);
    return sheet ? answerOf(sheet).trouble : "";
  });
  const [first] = troubles;
  if (first && troubles.every(Boolean)) throw new PersonError(first);
}

function section(tab: ResultTab, results: readonly SheetCells[]): string {
  const sheet = results.find(({ name }) => name === tab.name);
  const { rows: all, trouble } = sheet
    ? answerOf(sheet)
    : { rows: [], trouble: text.notCalculated() };
  const title = `${tab.heading}\n${"═".repeat(tab.heading.length)}\n`;
  if (trouble) return `${title}${trouble}\n`;
  const open = tab.closing ? all.slice(0, -1) : all;
  const rows = tab.foremost ? foremostRows(open, tab.foremost) : open;
  const table = textTable(rows, {
    width: LINE_WIDTH,
    limit: tab.limit,
    tab: tab.name,
    ...(tab.columns ? { columns: tab.columns } : {}),
  });
  const lines = [
    ...(tab.closing ? [closingSentence(all, tab.closing)] : []),
    ...belowTable(rows, tab),
  ];
  const below = lines.flatMap((line) => wrapText(line, LINE_WIDTH));
  return `${[`${title}${table}`, ...below].join("\n")}\n`;
}

/** The last row of an answer that sums it up, as a sentence. */
function closingSentence(rows: readonly Row[], columns: readonly string[]): string {
  const header = rows[0]?.map(shownText) ?? [];
  const last = rows.at(-1) ?? [];
  return columns.map((name) => shownText(last[header.indexOf(name)])).join(": ");
}

/** The column that is printed below, of the rows that are printed. */
function belowTable(rows: readonly Row[], { below, limit }: ResultTab): string[] {
  if (!below) return [];
  const lines = linesBelow(rows.slice(0, 1 + limit), below);
  return lines.length === 0 ? [] : ["", below.heading, ...lines];
}

function save(
  results: readonly SheetCells[],
  {
    file,
    options,
    at,
    addInNames,
  }: {
    readonly file: string;
    readonly options: ReportOptions;
    readonly at: ReportSurroundings;
    readonly addInNames: ReadonlySet<string>;
  },
): string {
  const name = `${path.basename(file, path.extname(file))}-calculated.xlsx`;
  const folder = path.resolve(at.folders[0] ?? ".", options.out);
  try {
    mkdirSync(folder, { recursive: true });
    writeFileSync(path.join(folder, name), writeXlsx(results, addInNames));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (!code) throw error;
    throw new PersonError(cantWriteCopy({ name: path.join(options.out, name), why: code }));
  }
  return path.join(options.out, name);
}
