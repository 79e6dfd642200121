import * as batch from "../sentences/made/batch-columns";
import * as check from "../sentences/made/check-columns";
import * as costColumns from "../sentences/made/cost-columns";
import * as costs from "../sentences/made/costs";
import * as order from "../sentences/made/order-columns";
import * as place from "../sentences/made/place-columns";
import * as text from "../sentences/made/report";
import * as take from "../sentences/made/take-columns";
import * as work from "../sentences/made/work-columns";
import type { Foremost } from "./foremost-rows";
import type { ColumnBelow } from "./lines-below";
import type { ToldWord } from "./report-options";

/** One answer of the add-in in a tab of its own. */
export interface ResultTab {
  readonly name: string;
  /** What stands above it, on the tab and in the terminal. */
  readonly heading: string;
  /** Without its leading "=". */
  readonly formula: string;
  /** Columns that are shares from 0 to 1, shown as per cent. */
  readonly shares: readonly string[];
  /** How the terminal prints it; the tab always has it all. */
  readonly columns?: readonly string[];
  readonly limit: number;
  /** What is printed first, where there may be more rows than are printed. */
  readonly foremost?: Foremost;
  /** A column of long texts, of the rows printed. */
  readonly below?: ColumnBelow;
  /** Columns of the last row that sum the answer up, where it has such a row. */
  readonly closing?: readonly string[];
}

/** The parts of the formulas, as references or values. */
export interface FormulaParts {
  readonly records: string;
  /** The same without the blank rows below, for the answer that counts rows. */
  readonly filledRecords: string;
  /** '' for the built-in timetable. */
  readonly timetable: string;
  readonly asOf: string;
  readonly daysAhead: string;
  /** '' for the add-in's own. */
  readonly level: string;
  /** What is told of headers and words: our name, the person's word, what that is. */
  readonly columns: readonly ToldWord[];
  /** '' where the file has no such tab; then the answer is not asked for. */
  readonly places: string;
  readonly prices: string;
  readonly orders: string;
  readonly crew: string;
  /** '' where there is no such tab. */
  readonly closedDays: string;
  /** '' for the add-in's own. */
  readonly assurance: string;
  /** Whether grafters are set beside one another by name. */
  readonly people: boolean;
}

/** The columns of records by which takes are compared, as the function is asked for them. */
const TAKES_BY = [
  { by: "Variety", name: text.takesByVariety, heading: text.takesByVarietyHeading },
  { by: "Grafter", name: text.takesByGrafter, heading: text.takesByGrafterHeading },
];

/**
 * The answers of the report, in the order in which a grower's day needs them.
 *
 * Longer than most: a list, an entry for each tab of the report.
 */
export function resultTabs(parts: FormulaParts): ResultTab[] {
  const { records, filledRecords, timetable, asOf, daysAhead, level, places, prices } = parts;
  const { orders, crew, closedDays, assurance } = parts;
  const told = toldArray(parts.columns);
  const callOf = (name: string, ...given: readonly string[]) =>
    `${name}(${given.join(",").replace(/,+$/, "")})`;
  const call = (name: string, ...given: readonly string[]) => callOf(name, ...given, told);
  return [
    {
      name: text.dueList(),
      heading: text.dueListHeading(),
      formula: call("BATCH_DUE", records, timetable, asOf, daysAhead),
      shares: [],
      columns: [
        batch.doOn(),
        batch.task(),
        batch.batch(),
        batch.place(),
        batch.plants(),
        batch.from(),
        batch.by(),
        batch.status(),
        batch.daysLate(),
      ],
      limit: 40,
      below: { heading: text.cautions(), column: batch.caution(), of: batch.task() },
    },
    ...(crew === ""
      ? []
      : [
          {
            name: text.workPlan(),
            heading: text.workPlanHeading(),
            formula: call("WORK_PLAN", records, timetable, crew, asOf, "", closedDays),
            shares: [],
            columns: [
              work.day(),
              work.person(),
              work.task(),
              work.batch(),
              work.place(),
              work.plants(),
              work.hours(),
              work.by(),
              work.remarks(),
            ],
            limit: 20,
          },
        ]),
    ...(orders === ""
      ? []
      : [
          {
            name: text.orderOutlook(),
            heading: text.orderOutlookHeading(),
            formula: call("ORDER_OUTLOOK", orders, records, timetable, asOf, assurance),
            shares: [order.chance()],
            columns: [
              order.order(),
              order.variety(),
              order.wanted(),
              order.by(),
              order.chance(),
              order.shortBy(),
              order.fullBy(),
              order.whatToDo(),
            ],
            limit: 20,
          },
        ]),
    {
      name: text.stages(),
      heading: text.stagesHeading(),
      formula: call("BATCH_STAGES", records, timetable, asOf, level),
      shares: [],
      columns: [
        batch.batch(),
        batch.variety(),
        batch.lastStep(),
        batch.plants(),
        batch.nextStep(),
        batch.nextFrom(),
        batch.nextBy(),
        batch.readyLikely(),
        batch.fewestReady(),
        batch.likelyReady(),
        batch.mostReady(),
      ],
      limit: 40,
      below: { heading: text.remarks(), column: batch.remark(), of: batch.batch() },
    },
    ...TAKES_BY.filter(({ by }) => by === "Variety" || parts.people).map(
      ({ by, name, heading }) => ({
        name: name(),
        heading: heading(),
        formula: callOf("TAKE_SUMMARY", records, `"${by}"`, "", told, timetable),
        shares: [take.takeRate(), take.from(), take.to()],
        limit: 20,
      }),
    ),
    ...(places === ""
      ? []
      : [
          {
            name: text.placeLoad(),
            heading: text.placeLoadHeading(),
            formula: call("PLACE_LOAD", records, timetable, places, asOf),
            shares: [],
            limit: 40,
            foremost: { column: place.overBy(), isOne: (over: string) => /[1-9]/.test(over) },
          },
        ]),
    ...(prices === ""
      ? []
      : [
          {
            name: text.cost(),
            heading: text.costHeading(),
            formula: call("BATCH_COST", records, timetable, prices, asOf),
            shares: [],
            limit: 20,
            foremost: { column: costColumns.batch(), isOne: isSum },
          },
        ]),
    {
      name: text.check(),
      heading: text.checkHeading(),
      formula: call("BATCH_CHECK", filledRecords, timetable, asOf),
      shares: [],
      columns: [check.row(), check.column(), check.found(), check.trouble(), check.whatToDo()],
      limit: 10,
      closing: [check.trouble(), check.whatHappens()],
    },
  ];
}

/** Whether a row of the costs sums up a method: its name is one of two messages around the method's. */
function isSum(name: string): boolean {
  return [costs.allOf, costs.startedPlant].some((message) => {
    const [before = "", after = ""] = message({ method: ANY_NAME }).split(ANY_NAME);
    return name.startsWith(before) && name.endsWith(after);
  });
}

/** No name holds it. */
const ANY_NAME = "\uFFFF";

/** Told words as a formula writes a small table; '' where nothing was told. */
function toldArray(columns: FormulaParts["columns"]): string {
  const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
  const rows = columns.map((told) => told.map(quoted).join(","));
  return rows.length === 0 ? "" : `{${rows.join(";")}}`;
}
