import { type Cell, cellText, type Grid, isBlank } from "../cells";
import { lazily } from "../lazily";
import { headedTable } from "../tables";
import { everyWord, normalText, tableWords, wordSet } from "../words";

/** Headers by column of the crew's table, in normal form. */
export const crewWords = lazily(() => {
  const headers = tableWords("crew");
  const persons = everyWord(({ name, facts }) => [...name, ...facts.eventPerson]);
  const methods = everyWord(({ facts }) => [...facts.method, ...facts.crop]);
  return {
    ...headers,
    person: [...headers.person, ...persons],
    methods: [...headers.methods, ...methods],
  };
});

export type CrewField = keyof ReturnType<typeof crewWords>;

const NOTES = wordSet(({ facts }) => facts.note);
/** Columns of which several are read together; of the others the first is. */
const SEVERAL: ReadonlySet<CrewField> = new Set<CrewField>([
  "tasks",
  "methods",
  "days",
  "off",
  "offFrom",
  "offTo",
]);

/** A column in which days off begin, or stand whole, with the one in which they end. */
export interface OffColumns {
  readonly from: number | null;
  readonly to: number | null;
  /** Whether a first day alone has no end; else it is one day. */
  readonly openEnd: boolean;
}

export interface CrewTable {
  /** Rows below the header that hold anything, from 0. */
  readonly rows: readonly number[];
  /** What stands in a row under a header, or headers, of a field; without blanks. */
  cells(row: number, field: CrewField): readonly Cell[];
  /** Every cell of a row that is read. */
  read(row: number): readonly Cell[];
  at(row: number, column: number | null): Cell;
  readonly off: readonly OffColumns[];
  /** Headers of columns that hold something and are not read. */
  readonly unread: readonly string[];
}

/** Where the columns of a table of persons stand; null where the grid has no header of one. */
export function crewTable(grid: Grid): CrewTable | null {
  const table = headedTable(grid, crewWords(), ["person", "hours"]);
  if (table === null) return null;
  const { headerRow, rows } = table;
  const columnsOf = new Map<CrewField, number[]>();
  const unread: string[] = [];
  for (let column = 0; column < grid.columnCount; column += 1) {
    const written = cellText(grid.at(headerRow, column));
    const header = normalText(written);
    const field =
      header === "" ? undefined : (fieldOf(header) ?? fieldOf(header.replace(/ ?\d+$/, "")));
    const columns = field === undefined ? [] : (columnsOf.get(field) ?? []);
    if (field !== undefined && (columns.length === 0 || SEVERAL.has(field))) {
      columnsOf.set(field, [...columns, column]);
    } else if (!NOTES.has(header) && rows.some((row) => !isBlank(grid.at(row, column)))) {
      unread.push(written);
    }
  }
  const cells = (row: number, field: CrewField) =>
    (columnsOf.get(field) ?? [])
      .map((column) => grid.at(row, column))
      .filter((cell) => !isBlank(cell));
  return {
    rows,
    cells,
    read: (row) => [...columnsOf.keys()].flatMap((field) => cells(row, field)),
    at: (row, column) => (column === null ? "" : grid.at(row, column)),
    off: offColumns(columnsOf),
    unread: unread.filter((header) => header !== ""),
  };
}

function fieldOf(header: string): CrewField | undefined {
  const words = crewWords();
  return (Object.keys(words) as CrewField[]).find((field) => words[field].includes(header));
}

/** Last days go with first days in their order. */
function offColumns(columnsOf: ReadonlyMap<CrewField, readonly number[]>): readonly OffColumns[] {
  const of = (field: CrewField) => columnsOf.get(field) ?? [];
  const [open, tos] = [of("offFrom"), of("offTo")];
  const froms = [...open, ...of("off")];
  return Array.from({ length: Math.max(froms.length, tos.length) }, (_, at) => ({
    from: froms[at] ?? null,
    to: tos[at] ?? null,
    openEnd: at < open.length,
  }));
}
