import { type Cell, cellText, type Grid, isBlank } from "../cells";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { headedTable, rowMustBeReady } from "../tables";
import { normalText, stepKey, type TimetableField, wordSet } from "../words";
import { type BuiltTimetable, buildMethods } from "./build-methods";
import { builtInMethods } from "./built-in-methods";
import type { MethodDescription, StepDescription } from "./method-description";
import { USUAL_CAUTIONS } from "./methods/usual";
import type { FoundFault } from "./step-faults";
import type { StepRow } from "./step-row";
import type { Method, Step, Timetable } from "./timetable";
import { timetableWords } from "./timetable-columns";
import { TIMETABLE_HEADER } from "./timetable-header";

const YES = wordSet((words) => words.yes);

/**
 * Reads a nursery's own timetable.
 *
 * @param grid a range with the header of a timetable; title lines above it, any order of columns
 * @returns what can be used, and what is wrong with the rest
 * @throws InputError "no-header-row"; "row-not-ready" when a cell that it reads shows an error or is
 *   still loading
 */
export function readTimetable(grid: Grid): BuiltTimetable {
  const table = headedTable(grid, timetableWords(), ["step", "after"]);
  if (table === null) {
    const columns = [TIMETABLE_HEADER.step, TIMETABLE_HEADER.after];
    throw new InputError({ code: "no-header-row", argument: "timetable", columns });
  }
  const unread: FoundFault[] = [];
  const rows: StepRow[] = [];
  let method = "";
  for (const row of table.rows) {
    // A step whose days are not calculated yet would silently lack them.
    rowMustBeReady("timetable", table, row);
    const text = (field: TimetableField) => cellText(table.cell(row, field));
    // Only shown: nothing looks for spaces in it, and a paragraph takes its time.
    const paragraph = (field: TimetableField) => {
      const cell = table.cell(row, field);
      return typeof cell === "string" ? cell.trim() : cellText(cell);
    };
    const number = (field: TimetableField) => {
      const cell = table.cell(row, field);
      const value = readNumber(cell);
      if (value === undefined) {
        unread.push({ row: row + 1, column: field, found: cellText(cell), code: "no-number" });
      }
      return value ?? null;
    };
    // A method's name may stand in its first row only.
    method = text("method") || method || "This nursery's method";
    if (text("step") === "") {
      if (["after", "from", "usual", "by"].some((field) => text(field as TimetableField) !== "")) {
        unread.push({ row: row + 1, column: "step", found: "", code: "step-unnamed" });
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
      caution: paragraph("caution"),
      source: paragraph("source"),
      kind: text("kind"),
      every: number("every"),
      until: text("until"),
    });
  }
  return buildMethods(rows.map(withCaution), unread);
}

/** A step of a nursery's own that has no caution, with that of the built-in step, or of any of its kind. */
function withCaution(row: StepRow): StepRow {
  if (row.caution !== "") return row;
  const key = stepKey(row.step);
  // As written down: to build them all for a few cautions takes longer than to read the rows.
  const caution = writtenDown(row.method, key)?.caution || USUAL_CAUTIONS.get(key);
  return caution === undefined ? row : { ...row, caution };
}

/** A step of a built-in method as it is written down, by the method's name and the step's key. */
function writtenDown(method: string, key: string): StepDescription | undefined {
  return builtInMethods
    .find(({ name }) => name.toLowerCase() === method.toLowerCase())
    ?.steps.find(({ name }) => stepKey(name) === key);
}

/** Whether the share that passes a step is still the one of nurseries in general that came with its method. */
export function hasGeneralShare({ name }: Method, { key, kept }: Step): boolean {
  const written = writtenDown(name, key);
  return written?.isGeneralShare === true && kept === (written.keptOf100 ?? 0) / 100;
}

/** The methods that come with the add-in. */
export const builtInTimetable: () => Timetable = lazily(() => {
  const built = buildMethods(builtInMethods.flatMap(rowsOf));
  if (built.faults.length > 0)
    throw new Error(`built-in timetable: ${JSON.stringify(built.faults)}`);
  return built.timetable;
});

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
    kind: step.kind ?? "",
    every: step.every ?? null,
    until: step.until ?? "",
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
