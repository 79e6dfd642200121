import { type NurseryJob, nurseryJobs } from "./calibration/nursery-jobs";
import { checkedDays } from "./orders/checked-days";
import { type OrdersScore, ordersTable } from "./orders/orders-table";
import { statedChances } from "./orders/outlook-chances";
import { plannedOrders } from "./orders/planned-orders";
import { isTenth, partAsked } from "./part-asked";
import { coresAsked, isProgram, scoreAll, workOff } from "./workers";

/**
 * Holds ORDER_PLAN and ORDER_OUTLOOK against what comes true in invented nurseries: are orders
 * planned at 0.8 met in about 80 of 100, and are stated chances reliable. Ends with 1 when a limit
 * is broken.
 *
 * Run by npm run check:orders: about 5 minutes on 2 cores. With after a --: --tenth for a tenth of the
 * nurseries, as CI does, --cores 1 to leave the other cores alone.
 */

const NURSERIES_A_KIND = 100;

if (isProgram) await main();
else workOff(scoreOf);

async function main(): Promise<void> {
  const start = performance.now();
  const size = partAsked(process.argv, NURSERIES_A_KIND);
  const jobs = nurseryJobs(size, null);
  const cores = coresAsked(process.argv);
  const scores = await scoreAll<NurseryJob, OrdersScore>(import.meta.url, jobs, cores);
  const { lines, outside } = ordersTable(scores, isTenth(process.argv) ? 2 : 0);
  console.log(lines.join("\n"));
  console.log(`Outside the limits: ${outside.length === 0 ? "none" : outside.length}`);
  for (const line of outside) console.log(`  ${line}`);
  const seconds = (performance.now() - start) / 1000;
  console.log(`${jobs.length} nurseries in ${seconds.toFixed(0)} s`);
  process.exitCode = outside.length > 0 ? 1 : 0;
}

function scoreOf(job: NurseryJob): OrdersScore {
  const days = checkedDays(job);
  return { kind: job.kind, planned: plannedOrders(days), chances: statedChances(days) };
}
