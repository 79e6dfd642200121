import { readFileSync } from "node:fs";
import type { ICellData } from "@univerjs/core";
import { loadBundle } from "../../local/bundle";
import { openWorkbook } from "../../local/engine";
import {
  formulaCell,
  numberCell,
  type SheetDraft,
  textCell,
  workbookData,
} from "../../local/workbook-data";
import { bigTable } from "./big-table";

/**
 * Inside the local workbook: one TAKE_SUMMARY over 10,000 rows against the same table made of
 * native COUNTIFS and SUMIFS formulas, with the same counts and rates. Run by npm run bench.
 */

const BATCHES = 10_000;
const VARIETIES = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];
const GRAFTERS = ["K", "M", "O", "T"];
const LAST = BATCHES + 1;

const column = (letter: string) => `Records!$${letter}$2:$${letter}$${LAST}`;
const VARIETY = column("C");
const GRAFTER = column("G");
const GRAFTS = column("N");
const TAKES = column("Q");

function recordsDraft(): SheetDraft {
  const dayZero = Date.UTC(1899, 11, 30);
  const cell = (value: unknown): ICellData | undefined => {
    if (value === "") return undefined;
    if (typeof value === "number") return numberCell(value);
    if (value instanceof Date) {
      const day = Date.UTC(value.getFullYear(), value.getMonth(), value.getDate());
      return numberCell((day - dayZero) / 86_400_000, "yyyy-mm-dd");
    }
    return textCell(String(value));
  };
  const { rows } = bigTable(BATCHES, 0.2, new Date(2026, 10, 25));
  return { name: "Records", rows: rows.map((row) => row.map(cell)), room: LAST + 1 };
}

const GROUPINGS: readonly (readonly [by: string, groups: readonly string[]])[] = [
  ["Variety", VARIETIES.map((variety) => `${VARIETY},"${variety}"`)],
  [
    "Variety+Grafter",
    VARIETIES.flatMap((variety) =>
      GRAFTERS.map((grafter) => `${VARIETY},"${variety}",${GRAFTER},"${grafter}"`),
    ),
  ],
];

/**
 * For every batch, takes squared over grafts: what the batch spread sums. One formula that spills
 * down its own tab, since SUMIFS adds cells only and not what is worked out from them.
 */
const SQUARES = `Squares!$A$1:$A$${BATCHES}`;
const squares = formulaCell(`=IF(${GRAFTS}>0,${TAKES}^2/${GRAFTS},0)`);

/**
 * The columns of TAKE_SUMMARY after the group's name: batches, grafted, taken, take rate, from, to,
 * batch spread, and batches not counted yet for its remark. What the table needs in between stands
 * in I and J: Pearson's X² of the group, and 1.96 squared.
 */
function nativeRow(group: string, index: number, groups: number): ICellData[] {
  const row = index + 1;
  const counted = `${group},${TAKES},">=0"`;
  const trials = `(B${row}/G${row})`;
  const centre = `(D${row}+J${row}/(2*${trials}))`;
  const half = `SQRT(J${row}*(D${row}*(1-D${row})/${trials}+J${row}/(4*${trials}^2)))`;
  const shrink = `(1+J${row}/${trials})`;
  return [
    `=COUNTIFS(${counted})`,
    `=SUMIFS(${GRAFTS},${counted})`,
    `=SUMIFS(${TAKES},${counted})`,
    `=C${row}/B${row}`,
    `=(${centre}-${half})/${shrink}`,
    `=(${centre}+${half})/${shrink}`,
    `=MAX(1,SUM($I$1:$I$${groups})/(SUM($A$1:$A$${groups})-${groups}))`,
    `=COUNTIFS(${group},${GRAFTS},">0",${TAKES},"")`,
    `=(SUMIFS(${SQUARES},${counted})-C${row}^2/B${row})/(D${row}*(1-D${row}))`,
    "=NORM.S.INV(0.975)^2",
  ].map(formulaCell);
}

interface Entry {
  readonly tab: "Result" | "Squares";
  readonly row: number;
  readonly column: number;
  readonly cell: ICellData;
}

interface Times {
  readonly first: number;
  readonly afterAnEdit: number;
  /** Rows and columns of the Result tab. */
  readonly result: readonly (readonly unknown[])[];
}

/** Seconds until the formulas, put into an open workbook, are calculated, and again after one edit. */
async function time(entries: readonly Entry[]): Promise<Times> {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const bundle = loadBundle(readFileSync("dist/Code.js", "utf8"), {
    spreadsheetZone: zone,
    scriptZone: zone,
    locale: "en_GB",
  });
  const empty = (name: string): SheetDraft => ({ name, rows: [[textCell("-")]], room: LAST + 1 });
  const workbook = openWorkbook(
    workbookData("bench", [recordsDraft(), empty("Result"), empty("Squares")]),
    bundle,
  );
  await workbook.settled();
  const start = performance.now();
  for (const { tab, row, column, cell } of entries) workbook.enter(tab, { row, column }, cell);
  await workbook.settled();
  const first = (performance.now() - start) / 1000;
  const edit = performance.now();
  workbook.enter("Records", { row: 5, column: 16 }, numberCell(1));
  await workbook.settled();
  const afterAnEdit = (performance.now() - edit) / 1000;
  const sheet = workbook.sheets().find(({ name }) => name === "Result");
  const result = (sheet?.rows ?? []).map((row) => row.map((cell) => cell?.value));
  workbook.close();
  return { first, afterAnEdit, result };
}

/** Batches, grafted, taken, take rate. Ranges rest on a correlation that no formula of the sheet learns. */
const FIGURES = 4;

function sameFigures(ours: Times["result"], native: Times["result"], names: number): void {
  native.forEach((row, index) => {
    const figures = ours[index + 1]?.slice(names, names + FIGURES) ?? [];
    row.slice(0, FIGURES).forEach((figure, column) => {
      if (Math.abs((figure as number) - (figures[column] as number)) < 1e-6) return;
      throw new Error(`row ${index + 1}: ${figures[column]} by TAKE_SUMMARY, ${figure} native`);
    });
  });
}

console.log(
  `\nlocal workbook, ${BATCHES} rows, seconds (about 0.1 of each is the engine's own wait); the figures of both are the same`,
);
console.log(
  "by                      groups   TAKE_SUMMARY first / after an edit   native first / after an edit   native / ours",
);
for (const [by, groups] of GROUPINGS) {
  const at = (
    tab: Entry["tab"],
    {
      row,
      column,
      cell,
    }: { readonly row: number; readonly column: number; readonly cell: ICellData },
  ): Entry => ({
    tab,
    row,
    column,
    cell,
  });
  const ours = await time([
    at("Result", {
      row: 0,
      column: 0,
      cell: formulaCell(`=TAKE_SUMMARY(Records!A1:Y${LAST},"${by}")`),
    }),
  ]);
  const native = await time([
    at("Squares", { row: 0, column: 0, cell: squares }),
    ...groups.flatMap((group, row) =>
      nativeRow(group, row, groups.length).map((cell, column) =>
        at("Result", { row, column, cell }),
      ),
    ),
  ]);
  sameFigures(ours.result, native.result.slice(0, groups.length), by.split("+").length);
  const seconds = (value: number) => value.toFixed(2).padStart(8);
  console.log(
    `${by.padEnd(24)}${String(groups.length).padStart(6)}${seconds(ours.first)} /${seconds(ours.afterAnEdit)}             ${seconds(native.first)} /${seconds(native.afterAnEdit)}        ${(native.first / ours.first).toFixed(1)} / ${(native.afterAnEdit / ours.afterAnEdit).toFixed(1)}`,
  );
}
console.log("aim: native / ours 10 or more");
