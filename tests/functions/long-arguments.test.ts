import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { registry } from "../../src/functions/registry";
import { ask } from "../support/ask";
import { cellsFor } from "../support/nasty-tables";

/** The longest text that a cell may hold, less one. */
const LONG = "y".repeat(49_999);
/** Characters: a remark may list a dozen troubles, with a line of somebody's text in each. */
const LONGEST_SENTENCE = 2_000;

/** Arguments of a function of which one, or one cell of one, is the long text. */
function withLongText(name: string): fc.Arbitrary<unknown[]> {
  const entry = registry.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`${name} is not registered`);
  const usual = entry.parameters.map((one) => cellsFor(one.name, entry));
  return fc
    .tuple(fc.tuple(...usual), fc.nat(), fc.nat(), fc.nat(), fc.boolean())
    .map(([args, which, row, column, whole]) => {
      const index = which % Math.max(1, args.length);
      const value = args[index];
      if (whole || !Array.isArray(value)) return replaced(args, index, LONG);
      const rows = value as unknown[][];
      const line = row % Math.max(1, rows.length);
      const cells = rows[line] ?? [];
      const changed = replaced(cells, column % Math.max(1, cells.length), LONG);
      return replaced(args, index, replaced(rows, line, changed));
    });
}

function replaced(list: readonly unknown[], at: number, value: unknown): unknown[] {
  return list.map((one, index) => (index === at ? value : one));
}

describe.each(registry.map(({ name }) => name))("%s with a text as long as a cell", (name) => {
  it("says what is wrong in a sentence that echoes a line of it at most", () => {
    fc.assert(
      fc.property(withLongText(name), (args) => {
        let said: readonly string[] = [];
        try {
          const answer = ask(name, args);
          said = (Array.isArray(answer) ? answer.flat(2) : [answer]).filter(
            // A name stands in its column as it is.
            (cell): cell is string => typeof cell === "string" && cell !== LONG,
          );
        } catch (error) {
          said = [(error as Error).message];
        }
        for (const one of said) expect(one.length).toBeLessThan(LONGEST_SENTENCE);
      }),
      { numRuns: 60 },
    );
  });
});
