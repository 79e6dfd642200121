import { type Cell, cellText, type DecimalMark, type Grid, readCount, shortened } from "../cells";
import { InputError } from "../faults";
import { lazily } from "../lazily";
import { foldName } from "../names";
import {
  besideTable,
  columnRemarks,
  type RowNote,
  type RowTrouble,
  rowMustBeReady,
  tableAt,
  withoutDittos,
} from "../tables";
import { everyWord, tableWords } from "../words";

export const placeWords = lazily(() => ({
  place: everyWord((words) => [...words.facts.place, ...words.name]),
  holds: tableWords("places").holds,
}));

/** Where its columns stand, as `orderTable`; null where the grid has no header of such a table. */
export function placeTable(grid: Grid, byWordsAlone = false) {
  return besideTable(grid, {
    kind: "places",
    words: placeWords(),
    required: ["place", "holds"],
    byWordsAlone,
  });
}

export interface Place {
  readonly name: string;
  /** Plants, whole number, 0 or more; null where the table does not say. */
  readonly holds: number | null;
}

export interface PlacesReading {
  /** In the order of the table. */
  readonly places: readonly Place[];
  /** What could not be used, or was read in a way of its own. */
  readonly troubles: readonly RowTrouble[];
}

/**
 * Reads the table of places. A row without a name is left out; one whose number can't be read
 * stays, as a place of which it is not known how much it holds. Of rows with one name the fewest
 * counts. All of it is said.
 *
 * @throws InputError "no-header-row"; "row-not-ready" when a cell shows an error or is still loading
 */
export function readPlaces(
  written: Grid,
  decimalMark: DecimalMark | null,
  nameOf: (word: string) => string = (word) => word,
): PlacesReading {
  const given = placeTable(written);
  if (given === null) {
    const columns = ["Place", "Holds"];
    throw new InputError({ code: "no-header-row", argument: "places", columns });
  }
  const { grid, remarks: ofDittos } = withoutDittos(written, "places", {
    table: given,
    fields: ["place", "holds"],
  });
  const table = { ...given, ...tableAt(grid, given.headerRow, given.columnOf) };
  const found = new Map<string, Place>();
  const troubles: RowTrouble[] = [];
  for (const row of table.rows) {
    rowMustBeReady("places", table, row);
    const at = { table: "places", row: row + 1 } as const;
    const note = (what: RowNote) => troubles.push({ code: "row-noted", ...at, what });
    const name = nameOf(cellText(table.cell(row, "place")));
    if (foldName(name) === "") {
      troubles.push({ code: "row-left-out", ...at, why: { code: "no-place-named" } });
      continue;
    }
    const holds = readHolds(table.cell(row, "holds"), decimalMark, note);
    const before = found.get(foldName(name));
    if (before === undefined) {
      found.set(foldName(name), { name, holds });
      continue;
    }
    note({ code: "named-twice", name: shortened(before.name) });
    const known = [before.holds, holds].filter((one) => one !== null);
    found.set(foldName(name), {
      name: before.name,
      holds: known.length === 0 ? null : Math.min(...known),
    });
  }
  return {
    places: [...found.values()],
    troubles: [...troubles, ...ofDittos, ...columnRemarks("places", table)],
  };
}

function readHolds(
  cell: Cell,
  decimalMark: DecimalMark | null,
  note: (what: RowNote) => void,
): number | null {
  const reading = readCount(cell, { decimalMark, outOf: null });
  if (reading.kind === "count") {
    if (reading.readAs !== null) note({ code: "read-as", count: reading.count });
    return reading.count;
  }
  note(
    reading.kind === "blank"
      ? { code: "holds-unknown" }
      : { code: "holds-unread", why: reading.why },
  );
  return null;
}
