import { InputError } from "../input-error";
import type { Records } from "../records/records";
import { STILL_OPEN, trendAnswer } from "./trend-answer";

/**
 * The last month's takes in one sentence, without anybody's name, for a sheet that hangs on a wall.
 *
 * @returns null where no month has a take counted, or the records have no takes at all
 */
export function lastMonthSentence(records: Records): string | null {
  let answer: ReturnType<typeof trendAnswer>;
  try {
    answer = trendAnswer({ records, period: "month", by: null });
  } catch (error) {
    // No column for grafts or takes: there is nothing to say.
    if (error instanceof InputError) return null;
    throw error;
  }
  const counted = answer.rows.filter(([, grafted]) => grafted !== null);
  const last = counted[counted.length - 1];
  if (last === undefined) return null;
  const [period, grafted, , rate, usual, , , reading] = last;
  const name = String(period).replace(STILL_OPEN, "");
  const open = name === period ? "" : " so far";
  const per = (share: unknown) => `${Math.round(Number(share) * 100)} %`;
  const judged =
    reading === "usual" ? "nothing out of the ordinary" : `which reads ${String(reading)}`;
  return `Takes of grafts made in ${name}${open}: ${per(rate)} of ${String(grafted)}; usual is ${per(usual)}: ${judged}.`;
}
