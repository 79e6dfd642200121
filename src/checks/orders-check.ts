import { type NurseryJob, nurseryJobs } from "./calibration/nursery-jobs";
import { checkedDays } from "./orders/checked-days";
import { type OrdersScore, ordersTable } from "./orders/orders-table";
import { statedChances } from "./orders/outlook-chances";
import { plannedOrders } from "./orders/planned-orders";
import { isTenth, partAsked } from "./part-asked";
import { checkNurseries, printList } from "./workers";

/**
 * Holds ORDER_PLAN and ORDER_OUTLOOK against what comes true in invented nurseries: are orders
 * planned at 0.8 met in about 80 of 100, and are stated chances reliable. Ends with 1 when a limit
 * is broken.
 *
 * Run by npm run check:orders: about 5 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --cores 1 to leave the other cores alone.
 */

const NURSERIES_A_KIND = 100;

await checkNurseries<NurseryJob, OrdersScore>({
  program: import.meta.url,
  jobs: () => nurseryJobs(partAsked(process.argv, NURSERIES_A_KIND), null),
  score: scoreOf,
  print: (scores) => {
    const { lines, outside } = ordersTable(scores, isTenth(process.argv) ? 2 : 0);
    console.log(lines.join("\n"));
    printList("Outside the limits", outside);
    return outside.length;
  },
});

function scoreOf(job: NurseryJob): OrdersScore {
  const days = checkedDays(job);
  return { kind: job.kind, planned: plannedOrders(days), chances: statedChances(days) };
}
