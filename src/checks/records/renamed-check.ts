import { builtInTimetable } from "../../core";
import { methodFinder } from "../../core/timetable";
import { type CleanTable, cleanSheet } from "./clean-sheet";
import { dice } from "./dice";
import { type Difference, differences } from "./differences";
import { PHASES, withHabits } from "./habit";
import { readSheet } from "./reading";
import { roleKey } from "./sheet";
import { strangersWords } from "./strangers-words";

/** What became of the columns of sheets whose headers and names are a stranger's. */
export interface RenamedCheck {
  readonly columns: number;
  /** Every cell was read as in the clean sheet. */
  readonly right: number;
  /** BATCH_CHECK tells each difference: the column is asked about or named. */
  readonly asked: number;
  /** Columns in which something was read otherwise without a word, most often first. */
  readonly silent: readonly SilentColumn[];
  /** Columns asked about, by header, most often first. */
  readonly told: readonly (readonly [header: string, sheets: number])[];
}

export interface SilentColumn {
  readonly header: string;
  readonly sheets: number;
  readonly seed: number;
  readonly difference: Difference;
}

const method = methodFinder(builtInTimetable());

/** Puts a stranger's words upon parts of the clean sample, and holds the readings against each other. */
export function checkRenamed(
  table: CleanTable,
  { from, sheets }: { readonly from: number; readonly sheets: number },
): RenamedCheck {
  const silent = new Map<string, SilentColumn>();
  const told = new Map<string, number>();
  let columns = 0;
  let right = 0;
  let asked = 0;
  for (let seed = from; seed < from + sheets; seed += 1) {
    const rolls = dice(seed).part("renamed");
    const clean = cleanSheet(table, rolls.between(20, 40), rolls.part("clean"));
    const renamed = withHabits(clean, strangersWords, { phases: PHASES, dice: rolls });
    const found = differences(readSheet(clean), readSheet(renamed)).filter(isOther);
    // Where a row is lost or too many, or the sheet is refused, every column is concerned.
    const ofRows = found.filter(({ what }) => what === "row");
    for (const { role, upper } of renamed.tables[0]?.columns ?? []) {
      const own = [...ofRows, ...found.filter(({ what }) => what === roleKey(role))];
      const quiet = own.find(({ listedAs }) => listedAs === null);
      columns += 1;
      if (own.length === 0) right += 1;
      else if (quiet === undefined) {
        asked += 1;
        told.set(upper, (told.get(upper) ?? 0) + 1);
      } else {
        const before = silent.get(upper)?.sheets ?? 0;
        silent.set(upper, { header: upper, sheets: before + 1, seed, difference: quiet });
      }
    }
  }
  return {
    columns,
    right,
    asked,
    silent: [...silent.values()].sort((a, b) => b.sheets - a.sheets),
    told: [...told].sort((a, b) => b[1] - a[1]),
  };
}

/** A method in other words is the same when it is read as the same. */
function isOther({ what, clean, read }: Difference): boolean {
  if (what !== "method") return true;
  const meant = method({ method: clean });
  return read === "" || meant === null || method({ method: read }) !== meant;
}
