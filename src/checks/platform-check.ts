import { emulatorSource, openEmulated } from "./platform/emulator";
import { job } from "./platform/job";
import { CHART_TAB, sampleBook } from "./platform/sample-book";
import { take } from "./platform/steps";

/**
 * The built add-in at a short whole job in an emulator of the platform that we did not write: set up,
 * due list, a tick that is written, mark done, take back, an order's plan; once among tabs of cells,
 * once with a chart on a sheet of its own among them. What was lent to the emulator and what this
 * can't show: platform/README.md.
 *
 * Run by npm run check:platform; takes about 10 seconds. Ends with 1 where a step fails.
 */

const NOW = Date.UTC(2026, 10, 25, 9);

const start = performance.now();
const source = await emulatorSource();
const today = new Date(NOW).toISOString().slice(0, 10);
let passed = 0;
let failed = 0;
for (const chart of [false, true]) {
  const among = chart ? `with the chart sheet "${CHART_TAB}"` : "tabs of cells alone";
  console.log(`The sample nursery, ${among}`);
  const tally = take(job(openEmulated(source, sampleBook(chart), NOW), today), console.log);
  passed += tally.passed;
  failed += tally.failed;
}
console.log(`${((performance.now() - start) / 1000).toFixed(0)} s`);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
