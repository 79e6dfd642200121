import { type Answer, columns } from "../answer";
import { InputError } from "../input-error";
import { germinationMeasures } from "./germination";
import { samplesSentence } from "./samples";

const COLUMNS = columns({ Measure: "text", Value: "number", Unit: "text" });

export interface GerminationQuestion {
  /** Days since sowing of each inspection. */
  readonly days: readonly number[];
  /** For each inspection, the seeds newly come up in each sample. */
  readonly counts: readonly (readonly number[])[];
  /** Seeds sown in all samples together, 1 or more. */
  readonly sown: number;
}

/**
 * Measures of a germination, and of two or four samples sown alike whether they agree.
 *
 * @throws InputError "shapes-differ" | "not-a-count"
 */
export function germinationAnswer({ days, counts, sown }: GerminationQuestion): Answer {
  check({ days, counts, sown });
  const totals = counts.map((row) => row.reduce((sum, count) => sum + count, 0));
  const found = germinationMeasures({ days, counts: totals, sown });
  const samples = (counts[0] ?? []).map((_, sample) =>
    counts.reduce((sum, row) => sum + (row[sample] as number), 0),
  );
  return {
    columns: COLUMNS,
    rows: [
      ["Sown", sown, "seeds"],
      ["Came up", found.germinated, "seeds"],
      ["Germination", found.share * 100, "%"],
      ["First came up", found.firstDay, "days"],
      ["Last came up", found.lastDay, "days"],
      ["Half came up, counting (N+1)/2", found.halfDaysCoolbear, "days"],
      ["Half came up, counting N/2", found.halfDaysFarooq, "days"],
      ["Mean time", found.meanDays, "days"],
      ["Variance of the time", found.varianceDays, "days²"],
      ["Standard error of the mean time", found.standardErrorDays, "days"],
      ["Speed (Maguire)", found.maguireSpeed, "seeds a day"],
      ["Velocity, 100 by mean time", found.velocity, "% a day"],
    ],
    remark: samplesSentence(samples, sown / samples.length),
  };
}

function check({ days, counts, sown }: GerminationQuestion): void {
  if (days.length === 0 || days.length !== counts.length) {
    throw new InputError(
      "shapes-differ",
      `days and counts must have one row for each inspection; found ${days.length} and ${counts.length}`,
    );
  }
  days.forEach((day, i) => {
    if (day < 0)
      throw new InputError("argument-unreadable", `days must be 0 or more; found ${day}`);
    if (i > 0 && day <= (days[i - 1] as number)) {
      throw new InputError(
        "argument-unreadable",
        `days must rise; found ${day} after ${days[i - 1]}`,
      );
    }
  });
  const came = counts.reduce((sum, row) => sum + row.reduce((all, count) => all + count, 0), 0);
  if (!(sown >= 1)) throw new InputError("not-a-count", `sown must be 1 or more; found ${sown}`);
  if (came > sown) {
    throw new InputError("not-a-count", `${came} came up of ${sown} sown: more than all`);
  }
}
