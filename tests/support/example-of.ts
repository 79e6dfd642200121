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

/** Arguments of a function: what is given by name, nothing where it may be left out, else the example's. */
export function argumentsWith(
  entry: FunctionEntry,
  given: Readonly<Record<string, unknown>>,
): unknown[] {
  const example = exampleArguments(entry);
  return entry.parameters.map(({ name, optional }) => {
    const usual = optional || name === "timetable" ? "" : example[name];
    return name in given ? given[name] : usual;
  });
}

/** The rows that the example of a function answers; one cell is a row of one. */
export function exampleOf(entry: FunctionEntry): unknown[][] {
  const answer: unknown = askRows(entry.name, Object.values(exampleArguments(entry)));
  return Array.isArray(answer) ? answer : [[answer]];
}
