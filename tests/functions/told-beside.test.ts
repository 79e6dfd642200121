import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FunctionEntry, registry } from "../../src/functions/registry";
import { askRows } from "../support/ask";
import { exampleArguments } from "../support/example-of";

/**
 * Whatever reads a table beside the records hears what was told of its headers and of its words: told of
 * strange ones it answers as of its own, to the cell.
 */
type Table = readonly (readonly unknown[])[];

/** By the name of the argument, what the table is called where its headers are told. */
const TABLES: Readonly<Record<string, string>> = {
  orders: "Orders",
  crew: "Crew",
  closedDays: "Closed days",
  places: "Places",
  prices: "Prices",
};
/** Columns of names, whose words can be told. */
const NAMED = new Set(["Variety", "Place", "Person", "Item", "Customer", "Tasks"]);

const readers = registry.flatMap((entry) =>
  entry.parameters
    .filter(({ name }) => name in TABLES)
    .map((parameter) => [entry.name, parameter.name, entry] as const),
);

const answer = (entry: FunctionEntry, given: Readonly<Record<string, unknown>>) =>
  askRows(
    entry.name,
    entry.parameters.map(({ name }) => given[name] ?? ""),
  );

/** Headers that say nothing to anybody; some are the same in every table, as an office's "Name" is. */
const strange = (column: number, isShared: boolean, table: string) =>
  isShared ? `Qvx ${column}` : `Qvx ${table} ${column}`;

describe.each(readers)("%s, told of its %s,", (_, argument, entry) => {
  const given = exampleArguments(entry);
  const table = given[argument] as Table;
  const [header = [], ...rows] = table;
  const own = answer(entry, given);
  const some = fc.array(fc.boolean(), { minLength: header.length, maxLength: header.length });

  it("takes columns and an example with such a table", () => {
    expect(entry.parameters.map(({ name }) => name)).toContain("columns");
    expect(rows.length).toBeGreaterThan(0);
    expect(own.length).toBeGreaterThan(1);
  });

  it("answers the same under strange headers", () => {
    fc.assert(
      fc.property(some, some, fc.boolean(), (changed, shared, isAll) => {
        const isChanged = (at: number) => isAll || changed[at] === true;
        const renamed = header.map((one, at) =>
          isChanged(at) ? strange(at, shared[at] === true, argument) : one,
        );
        const columns = header.flatMap((one, at) =>
          isChanged(at) ? [[`${TABLES[argument]}: ${one}`, renamed[at], "header"]] : [],
        );
        // Told of other tables under the same words.
        const others = Object.values(TABLES).flatMap((name) =>
          name === TABLES[argument]
            ? []
            : [[`${name}: ${name === "Orders" ? "By" : "Name"}`, "Qvx 0"]],
        );
        const told = [...columns, ...others];
        expect(answer(entry, { ...given, [argument]: [renamed, ...rows], columns: told })).toEqual(
          own,
        );
      }),
      { numRuns: 6 },
    );
  });

  it("answers the same where its names are strange words", () => {
    const words = new Map<string, string>();
    const strangeRows = rows.map((cells) =>
      cells.map((cell, at) => {
        if (!NAMED.has(String(header[at])) || typeof cell !== "string" || cell === "") return cell;
        const word = words.get(cell) ?? `Zk ${argument} ${words.size}`;
        words.set(cell, word);
        return word;
      }),
    );
    const told = [...words].map(([name, word]) => [name, word, "value"]);
    if (words.size === 0) return;
    const found = answer(entry, { ...given, [argument]: [header, ...strangeRows], columns: told });
    expect(found).toEqual(own);
    expect(answer(entry, { ...given, [argument]: [header, ...strangeRows] })).not.toEqual(own);
  });
});
