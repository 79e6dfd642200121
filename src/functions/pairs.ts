import { type Cell, errorShown, InputError, isLoading, readCount } from "../core";
import { type CellOut, type Door, rowsOf } from "../door/index";
import { moreTakenThanGraftedInList } from "../sentences/made/take-faults";
import { cellShows, notACount } from "../sentences/made/unread";
import type { FunctionResult } from "./function-of";

const WHOLE = { row: null, column: null };

type Answered = (taken: number | null, grafted: number | null) => CellOut[];

/**
 * Answers for a pair of counts, or for each pair of two ranges of one shape. In a range a pair that
 * can't be right says so in its own cell; a single one is refused.
 *
 * @throws InputError "sizes-differ" | "not-a-count" | "more-taken-than-grafted"
 */
export function forEachPair(
  door: Door,
  {
    taken,
    grafted,
    answer,
  }: { readonly taken: unknown; readonly grafted: unknown; readonly answer: Answered },
): FunctionResult {
  const took = rowsOf(taken);
  const made = rowsOf(grafted);
  const width = took[0]?.length ?? 0;
  if (took.length !== made.length || width !== (made[0]?.length ?? 0)) {
    throw new InputError({ code: "sizes-differ", taken: sizeOf(took), grafted: sizeOf(made) });
  }
  if (took.length === 1 && width === 1) {
    const single = answer(
      countOf("taken", door.cell(taken)),
      countOf("grafted", door.cell(grafted)),
    );
    return single.length === 1 ? (single[0] as CellOut) : [single];
  }
  const columns = took.reduce((most, row) => Math.max(most, row.length), 0);
  return took.map((row, index) =>
    Array.from({ length: columns }, (_, column) =>
      answerInList(door.cell(row[column]), door.cell(made[index]?.[column]), answer),
    ).flat(),
  );
}

function answerInList(taken: Cell, grafted: Cell, answer: Answered): CellOut[] {
  const width = answer(null, null).length;
  const say = (text: string) => [text, ...Array<CellOut>(width - 1).fill("")];
  for (const [name, cell] of Object.entries({ taken, grafted })) {
    if (isLoading(cell)) {
      throw new InputError({ code: "not-ready-yet", argument: name, ...WHOLE, shown: null });
    }
    const shown = errorShown(cell);
    if (shown !== null) return say(cellShows({ shown }));
  }
  const took = readCount(taken);
  const made = readCount(grafted);
  // Two texts side by side are the header of the two columns.
  if (took.kind === "unread" && made.kind === "unread") return say("");
  if (took.kind === "unread" || made.kind === "unread") return say(notACount());
  const takes = took.kind === "count" ? took.count : null;
  const grafts = made.kind === "count" ? made.count : null;
  if (takes !== null && grafts !== null && takes > grafts) return say(moreTakenThanGraftedInList());
  return answer(takes, grafts);
}

function countOf(name: string, cell: Cell): number | null {
  const reading = readCount(cell);
  if (reading.kind === "unread") {
    throw new InputError({ code: "not-a-count", argument: name, why: reading.why });
  }
  return reading.kind === "count" ? reading.count : null;
}

function sizeOf(rows: readonly (readonly unknown[])[]): readonly [number, number] {
  return [rows.length, rows[0]?.length ?? 0];
}
