import { OLDER_TOLD_HEADER, TOLD_HEADER } from "../../core";
import { SETTINGS_HEADER } from "../host/mark";
import { headerRowIn } from "../tabs/straighten";

/**
 * Labels of the settings, in their order in the tab as we make it. They and the header are read back:
 * a format, in no language. Troubles of a setting call it by its label, so that it is found.
 */
export const LABEL = {
  recordsTab: "Records tab",
  asOf: "As-of day",
  level: "Level",
  daysAhead: "Days ahead",
  timetableTab: "Timetable tab",
  compareBy: "Takes compared by",
  people: "People",
  looks: "Looks",
} as const;
export type SettingName = keyof typeof LABEL;
export const SETTING_NAMES = Object.keys(LABEL) as readonly SettingName[];

/** Those that the tab of an older add-in lacks. */
export const NEWER_NAMES = [
  "compareBy",
  "people",
  "looks",
] as const satisfies readonly SettingName[];

/** Rows of the settings tab as we make it, from 0. */
export const MADE_ROW: Readonly<Record<SettingName | "header" | "columnsHeader", number>> = {
  header: 1,
  recordsTab: 2,
  asOf: 3,
  level: 4,
  daysAhead: 5,
  timetableTab: 6,
  compareBy: 7,
  people: 8,
  looks: 9,
  columnsHeader: 10,
};

/** Where the settings stand by now, rows and columns from 0; null for a row that is gone. */
export interface FoundSettings {
  readonly labels: number;
  readonly values: number;
  /** Of what is told of each word, beside the person's words. */
  readonly whats: number;
  readonly row: Readonly<Record<SettingName | "columnsHeader", number | null>>;
  /** Whether nothing is gone and the told columns stand below all settings. */
  readonly isOrderly: boolean;
  /** Whether it is in order as an older add-in made it, without the newer settings or the newest of them. */
  readonly isOlder: boolean;
}

type Values = readonly (readonly unknown[])[];

/**
 * Finds the settings by their labels, since people put rows and columns in, sort or rename. A row
 * whose label was renamed is found by its distance from the others.
 */
export function findSettings(values: Values): FoundSettings {
  const headerRow = headerRowIn(values, SETTINGS_HEADER);
  const header = values[headerRow] ?? [];
  const found = header.indexOf(SETTINGS_HEADER[0]);
  const labels = found === -1 ? 0 : found;
  const valuesAt = header.indexOf(SETTINGS_HEADER[1]);
  const texts = values.map((row) => {
    const text = String(row[labels] ?? "").trim();
    return text === OLDER_TOLD_HEADER[0] ? TOLD_HEADER[0] : text;
  });
  const known: Readonly<Record<SettingName | "columnsHeader", string>> = {
    ...LABEL,
    columnsHeader: TOLD_HEADER[0],
  };
  const names = [...SETTING_NAMES, "columnsHeader"] as const;
  const all = new Set<string>(Object.values(known));
  const seen = names.find((name) => texts.includes(known[name]));
  const base = seen === undefined ? 0 : texts.indexOf(known[seen]) - MADE_ROW[seen];
  // No setting is looked for among the told columns: the newer ones may not be there at all.
  const told = texts.indexOf(known.columnsHeader);
  const end = told === -1 ? texts.length : told;
  const rowOf = (name: (typeof names)[number]): number | null => {
    const at = texts.indexOf(known[name]);
    if (at !== -1) return at;
    const likely = base + MADE_ROW[name];
    return likely > headerRow && likely < end && !all.has(texts[likely] ?? "") ? likely : null;
  };
  const row = Object.fromEntries(names.map((name) => [name, rowOf(name)])) as Record<
    (typeof names)[number],
    number | null
  >;
  const isAbove = (one: number | null) =>
    one !== null && row.columnsHeader !== null && one < row.columnsHeader;
  const isMissing = (name: SettingName) => row[name] === null;
  const newer = new Set<SettingName>(NEWER_NAMES.filter(isMissing));
  return {
    labels,
    values: valuesAt === -1 ? labels + 1 : valuesAt,
    whats: (valuesAt === -1 ? labels + 1 : valuesAt) + 1,
    row,
    isOrderly: SETTING_NAMES.every((name) => isAbove(row[name])),
    // What lacks one in the middle was changed by a person: they came one after another.
    isOlder:
      newer.size > 0 &&
      NEWER_NAMES.slice(-newer.size).every(isMissing) &&
      SETTING_NAMES.every((name) => newer.has(name) || isAbove(row[name])),
  };
}
