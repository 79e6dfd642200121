import { readFileSync } from "node:fs";
import { type Cell, dayOfSerial } from "../../core";
import type { BatchFact } from "../../core/words/language-words";
import { readCsv } from "../../local/csv-in";
import type { Dice } from "./dice";
import {
  type BatchRow,
  holdsCounts,
  holdsDays,
  type Role,
  roleKey,
  type Sheet,
  type TableColumn,
} from "./sheet";

const CLEAN_TABLE = "sample-sheets/hillside-nursery/records.csv";

const fact = (name: BatchFact): Role => ({ kind: "fact", fact: name });
const day = (step: string): Role => ({ kind: "day", step });
const count = (step: string): Role => ({ kind: "count", step });

/** What each column of the clean sample holds, by its header. */
const ROLES: Readonly<Record<string, Role>> = {
  Batch: fact("batch"),
  "From lot": fact("fromLot"),
  Variety: fact("variety"),
  Rootstock: fact("rootstock"),
  Method: fact("method"),
  Place: fact("place"),
  Grafter: fact("grafter"),
  "Scion source": fact("scionSource"),
  Sown: day("sowing"),
  "Seeds sown": count("sowing"),
  "Germination day": day("germination"),
  Germinated: count("germination"),
  "Grafted on": day("grafting"),
  "Grafts made": count("grafting"),
  "First release": day("first release"),
  "Bud break": day("bud break"),
  "Take count day": day("take count"),
  Takes: count("take count"),
  "First flush": day("first flush"),
  "Flush hardening": day("flush hardening"),
  Branching: day("branching"),
  "Union closed": day("union closed"),
  "Ready on": day("ready"),
  "Ready plants": count("ready"),
  Culled: fact("culled"),
  Dispatched: fact("dispatched"),
  Closed: fact("closed"),
  Note: fact("note"),
};

export interface CleanTable {
  readonly columns: readonly TableColumn[];
  readonly rows: readonly BatchRow[];
}

/** The clean sample, whole. @param folder the project's */
export function cleanTable(folder: string): CleanTable {
  const { rows } = readCsv(readFileSync(`${folder}/${CLEAN_TABLE}`), CLEAN_TABLE, "records");
  const [header = [], ...body] = rows;
  const columns = header.map((cell): TableColumn => {
    const upper = String(cell?.v ?? "");
    const role = ROLES[upper];
    if (role === undefined) throw new Error(`${CLEAN_TABLE} has a new column, "${upper}"`);
    return { role, upper, lower: "" };
  });
  return {
    columns,
    rows: body.map((row, batch) => {
      const cells = columns.map((column, index): Cell => {
        const value = row[index]?.v ?? "";
        return holdsDays(column) && typeof value === "number" ? { day: dayOfSerial(value) } : value;
      });
      return { kind: "batch", batch, cells, counts: countsOf(columns, cells) };
    }),
  };
}

/** Locales of workbooks: day first, month first, and one that writes the year first. */
const LOCALES = ["en_GB", "en_US", "fr_FR", "es_MX", "pt_BR", "id_ID", "en_ZA"] as const;

/** A part of the clean sample as a sheet of its own. @param size how many batches */
export function cleanSheet({ columns, rows }: CleanTable, size: number, dice: Dice): Sheet {
  const chosen = new Set(dice.shuffled(rows).slice(0, size));
  return {
    tables: [{ above: [], columns, rows: rows.filter((row) => chosen.has(row)) }],
    below: [],
    locale: dice.pick(LOCALES),
    dayOrder: null,
    mergedColumn: null,
  };
}

/** A nursery ten times as large. */
export function tenfold(sheet: Sheet): Sheet {
  return {
    ...sheet,
    tables: sheet.tables.map((table) => ({
      ...table,
      rows: table.rows.map((row) => {
        if (row.kind !== "batch") return row;
        const cells = row.cells.map((cell, index) =>
          typeof cell === "number" && holdsCounts(table.columns[index] as TableColumn)
            ? cell * 10
            : cell,
        );
        return { ...row, cells, counts: countsOf(table.columns, cells) };
      }),
    })),
  };
}

function countsOf(columns: readonly TableColumn[], cells: readonly Cell[]): Map<string, number> {
  const counts = new Map<string, number>();
  columns.forEach((column, index) => {
    const cell = cells[index];
    if (holdsCounts(column) && typeof cell === "number") counts.set(roleKey(column.role), cell);
  });
  return counts;
}
