import fc from "fast-check";
import type { FunctionEntry } from "../../src/functions/registry";
import { exampleArguments } from "./example-of";
import {
  mostly,
  nastyCell,
  nastyGrid,
  nastyNumber,
  nastyText,
  plausibleCount,
  plausibleDay,
} from "./nasty-cells";

const name = fc.constantFrom("B1", "B2", "b1", "Alba", "Nera", "Bay 2", "Ana", "Total");

/** Columns that no two of which mean the same, with what belongs in them. */
const COLUMNS: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  Variety: name,
  Method: fc.constantFrom("", "Cocoa cleft graft", "Kiwi"),
  Place: name,
  Grafter: name,
  Culled: plausibleCount,
  Dispatched: plausibleCount,
  Closed: fc.constantFrom<unknown>("", "yes", "no", true, false),
  Sown: plausibleDay,
  "Seeds sown": plausibleCount,
  "Germination day": plausibleDay,
  Germinated: plausibleCount,
  "Grafted on": plausibleDay,
  "Grafts made": plausibleCount,
  "First release": plausibleDay,
  "Bud break": plausibleDay,
  "Take count day": plausibleDay,
  Takes: plausibleCount,
  "Ready on": plausibleDay,
  "Ready plants": plausibleCount,
  Moon: nastyText,
  Remark: nastyText,
};

/** A records table with a header that is found: a Batch column and any others, titles above or not. */
export const recordsTable: fc.Arbitrary<unknown[][]> = fc
  .tuple(
    fc.oneof(
      fc.shuffledSubarray(Object.keys(COLUMNS), { minLength: 2 }),
      fc.shuffledSubarray(Object.keys(COLUMNS), { minLength: Object.keys(COLUMNS).length }),
    ),
    fc.nat({ max: 3 }),
    fc.array(fc.constantFrom<unknown[]>(["Hillside nursery"], [], ["", 2026]), { maxLength: 3 }),
  )
  .chain(([headers, index, titles]) => {
    const all = [...headers.slice(0, index), "Batch", ...headers.slice(index)];
    const row = fc.tuple(...all.map((header) => mostly(COLUMNS[header] ?? name)));
    const blank = fc.constant<unknown[]>(all.map(() => ""));
    const anyRow = fc.oneof(
      { arbitrary: row as fc.Arbitrary<unknown[]>, weight: 8 },
      { arbitrary: blank, weight: 1 },
      { arbitrary: fc.constant<unknown[]>(all), weight: 1 },
    );
    return fc
      .array(anyRow, { maxLength: 7 })
      .map((rows) => [...titles, all, ...rows] as unknown[][]);
  });

const STEP_NAMES = ["Sowing", "Grafting", "First release", "Take count", "Ready", "Sweeping"];

/** A timetable whose header is found; its steps may be sound or not. */
const timetableTable: fc.Arbitrary<unknown[][]> = fc
  .array(
    fc.tuple(
      fc.constantFrom<unknown>("", "Plum", "plum", "Pear"),
      mostly(fc.constantFrom(...STEP_NAMES)),
      fc.oneof(fc.constantFrom<unknown>("", ...STEP_NAMES), nastyCell),
      mostly(fc.integer({ min: 0, max: 30 })),
      mostly(fc.integer({ min: 20, max: 60 })),
      mostly(fc.integer({ min: 40, max: 150 })),
      fc.constantFrom<unknown>("yes", "", true),
      mostly(fc.oneof(fc.integer({ min: 1, max: 100 }), nastyNumber)),
      mostly(fc.integer({ min: 1, max: 100 })),
      mostly(fc.constant("bag 1; strip 38.1 cm")),
    ),
    { maxLength: 6 },
  )
  .map((rows) => [
    ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted", "Kept of 100"].concat(
      ["Per person-hour", "Needs"],
    ),
    ...(rows as unknown[][]),
  ]);

/** An orders table whose header is found, titles above it or not. */
export const ordersTable: fc.Arbitrary<unknown[][]> = fc
  .tuple(
    fc.array(fc.constantFrom<unknown[]>(["Orders 2026"], []), { maxLength: 2 }),
    fc.array(
      fc.tuple(
        name,
        fc.constantFrom("", "Alba", "Alba or Nera", "B1 / Bay 2"),
        mostly(plausibleCount),
        mostly(plausibleDay),
        mostly(plausibleCount),
        mostly(fc.constantFrom<unknown>("", "yes", "no", true, false)),
      ),
      { maxLength: 6 },
    ),
  )
  .map(([titles, rows]) => [
    ...titles,
    ["Order", "Variety", "Wanted", "By", "Delivered", "Closed"],
    ...(rows as unknown[][]),
  ]);

const pairOfColumns = fc.tuple(
  fc.constantFrom<unknown>("Variety", "Takes", "Grafted on", "Kiwi", ""),
  fc.constantFrom<unknown>("Moon", "Remark", "Takes", ""),
);

/** Mostly what belongs there, so that most questions are answered; now and then anything. */
function usually(
  usual: fc.Arbitrary<unknown>,
  ...others: readonly fc.Arbitrary<unknown>[]
): fc.Arbitrary<unknown> {
  const rare = others.map((arbitrary) => ({ arbitrary, weight: 1 }));
  return fc.oneof({ arbitrary: usual, weight: 9 * others.length }, ...rare);
}

/** Small tables of persons and of closed days, some cells not what their column is for. */
const nastyTable = (...columns: readonly (readonly [string, fc.Arbitrary<unknown>])[]) =>
  fc
    .array(fc.tuple(...columns.map(([, cell]) => usually(cell, nastyCell))), { maxLength: 6 })
    .map((rows): unknown[][] => [columns.map(([header]) => header), ...rows]);
const crewTable = nastyTable(
  ["Person", name],
  ["Tasks", fc.constantFrom("", "all", "Grafting; Take count", "Sweeping")],
  ["Hours a day", fc.constantFrom<unknown>(0, 4, 7.5, "6 h", 25)],
  ["Off from", usually(fc.constant(""), plausibleDay)],
  ["Off to", usually(fc.constant(""), plausibleDay)],
);
const closedDaysTable = nastyTable(
  ["Day", fc.oneof(plausibleDay, fc.constantFrom("Sunday", "samedi", "Mondays"))],
  ["To", usually(fc.constant(""), plausibleDay)],
);

const placesTable = nastyTable(
  ["Place", name],
  ["Holds", fc.constantFrom<unknown>(0, 400, "~300", "3 doz", -1)],
);
const pricesTable = nastyTable(
  ["Item", fc.constantFrom("scion", "Wrap strip", "bag", "hour", "kite")],
  ["Price", fc.constantFrom<unknown>(0, 0.3, "€ 3,50", "5.000", 1e300, -2)],
  ["Per", fc.constantFrom<unknown>("", "m", "100", "50 l", "0", "h", 10)],
);

const columnOfCounts = fc.constantFrom<unknown>(
  [[4], [2], [""]],
  [[1], [2], ["x"]],
  [[9], [0], [3]],
  7,
);

/** What may be given for each parameter. */
const ARGUMENTS: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  records: usually(recordsTable, nastyGrid, nastyCell),
  timetable: usually(
    fc.oneof(fc.constantFrom<unknown>(undefined, ""), timetableTable),
    nastyGrid,
    nastyCell,
  ),
  asOf: usually(plausibleDay, nastyCell),
  level: usually(fc.constantFrom<unknown>(undefined, "", 0.8, 0.95, 0.001, 0.9999), nastyCell),
  daysAhead: usually(fc.constantFrom<unknown>(undefined, "", 0, 7, 400), nastyCell),
  daysBefore: usually(fc.constantFrom<unknown>(1, 30, 120, 400, 100_000), nastyCell),
  days: usually(fc.constantFrom<unknown>([[4], [5], [9]], [[0], [1], [300]]), nastyGrid, nastyCell),
  places: usually(placesTable, nastyGrid, nastyCell),
  prices: usually(
    fc.oneof(fc.constantFrom<unknown>(undefined, ""), pricesTable),
    nastyGrid,
    nastyCell,
  ),
  crew: usually(crewTable, nastyGrid, nastyCell),
  closedDays: usually(
    fc.oneof(fc.constantFrom<unknown>(undefined, ""), closedDaysTable),
    nastyGrid,
    nastyCell,
  ),
  counts: usually(
    fc.constantFrom<unknown>(
      [[0], [9], [""]],
      [[0], [0], [0]],
      ...[
        [
          [1, 2],
          [30, 20],
          [0, 1],
        ],
        [
          [1, 2, 3, 0],
          [90, 80, 85, 88],
          [0, 0, 0, 0],
        ],
      ],
    ),
    nastyGrid,
    nastyCell,
  ),
  sown: usually(fc.constantFrom<unknown>(50, 100, 200, 400), nastyCell),
  columns: usually(
    fc.constantFrom<unknown>(undefined, "", [["", ""]]),
    fc.array(pairOfColumns, { minLength: 1, maxLength: 3 }),
    nastyGrid,
  ),
  by: usually(
    fc.constantFrom<unknown>("Variety", "Grafter+Place", "Moon", "Remark", "Batch+Batch", "+"),
    nastyCell,
  ),
  evenFor: usually(
    fc.constantFrom<unknown>("Variety", "Place+Month", "Season", "Rootstock age in weeks"),
    nastyCell,
  ),
  period: usually(fc.constantFrom<unknown>(undefined, "", "week", "month", "quarter"), nastyCell),
  method: usually(fc.constantFrom<unknown>(undefined, "Cocoa cleft graft"), nastyCell, nastyGrid),
  wanted: usually(fc.constantFrom<unknown>(1, 12, 300, 20_000), nastyCell),
  readyBy: usually(plausibleDay, nastyCell),
  assurance: usually(fc.constantFrom<unknown>(undefined, "", 0.8, 0.95, 0.001, 0.9999), nastyCell),
  orders: usually(ordersTable, nastyGrid, nastyCell),
  variety: usually(fc.constantFrom<unknown>(undefined, "", "Alba"), nastyCell),
  harvest: usually(
    fc.constantFrom<unknown>(...[undefined, "", "Oct-Mar, May-Aug", "Ghana"], [
      ["Crop", "Main", "Mid"],
      ["Cocoa", "Oct-Mar", ""],
      ["Mango", "", "may"],
    ]),
    nastyGrid,
    nastyCell,
  ),
  taken: fc.oneof(columnOfCounts, columnOfCounts, nastyCell, nastyGrid),
  grafted: fc.oneof(columnOfCounts, columnOfCounts, nastyCell, nastyGrid),
};

/** What may be given for a parameter: of a name that stands above nowhere, what the function's example gives. */
export function cellsFor(name: string, entry: FunctionEntry): fc.Arbitrary<unknown> {
  const example = fc.constant(exampleArguments(entry)[name]);
  return ARGUMENTS[name] ?? usually(example, nastyCell, nastyGrid);
}
