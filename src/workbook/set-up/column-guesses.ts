import {
  choiceOf,
  columnChoices,
  essentialColumns,
  LEAVE_ALONE,
  NO_TAB,
  type Records,
  shortened,
  TOLD_AS,
} from "../../core";
import { openDoor } from "../../door/index";
import { noTab } from "../../sentences/made/set-up";
import type { ColumnGuess } from "../../wire/columns";
import type { NamedText } from "../../wire/named-text";
import type { ColumnsAnswer, ColumnsRequest } from "../../wire/set-up";
import { gridTab } from "../host/grid-tabs";
import { workbookHost } from "../host/workbook-host";
import { comparableColumns, groupHeaders } from "../reading/group-headers";
import { initialsIn, namedText } from "../reading/named-text";
import { asOfDay, columnsArgument, plainText } from "../reading/records-tab";
import { timetableToGuessBy } from "../reading/timetable-source";
import { readSettings, toldFor, toldHeader } from "../settings/settings";
import { ordersIn, ordersRead, ordersTab } from "../tables/orders-tab";
import { usualCompareBy } from "../takes/compare-takes";
import { wordsAsked } from "./words-asked";

type ColumnMatch = Records["columns"][number];
type LeftAlone = Extract<Records["troubles"][number], { code: "column-left" }>;

/** How the columns of a tab are read, with values from each, for a person to correct. */
export function columnGuesses({
  tab,
  timetable: own = null,
  columns: changed = [],
}: ColumnsRequest): ColumnsAnswer {
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  const sheet = gridTab(workbook, tab);
  if (sheet === null) throw new Error(noTab({ tab: shortened(tab) }));
  const settings = readSettings(workbook);
  const told = [...toldFor(settings, tab), ...changed.map(toldHeader)];
  const values = sheet.getDataRange().getValues();
  const timetable = timetableToGuessBy(workbook, own);
  const door = openDoor(workbookHost());
  const lost = door.lostColumns(values, { timetable, columns: columnsArgument(told) });
  const lostHeaders = new Set(lost.map(({ header }) => header));
  const columns = columnsArgument(
    told.filter(([, word, as]) => as !== TOLD_AS.header || !lostHeaders.has(word)),
  );
  const records = door.records(values, { timetable, asOf: null, columns });
  const hearing = door.hearing(columns);
  const rows = records.batches.map(({ row }) => row);
  const comparable = comparableColumns(records);
  const people = new Set(comparable.filter((one) => one.people).map(({ header }) => header));
  const initials = initialsIn(records);
  const orderTab = ordersTab(workbook, hearing, tab);
  const asOf = asOfDay(hearing, settings?.asOf ?? "");
  const orders = ordersRead(orderTab === null ? null : ordersIn(orderTab, hearing), {
    door: hearing,
    asOf,
    records,
  });
  const samples = ({ column, header, target }: ColumnMatch) => {
    const named = people.has(header) || isPerson(target);
    const found: NamedText[] = [];
    for (const row of rows) {
      const text = plainText(door, values[row - 1]?.[column]);
      if (text !== "") found.push(namedText(text.slice(0, LONGEST_SAMPLE), named, initials));
      if (found.length === SAMPLES) break;
    }
    return found;
  };
  return {
    tab,
    batches: records.batches.length,
    columns: records.columns
      .filter(
        (match) => match.table === 0 && (match.header !== "" || heldIn(records, match) !== null),
      )
      .map((match): ColumnGuess => {
        const readAs = choiceOf(match, timetable);
        return {
          column: match.column,
          header: match.header,
          readAs: readAs === LEAVE_ALONE ? null : readAs,
          sure: sureness(match),
          others: match.others.map((target) => choiceOf({ ...match, target }, timetable)),
          holds: heldIn(records, match),
          samples: samples(match),
        };
      }),
    essentials: essentialColumns(timetable).filter(
      ({ what }) => what === "batch" || records.tables[0]?.kind !== "log",
    ),
    // The page has a word of its own for leaving a column alone.
    choices: columnChoices(timetable).filter((choice) => choice !== LEAVE_ALONE),
    lost: lost.map(({ name, header }) => ({
      header,
      readAs: name === LEAVE_ALONE ? null : name,
    })),
    comparable,
    words: wordsAsked({ records, orders }, timetable, initials),
    withoutMethod: records.batches.filter(({ method, crop }) => method === "" && crop === "")
      .length,
    compareBy: comparedBy(records, settings?.recordsTab === tab ? settings.compareBy : ""),
  };
}

/** What a column holds that is left alone; one without a header is found by its number. */
function heldIn({ troubles }: Records, { header, column }: ColumnMatch) {
  const found = header || String(column + 1);
  const left = troubles.find(
    (one): one is LeftAlone =>
      one.code === "column-left" && one.column === header && one.found === found,
  );
  return left?.holds ?? null;
}

/** By what the tab of takes compared is made now, or would be; "" for no tab. */
function comparedBy(records: Records, set: string): string {
  if (set === NO_TAB) return "";
  return groupHeaders(records).includes(set) ? set : (usualCompareBy(records) ?? "");
}

/** A log's column of who did the work. */
function isPerson(target: ColumnMatch["target"]): boolean {
  return target?.kind === "event" && target.fact === "eventPerson";
}

const SAMPLES = 3;
const LONGEST_SAMPLE = 40;

/** A person is asked to look only at what could be something else, or may be something. */
function sureness({ sureness: sure, target, others, scionsCut }: ColumnMatch): ColumnGuess["sure"] {
  if (sure === 4) return "told";
  if (scionsCut) return "scions";
  if (target === null) return others.length > 0 ? "guessed" : "not used";
  // A step's name over days can hardly mean anything but its day.
  const rivals = others.filter(
    (one) => one.kind !== "step" || target.kind !== "step" || one.key !== target.key,
  );
  return rivals.length > 0 ? "likely" : "sure";
}
