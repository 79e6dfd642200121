import type { CellWrite } from "./table-write";
import type { CellContent } from "./write-log";

/** A block of cells that one call writes. */
export interface Run {
  /** From 1. */
  readonly row: number;
  readonly column: number;
  readonly rows: readonly (readonly CellContent[])[];
}

/**
 * Neighbouring cells as blocks, since every call costs time in which somebody may move them. Blocks
 * come in the order of their first cells; those that blank cells in the order of their last ones,
 * so that a name that is written first and blanked last is so here too.
 */
export function runsOf(writes: readonly CellWrite[]): readonly Run[] {
  const order = new Map(writes.map((write, at) => [write, at]));
  const sorted = [...writes].sort((a, b) => a.row - b.row || a.column - b.column);
  const lines: CellWrite[][] = [];
  for (const write of sorted) {
    const line = lines[lines.length - 1];
    const last = line?.[line.length - 1];
    if (last?.row === write.row && last.column + 1 === write.column) line?.push(write);
    else lines.push([write]);
  }
  const blocks: CellWrite[][][] = [];
  for (const line of lines) {
    const block = blocks.find((one) => follows(one[one.length - 1] ?? [], line));
    if (block === undefined) blocks.push([line]);
    else block.push(line);
  }
  const turn = (block: readonly CellWrite[][]): number => {
    const turns = block.flat().map((write) => order.get(write) ?? 0);
    const isBlanking = block.flat().every(({ after }) => after === "");
    return isBlanking ? Math.max(...turns) : Math.min(...turns);
  };
  return blocks
    .sort((a, b) => turn(a) - turn(b))
    .map((block) => ({
      row: block[0]?.[0]?.row ?? 1,
      column: block[0]?.[0]?.column ?? 1,
      rows: block.map((line) => line.map(({ after }) => after)),
    }));
}

/** Whether a line stands right below another, over the same columns. */
function follows(above: readonly CellWrite[], line: readonly CellWrite[]): boolean {
  const [first, own] = [above[0], line[0]];
  return (
    first !== undefined &&
    own !== undefined &&
    first.row + 1 === own.row &&
    first.column === own.column &&
    above.length === line.length
  );
}
