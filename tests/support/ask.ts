import type { Host } from "../../src/door/host";
import { callFunction } from "../../src/functions/call";
import { registry } from "../../src/functions/registry";
import { hostIn } from "./host";
import { plainHeader } from "./plain-header";

/** Asks a custom function as a spreadsheet would: raw values in, raw cells out. */
export function ask(
  name: string,
  args: readonly unknown[],
  host: Host = hostIn("Etc/UTC"),
): unknown {
  const entry = registry.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`${name} is not registered`);
  return callFunction(entry, host, args);
}

/** The rows of a table function's answer, header first. */
export function askRows(name: string, args: readonly unknown[], host?: Host): unknown[][] {
  return ask(name, args, host) as unknown[][];
}

/** The rows of a table function's answer by column name. Days are ISO texts, read in UTC. */
export function askTable(name: string, args: readonly unknown[]): Record<string, unknown>[] {
  const [header, ...rows] = askRows(name, args) as [string[], ...unknown[][]];
  return rows.map((row) =>
    Object.fromEntries(
      header.map((column, index) => {
        const value = row[index];
        return [
          plainHeader(column),
          value instanceof Date ? value.toISOString().slice(0, 10) : value,
        ];
      }),
    ),
  );
}
