import { exampleWorkbook } from "../../src/functions/example-workbook";
import type { FunctionEntry } from "../../src/functions/registry";
import { askRows } from "./ask";
import { argumentsIn } from "./formula";

/** What the example of a function gives it, by the names of its parameters. Days are ISO texts. */
export function exampleArguments({
  example,
  parameters,
}: FunctionEntry): Readonly<Record<string, unknown>> {
  const given = argumentsIn(example, (name) => exampleWorkbook[name] ?? []);
  return Object.fromEntries(parameters.map(({ name }, at) => [name, given[at] ?? ""]));
}

/** The rows that the example of a function answers; one cell is a row of one. */
export function exampleOf(entry: FunctionEntry): unknown[][] {
  const answer: unknown = askRows(entry.name, Object.values(exampleArguments(entry)));
  return Array.isArray(answer) ? answer : [[answer]];
}
