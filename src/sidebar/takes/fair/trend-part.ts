import type { TrendRow } from "../../../workbook/sidebar-calls";
import { countText, listed, percentText } from "../../controls/count-words";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { numberTable } from "../../controls/number-table";
import { scaleLine } from "../../controls/scale-line";
import { isSignal, periodWords, TREND_WORDS } from "../take-words";
import { trendChart } from "./trend-chart";

/** As many periods as a narrow page can show apart. */
const MOST_DRAWN = 26;
/** Periods out of the ordinary that are named in the sentence. */
const MOST_NAMED = 3;

/** Takes over time: a sentence, then the chart, then all periods as a table. */
export function trendPart(trend: readonly TrendRow[]): Node[] {
  const counted = trend.filter(({ rate }) => rate !== null);
  if (counted.length === 0) return [element("p", {}, "No takes are counted yet.")];
  const drawn = counted.slice(-MOST_DRAWN);
  const sentence = trendSentence(counted);
  return [
    element("p", {}, sentence),
    trendChart(drawn, sentence),
    scaleLine(endWords(drawn[0]), endWords(drawn[drawn.length - 1])),
    element(
      "p",
      { class: "quiet" },
      "A dot is a period of grafting. The pale band is the usual up and down; a ring marks one that is out of the ordinary, a hollow dot one whose takes are still being counted. The top is 100 %, the foot 0 %.",
    ),
    disclosure({ summary: "All periods as a table", content: () => trendTable(trend) }),
  ];
}

/** @example trendSentence(rows) // "2026-10, still open: 68 % took, 73 % is usual: nothing out of the ordinary." */
export function trendSentence(counted: readonly TrendRow[]): string {
  const last = counted[counted.length - 1];
  if (last === undefined || last.rate === null || last.usual === null) return "";
  const now = isSignal(last) ? `this reads ${readingWords(last)}` : "nothing out of the ordinary";
  const others = counted.slice(0, -1).filter(isSignal);
  const named = others
    .slice(-MOST_NAMED)
    .map((row) => `${periodWords(row)} (${readingWords(row)}, ${percentText(row.rate ?? 0)})`);
  const before =
    named.length === 0
      ? ""
      : ` Out of the ordinary before${others.length > MOST_NAMED ? ", last" : ""}: ${listed(named)}.`;
  return `${periodWords(last)}: ${percentText(last.rate)} took, ${percentText(last.usual)} is usual: ${now}.${before}`;
}

function readingWords({ reading }: TrendRow): string {
  return reading === null ? "" : TREND_WORDS[reading];
}

/** What stands at an end of the chart. */
function endWords(row: TrendRow | undefined): string {
  return row === undefined ? "" : periodWords(row);
}

function trendTable(trend: readonly TrendRow[]): HTMLElement {
  const share = (value: number | null) => (value === null ? "" : percentText(value));
  return numberTable({
    title: "Take rates by period",
    headers: ["Period", "Grafted", "Rate", "Usual", "Lower", "Upper", "Reading"],
    rows: trend.map((row) => [
      periodWords(row),
      row.grafted === null ? "" : countText(row.grafted),
      ...[row.rate, row.usual, row.low, row.high].map(share),
      row.rate === null && row.isOpen ? "not counted yet" : readingWords(row),
    ]),
  });
}
