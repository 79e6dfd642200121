import { InputError } from "../faults";
import type { Records } from "../records";
import { type TrendPeriod, takeTrend } from "./take-trend";

/**
 * The takes of the last month that has any counted, of everybody together: for a sheet that hangs on
 * a wall.
 *
 * @returns null where no month has a take counted, or the records have no takes at all
 */
export function lastMonth(records: Records): TrendPeriod | null {
  try {
    const { periods } = takeTrend({ records, period: "month", by: null });
    return periods.filter(({ takeRate }) => takeRate !== null).pop() ?? null;
  } catch (error) {
    // No column for grafts or takes: there is nothing to say.
    if (error instanceof InputError) return null;
    throw error;
  }
}
