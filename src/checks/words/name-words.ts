import { builtInTimetable, checkedRecords, gridOf, readOrders, type Trouble } from "../../core";
import { decimalMark } from "../../door/decimal-mark";
import { localeOrder } from "../../door/locale-order";
import { AS_OF, recordsIn } from "./columns-read";
import type { ValueLine } from "./corpus";
import { localeOf } from "./office-table";
import type { Outcome } from "./outcome";
import type { WordRead } from "./word-outcome";

/** Whether two spellings of one column were read as one name, or asked about. */
type TwoNames = "one" | "asked" | "two";

const HEADERS = { variety: "Variety", rootstock: "Rootstock", grafter: "Grafter", place: "Place" };
type NameKind = keyof typeof HEADERS;

/** Troubles by which BATCH_CHECK asks about a name. */
const ASKS: ReadonlySet<Trouble["code"]> = new Set(["near-alike", "cell-unread"]);

/**
 * A name, held against the one that the corpus holds it against: in a column of records in which that
 * one stands three times; a customer's in the orders.
 *
 * @param first the first spelling of its group
 */
export function readName(line: ValueLine, first: string): WordRead {
  const { is, must } = line;
  if (is === "the name above") return readDitto(line);
  if (is === "no name") return readNoName(line);
  const other = line.apartFrom || first;
  const read = names(line, other);
  return { as: AS[read], outcome: nameOutcome(read, must) };
}

const AS = { one: "one name", asked: "asked whether one", two: "two names" } as const;

function nameOutcome(read: TwoNames, must: string): Outcome {
  if (must === "same") return read === "one" ? "right" : read === "asked" ? "asked" : "wrong";
  if (must === "different") return read === "two" ? "right" : read === "asked" ? "asked" : "wrong";
  // Kept apart and never asked about: a name that is left alone, and named nowhere.
  return read === "asked" ? "right" : read === "one" ? "wrong" : "silent";
}

/** A column of names read: the names, by row, and what is asked about them. */
function column(line: ValueLine, cells: readonly string[]) {
  if (line.kind === "customer") return customersIn(line, cells);
  const kind = line.kind as NameKind;
  const rows = cells.map((cell, at) => [`C26-0${at + 1}`, cell, "2026-05-04", 100 + at]);
  const grid = gridOf([["Batch", HEADERS[kind], "Grafted on", "Grafts made"], ...rows]);
  const records = recordsIn(grid, localeOf(line.language));
  if (records === null || records.batches.length !== cells.length)
    throw new Error("rows were lost");
  const built = { timetable: builtInTimetable(), faults: [] };
  const { troubles } = checkedRecords(records, built, AS_OF);
  return {
    names: records.batches.map((batch) => batch[kind]),
    asked: troubles.some(({ column, code }) => column === HEADERS[kind] && ASKS.has(code)),
    // Listed as naming nobody, for a person to say whom it names.
    isNobody: (at: number) =>
      troubles.some((one) => one.row === at + 2 && one.column === HEADERS[kind] && isNobody(one)),
  };
}

function isNobody(trouble: Trouble): boolean {
  return trouble.code === "cell-read-as" && trouble.readAs.code === "nobody";
}

function names(line: ValueLine, other: string): TwoNames {
  const { names: read, asked, isNobody } = column(line, [other, other, other, line.spelling]);
  if (asked || isNobody(3)) return "asked";
  return read[3] === read[0] ? "one" : "two";
}

function readDitto(line: ValueLine): WordRead {
  const { names: read, asked } = column(line, ["Amel 3", line.spelling, "Belo 31", line.spelling]);
  const isRight = read[1] === "Amel 3" && read[3] === "Belo 31";
  return { as: read[1] ?? "", outcome: asked ? "asked" : isRight ? "right" : "wrong" };
}

function readNoName(line: ValueLine): WordRead {
  const { names: read, asked } = column(line, ["Amel 3", line.spelling, "Belo 31", "Amel 3"]);
  return { as: read[1] ?? "", outcome: asked ? "asked" : read[1] === "" ? "right" : "wrong" };
}

/** Customers of orders, which no other table names. */
function customersIn(line: ValueLine, cells: readonly string[]) {
  const locale = localeOf(line.language);
  // Orders come back by their day.
  const rows = cells.map((name, at) => [at + 1, name, 100, `2027-03-0${at + 1}`]);
  const { open, remarks } = readOrders(gridOf([["Order", "Customer", "Wanted", "By"], ...rows]), {
    asOf: AS_OF,
    localeOrder: localeOrder(locale),
    decimalMark: decimalMark(locale),
  });
  if (open.length !== rows.length) throw new Error("orders were lost");
  return {
    names: open.map(({ customer }) => customer),
    asked: remarks.length > 0,
    isNobody: () => false,
  };
}
