import { readFileSync } from "node:fs";
import { openScriptWorkbook, type ScriptWorkbook } from "../../local/script-workbook";
import { serialOfIso } from "../../local/serial-day";
import { numberCell, type SheetDraft, textCell, workbookData } from "../../local/workbook-data";
import { bigTable } from "./big-table";

/**
 * Times what the sidebar asks of the script in a workbook without a screen. Run by npm run bench; fails
 * when an answer takes more of a processor's time than the aim.
 */

const AS_OF = new Date(2026, 10, 25);
/** From a click to the list, in a script that has just been loaded. */
const AIM_MS = 1500;
const RUNS = 3;
/** Per person-hour in the tab of the timetable. */
const RATE_COLUMN = 9;

const cellOf = (value: unknown) => {
  if (typeof value === "number") return numberCell(value);
  if (!(value instanceof Date)) return value === "" ? undefined : textCell(String(value));
  const two = (part: number) => String(part).padStart(2, "0");
  const iso = `${value.getFullYear()}-${two(value.getMonth() + 1)}-${two(value.getDate())}`;
  return numberCell(serialOfIso(iso) ?? Number.NaN, "yyyy-mm-dd");
};

/** A workbook of so many batches, set up, seen from AS_OF. */
function nursery(batches: number, more: readonly SheetDraft[] = []): ScriptWorkbook {
  const records = bigTable(batches, 0.2, AS_OF).rows.map((row) => row.map(cellOf));
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  // Without its mark a function is none that the engine calculates: only the script is timed.
  const code = readFileSync("dist/Code.js", "utf8").replace(/@customfunction/g, "");
  const workbook = openScriptWorkbook(
    code,
    workbookData("Bench", [{ name: "Records", rows: records }, ...more]),
    {
      settings: { spreadsheetZone: zone, scriptZone: zone, locale: "en_GB" },
      now: () => AS_OF.getTime() + 9 * 3_600_000,
    },
  );
  ask(workbook, "sidebarSetUp", { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] });
  return workbook;
}

function ask<Answer>(workbook: ScriptWorkbook, name: string, request: unknown): Answer {
  const { ok, data, error } = workbook.run(name, request) as {
    ok: boolean;
    data: Answer;
    error: string;
  };
  if (!ok) throw new Error(error);
  return data;
}

/** CPU time of the fastest of some runs, in milliseconds. */
function cpuOf(work: () => number, atLeast: number): number {
  const times = Array.from({ length: RUNS }, () => {
    const before = process.cpuUsage();
    const found = work();
    const { user, system } = process.cpuUsage(before);
    if (found < atLeast) throw new Error(`only ${found} were found`);
    return (user + system) / 1000;
  });
  return Math.min(...times);
}

function report(what: string, ms: number): void {
  const holds = ms < AIM_MS;
  console.log(
    `${what.padEnd(52)}${ms.toFixed(0).padStart(6)} ms CPU, aim below ${AIM_MS}: ${holds ? "holds" : "MISSED"}`,
  );
  if (!holds) process.exitCode = 1;
}

const large = nursery(10_000);
report(
  "due list of 10,000 batches",
  cpuOf(() => ask<{ tasks: unknown[] }>(large, "sidebarToday", { daysAhead: 7 }).tasks.length, 100),
);
large.close();

const persons = Array.from({ length: 12 }, (_, at) => [
  textCell(`Person ${at}`),
  undefined,
  numberCell(8),
]);
const crew: SheetDraft = {
  name: "Crew",
  rows: [["Person", "Tasks", "Hours a day"].map((header) => textCell(header)), ...persons],
};
const crowded = nursery(5000, [crew]);
// biome-ignore lint/suspicious/noExplicitAny: a script has no types either
const { SpreadsheetApp } = crowded.uncounted() as any;
const timetable = SpreadsheetApp.getActive().getSheetByName("Nursery timetable");
const steps = timetable.getLastRow() - 2;
timetable.getRange(3, RATE_COLUMN, steps, 1).setValues(Array.from({ length: steps }, () => [40]));
report(
  "fortnight of 5,000 batches and 12 persons",
  cpuOf(
    () =>
      ask<{ parts: { hours: number | null }[] }>(crowded, "sidebarWork", { days: 14 }).parts.filter(
        ({ hours }) => hours !== null,
      ).length,
    100,
  ),
);
crowded.close();
