import {
  comparedAnswer,
  madeColumnNames,
  PERIODS,
  periodNamed,
  type Records,
  reasonsAnswer,
  trendAnswer,
} from "../core";
import { answerTable } from "./answer-table";
import type { CompareAnswer, CompareRequest } from "./take-calls";

const LEVEL = 0.95;

/** What is compared and evened for where nobody has chosen: people first, then what plants come from. */
const USUAL_BY = ["grafter", "scionSource", "place", "rootstock", "variety"] as const;

/** The usual question for these records; null where they have nothing to compare by. */
export function usualComparison(
  records: Records,
): { readonly by: string; readonly evenFor: string } | null {
  const by = USUAL_BY.map((fact) => headerOf(records, fact)).find((header) => header !== null);
  if (by === undefined || by === null) return null;
  const variety = headerOf(records, "variety");
  const season = madeColumnNames(records).includes("Season") ? "Season" : null;
  const evenFor = variety === null || variety === by ? season : variety;
  return evenFor === null ? null : { by, evenFor };
}

/**
 * Everything that the sidebar shows of takes beyond their rates.
 *
 * @param columns headers that groups can be made of
 */
export function compareTakes(
  records: Records,
  columns: readonly string[],
  request: CompareRequest,
): CompareAnswer {
  const usual = usualComparison(records);
  const by = textOr(request.by, usual?.by ?? columns[0] ?? "");
  const offered = new Set([...columns, ...madeColumnNames(records)]);
  const singles = [...offered].filter((name) => name !== by);
  const evenFors = [...singles, ...together(singles, headerOf(records, "variety"))];
  const wanted = textOr(request.evenFor, usual?.evenFor ?? "");
  const evenFor = evenFors.includes(wanted) ? wanted : (evenFors[0] ?? "");
  const period = periodNamed(textOr(request.period, PERIODS[1]));
  const compared =
    by === "" || evenFor === ""
      ? { rows: [], remark: null }
      : answerTable(comparedAnswer({ records, by, evenFor, level: LEVEL }));
  const trend = answerTable(trendAnswer({ records, period, by: null }));
  const reasons = answerTable(reasonsAnswer({ records, level: LEVEL }));
  return {
    ...{ by, evenFor, columns, evenFors, period },
    people: headerOf(records, "grafter"),
    compared: compared.rows.map((row) => ({
      group: row.first(),
      grafted: row.number("Grafted") ?? 0,
      taken: row.number("Taken") ?? 0,
      rate: row.number("Take rate"),
      expected: row.number("Expected rate"),
      evened: row.number("Evened rate"),
      from: row.number("From"),
      to: row.number("To"),
      reading: row.text("Reading"),
    })),
    remark: compared.remark,
    trend: trend.rows.map((row) => ({
      period: row.text("Period"),
      grafted: row.number("Grafted"),
      rate: row.number("Take rate"),
      usual: row.number("Usual rate"),
      low: row.number("Lower limit"),
      high: row.number("Upper limit"),
      reading: row.text("Reading"),
    })),
    reasons: reasons.rows.map((row) => ({
      column: row.text("Column"),
      groups: row.number("Groups") ?? 0,
      explained: row.number("Spread explained"),
      best: row.text("Best"),
      worst: row.text("Worst"),
      reading: row.text("Reading"),
    })),
    reasonsRemark: reasons.remark,
  };
}

/** Pairs worth a line of their own: the variety with what days make. */
function together(singles: readonly string[], variety: string | null): readonly string[] {
  if (variety === null || !singles.includes(variety)) return [];
  return ["Season", "Month"]
    .filter((name) => singles.includes(name))
    .map((name) => `${variety}+${name}`);
}

function headerOf(records: Records, fact: (typeof USUAL_BY)[number]): string | null {
  const column = records.columns.find(
    ({ target }) => target?.kind === "fact" && target.fact === fact,
  );
  return column?.header ?? null;
}

/** Requests come from a page: anything but a text that says something is the usual one. */
function textOr(text: unknown, usual: string): string {
  return typeof text === "string" && text.trim() !== "" ? text : usual;
}
