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
 * Inside the local workbook: one TAKE_SUMMARY over 10,000 rows against the same counts and rates
 * made of native COUNTIFS and SUMIFS formulas. Run by npm run bench.
 */

const BATCHES = 10_000;
const VARIETIES = ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"];
const GRAFTERS = ["K", "M", "O", "T"];
const PLACES = ["Bay 1", "Bay 2", "Bay 3", "Bay 4"];
const LAST = BATCHES + 1;

const column = (letter: string) => `Records!$${letter}$2:$${letter}$${LAST}`;
const VARIETY = column("C");
const GRAFTER = column("G");
const PLACE = column("F");
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
  [
    "Variety+Grafter+Place",
    VARIETIES.flatMap((variety) =>
      GRAFTERS.flatMap((grafter) =>
        PLACES.map(
          (place) => `${VARIETY},"${variety}",${GRAFTER},"${grafter}",${PLACE},"${place}"`,
        ),
      ),
    ),
  ],
];

/** The counted columns of TAKE_SUMMARY: batches, grafted, taken, and batches not counted yet. */
function nativeRow(group: string): ICellData[] {
  const counted = `${group},${TAKES},">=0"`;
  return [
    formulaCell(`=COUNTIFS(${counted})`),
    formulaCell(`=SUMIFS(${GRAFTS},${counted})`),
    formulaCell(`=SUMIFS(${TAKES},${counted})`),
    formulaCell(`=COUNTIFS(${group},${GRAFTS},">0",${TAKES},"")`),
  ];
}

interface Times {
  readonly first: number;
  readonly afterAnEdit: number;
  readonly taken: number;
}

/** Seconds until the formulas, put into an open workbook, are calculated, and again after one edit. */
async function time(rows: readonly (readonly ICellData[])[], takenColumn: number): Promise<Times> {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const bundle = loadBundle(readFileSync("dist/Code.js", "utf8"), {
    spreadsheetZone: zone,
    scriptZone: zone,
    locale: "en_GB",
  });
  const workbook = openWorkbook(
    workbookData("bench", [recordsDraft(), { name: "Result", rows: [[textCell("-")]] }]),
    bundle,
  );
  await workbook.settled();
  const start = performance.now();
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      workbook.enter("Result", r, c, cell);
    });
  });
  await workbook.settled();
  const first = (performance.now() - start) / 1000;
  const edit = performance.now();
  workbook.enter("Records", 5, 16, numberCell(1));
  await workbook.settled();
  const afterAnEdit = (performance.now() - edit) / 1000;
  const result = workbook.sheets()[1]?.rows ?? [];
  workbook.close();
  const taken = result.reduce((sum, row) => {
    const value = row[takenColumn]?.value;
    return typeof value === "number" ? sum + value : sum;
  }, 0);
  return { first, afterAnEdit, taken };
}

console.log(
  `\nlocal workbook, ${BATCHES} rows, seconds (about 0.1 of each is the engine's own wait)`,
);
console.log(
  "by                      groups   TAKE_SUMMARY first / after an edit   native first / after an edit   native / ours",
);
for (const [by, groups] of GROUPINGS) {
  const names = by.split("+").length;
  const ours = await time([[formulaCell(`=TAKE_SUMMARY(Records!A1:Y${LAST},"${by}")`)]], names + 2);
  const native = await time(groups.map(nativeRow), 2);
  if (ours.taken !== native.taken) throw new Error(`takes differ: ${ours.taken}, ${native.taken}`);
  const seconds = (value: number) => value.toFixed(2).padStart(8);
  console.log(
    `${by.padEnd(24)}${String(groups.length).padStart(6)}${seconds(ours.first)} /${seconds(ours.afterAnEdit)}             ${seconds(native.first)} /${seconds(native.afterAnEdit)}        ${(native.first / ours.first).toFixed(1)} / ${(native.afterAnEdit / ours.afterAnEdit).toFixed(1)}`,
  );
}
console.log("aim: native / ours 10 or more");
