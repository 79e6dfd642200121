import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { builtInTimetable } from "../../src/core/timetable/read-timetable";
import { openDoor } from "../../src/door/door";
import { registry } from "../../src/functions/registry";
import * as check from "../../src/sentences/made/check";
import * as text from "../../src/sentences/made/troubles";
import { ask, askRows } from "../support/ask";
import { crewTable, placesTable, pricesTable } from "../support/beside-tables";
import { day } from "../support/days";
import { argumentsWith } from "../support/example-of";
import { hostIn } from "../support/host";
import { recordsTable } from "../support/nasty-tables";
import { rowsOfEntry } from "../support/rows-of-entry";

const AS_OF = "2026-11-25";
/** What is asked, by the names of arguments; for another that may not be left out, what the example gives. */
const ASKED: Readonly<Record<string, unknown>> = {
  asOf: AS_OF,
  crew: crewTable(6),
  places: placesTable(60),
  prices: pricesTable(["scion", 0.5, ""], ["wrap strip", 0.1, "m"], ["hour", 3, ""]),
  daysAhead: 60,
  daysBefore: 120,
  days: 60,
  by: "Batch",
  evenFor: "Season",
  period: "quarter",
};
/** Their records are an aside, beside orders that are asked about elsewhere. */
const OF_ORDERS = ["ORDER_PLAN", "ORDER_OUTLOOK"];
/** Every other function that reads records. */
const QUESTIONS = registry
  .filter(({ name, parameters }) => {
    return !OF_ORDERS.includes(name) && parameters.some((one) => one.name === "records");
  })
  .map((entry) => {
    const args = (records: unknown) => argumentsWith(entry, { ...ASKED, records });
    return [entry.name, args] as const;
  });

/** A table without cells that are still loading: those are refused at the first one that is met. */
const table = recordsTable.map((rows) =>
  rows.map((row) => row.map((cell) => (cell === "Loading..." ? "" : cell))),
);

/**
 * The answer, or the sentence that refuses it. Troubles of one row may come in any order, and a row
 * with two cells that read "Total" may be named by either.
 */
function answerOf(name: string, args: unknown[]): unknown {
  try {
    const rows = askRows(name, args);
    if (name !== "BATCH_CHECK") return rows;
    return rows
      .map(([row, column, found, trouble, ...rest]) =>
        [text.sums(), text.sumsByNumbers()].includes(String(trouble))
          ? JSON.stringify([row, trouble, ...rest])
          : JSON.stringify([row, column, found, trouble, ...rest]),
      )
      .sort();
  } catch (error) {
    return String(error).replace(/they have: .*/s, "");
  }
}

describe.each(QUESTIONS)("%s", (name, args) => {
  it("answers alike whatever the order of the columns", () => {
    const shuffled = table.chain((rows) => {
      const width = Math.max(...rows.map((row) => row.length));
      const columns = Array.from({ length: width }, (_, index) => index);
      return fc.shuffledSubarray(columns, { minLength: width, maxLength: width }).map((order) => ({
        rows,
        turned: rows.map((row) => order.map((index) => row[index])),
      }));
    });
    fc.assert(
      fc.property(shuffled, ({ rows, turned }) => {
        expect(answerOf(name, args(turned))).toEqual(answerOf(name, args(rows)));
      }),
      { numRuns: 50 },
    );
  });

  it("answers alike with blank rows below, however many", () => {
    fc.assert(
      fc.property(table, fc.integer({ min: 1, max: 400 }), (rows, more) => {
        const longer = [...rows, ...Array.from({ length: more }, () => ["", "", null, undefined])];
        const plain = answerOf(name, args(rows));
        if (name === "BATCH_CHECK") {
          const troubles = (answer: unknown) =>
            (answer as string[]).filter((line) => !line.endsWith(`,"",""]`));
          expect(troubles(answerOf(name, args(longer)))).toEqual(troubles(plain));
        } else expect(answerOf(name, args(longer))).toEqual(plain);
      }),
      { numRuns: 30 },
    );
  });

  it("answers the same twice", () => {
    fc.assert(
      fc.property(table, (rows) => {
        expect(answerOf(name, args(rows))).toEqual(answerOf(name, args(rows)));
      }),
      { numRuns: 20 },
    );
  });
});

describe("BATCH_CHECK", () => {
  it("counts every row of the range once: used, left out, no batch, header, or blank", () => {
    fc.assert(
      fc.property(table, (rows) => {
        const answer = ask("BATCH_CHECK", [rows, "", AS_OF]) as unknown[][];
        const tally = check.rows({ rows: rows.length });
        expect(answer.filter((row) => row[3] === tally)).toEqual([answer.at(-1)]);
        const door = openDoor(hostIn("Etc/UTC"));
        const timetable = builtInTimetable();
        const how = { timetable, asOf: day(AS_OF), columns: "" };
        const { rows: counts } = door.records(rows, how);
        expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(rows.length);
        expect(answer.at(-1)?.[4]).toBe(check.rowsUsed(counts));
        const where = (happens: string) =>
          answer.filter((row) => row[4] === happens).flatMap(rowsOfEntry);
        expect(where(text.lineLeftOut())).toHaveLength(counts.leftOut);
        expect(where(text.notABatchHappens())).toHaveLength(counts.notBatches);
      }),
      { numRuns: 100 },
    );
  });
});
