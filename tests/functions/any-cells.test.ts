import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { registry } from "../../src/functions/registry";
import { ask } from "../support/ask";
import { hostIn } from "../support/host";
import { cellsFor } from "../support/nasty-tables";

const hosts = fc
  .tuple(
    fc.constantFrom("Etc/UTC", "America/New_York", "Pacific/Apia", "Asia/Kolkata"),
    fc.constantFrom("en_GB", "en_US", "en_ZA", ""),
  )
  .map(([zone, locale]) => hostIn(zone, locale));

function argumentsOf(name: string): fc.Arbitrary<unknown[]> {
  const entry = registry.find((one) => one.name === name);
  if (entry === undefined) throw new Error(`${name} is not registered`);
  return fc.tuple(...entry.parameters.map((one) => cellsFor(one.name, entry)));
}

function deepFrozen<Value>(value: Value): Value {
  if (Array.isArray(value)) for (const part of value) deepFrozen(part);
  return Object.freeze(value);
}

/** Dates can be set though they are frozen, so what they say is compared. */
function photograph(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(photograph);
  return value instanceof Date ? `date ${value.getTime()}` : value;
}

function isCellOut(value: unknown): boolean {
  if (value instanceof Date) return Number.isFinite(value.getTime());
  return typeof value === "number"
    ? Number.isFinite(value)
    : typeof value === "string" || typeof value === "boolean";
}

/** What a spreadsheet can't show, or null. */
function whatIsWrongWith(result: unknown): string | null {
  if (!Array.isArray(result)) return isCellOut(result) ? null : `a cell ${String(result)}`;
  const width = Array.isArray(result[0]) ? result[0].length : 0;
  if (width === 0) return "no columns";
  for (const row of result) {
    if (!Array.isArray(row) || row.length !== width) return "rows of different widths";
    const wrong = row.find((cell) => !isCellOut(cell));
    if (row.some((cell) => !isCellOut(cell))) return `a cell ${String(wrong)}`;
  }
  return null;
}

describe.each(registry.map(({ name }) => name))("%s over any cells", (name) => {
  it("answers with a rectangle of cells or one sentence of its own, and changes nothing", () => {
    let answers = 0;
    fc.assert(
      fc.property(argumentsOf(name), hosts, (args, host) => {
        const before = photograph(args);
        let result: unknown;
        try {
          result = ask(name, deepFrozen(args), host);
        } catch (error) {
          expect(error).toBeInstanceOf(Error);
          // A fault of its own starts "NAME failed by", without the colon.
          expect((error as Error).message.slice(0, name.length + 2)).toBe(`${name}: `);
          expect(photograph(args)).toEqual(before);
          return;
        }
        answers += 1;
        expect(whatIsWrongWith(result)).toBeNull();
        expect(photograph(args)).toEqual(before);
      }),
      { numRuns: 250 },
    );
    // The cells must often enough make an answer, or little was shown.
    expect(answers).toBeGreaterThan(20);
  });
});
