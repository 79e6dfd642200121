import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { registry } from "../../src/functions/registry";
import { ask } from "../support/ask";
import { argumentsIn, columnAt } from "../support/formula";
import { csvRows } from "./csv-rows";

const project = fileURLToPath(new URL("../..", import.meta.url));

/** The functions of README's table as they stand there, such as "BATCH_BALANCE(Records!A:AB)". */
const formulas = readFileSync(`${project}/README.md`, "utf8")
  .split("\n")
  .filter((line) => line.startsWith("|"))
  .flatMap((line) => [...line.matchAll(/`=([A-Z]+(?:_[A-Z]+)+\([^`]*\))`/g)])
  .map(([, formula = ""]) => formula);

/** Seeds that came up, for the one example that points at cells of the reader's own. */
const OWN_CELLS: readonly (readonly unknown[])[] = [
  ["Day", "Came up"],
  ...[3, 9, 14, 11, 4].map((came, at) => [at + 5, came]),
];

function tab(name: string): readonly (readonly unknown[])[] {
  if (name === "") return OWN_CELLS;
  const file = name.toLowerCase().replace(" ", "-");
  return csvRows(readFileSync(`${project}/sample-sheets/hillside-nursery/${file}.csv`, "utf8")).map(
    (row) => row.map((cell) => (/^\d+(?:\.\d+)?$/.test(cell) ? Number(cell) : cell)),
  );
}

describe("the functions as README shows them, on the sample nursery", () => {
  it("are all there", () => {
    const shown = ["TIMETABLE", ...formulas.map((formula) => formula.split("(")[0])];
    expect(shown.sort()).toEqual(registry.map(({ name }) => name).sort());
  });

  it.each(formulas)("%s answers", (formula) => {
    const answer = ask(formula.slice(0, formula.indexOf("(")), argumentsIn(formula, tab));
    expect((answer as unknown[][]).length).toBeGreaterThan(1);
    // A plan without hours names nobody, and nobody is helped by it.
    expect(JSON.stringify(answer)).not.toContain("hours not known");
  });

  it("give the whole of each tab: a column outside, such as Closed, would not be read", () => {
    const whole = formulas.flatMap((formula) => [
      ...formula.matchAll(/(\w+|'[\w ]+')!A:([A-Z]+)/g),
    ]);
    expect(whole.length).toBeGreaterThan(15);
    for (const [reference, name = "", last = ""] of whole) {
      expect([reference, columnAt(last) + 1]).toEqual([
        reference,
        tab(name.replaceAll("'", ""))[0]?.length,
      ]);
    }
  });
});
