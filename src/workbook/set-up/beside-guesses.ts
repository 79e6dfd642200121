import {
  BESIDE_NAMES,
  BESIDE_TABLES,
  type BesideFound,
  type BesideTable,
  besideColumns,
  besideName,
  cellText,
  closedTable,
  crewTable,
  type Grid,
  LEAVE_ALONE,
  NO_TAB,
  ORDER_COLUMNS,
  orderTable,
  placeTable,
  priceTable,
  samplesTable,
  TOLD_AS,
} from "../../core";
import { type Door, openDoor } from "../../door/index";
import type { BesideGuess, BesideRequest, TablesAnswer, TableTold } from "../../wire/beside";
import type { ColumnGuess } from "../../wire/columns";
import { workbookHost } from "../host/workbook-host";
import { germinationTab, placesTab, pricesTab } from "../reading/beside-tabs";
import { namedText } from "../reading/named-text";
import { columnsArgument, plainText } from "../reading/records-tab";
import { readSettings, type ToldRow, toldFor } from "../settings/settings";
import { ordersTab } from "../tables/orders-tab";
import { type OtherTab, otherTabs, tableTab } from "../tabs/find-tab";
import { isOurs } from "../tabs/own-tabs";
import { crewTabs } from "../work/crew-tabs";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

interface Kind {
  /** Where its columns stand in a tab that was chosen for it; null where that can't be seen. */
  readonly read: (grid: Grid, byWordsAlone?: boolean) => BesideFound | null;
  /** Our names for its columns. */
  readonly names: readonly string[];
}

const named = (...fields: readonly string[]) => fields.map(besideName);

const KINDS: Readonly<Record<BesideTable, Kind>> = {
  orders: { read: orderTable, names: Object.values(ORDER_COLUMNS) },
  crew: {
    read: crewTable,
    names: named("person", "tasks", "methods", "hours", "days", "off", "offFrom", "offTo"),
  },
  "closed-days": { read: closedTable, names: named("day", "to") },
  places: { read: placeTable, names: named("place", "holds") },
  prices: { read: priceTable, names: named("item", "price", "per") },
  germination: {
    read: samplesTable,
    names: named("batch", "sample", "sownOn", "sown", "day", "up", "soFar"),
  },
};

/** What a person tells of a table, as rows of the told words. */
export function toldOfTable({ table, tab, columns }: TableTold): readonly ToldRow[] {
  const name = BESIDE_NAMES[table];
  return [
    ...(tab === undefined ? [] : [[name, tab === "" ? NO_TAB : tab, TOLD_AS.tab] as const]),
    ...columns.map(
      ({ header, readAs }): ToldRow => [
        `${name}: ${readAs ?? LEAVE_ALONE}`,
        header,
        TOLD_AS.header,
      ],
    ),
  ];
}

/** In which tab each table beside the records stands, and how its columns are read, for a person to correct. */
export function besideGuesses({ tab, told: changed }: BesideRequest): TablesAnswer {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const settings = readSettings(workbook);
  const told = [...toldFor(settings, tab), ...changed.flatMap(toldOfTable)];
  const door = openDoor(workbookHost(), columnsArgument(told));
  const tabs = otherTabs(workbook, tab).filter(({ sheet }) => !isOurs(sheet));
  const { crew, closed } = crewTabs(workbook, door, tab);
  const found = new Map<BesideTable, Sheet | null>([
    ["orders", ordersTab(workbook, door, tab)],
    ["crew", crew],
    ["closed-days", closed],
  ]);
  found.set("places", placesTab(door, tabs, [...found.values()]));
  found.set("prices", pricesTab(door, tabs, [...found.values()]));
  found.set("germination", germinationTab(door, tabs, [...found.values()]));
  return {
    tabs: tabs.map(({ sheet }) => sheet.getName()),
    tables: BESIDE_TABLES.map((table) => {
      const sheet = found.get(table) ?? null;
      const free =
        sheet === null ? tabs.filter((one) => ![...found.values()].includes(one.sheet)) : [];
      const likely = perhaps(free, table, door)?.getName() ?? null;
      return { ...guessOf(table, sheet, { door, told }), likely };
    }),
  };
}

/** A tab that would be read as such a table, were it chosen, and not by its cells alone. */
function perhaps(tabs: readonly OtherTab[], table: BesideTable, door: Door): Sheet | null {
  return tableTab(tabs, [], (head) => {
    const read = KINDS[table].read(door.beside(table, head));
    return read === null ? 0 : Math.max(0, read.columnsOf.size - read.guessed.length);
  });
}

function guessOf(
  table: BesideTable,
  sheet: Sheet | null,
  { door, told }: { readonly door: Door; readonly told: readonly ToldRow[] },
): Omit<BesideGuess, "likely"> {
  const name = BESIDE_NAMES[table];
  const { read, names } = KINDS[table];
  const toldTab = door.toldTab(table);
  const guess = { table, name, choices: names };
  const lostTab =
    toldTab !== null && toldTab !== NO_TAB && sheet?.getName() !== toldTab ? toldTab : null;
  if (sheet === null) return { ...guess, tab: null, lostTab, isRead: true, columns: [] };
  const values = sheet.getDataRange().getValues();
  const grid = door.beside(table, values);
  const found = read(grid);
  const { headerRow, columns } = besideColumns(grid, found);
  const toldHeaders = new Set(
    told
      .filter(([one, , as]) => as === TOLD_AS.header && one.startsWith(`${name}:`))
      .map(([, word]) => word),
  );
  const people = table === "crew" ? names[0] : null;
  return {
    ...guess,
    tab: sheet.getName(),
    lostTab,
    isRead: found !== null,
    columns: columns.map(({ column, readAs, guessed, maybe, holds }): ColumnGuess => {
      const header = cellText(door.cell(values[headerRow]?.[column] ?? ""));
      const samples = values
        .slice(headerRow + 1)
        .map((row) => plainText(door, row[column]))
        .filter((one) => one !== "")
        .slice(0, SAMPLES);
      const sure = toldHeaders.has(header)
        ? "told"
        : guessed || (readAs === null && maybe !== null)
          ? "guessed"
          : readAs === null
            ? "not used"
            : "sure";
      return {
        column,
        header,
        readAs,
        sure,
        others: maybe === null ? [] : [maybe],
        holds: readAs !== null || holds === "blank" ? null : holds === "serial" ? "count" : holds,
        samples: samples.map((one) =>
          namedText(
            one.slice(0, LONGEST_SAMPLE),
            readAs === people,
            (whole) => `${whole.slice(0, 1)}.`,
          ),
        ),
      };
    }),
  };
}

const SAMPLES = 3;
const LONGEST_SAMPLE = 40;
