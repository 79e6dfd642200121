import { type FunctionEntry, registry } from "../functions/index";
import type { SheetCell } from "../local/sheet-cells";

export const CONTRACT = "src/functions/contract.json";

/** What formulas that people have typed rely on. */
export interface Promised {
  /** As a formula gives them, those that may be left out in brackets. */
  readonly parameters: string;
  /** The header of the answer to the example; '' where an answer has none. */
  readonly columns: string;
}

/**
 * The contract with a row for each function that it lacks. Rows that stand are never made anew: what was
 * promised changes by hand alone.
 *
 * @param text the contract as it stands
 * @param answers what the example of each function answers
 */
export function contractWithNew(
  text: string,
  answers: ReadonlyMap<string, readonly (readonly (SheetCell | null)[])[]>,
): string {
  const promised = JSON.parse(text) as Readonly<Record<string, Promised>>;
  const added = registry
    .filter(({ name }) => !(name in promised))
    .map((entry) => {
      const header = answers.get(entry.name)?.[0] ?? [];
      const columns =
        entry.exampleHeadings === undefined ? header.map((cell) => String(cell?.value)) : [];
      return [
        entry.name,
        { parameters: parametersOf(entry), columns: columns.join(" · ") },
      ] as const;
    });
  const rows = [...Object.entries(promised), ...added].sort(([one], [other]) =>
    one < other ? -1 : 1,
  );
  return `${JSON.stringify(Object.fromEntries(rows), null, 2)}\n`;
}

/** As the contract has them. */
export function parametersOf({ parameters }: Pick<FunctionEntry, "parameters">): string {
  return parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ");
}
