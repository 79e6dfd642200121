import { type Cell, type Grid, isBlank } from "../cells";
import { lazily } from "../lazily";
import { type BesideRead, besideTable } from "../tables";
import { everyWord, tableWords } from "../words";

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

export interface CrewTable
  extends Pick<BesideRead<CrewField>, "headerRow" | "columnsOf" | "notes" | "unread" | "guessed"> {
  /** Rows below the header that hold anything, from 0. */
  readonly rows: readonly number[];
  /** What stands in a row under a header, or headers, of a field; without blanks. */
  cells(row: number, field: CrewField): readonly Cell[];
  /** Every cell of a row that is read. */
  read(row: number): readonly Cell[];
  at(row: number, column: number | null): Cell;
  readonly off: readonly OffColumns[];
}

/** Where the columns of a table of persons stand, as `orderTable`; null where the grid has no header of one. */
export function crewTable(grid: Grid, byWordsAlone?: boolean): CrewTable | null {
  const table = besideTable(grid, {
    kind: "crew",
    words: crewWords(),
    required: ["person", "hours"],
    several: SEVERAL,
    byWordsAlone,
  });
  if (table === null) return null;
  const { headerRow, rows, columnsOf, notes, unread, guessed } = table;
  const cells = (row: number, field: CrewField) =>
    (columnsOf.get(field) ?? [])
      .map((column) => grid.at(row, column))
      .filter((cell) => !isBlank(cell));
  return {
    headerRow,
    rows,
    columnsOf,
    cells,
    read: (row) => [...columnsOf.keys()].flatMap((field) => cells(row, field)),
    at: (row, column) => (column === null ? "" : grid.at(row, column)),
    off: offColumns(columnsOf),
    notes,
    unread,
    guessed,
  };
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
