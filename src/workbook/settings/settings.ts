/*
 * Longer than most: settings are read, written and laid out here, so that none is known to two of
 * the three alone.
 */
import {
  isOfTable,
  LEAVE_ALONE,
  NO_TAB,
  OLDER_TOLD_HEADER,
  TOLD_AS,
  TOLD_HEADER,
  type ToldAs,
  toldAs,
} from "../../core";
import { HIDDEN, hidesLooks } from "../../door/index";
import * as text from "../../sentences/made/settings-tab";
import { columnLetters } from "../host/cell-name";
import { type FormulaPart, LEFT_OUT, TODAY, tabPart } from "../host/formula-text";
import { MARK, SETTINGS_HEADER } from "../host/mark";
import { safeText } from "../host/safe-text";
import { scriptVersion } from "../host/version";
import { isOurs, OWN_TABS, ownCells } from "../tabs/own-tabs";
import { type OwnLayout, straightValues } from "../tabs/straighten";
import { DAY_FORMAT, type TabCell, type TabContent } from "../tabs/tab-content";
import {
  type FoundSettings,
  findSettings,
  LABEL,
  MADE_ROW,
  NEWER_NAMES,
  SETTING_NAMES,
  type SettingName,
} from "./found-settings";
import type { OwnSettings } from "./own-settings";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What a person has set, in a tab of their workbook: a copied workbook keeps its tabs. */
export interface Settings {
  readonly recordsTab: string;
  /** The person's own tab with the timetable; null where it is ours. */
  readonly timetableTab: string | null;
  /** Serial, date or text as the cell holds it; read by the door. */
  readonly asOf: unknown;
  readonly level: unknown;
  readonly daysAhead: unknown;
  /** The header by which the tab of takes compared is made, NO_TAB, or empty for the usual one. */
  readonly compareBy: string;
  /** Whether people are called by their initials. */
  readonly initials: boolean;
  /** Whether looks are listed among what is due. */
  readonly looks: boolean;
  /** What was told of words, as the columns argument takes it. */
  readonly columns: readonly ToldRow[];
}

/** Our name, the person's word, and what that is. */
export type ToldRow = readonly [name: string, word: string, as: ToldAs];

// What the settings may hold is read back, as NO_TAB is: a format, in no language.
const NAMES = "names";
const INITIALS = "initials";
const SHOWN = "shown";

/** What stands beside the settings that the tab of an older add-in lacks. */
const WHAT_FOR = {
  compareBy: () => text.compareBy({ noTab: NO_TAB }),
  people: () => text.people({ initials: INITIALS, names: NAMES }),
  looks: () => text.looks({ shown: SHOWN, hidden: HIDDEN }),
} as const;

const USUAL_LEVEL = 0.8;
const USUAL_DAYS_AHEAD = 7;

/** Rows kept free for words that are told by hand. */
export const TOLD_ROWS = 200;
/** As many were in the tabs of older add-ins. */
const OLDER_TOLD_ROWS = 40;

const LAYOUT: OwnLayout = {
  // Overwritten at once by the settings' own line.
  title: OWN_TABS.settings,
  header: SETTINGS_HEADER,
  // Every line may be the person's, and all are found by their labels.
  filled: [],
  mendedBy: "setUp",
};

/** A column as the page says it. */
export function toldHeader({
  header,
  readAs,
}: {
  readonly header: string;
  readonly readAs: string | null;
}): ToldRow {
  return [readAs ?? LEAVE_ALONE, header, TOLD_AS.header];
}

/** What was told that holds for a tab: of its headers only where it is the one they stand in. */
export function toldFor(settings: Settings | null, tab: string): readonly ToldRow[] {
  const told = settings?.columns ?? [];
  return settings?.recordsTab === tab
    ? told
    : told.filter(([name, , as]) => as !== TOLD_AS.header || isOfTable(name));
}

/** @returns null when the workbook has not been set up */
export function readSettings(workbook: Workbook): Settings | null {
  const own = ownCells(workbook, OWN_TABS.settings);
  if (own === null) return null;
  const cells = own.values;
  const found = findSettings(cells);
  const value = (name: SettingName): unknown => {
    const row = found.row[name];
    return row === null ? "" : (cells[row]?.[found.values] ?? "");
  };
  const people = String(value("people")).trim();
  return {
    recordsTab: String(value("recordsTab")),
    timetableTab: String(value("timetableTab")).trim() || null,
    asOf: value("asOf"),
    level: value("level"),
    daysAhead: value("daysAhead"),
    compareBy: String(value("compareBy")).trim(),
    // Whatever else was typed there, such as the word in another language, was not typed for names.
    initials: people !== "" && people.toLowerCase() !== NAMES,
    looks: !hidesLooks(value("looks")),
    columns: toldIn(cells, found),
  };
}

/** What was told of words: below their header; in a tab that was sorted, wherever they have come to. */
function toldIn(cells: readonly (readonly unknown[])[], found: FoundSettings): readonly ToldRow[] {
  const { labels, values, whats, row, isOrderly } = found;
  const first = isOrderly ? (row.columnsHeader ?? 0) + 1 : 0;
  const settings = new Set<number | null>(Object.values(row));
  const room = isOrderly ? roomForTold(cells, found) : cells.length;
  return cells.flatMap((line, at): ToldRow[] => {
    const [name, word] = [String(line[labels] ?? ""), String(line[values] ?? "")];
    if (at < first || at >= first + room) return [];
    if (name === "" || word === "" || settings.has(at)) return [];
    if (name === SETTINGS_HEADER[0] || name.startsWith(MARK)) return [];
    // A third column of an older tab may hold the person's own remarks.
    return [[name, word, toldAs(line[whats] ?? "") ?? TOLD_AS.header]];
  });
}

/** Rows below the header of the told words that are for them. */
function roomForTold(cells: readonly (readonly unknown[])[], { row, labels }: FoundSettings) {
  const header = row.columnsHeader === null ? undefined : cells[row.columnsHeader];
  return header?.[labels] === OLDER_TOLD_HEADER[0] ? OLDER_TOLD_ROWS : TOLD_ROWS;
}

/** Settings as arguments of formulas. */
export interface SettingCells {
  readonly asOf: FormulaPart;
  readonly level: FormulaPart;
  readonly daysAhead: FormulaPart;
  /** Left out where the tab of an older add-in lacks it. */
  readonly looks: FormulaPart;
  /**
   * The told words with their header, which the functions pass over: should all blank rows below
   * it be deleted, something is left to refer to.
   */
  readonly columns: FormulaPart;
}

/**
 * Where the settings stand, for formulas to refer to.
 *
 * @throws Error in a sentence when one of them is gone
 */
export function settingCells(workbook: Workbook): SettingCells {
  const cells = ownCells(workbook, OWN_TABS.settings)?.values ?? [];
  const found = findSettings(cells);
  const [name, value, what] = [found.labels, found.values, found.whats].map((at) =>
    columnLetters(at + 1),
  );
  const part = (cells: string) => tabPart(OWN_TABS.settings, cells);
  const row = (one: keyof FoundSettings["row"]): number => {
    const at = found.row[one];
    if (at !== null) return at + 1;
    const label = one === "columnsHeader" ? TOLD_HEADER[0] : LABEL[one];
    throw new Error(text.lineLost({ settings: OWN_TABS.settings, label }));
  };
  const told = row("columnsHeader");
  return {
    asOf: part(`$${value}$${row("asOf")}`),
    level: part(`$${value}$${row("level")}`),
    daysAhead: part(`$${value}$${row("daysAhead")}`),
    looks: found.row.looks === null ? LEFT_OUT : part(`$${value}$${row("looks")}`),
    columns: part(`$${name}$${told}:$${what}$${told + roomForTold(cells, found)}`),
  };
}

/** What Set up settles; the rest is the person's. */
export type Settled = Pick<
  Settings,
  "recordsTab" | "timetableTab" | "columns" | "compareBy" | "initials" | "looks"
>;

/**
 * Writes the records tab, the timetable's and the told columns into the settings tab that is there.
 * Everything else in it is the person's; and the tab stays the same one, since every live formula
 * points at it. One call writes all, so that no tab of records ever stands beside the columns of
 * another. Rows that were sorted or deleted are brought back to their order.
 */
export function writeSettings(sheet: Sheet, settled: Settled, setUpAt: string): void {
  const straight = straightValues(sheet, LAYOUT);
  const older = findSettings(straight);
  const room = roomForTold(straight, older);
  const found = withNewerRows(sheet, older);
  const first = found.isOrderly
    ? Math.min(...SETTING_NAMES.map((name) => found.row[name] ?? 0))
    : MADE_ROW.recordsTab;
  const width = SETTINGS_HEADER.length;
  const top = found.isOrderly ? (found.row.columnsHeader ?? 0) : MADE_ROW.columnsHeader;
  const below = top + 1 + room;
  // What a person wrote below the room of an older tab is pushed down.
  if (found.isOrderly && room < TOLD_ROWS && sheet.getMaxRows() > below) {
    sheet.insertRowsAfter(below, TOLD_ROWS - room);
  }
  makeRoom(sheet, top + 1 + TOLD_ROWS, width);
  const standing = cellsOf(sheet, first, width);
  const rows = found.isOrderly
    ? standing.slice(0, top + 1 + TOLD_ROWS - first)
    : inOrder(standing, found, first);
  const line = (at: number): unknown[] => rows[at - first] as unknown[];
  const rowOf = (name: SettingName) => (found.isOrderly ? found.row[name] : MADE_ROW[name]) ?? 0;
  line(rowOf("recordsTab"))[1] = safeText(settled.recordsTab);
  line(rowOf("timetableTab"))[1] = safeText(settled.timetableTab ?? "");
  line(rowOf("compareBy"))[1] = safeText(settled.compareBy);
  line(rowOf("people"))[1] = settled.initials ? INITIALS : NAMES;
  line(rowOf("looks"))[1] = settled.looks ? SHOWN : HIDDEN;
  // The labels too, since a tab of an older add-in lacks some and people rename them.
  for (const name of SETTING_NAMES) line(rowOf(name))[0] = safeText(LABEL[name]);
  line(top).splice(0, 3, ...TOLD_HEADER.map(safeText));
  for (let at = 0; at < TOLD_ROWS; at += 1) {
    line(top + 1 + at).splice(0, 3, ...(settled.columns[at] ?? ["", "", ""]).map(safeText));
  }
  makeRoom(sheet, first + rows.length, width);
  if (!found.isOrderly) {
    // A day's format went along with its row when that was sorted, and would make a day of a number.
    const formats = SETTING_NAMES.map((name) => [name === "asOf" ? DAY_FORMAT : "General"]);
    sheet.getRange(MADE_ROW.recordsTab + 1, 2, formats.length, 1).setNumberFormats(formats);
  }
  sheet.getRange(first + 1, 1, rows.length, width).setValues(rows);
  // Should the first row be gone, what stands in its place is the person's.
  if (isOurs(sheet)) sheet.getRange(1, 1).setValue(`${MARK} ${settingsLine(setUpAt)}`);
}

/**
 * Puts the rows that the tab of an older add-in lacks above the told columns, so that whatever points
 * at these goes on pointing at them.
 */
function withNewerRows(sheet: Sheet, found: FoundSettings): FoundSettings {
  const { columnsHeader: told } = found.row;
  if (!found.isOlder || told === null) return found;
  const lacking = NEWER_NAMES.filter((name) => found.row[name] === null);
  sheet.insertRowsBefore(told + 1, lacking.length);
  sheet
    .getRange(told + 1, 1, lacking.length, SETTINGS_HEADER.length)
    .setValues(lacking.map((name) => [LABEL[name], "", WHAT_FOR[name]()]));
  return findSettings(sheet.getDataRange().getValues());
}

/** What the tab's first line says, written anew by each Set up. */
export function settingsLine(setUpAt: string): string {
  return text.line({ at: setUpAt, version: scriptVersion() });
}

function makeRoom(sheet: Sheet, rows: number, columns: number): void {
  const [high, wide] = [sheet.getMaxRows(), sheet.getMaxColumns()];
  if (rows > high) sheet.insertRowsAfter(high, rows - high);
  if (columns > wide) sheet.insertColumnsAfter(wide, columns - wide);
}

/** What stands in the tab's first columns from a row on, as it can be written back. */
function cellsOf(sheet: Sheet, first: number, width: number): unknown[][] {
  const range = sheet.getRange(first + 1, 1, sheet.getMaxRows() - first, width);
  const formulas = range.getFormulas();
  return range.getValues().map((row, at) =>
    row.map((value, column) => {
      const formula = formulas[at]?.[column] ?? "";
      if (formula !== "") return formula;
      return typeof value === "string" ? safeText(value) : value;
    }),
  );
}

/** The settings in our order, then room for the told columns, then a person's own rows. */
function inOrder(
  standing: readonly (readonly unknown[])[],
  { row }: FoundSettings,
  first: number,
): unknown[][] {
  const blank = () => SETTINGS_HEADER.map(() => "");
  const at = (index: number | null) => (index === null ? undefined : standing[index - first]);
  const ours = new Set<number | null>(Object.values(row));
  const isTold = (line: readonly unknown[]) => line[0] !== "" && line[1] !== "";
  const others = standing.filter(
    (line, index) => !ours.has(index + first) && line.some((cell) => cell !== "") && !isTold(line),
  );
  return [
    ...SETTING_NAMES.map((name) => [...(at(row[name]) ?? blank())]),
    [...(at(row.columnsHeader) ?? blank())],
    ...Array.from({ length: TOLD_ROWS }, blank),
    ...others.map((line) => [...line]),
    // Where rows stood that have moved up.
    ...standing.slice(SETTING_NAMES.length + 1 + TOLD_ROWS + others.length).map(blank),
  ];
}

/** The settings tab as it is first made, following the person's own settings where they have such. */
export function settingsTab(
  { recordsTab, timetableTab, columns, compareBy, initials, looks }: Settled,
  own: OwnSettings,
  madeAt: string,
): TabContent {
  const cell = (value: string): TabCell => ({ text: value });
  return {
    name: OWN_TABS.settings,
    madeBy: settingsLine(madeAt),
    rows: [
      SETTINGS_HEADER.map(cell),
      [cell(LABEL.recordsTab), cell(recordsTab), cell(text.recordsTab())],
      [cell(LABEL.asOf), { formula: own.asOf ?? TODAY }, cell(text.asOf())],
      [
        cell(LABEL.level),
        own.level === null ? { number: USUAL_LEVEL } : { formula: own.level },
        cell(text.level()),
      ],
      [
        cell(LABEL.daysAhead),
        own.daysAhead === null ? { number: USUAL_DAYS_AHEAD } : { formula: own.daysAhead },
        cell(text.daysAhead()),
      ],
      [
        cell(LABEL.timetableTab),
        cell(timetableTab ?? ""),
        cell(text.timetableTab({ timetable: OWN_TABS.timetable })),
      ],
      [cell(LABEL.compareBy), cell(compareBy), cell(WHAT_FOR.compareBy())],
      [cell(LABEL.people), cell(initials ? INITIALS : NAMES), cell(WHAT_FOR.people())],
      [cell(LABEL.looks), cell(looks ? SHOWN : HIDDEN), cell(WHAT_FOR.looks())],
      [...TOLD_HEADER, text.columns()].map(cell),
      ...columns.map((row) => row.map(cell)),
    ],
    frozenRows: 2,
    widths: [150, 170, 360],
    formats: {},
    // Formulas read the room for told words from the start: rows that come later would make it longer.
    tall: MADE_ROW.columnsHeader + 1 + TOLD_ROWS,
  };
}
