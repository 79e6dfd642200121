import {
  comparedTakes,
  type Initials,
  madeColumnNames,
  PERIODS,
  periodNamed,
  type Records,
  type TakeReason,
  type TrendPeriod,
  takeReasons,
  takeTrend,
} from "../../core";
import type { CompareAnswer, CompareRequest, ReasonRow, TrendRow } from "../../wire/takes";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn, namedText, namedTexts } from "../reading/named-text";
import { WISHED } from "../reading/usual-grouping";

const LEVEL = 0.95;

/** What is compared where nobody has chosen; null where the records name nothing but people. */
export function usualCompareBy(records: Records): string | null {
  return WISHED.map((fact) => headerOf(records, fact)).find((header) => header !== null) ?? null;
}

/** What a column is evened for where nobody has chosen, people never; null where there is nothing. */
export function usualEvenFor(records: Records, by: string): string | null {
  const variety = headerOf(records, "variety");
  if (variety !== null && variety !== by) return variety;
  if (madeColumnNames(records).includes("Season")) return "Season";
  const others = WISHED.map((fact) => headerOf(records, fact));
  return others.find((header) => header !== null && header !== by) ?? null;
}

/**
 * Everything that the sidebar shows of takes beyond their rates.
 *
 * @param compareBy what the settings say is compared
 */
export function compareTakes(
  records: Records,
  compareBy: string,
  request: CompareRequest,
): CompareAnswer {
  const columns = groupHeaders(records);
  const set = columns.includes(compareBy) ? compareBy : null;
  const by = request.by || (set ?? usualCompareBy(records) ?? columns[0] ?? "");
  const offered = new Set([...columns, ...madeColumnNames(records)]);
  const singles = [...offered].filter((name) => name !== by);
  const evenFors = [...singles, ...together(singles, headerOf(records, "variety"))];
  const wanted = request.evenFor || (usualEvenFor(records, by) ?? "");
  const evenFor = evenFors.includes(wanted) ? wanted : (evenFors[0] ?? "");
  const period = periodNamed(request.period || PERIODS[1]);
  const initials = initialsIn(records);
  const { reasons, remarks } = takeReasons({ records, level: LEVEL });
  return {
    by,
    evenFor,
    columns,
    evenFors,
    period,
    ...(by === "" || evenFor === ""
      ? { compared: [], alone: [], aloneBatches: 0, remarks: [] }
      : comparedRows(records, { by, evenFor, initials })),
    trend: takeTrend({ records, period, by: null }).periods.map(trendRow),
    reasons: reasons.map((reason) => reasonRow(reason, initials)),
    reasonsRemarks: remarks,
  };
}

function comparedRows(
  records: Records,
  {
    by,
    evenFor,
    initials,
  }: { readonly by: string; readonly evenFor: string; readonly initials: Initials },
): Pick<CompareAnswer, "compared" | "alone" | "aloneBatches" | "remarks"> {
  const takes = comparedTakes({ records, by, evenFor, level: LEVEL });
  return {
    compared: takes.groups.map((one) => ({
      group: namedTexts(one.group, takes.by, initials),
      grafted: one.grafted,
      taken: one.taken,
      rate: one.takeRate,
      expected: one.expectedRate,
      evened: one.evenedRate,
      from: one.from,
      to: one.to,
      reading: one.reading,
    })),
    alone: takes.alone.map(({ group, stratum }) => ({
      group: namedTexts(group, takes.by, initials),
      stratum: namedTexts(stratum, takes.evenFor, initials),
    })),
    aloneBatches: takes.aloneBatches,
    remarks: takes.remarks,
  };
}

function reasonRow({ people, best, worst, ...reason }: TakeReason, initials: Initials): ReasonRow {
  const rated = (one: TakeReason["best"]) =>
    one && { name: namedText(one.name, people, initials), takeRate: one.takeRate };
  return { ...reason, best: rated(best), worst: rated(worst) };
}

export function trendRow({ period, isOpen, grafted, ...rates }: TrendPeriod): TrendRow {
  const { takeRate: rate, usualRate: usual, low, high, reading } = rates;
  return { period, isOpen, grafted, rate, usual, low, high, reading };
}

/** Pairs worth a line of their own: the variety with what days make. */
function together(singles: readonly string[], variety: string | null): readonly string[] {
  if (variety === null || !singles.includes(variety)) return [];
  return ["Season", "Month"]
    .filter((name) => singles.includes(name))
    .map((name) => `${variety}+${name}`);
}

function headerOf(records: Records, fact: (typeof WISHED)[number]): string | null {
  const column = records.columns.find(
    ({ target }) => target?.kind === "fact" && target.fact === fact,
  );
  return column?.header ?? null;
}
