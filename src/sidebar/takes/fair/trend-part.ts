import * as header from "../../../sentences/made/take-columns";
import * as text from "../../../sentences/made/takes-page";
import type { TrendRow } from "../../../wire/takes";
import { periodWords } from "../../../wording/takes";
import { scaleLine } from "../../charts/drawn-list";
import { tableBehind } from "../../charts/table-behind";
import { countText, shareText } from "../../controls/count-words";
import { periodText } from "../../controls/day-words";
import { paragraph, quiet } from "../../controls/paragraph";
import { isSignal, readingWords } from "../take-words";
import { trendChart } from "./trend-chart";

/** As many periods as a narrow page can show apart. */
const MOST_DRAWN = 26;
/** Periods out of the ordinary that are named in the sentence. */
const MOST_NAMED = 3;

/** Takes over time: a sentence, then the chart, then all periods as a table. */
export function trendPart(trend: readonly TrendRow[]): Node[] {
  const counted = trend.filter(({ rate }) => rate !== null);
  if (counted.length === 0) return [paragraph(text.noneCounted())];
  const drawn = counted.slice(-MOST_DRAWN);
  const sentence = trendSentence(counted);
  return [
    paragraph(sentence),
    trendChart(drawn, sentence),
    scaleLine(endWords(drawn[0]), endWords(drawn[drawn.length - 1])),
    quiet(text.trendSigns()),
    trendTable(trend),
  ];
}

/**
 * How the last period stands, and which before it were out of the ordinary.
 *
 * @param counted the periods with a rate, the last one last
 * @example trendSentence([{ period: "2026-10", isOpen: true, rate: 0.68, usual: 0.73, reading: "usual" }]) // "Oct 2026, still open: 68\u00a0% took, 73\u00a0% is usual. Nothing out of the ordinary."
 */
export function trendSentence(counted: readonly TrendRow[]): string {
  const last = counted[counted.length - 1];
  if (last === undefined || last.rate === null || last.usual === null) return "";
  const judged = isSignal(last)
    ? text.trendReads({ reading: readingWords(last) })
    : text.trendOrdinary();
  const { rate, usual } = last;
  const now = text.trend({ period: named(last), rate, usual, judged });
  const others = counted.slice(0, -1).filter(isSignal);
  if (others.length === 0) return now;
  const periods = others.slice(-MOST_NAMED).map((row) =>
    text.periodNamed({
      period: named(row),
      reading: readingWords(row),
      rate: row.rate ?? 0,
    }),
  );
  const before = others.length > MOST_NAMED ? text.periodsOutLast : text.periodsOut;
  return `${now} ${before({ periods })}`;
}

/** A period as a person says it. */
function named({ period, isOpen }: TrendRow): string {
  return periodWords({ period: periodText(period), isOpen });
}

/** What stands at an end of the chart. */
function endWords(row: TrendRow | undefined): string {
  return row === undefined ? "" : named(row);
}

function trendTable(trend: readonly TrendRow[]): HTMLElement {
  return tableBehind({
    summary: text.allPeriods(),
    title: text.ratesByPeriod(),
    headers: [
      header.period(),
      header.grafted(),
      text.columnRate(),
      text.columnUsual(),
      text.columnLower(),
      text.columnUpper(),
      header.reading(),
    ],
    rows: () =>
      trend.map((row) => [
        named(row),
        row.grafted === null ? "" : countText(row.grafted),
        ...[row.rate, row.usual, row.low, row.high].map(shareText),
        row.rate === null && row.isOpen ? text.notCountedYet() : readingWords(row),
      ]),
  });
}
