import { type Cell, cellText, type Grid, isBlank } from "../cells/cell";
import { type HeadedTable, headedTable } from "../cells/headed-table";
import { quoted } from "../cells/quoted";
import { errorShown, isLoading } from "../cells/upstream";
import { InputError } from "../input-error";
import { SEE_CHECK } from "../records/records";
import { wordSet } from "../words/all-languages";
import { normalText } from "../words/normal-text";
import {
  type BuiltTimetable,
  buildMethods,
  type StepRow,
  type TimetableFault,
} from "./build-methods";
import { builtInMethods } from "./built-in-methods";
import type { MethodDescription } from "./method-description";
import type { Timetable } from "./timetable";
import { TIMETABLE_COLUMNS, type TimetableField, timetableWords } from "./timetable-columns";

const YES = wordSet((words) => words.yes);

/**
 * Reads a nursery's own timetable.
 *
 * @param grid a range with the header of a timetable; title lines above it, any order of columns
 * @returns the methods that can be used, and what is wrong with the others
 * @throws InputError "no-header"; "not-ready-yet" when a cell that it reads shows an error or is
 *   still loading
 */
export function readTimetable(grid: Grid): BuiltTimetable {
  const table = headedTable(grid, timetableWords(), ["step", "after"]);
  if (table === null) {
    throw new InputError(
      "no-header",
      `timetable has no header row with Step and After in its first ten rows; it starts with ${startOf(grid)}`,
    );
  }
  const unread: TimetableFault[] = [];
  const rows: StepRow[] = [];
  let method = "";
  for (const row of table.rows) {
    stepMustBeReady(table, row);
    const text = (field: TimetableField) => cellText(table.cell(row, field));
    const number = (field: TimetableField) => {
      const cell = table.cell(row, field);
      const value = readNumber(cell);
      if (value === undefined) {
        unread.push({
          row: row + 1,
          column: field,
          found: cellText(cell),
          trouble: `${columnName(field)} holds no number`,
        });
      }
      return value ?? null;
    };
    // A method's name may stand in its first row only.
    method = text("method") || method || "This nursery's method";
    if (text("step") === "") {
      if (["after", "from", "usual", "by"].some((field) => text(field as TimetableField) !== "")) {
        unread.push({ row: row + 1, column: "step", found: "", trouble: "the step has no name" });
      }
      continue;
    }
    rows.push({
      row: row + 1,
      method,
      step: text("step"),
      after: text("after"),
      from: number("from"),
      usual: number("usual"),
      by: number("by"),
      counted: readYes(table.cell(row, "counted")),
      keptOf100: number("kept"),
      perPersonHour: number("perPersonHour"),
      needs: text("needs"),
      caution: text("caution"),
      source: text("source"),
    });
  }
  const built = buildMethods(rows);
  return { timetable: built.timetable, faults: [...unread, ...built.faults] };
}

/** The methods that come with the add-in. */
export function builtInTimetable(): Timetable {
  const built = buildMethods(builtInMethods.flatMap(rowsOf));
  if (built.faults.length > 0) throw new Error(`built-in timetable: ${built.faults[0]?.trouble}`);
  return built.timetable;
}

/** The sentence for a timetable that can't be used; null when nothing is wrong with it. */
export function faultSentence(faults: readonly TimetableFault[]): string | null {
  const [first, ...more] = faults;
  if (first === undefined) return null;
  const others = more.length === 0 ? "" : `; ${more.length} more: ${SEE_CHECK}`;
  return `timetable row ${first.row}, ${columnName(first.column)}: ${first.trouble}${others}`;
}

/** The header under which a field of a timetable is written. */
export function columnName(field: TimetableField): string {
  const index = (Object.keys(timetableWords()) as TimetableField[]).indexOf(field);
  return TIMETABLE_COLUMNS[index]?.name ?? field;
}

/** A step whose days are not calculated yet would silently lack them. */
function stepMustBeReady(table: HeadedTable<TimetableField>, row: number): void {
  for (const field of Object.keys(table.columnOf) as TimetableField[]) {
    const cell = table.cell(row, field);
    const shown = isLoading(cell) ? "is still loading" : errorShown(cell);
    if (shown !== null) {
      throw new InputError(
        "not-ready-yet",
        `timetable row ${row + 1}, ${columnName(field)}, ${shown.startsWith("#") ? `shows ${shown}` : shown}`,
      );
    }
  }
}

function rowsOf(method: MethodDescription): StepRow[] {
  return method.steps.map((step, index) => ({
    row: index + 1,
    method: method.name,
    step: step.name,
    after: step.after ?? "",
    from: step.days[0],
    usual: step.days[1],
    by: step.days[2],
    counted: step.counted ?? false,
    keptOf100: step.keptOf100 ?? null,
    perPersonHour: step.perPersonHour ?? null,
    needs: step.needs ?? "",
    caution: step.caution ?? "",
    source: step.source,
  }));
}

function readNumber(cell: Cell): number | null | undefined {
  if (isBlank(cell)) return null;
  if (typeof cell === "number") return Number.isFinite(cell) ? cell : undefined;
  const text = cellText(cell).replace(/\s*%$/, "").replace(",", ".");
  return /^-?\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
}

function readYes(cell: Cell): boolean {
  return (
    cell === true || (typeof cell === "number" ? cell !== 0 : YES.has(normalText(cellText(cell))))
  );
}

function startOf(grid: Grid): string {
  const cell = grid.at(0, 0);
  return isBlank(cell) ? "a blank cell" : (errorShown(cell) ?? quoted(cellText(cell)));
}
