import {
  type BesideTable,
  besideName,
  type ColumnInDoubt,
  type ColumnsRemark,
  type RowFault,
  type RowNote,
  type RowTrouble,
} from "../core";
import { moreColumns } from "../sentences/made/records";
import * as text from "../sentences/made/small-tables";
import { type SentencesOf, sentenceOf } from "./sentence-of";
import { unreadWords } from "./unread";

const TABLES: Readonly<Record<BesideTable, () => string>> = {
  orders: text.orders,
  crew: text.crew,
  "closed-days": text.closedDays,
  places: text.places,
  prices: text.prices,
  germination: text.germination,
};

const FAULTS: SentencesOf<RowFault> = {
  "nobody-named": text.noName,
  "no-place-named": text.noPlace,
  "no-item-named": text.noItem,
  "no-first-day": text.noFirstDay,
  "weekday-with-last-day": text.weekdayEnd,
  "ends-before-it-begins": text.endsBefore,
  "not-a-day": text.noDay,
  "not-weekdays": text.notWeekdays,
  "not-hours": text.notHours,
  "more-hours-than-a-day": text.moreThanDay,
  "no-price": text.noPrice,
  "price-out-of-range": text.priceRange,
  "not-a-price": text.notPrice,
  "not-a-unit": text.notUnit,
  "not-by-time": text.notByTime,
  "no-batch-named": text.noBatch,
  "no-inspection-day": text.noInspectionDay,
  "no-day-of-sowing": text.noSowing,
  "up-unread": ({ why }) => text.upUnread({ why: unreadWords(why) }),
  "up-blank": text.upBlank,
  "up-falls": text.upFalls,
};

const NOTES: SentencesOf<RowNote> = {
  "no-such-step": text.noStep,
  "second-price": text.secondPrice,
  "read-as": ({ count }) => text.readAs({ number: count }),
  "named-twice": text.namedTwice,
  "holds-unknown": text.holdsUnknown,
  "holds-unread": ({ why }) => text.holdsUnread({ why: unreadWords(why) }),
};

/** Columns that are named before the rest are left to Set up. */
const MOST_NAMED = 8;

function columnsIn(
  { table, columns }: ColumnsRemark,
  name: (column: { readonly header: string; readonly name: string }) => string,
) {
  const named = columns
    .slice(0, MOST_NAMED)
    .map(({ header, field }: ColumnInDoubt) =>
      field === null ? header : name({ header, name: besideName(field) }),
    );
  const more = columns.length - named.length;
  return { table: TABLES[table](), columns: more > 0 ? [...named, moreColumns({ more })] : named };
}

/** Remarks on columns of the tables beside the records. */
export const COLUMN_REMARKS: SentencesOf<ColumnsRemark> = {
  "columns-guessed": (one) => text.columnsGuessed(columnsIn(one, text.columnTaken)),
  "columns-ditto": (one) => text.columnsDitto(columnsIn(one, text.columnTaken)),
  "columns-unread": (one) => text.columnsUnread(columnsIn(one, text.columnUnread)),
};

/** Remarks on rows of the tables beside the records. */
export const ROW_TROUBLES: SentencesOf<RowTrouble> = {
  ...COLUMN_REMARKS,
  "row-left-out": ({ table, row, why }) =>
    text.rowLeftOut({ table: TABLES[table](), row: String(row), why: sentenceOf(FAULTS, why) }),
  "row-noted": ({ table, row, what }) =>
    text.rowNoted({ table: TABLES[table](), row: String(row), what: sentenceOf(NOTES, what) }),
};
