import type { AloneRow, CompareAnswer, ComparedRow } from "../../../workbook/sidebar-calls";
import { counted, countText, listed, percentText } from "../../controls/count-words";
import { disclosure } from "../../controls/disclosure";
import { element } from "../../controls/element";
import { longList } from "../../controls/long-list";
import { numberTable } from "../../controls/number-table";
import { rangeTrack } from "../../controls/range-track";
import { scaleLine } from "../../controls/scale-line";
import { isolated, shortened } from "../../controls/shortened";
import { userText, wholeText } from "../../controls/user-text";
import type { Called } from "../../people/people-shown";
import { COMPARED_WORDS } from "../take-words";

/** Groups with nobody to compare with that are named before the rest are counted. */
const MOST_NAMED = 6;

/** The comparison: a sentence, then each group's evened rate as a dot on its range. */
export function comparedList(answer: CompareAnswer, called: Called): Node[] {
  const { compared, by, evenFor, remark } = answer;
  const remarks = [aloneSentence(answer, called), remark].filter((one) => one !== null);
  if (compared.length === 0) return [element("p", {}, "No takes are counted yet.")];
  const overall = overallRate(compared);
  const held = `The dot is a rate as it would be had everyone had the same ${isolated(evenFor)}; the bar is its range; the dashed line is the rate of all together, ${percentText(overall)}. The words are stricter than the bars, since many are compared at once.`;
  return [
    element("p", {}, comparedSentence(compared, called)),
    element("p", { class: "quiet" }, held),
    element(
      "div",
      { role: "group", "aria-label": `Take rates by ${shortened(by)}, evened` },
      scaleLine("0 %", "100 %"),
      longList(compared, (row) => comparedItem(row, overall, called)),
    ),
    ...(remarks.length === 0
      ? []
      : [element("div", { class: "note" }, wholeText(remarks.join(". ")))]),
    disclosure({
      summary: "The comparison as a table",
      content: () => comparedTable(compared, by, called),
    }),
  ];
}

/** @example comparedSentence(rows, called) // "Kesto is below the rest: 67 % evened, all together took 73 %." */
export function comparedSentence(rows: readonly ComparedRow[], called: Called): string {
  const on = (reading: ComparedRow["reading"]) => rows.filter((row) => row.reading === reading);
  const overall = overallRate(rows);
  const parts = (["below", "above"] as const).flatMap((reading) => {
    const groups = on(reading);
    if (groups.length === 0) return [];
    const names = groups.map(
      ({ group, evened }) =>
        `${isolated(called(group))} (${evened === null ? "" : percentText(evened)})`,
    );
    return [`${listed(names)} ${groups.length === 1 ? "is" : "are"} ${COMPARED_WORDS[reading]}`];
  });
  const few = on("too few").length;
  const unsure =
    few === 0 ? "" : ` For ${counted(few, "group", "groups")} there are too few batches to tell.`;
  if (parts.length > 0) {
    return `Evened, ${parts.join("; ")}; all together took ${percentText(overall)}.${unsure}`;
  }
  if (few === rows.length) return "There are too few batches yet to compare anybody.";
  return `Nobody stands clearly apart: what differs is no more than batches differ anyway.${unsure}`;
}

function comparedItem(row: ComparedRow, overall: number, called: Called): HTMLElement {
  const { group, rate, expected, evened, from, to, reading, grafted } = row;
  const plain =
    rate === null || expected === null
      ? ""
      : `As counted ${percentText(rate)} of ${countText(grafted)}; expected of these batches ${percentText(expected)}.`;
  return element(
    "div",
    { class: "drawn" },
    element(
      "p",
      { class: "drawn-words" },
      userText(called(group)),
      element("span", {}, COMPARED_WORDS[reading]),
    ),
    evened === null || from === null || to === null
      ? null
      : rangeTrack({
          ...{ from, likely: evened, to, most: 1, mark: "dot", expected: overall },
          label: `Evened ${percentText(evened)}, range ${percentText(from)} to ${percentText(to)}, all together ${percentText(overall)}`,
        }),
    element("p", { class: "quiet" }, plain),
  );
}

/** Whose batches are counted but not judged; null where everybody has others beside them. */
export function aloneSentence(
  { alone, aloneBatches }: Pick<CompareAnswer, "alone" | "aloneBatches">,
  called: Called,
): string | null {
  if (alone.length === 0) return null;
  const words = ({ group, stratum }: AloneRow) => `${called(group)} in ${called(stratum)}`;
  const named = alone.slice(0, MOST_NAMED).map(words).join("; ");
  const more = alone.length > MOST_NAMED ? ` and ${alone.length - MOST_NAMED} more` : "";
  return `Nobody to compare with: ${named}${more} (${counted(aloneBatches, "batch", "batches")}, counted but not judged)`;
}

function comparedTable(rows: readonly ComparedRow[], by: string, called: Called): HTMLElement {
  const share = (value: number | null) => (value === null ? "" : percentText(value));
  return numberTable({
    title: "Take rates compared",
    headers: [
      shortened(by, 40),
      ...["Grafted", "Taken", "Rate", "Expected", "Evened", "From", "To", "Reading"],
    ],
    rows: rows.map((row) => [
      called(row.group),
      ...[row.grafted, row.taken].map(countText),
      ...[row.rate, row.expected, row.evened, row.from, row.to].map(share),
      COMPARED_WORDS[row.reading],
    ]),
  });
}

function overallRate(rows: readonly ComparedRow[]): number {
  const sum = (of: (row: ComparedRow) => number) => rows.reduce((all, row) => all + of(row), 0);
  return (
    sum(({ taken }) => taken) /
    Math.max(
      1,
      sum(({ grafted }) => grafted),
    )
  );
}
