import { recordedSteps } from "./beside-steps";
import { methodOrRefuse } from "./method-of-batch";
import { needsText } from "./needs";
import type { StepKind } from "./step-kind";
import { MOST_DAYS } from "./step-row";
import type { Method, Round, Timetable } from "./timetable";

/** As it is read again. */
const COUNTED = "yes";

/** A step as a row of a table that readTimetable reads back; null where a cell stays blank. */
export interface TimetableRow {
  readonly method: string;
  readonly step: string;
  readonly after: string | null;
  /** Days after that step. */
  readonly from: number | null;
  readonly usual: number | null;
  readonly by: number | null;
  /** "yes" where plants are counted. */
  readonly counted: string | null;
  /** 0 to 100, to four decimals. */
  readonly kept: number | null;
  readonly perPersonHour: number | null;
  readonly needs: string | null;
  readonly caution: string | null;
  readonly source: string | null;
  readonly kind: StepKind;
  /** Whole days from one time to the next of repeated care. */
  readonly every: number | null;
  readonly until: string | null;
}

/**
 * The steps of one method, or of all.
 *
 * @param name null for every method
 * @throws InputError "unknown-method" | "no-steps"
 */
export function timetableRows(timetable: Timetable, name: string | null): readonly TimetableRow[] {
  const methods = name === null ? timetable.methods : [methodOrRefuse(timetable, name)];
  return methods.flatMap(rowsOf);
}

function rowsOf(method: Method): TimetableRow[] {
  const nameAt = (at: number | null | undefined) => method.steps[at ?? -1]?.name ?? null;
  return recordedSteps(method).map((step): TimetableRow => {
    const first = step.after === null;
    return {
      method: method.name,
      step: step.name,
      after: first ? null : (method.steps[step.after]?.name ?? null),
      from: first ? null : step.from,
      usual: first ? null : step.usual,
      by: first || step.by === MOST_DAYS ? null : step.by,
      counted: step.counted ? COUNTED : null,
      kept: step.kept === null ? null : Math.round(step.kept * 1e6) / 1e4,
      perPersonHour: step.perPersonHour,
      needs: needsText(step.needs) || null,
      caution: step.caution || null,
      source: step.source || null,
      kind: step.kind,
      every: "every" in step ? (step as Round).every : null,
      until: nameAt((step as Partial<Round>).until),
    };
  });
}
