import { type ChangeScore, changedNursery, changesTable } from "./calibration/changes-table";
import { RANGES_OF } from "./calibration/ranges";
import { scoreNursery } from "./calibration/score-nursery";
import { CHANGED_KINDS, LEVELS } from "./calibration/settings";
import { daysOf } from "./orders/checked-days";
import { plannedOrders } from "./orders/planned-orders";
import { isTenth, partAsked } from "./part-asked";
import { checkNurseries, printList } from "./workers";

/**
 * Holds the ranges of BATCH_STAGES and the plans of ORDER_PLAN against what comes true in invented
 * nurseries that change: in the year, over the years, by death, by late typing, by who grafts. Ends with 1
 * when a limit is broken.
 *
 * Run by npm run check:changes: about 5 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --only "takes fall" for one change, --unseen for nurseries that nothing was
 * tried out on, --cores 1 to leave the other cores alone.
 */

const NURSERIES_A_CHANGE = 100;

interface Job {
  readonly kind: number;
  readonly number: number;
}

await checkNurseries<Job, ChangeScore>({
  program: import.meta.url,
  jobs: () =>
    CHANGED_KINDS.flatMap(({ change }, kind) =>
      only() === null || change?.name === only()
        ? Array.from({ length: partAsked(process.argv, NURSERIES_A_CHANGE) }, (_, number) => ({
            kind,
            number: number + (process.argv.includes("--unseen") ? 50_000 : 0),
          }))
        : [],
    ),
  score: ({ kind, number }) => {
    const nursery = changedNursery(kind, number);
    const { history, asOfDays } = nursery;
    return {
      kind,
      ranges: scoreNursery(history, { asOfDays, levels: LEVELS, rangesOf: RANGES_OF }),
      planned: plannedOrders(daysOf(nursery)),
    };
  },
  print: (scores) => {
    const { lines, outside } = changesTable(scores, isTenth(process.argv) ? 2 : 0);
    console.log(lines.join("\n"));
    printList("Outside the goals", outside);
    return outside.length;
  },
});

function only(): string | null {
  const at = process.argv.indexOf("--only");
  return at === -1 ? null : (process.argv[at + 1] ?? null);
}
