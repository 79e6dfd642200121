import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellText } from "../../../src/core/cells/cell";
import { InputError } from "../../../src/core/faults/input-error";
import { headerWords } from "../../../src/core/records/header-words";
import { readRecords } from "../../../src/core/records/read-records";
import type { Trouble } from "../../../src/core/records/trouble";
import { gridIn } from "../../../src/door/cells-in";
import { daysOfInstants } from "../../../src/door/days-of-instants";
import { day } from "../../support/days";
import { hostIn } from "../../support/host";
import { nastyCell, nastyGrid } from "../../support/nasty-cells";
import { recordsTable } from "../../support/nasty-tables";

const STEP_NAMES = ["Sowing", "Grafting", "Sweeping"];
const days = daysOfInstants(hostIn("Asia/Kolkata"));

function read(rows: unknown[][]) {
  return readRecords(gridIn(rows, days), {
    stepNames: STEP_NAMES,
    asOf: day("2026-11-25"),
    localeOrder: null,
    decimalMark: null,
    told: new Map(),
  });
}

const words = headerWords(STEP_NAMES);

/** Whether a row says of one of its columns what it holds. */
function namesSomething(cells: readonly unknown[] | undefined): boolean {
  return (cells ?? []).some(
    (cell) => typeof cell === "string" && words.understand(cellText(cell)).length > 0,
  );
}

describe("every row of a range", () => {
  it("is heading, used, left out, set aside, or blank; what is not used is listed", () => {
    let found = 0;
    fc.assert(
      fc.property(fc.oneof(recordsTable, nastyGrid), (rows) => {
        let records: ReturnType<typeof read>;
        try {
          records = read(rows);
        } catch (error) {
          expect(error).toBeInstanceOf(InputError);
          return;
        }
        found += 1;
        const { heading, used, leftOut, notBatches, blank } = records.rows;
        expect(heading + used + leftOut + notBatches + blank).toBe(rows.length);
        const rowsWhere = (...codes: readonly Trouble["code"][]) => [
          ...new Set(
            records.troubles
              .filter(({ code }) => codes.includes(code))
              .map(({ row }) => row as number),
          ),
        ];
        const isLog = records.columns.some(({ target }) => target?.kind === "event");
        const usedRows = isLog ? null : records.batches.map(({ row }) => row);
        if (usedRows !== null) {
          expect(new Set(usedRows).size).toBe(usedRows.length);
          expect(usedRows).toHaveLength(used);
        }
        const asideRows = rowsWhere("no-batch", "no-line", "outside-tables");
        const leftOutRows = rowsWhere("line-without-batch", "line-without-step");
        expect(asideRows).toHaveLength(notBatches);
        expect(leftOutRows).toHaveLength(leftOut);
        if (usedRows === null) return;
        const accounted = new Set([...usedRows, ...asideRows, ...leftOutRows]);
        expect(accounted.size).toBe(used + leftOut + notBatches);
        // What is neither holds nothing, or is a header, or stands above the first header.
        const rest = rows.map((_, at) => at).filter((at) => !accounted.has(at + 1));
        const top = rest.find((at) => namesSomething(rows[at])) ?? -1;
        for (const at of rest.filter((one) => one > top)) {
          const isHeader = namesSomething(rows[at]) || namesSomething(rows[at - 1]);
          if (!isHeader) expect((rows[at] ?? []).filter((cell) => !isNothing(cell))).toEqual([]);
        }
        for (const row of accounted) expect(row > top + 1 && row <= rows.length).toBe(true);
      }),
      { numRuns: 400 },
    );
    expect(found).toBeGreaterThan(100);
  });

  it("of a table of batches with any cells is a batch where it holds a name and a day", () => {
    const cell = fc.oneof(nastyCell, fc.constant(""));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 }), (parts) => {
        const table = [
          ["Batch", "Sown", "Variety", "Grafts made", "Moon"],
          ...parts.map(([variety, grafts, moon], at) => [
            `K-${at}`,
            new Date(Date.UTC(2026, 5, 10 + at)),
            variety,
            grafts,
            moon,
          ]),
        ];
        let records: ReturnType<typeof read>;
        try {
          records = read(table);
        } catch (error) {
          expect(error).toMatchObject({ code: "not-ready-yet" });
          return;
        }
        expect(records.batches.map(({ name, row }) => [name, row])).toEqual(
          parts.map((_, at) => [`K-${at}`, at + 2]),
        );
        expect(records.rows).toMatchObject({ used: parts.length, leftOut: 0, notBatches: 0 });
      }),
      { numRuns: 300 },
    );
  });

  it("gives each cell that is not used its place in the list", () => {
    fc.assert(
      fc.property(fc.integer({ max: 10_000_000 }), (count) => {
        const records = read([
          ["Batch", "Grafts made"],
          ["B1", count],
        ]);
        const used = records.batches[0]?.counts[0] ?? null;
        expect(used === null).toBe(count < 0);
        // A million plants of one batch are used, and named as hardly meant.
        expect(records.troubles).toHaveLength(count < 0 || count >= 1_000_000 ? 1 : 0);
        if (count < 0) {
          expect(records.troubles[0]).toMatchObject({
            row: 2,
            column: "Grafts made",
            found: String(count),
            why: { code: "below-zero" },
          });
        }
        if (used !== null) expect(used).toBe(count);
      }),
      { numRuns: 100 },
    );
  });
});

function isNothing(cell: unknown): boolean {
  if (cell === null || cell === undefined) return true;
  if (cell instanceof Date) return Number.isNaN(cell.getTime());
  return typeof cell === "string" && cell.trim() === "";
}
