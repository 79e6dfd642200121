import type { Answer, Records } from "../core";
import { type CellOut, type Door, isMissing } from "../door/index";
import { columnsLeftAlone } from "../wording/columns-left-alone";
import type { Parameter, ReadBefore } from "./parameter";

/** What a custom function is given and gives: raw values of the spreadsheet. */
export type RawArguments = readonly unknown[];
export type FunctionResult = CellOut | CellOut[][];

/** The parameters of a function in the order in which a formula gives them. */
export type Parameters = Readonly<Record<string, Parameter<unknown>>>;

/** What a function works with: each argument as its parameter reads it. */
export type Values<Declared extends Parameters> = {
  readonly [Name in keyof Declared]: Declared[Name] extends Parameter<infer Value> ? Value : never;
};

/** A custom function without its help: the built file has this, and the help in its stubs alone. */
export interface SheetFunction<Declared extends Parameters = Parameters> {
  readonly parameters: Declared;
  run(door: Door, args: RawArguments): FunctionResult;
}

/** Read before the others, since others are read by them. */
const FIRST: readonly string[] = ["columns", "asOf", "timetable"];
/** Read last, since that takes longest: what else is wrong is said sooner. */
const LAST = "records";

/**
 * A custom function of its declared parameters. All coercing, naming and checking of arguments is done
 * here, by them.
 *
 * @param answer what comes back: an answer, or cells as they are to stand
 * @param listsColumns whether the answer tells by itself of columns that are left alone
 */
export function functionOf<Declared extends Parameters>(
  parameters: Declared,
  answer: (values: Values<Declared>, door: Door) => Answer | FunctionResult,
  listsColumns = false,
): SheetFunction<Declared> {
  const names = Object.keys(parameters);
  const turn = (name: string) => (name === LAST ? 2 : FIRST.includes(name) ? 0 : 1);
  const inTurn = [...names].sort(
    (one, other) => turn(one) - turn(other) || FIRST.indexOf(one) - FIRST.indexOf(other),
  );
  return {
    parameters,
    run(door, args) {
      const values: Record<string, unknown> = {};
      for (const name of inTurn) {
        const value = args[names.indexOf(name)];
        const before = values as ReadBefore;
        values[name] = parameters[name]?.read({ door, name, value, before });
      }
      const found = answer(values as Values<Declared>, door);
      if (!isAnswer(found)) return found;
      const untold = listsColumns ? null : columnsUntold(values);
      if (untold === null) return door.out(found);
      const remark = found.remark === null ? untold : `${found.remark} ${untold}`;
      return door.out({ ...found, remark });
    },
  };
}

function isAnswer(found: Answer | CellOut | CellOut[][]): found is Answer {
  return typeof found === "object" && found !== null && "columns" in found;
}

/** A remark on columns that were left alone where nothing was told of columns; null without such. */
function columnsUntold(values: Readonly<Record<string, unknown>>): string | null {
  const { records, columns, by, evenFor } = values;
  if (!isMissing(columns) || !isRecords(records)) return null;
  return columnsLeftAlone(
    records,
    [by, evenFor].filter((one) => typeof one === "string"),
  );
}

function isRecords(value: unknown): value is Records {
  return typeof value === "object" && value !== null && "troubles" in value;
}
