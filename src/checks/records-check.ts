import { parseArgs } from "node:util";
import type { Grid } from "../core";
import { partAsked } from "./part-asked";
import { cleanTable } from "./records/clean-sheet";
import { type Combination, combination, sheetsFor } from "./records/combination";
import { differences } from "./records/differences";
import { type FuzzResult, fuzz, randomQuestion } from "./records/fuzz";
import { checkHabits, type HabitCheck } from "./records/habit-check";
import { identicalAlone, leastSilent, leastTold } from "./records/least-cases";
import { readSheet } from "./records/reading";
import { checkRenamed, type RenamedCheck } from "./records/renamed-check";
import { shareText, textTable } from "./records/text-table";

/**
 * Whether messy records are read as clean ones, or say where they are not. Run by
 * npm run check:records: about a minute; with -- --tenth a tenth of it, as CI does. With --seed N (and --habits "a; b", --batches N) it shows one sheet, with
 * --grid N one of the random grids.
 */

/** Share of the sheets that must be read as if they were clean. */
const AIM = 0.98;
/** The same of columns whose header and values are in a stranger's words. */
const RENAMED_RIGHT = 0.9;
const RENAMED_TOLD = 0.98;
/** Making a sheet smaller takes many readings. */
const SILENT_SHOWN = 25;

const { values } = parseArgs({
  options: {
    combinations: { type: "string", default: String(partAsked(process.argv, 3000)) },
    renamed: { type: "string", default: String(partAsked(process.argv, 600)) },
    grids: { type: "string", default: String(partAsked(process.argv, 10_000)) },
    tenth: { type: "boolean" },
    from: { type: "string", default: "1" },
    seed: { type: "string" },
    grid: { type: "string" },
    habits: { type: "string" },
    batches: { type: "string" },
  },
});
const table = cleanTable(".");

if (values.grid !== undefined) printGrid(randomQuestion(Number(values.grid)).grid);
else if (values.seed === undefined) {
  const started = performance.now();
  const check = checkHabits(table, {
    from: Number(values.from),
    combinations: Number(values.combinations),
  });
  printCheck(check);
  const renamed = checkRenamed(table, {
    from: Number(values.from),
    sheets: Number(values.renamed),
  });
  printRenamed(renamed);
  const random = fuzz({ from: Number(values.from), grids: Number(values.grids) });
  printFuzz(random);
  console.log(`${Math.round((performance.now() - started) / 100) / 10} s`);
  const held = check.silent.length === 0 && check.identical / check.combinations >= AIM;
  process.exitCode = held && renamedHolds(renamed) && random.faults.length === 0 ? 0 : 1;
} else {
  const drawn = combination(Number(values.seed));
  show({
    ...drawn,
    habits: values.habits?.split(";").map((name) => name.trim()) ?? drawn.habits,
    batches: Number(values.batches ?? drawn.batches),
  });
}

function printCheck({ combinations, identical, listed, silent, habits, told }: HabitCheck) {
  console.log(
    textTable(
      ["Habit", "Sheets", "Identical", "Silent", "Identical alone"],
      habits.map(({ habit, used, ...own }) => [
        habit,
        used,
        shareText(own.identical, used),
        own.silent,
        shareText(identicalAlone(habit, table), 1),
      ]),
    ),
  );
  if (told.length > 0) {
    console.log("\nDifferences that BATCH_CHECK lists, by what it says, each with a sheet to see:");
    const rows = told.map(({ trouble, sheets, seed }) => [
      trouble,
      sheets,
      wayTo(leastTold(seed, trouble, table)),
    ]);
    console.log(textTable(["Trouble", "Sheets", "To see one"], rows));
  }
  for (const seed of silent.slice(0, SILENT_SHOWN)) {
    const { least, difference } = leastSilent(seed, table);
    const { row, what, clean, read } = difference;
    console.log(
      `\nSilent: seed ${seed}; least: ${wayTo(least)}` +
        `\n  row ${row}, ${what}: "${clean}" was read as "${read}"`,
    );
  }
  if (silent.length > SILENT_SHOWN) {
    console.log(`\nSilent too, by their seeds: ${silent.slice(SILENT_SHOWN).join(", ")}`);
  }
  console.log(
    `\n${combinations} combinations: ${shareText(identical, combinations)} identical (aim ${AIM * 100} %), ` +
      `${shareText(identical + listed, combinations)} identical or listed (must be 100 %), ${silent.length} silent`,
  );
}

function renamedHolds({ columns, right, asked, silent }: RenamedCheck): boolean {
  const enough = right / columns >= RENAMED_RIGHT && (right + asked) / columns >= RENAMED_TOLD;
  return enough && silent.length === 0;
}

function printRenamed({ columns, right, asked, silent, told }: RenamedCheck) {
  console.log(
    `\n${columns} columns in a stranger's words: ${shareText(right, columns)} right ` +
      `(aim ${RENAMED_RIGHT * 100} %), ${shareText(right + asked, columns)} right or asked about ` +
      `(aim ${RENAMED_TOLD * 100} %), ${shareText(columns - right - asked, columns)} silent (must be none)`,
  );
  if (told.length > 0) {
    const most = told.slice(0, SILENT_SHOWN);
    console.log(
      `Asked about most: ${most.map(([header, times]) => `${header} ${times}`).join(", ")}`,
    );
  }
  for (const { header, sheets, seed, difference } of silent.slice(0, SILENT_SHOWN)) {
    const { row, what, clean, read } = difference;
    console.log(
      `Silent: "${header}" in ${sheets}, such as ${seed}, row ${row}, ${what}: "${clean}" was read as "${read}"`,
    );
  }
}

function printFuzz({ grids, read, batches, faults, slowest }: FuzzResult) {
  console.log(
    `\n${grids} random grids: ${read} read (${batches} batches), ${grids - read - faults.length} refused in a sentence, ` +
      `${faults.length} faults; slowest ${Math.round(slowest.milliseconds)} ms (seed ${slowest.seed})`,
  );
  for (const fault of faults.slice(0, 20)) console.log(`  ${fault}`);
}

function wayTo({ seed, batches, habits }: Combination): string {
  return `--seed ${seed} --batches ${batches} --habits "${habits.join("; ")}"`;
}

/** One sheet as it stands, what was read otherwise, and what BATCH_CHECK lists. */
function show(drawn: Combination) {
  const { clean, messy } = sheetsFor(drawn, table);
  const reading = readSheet(messy);
  console.log(`${drawn.habits.join("; ")}; locale ${messy.locale}`);
  printGrid(reading.grid);
  console.table(differences(readSheet(clean), reading));
  console.table(reading.listed);
}

function printGrid(grid: Grid) {
  for (let row = 0; row < grid.rowCount; row += 1) {
    const cells = Array.from({ length: grid.columnCount }, (_, column) => grid.at(row, column));
    console.log(`${row + 1}: ${cells.map((cell) => JSON.stringify(cell)).join(" | ")}`);
  }
}
