/*
 * Longer than most: one program from top to bottom, each part with the numbers of those before
 * it.
 */
import { readFileSync, statSync } from "node:fs";
import { createContext, runInContext, Script } from "node:vm";
import { buildSync } from "esbuild";
import { bigTable } from "./big-table";
import { crowdedNursery } from "./crowded-nursery";
import { orderBook } from "./order-book";

/** Times the built file in a bare VM context. Run by npm run bench. */

const CODE = "dist/Code.js";
const SIZES = [1_000, 10_000, 100_000] as const;
const AS_OF = new Date(2026, 10, 25);
const OPEN_SHARE = 0.2;

/** Reading the table is what every function starts with; aim: at most 12 plain passes. */
const READING = "reading alone";

const CALLS: readonly (readonly [name: string, formula: string])[] = [
  [READING, "reading.readTable(records)"],
  ["BATCH_STAGES", "BATCH_STAGES(records, '', asOf)"],
  ["BATCH_STEPS", "BATCH_STEPS(records, '', asOf)"],
  ["BATCH_DUE", "BATCH_DUE(records, '', asOf, 7)"],
  ["BATCH_READY", "BATCH_READY(records, '', asOf)"],
  ["BATCH_LOOKBACK", "BATCH_LOOKBACK(records, '', asOf, 180)"],
  ["BATCH_BALANCE", "BATCH_BALANCE(records)"],
  ["BATCH_CHECK", "BATCH_CHECK(records, '', asOf)"],
  ["PLACE_LOAD", "PLACE_LOAD(records, '', places, asOf)"],
  ["BATCH_COST", "BATCH_COST(records, rates, prices, asOf)"],
  ["WORK_NEEDS", "WORK_NEEDS(records, rates, asOf, 30)"],
  ["TAKE_SUMMARY", "TAKE_SUMMARY(records, 'Variety')"],
  ["TAKE_COMPARED", "TAKE_COMPARED(records, 'Grafter', 'Variety+Month')"],
  ["TAKE_TREND", "TAKE_TREND(records, 'week', 'Variety')"],
  ["TAKE_REASONS", "TAKE_REASONS(records)"],
  ["TAKE_RATE", "TAKE_RATE(taken, grafted)"],
  ["TAKE_RANGE", "TAKE_RANGE(taken, grafted)"],
];

const PLACES = [["Place", "Holds"], ...[1, 2, 3, 4].map((bay) => [`Bay ${bay}`, 1000])];
const PRICES = [
  ["Item", "Price", "Per"],
  ["Bag", 6, "100"],
  ["Wrap strip", 0.12, "m"],
  ["Hour", 3, ""],
];
const RATES = [
  ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"].concat([
    "Per person-hour",
    "Needs",
  ]),
  ["Cocoa cleft graft", "Sowing", "", 0, 0, 0, "yes", "", 90, "bag 1"],
  ["Cocoa cleft graft", "Germination", "Sowing", 7, 10, 14, "yes", 85, 400, ""],
  ["Cocoa cleft graft", "Grafting", "Sowing", 75, 90, 120, "yes", 80, 22, "wrap strip 38.1 cm"],
  ["Cocoa cleft graft", "Take count", "Grafting", 28, 30, 35, "yes", 75, 240, ""],
  ["Cocoa cleft graft", "Ready", "Grafting", 105, 112, 122, "yes", 90, 110, ""],
];

const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;

/** Besides: 50 groups over 200 strata, which few nurseries reach. */
const MANY_GROUPS = 50;
const MANY_STRATA = 200;

function context() {
  return createContext({
    SpreadsheetApp: {
      getActiveSpreadsheet: () => ({
        getSpreadsheetTimeZone: () => zone,
        getSpreadsheetLocale: () => "en_GB",
      }),
    },
  });
}

/** Fastest of some runs, in milliseconds: what the work costs when nothing else disturbs it. */
function fastest(runs: number, work: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    work();
    best = Math.min(best, performance.now() - start);
  }
  return best;
}

const PLAIN_PASS = `(() => {
  let texts = 0, numbers = 0, others = 0;
  for (const row of records) for (const cell of row) {
    const kind = typeof cell;
    if (kind === 'string') texts += 1; else if (kind === 'number') numbers += 1; else others += 1;
  }
  return texts + numbers + others;
})()`;

const code = readFileSync(CODE, "utf8");
const script = new Script(code);
/** The same sources and the same lowering as the built file; only the reading is called. */
const readingScript = new Script(
  buildSync({
    entryPoints: ["src/build/bench/reading-program.ts"],
    bundle: true,
    write: false,
    format: "iife",
    globalName: "reading",
    target: "es2020",
    minify: true,
  }).outputFiles[0]?.text ?? "",
);
const loads = Array.from({ length: 7 }, (_, turn) => {
  const fresh = context();
  // Another text each time, or it would not be read anew.
  const freshCode = `//load ${turn}\n${code}`;
  const start = performance.now();
  runInContext(freshCode, fresh);
  return performance.now() - start;
}).sort((a, b) => a - b);
console.log(`${CODE}: ${(statSync(CODE).size / 1024).toFixed(0)} KB (aim: below 350)`);
console.log(
  `load in a fresh context: median ${(loads[3] as number).toFixed(1)} ms (aim: below 40), a first call ${firstCallMs().toFixed(1)} ms of the processor`,
);
console.log(
  `edit of another tab than the due list: ${editElsewhereMs().toFixed(1)} ms of the processor, load included\n`,
);

/** Milliseconds of the processor's time that a run of onEdit takes where it is nothing to us. */
function editElsewhereMs(): number {
  return cpuMedian((freshCode) =>
    runInContext(`${freshCode}\n${code};onEdit(event)`, editContext()),
  );
}

/** The same for a call that has to load the inside of the file. */
function firstCallMs(): number {
  return cpuMedian((freshCode) => runInContext(`${freshCode}\n${code};TIMETABLE()`, context()));
}

function editContext() {
  const cells = { getValues: () => [["Batch", "Variety"]] };
  const place = { rowStart: 1, rowEnd: 1, columnStart: 2, columnEnd: 2 };
  const event = { range: { ...place, offset: () => cells } };
  return createContext({ event });
}

/** @param work is given a text that makes the code another one, or it would not be read anew */
function cpuMedian(work: (freshCode: string) => unknown): number {
  const times = Array.from({ length: 15 }, (_, turn) => {
    const start = process.cpuUsage();
    work(`//${turn}`);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  return times.sort((a, b) => a - b)[7] as number;
}

console.log(
  "function       batches x 25   ms        plain pass ms   ratio   growth per batch from 1,000",
);
const perBatchAtStart = new Map<string, number>();
for (const size of SIZES) {
  const sandbox = context();
  script.runInContext(sandbox);
  readingScript.runInContext(sandbox);
  const records = bigTable(size, OPEN_SHARE, AS_OF).rows;
  Object.assign(sandbox, {
    records,
    asOf: AS_OF,
    places: PLACES,
    prices: PRICES,
    rates: RATES,
    grafted: records.slice(1).map((row) => [row[13]]),
    taken: records.slice(1).map((row) => [row[16]]),
  });
  const runs = size === 100_000 ? 3 : 7;
  const plain = new Script(PLAIN_PASS);
  const pass = fastest(runs * 3, () => plain.runInContext(sandbox));
  for (const [name, formula] of CALLS) {
    const call = new Script(formula);
    const took = fastest(runs, () => call.runInContext(sandbox));
    const perBatch = took / size;
    if (!perBatchAtStart.has(name)) perBatchAtStart.set(name, perBatch);
    const growth = perBatch / (perBatchAtStart.get(name) as number);
    console.log(
      [
        name.padEnd(15),
        size.toLocaleString("en-GB").padStart(12),
        took.toFixed(1).padStart(12),
        pass.toFixed(2).padStart(14),
        (took / pass).toFixed(1).padStart(9),
        growth.toFixed(2).padStart(12),
      ].join(""),
    );
  }
}

const crowded = context();
script.runInContext(crowded);
for (const size of [10_000, 100_000]) {
  const { rows } = bigTable(size, OPEN_SHARE, AS_OF);
  const [header, ...batches] = rows;
  Object.assign(crowded, {
    records: [
      [...(header as unknown[]), "Row", "Stratum"],
      ...batches.map((row, index) => [
        ...row.slice(0, 6),
        `Grafter ${(index * 7919) % MANY_GROUPS}`,
        ...row.slice(7),
        index,
        `Stratum ${(index * 104_729) % MANY_STRATA}`,
      ]),
    ],
  });
  const call = new Script("TAKE_COMPARED(records, 'Grafter', 'Stratum')");
  const took = fastest(3, () => call.runInContext(crowded));
  console.log(
    `TAKE_COMPARED, ${MANY_GROUPS} groups x ${MANY_STRATA} strata, ${size.toLocaleString("en-GB")} batches: ${took.toFixed(0)} ms`,
  );
}
const WORK = { tasks: 300, days: 60, people: 12 } as const;
const planned = context();
script.runInContext(planned);
const nursery = crowdedNursery({
  tasks: WORK.tasks,
  days: WORK.days,
  people: WORK.people,
  asOf: AS_OF,
});
Object.assign(planned, nursery, { asOf: AS_OF });
const planCall = new Script(`WORK_PLAN(records, timetable, crew, asOf, ${WORK.days})`);
let plannedRows = 0;
const planTook = fastest(3, () => {
  plannedRows = (planCall.runInContext(planned) as unknown[]).length;
});
console.log(
  `\nWORK_PLAN, ${WORK.tasks} tasks x ${WORK.days} days x ${WORK.people} people: ${planTook.toFixed(0)} ms for ${plannedRows} rows (aim: below 2,000)`,
);

const PROMISED = { orders: 30, batches: 300 } as const;
const promising = context();
script.runInContext(promising);
const standing = bigTable(PROMISED.batches, 1, AS_OF).rows;
const outlookCall = new Script("ORDER_OUTLOOK(orders, records, '', asOf)");
for (const [book, wantedEach] of [
  ["about what is there", 1000],
  ["more than is there", 2000],
] as const) {
  const orders = orderBook(PROMISED.orders, wantedEach, AS_OF);
  Object.assign(promising, { records: standing, orders, asOf: AS_OF });
  const took = fastest(3, () => outlookCall.runInContext(promising));
  console.log(
    `ORDER_OUTLOOK, ${PROMISED.orders} orders with substitutes x ${PROMISED.batches} batches, ${book}: ${took.toFixed(0)} ms (aim: below 2,000)`,
  );
}
