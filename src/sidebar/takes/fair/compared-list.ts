import * as header from "../../../sentences/made/take-columns";
import * as text from "../../../sentences/made/takes-page";
import type { CompareAnswer, ComparedRow } from "../../../wire/takes";
import { aloneSentence, COMPARED_WORDS, ratedWords, takesRemarks } from "../../../wording/takes";
import { drawnItem, drawnList } from "../../charts/drawn-list";
import { rangeTrack } from "../../charts/range-track";
import { tableBehind } from "../../charts/table-behind";
import { countText, percentText, shareText } from "../../controls/count-words";
import { longList } from "../../controls/long-list";
import { notes, paragraph, quiet } from "../../controls/paragraph";
import { isolated, shortened } from "../../controls/shortened";
import { userText } from "../../controls/user-text";
import type { Called } from "../../people/people-shown";

/** The comparison: a sentence, then each group's evened rate as a dot on its range. */
export function comparedList(answer: CompareAnswer, called: Called): Node[] {
  const { compared, by, evenFor, alone, aloneBatches } = answer;
  const remarks = [
    aloneSentence(
      alone.map(({ group, stratum }) => ({ group: called(group), stratum: called(stratum) })),
      aloneBatches,
    ),
    takesRemarks(answer.remarks, "page"),
  ].filter((one) => one !== null);
  if (compared.length === 0) return [paragraph(text.noneCounted())];
  const overall = overallRate(compared);
  const held = text.evenedDot({ evenFor: isolated(evenFor), overall });
  return [
    paragraph(comparedSentence(compared, called)),
    quiet(held),
    drawnList({
      label: text.takeRatesByEvened({ by: shortened(by) }),
      ends: [percentText(0), percentText(1)],
      entries: [longList(compared, (row) => comparedItem(row, overall, called))],
    }),
    ...notes(remarks.length === 0 ? null : remarks.join(" ")),
    comparedTable(compared, by, called),
  ];
}

/**
 * Which groups stand apart from the rest, and that too few batches tell of the others.
 *
 * @example comparedSentence([{ group: "Kesto", evened: 0.67, taken: 67, grafted: 100, reading: "below" }], (name) => name) // `Evened, ${ratedWords({ name: isolated("Kesto"), takeRate: 0.67 })} is below the rest. All together took 67\u00a0%.`
 */
export function comparedSentence(rows: readonly ComparedRow[], called: Called): string {
  const on = (reading: ComparedRow["reading"]) => rows.filter((row) => row.reading === reading);
  const overall = overallRate(rows);
  const parts = (["below", "above"] as const).flatMap((reading) => {
    const groups = on(reading);
    if (groups.length === 0) return [];
    const names = groups.map(({ group, evened }) =>
      ratedWords({ name: isolated(called(group)), takeRate: evened ?? 0 }),
    );
    const facts = { groups: names, number: groups.length, reading: COMPARED_WORDS[reading]() };
    return [text.standApart(facts)];
  });
  const few = on("too few").length;
  if (parts.length === 0 && few === rows.length) return text.tooFewAll();
  const found = parts.length > 0 ? text.standApartAll({ parts, overall }) : text.nobodyApart();
  return few === 0 ? found : `${found} ${text.tooFewSome({ groups: few })}`;
}

function comparedItem(row: ComparedRow, overall: number, called: Called): HTMLElement {
  const { group, rate, expected, evened, from, to, reading, grafted } = row;
  const plain =
    rate === null || expected === null ? "" : text.asCounted({ rate, grafted, expected });
  return drawnItem({
    name: userText(called(group)),
    value: COMPARED_WORDS[reading](),
    drawing:
      evened === null || from === null || to === null
        ? null
        : rangeTrack({
            from,
            likely: evened,
            to,
            most: 1,
            mark: "dot",
            expected: overall,
            label: text.evenedRange({ evened, from, to, overall }),
          }),
    below: [quiet(plain)],
  });
}

function comparedTable(rows: readonly ComparedRow[], by: string, called: Called): HTMLElement {
  return tableBehind({
    summary: text.comparedAsTable(),
    title: text.compared(),
    headers: [
      shortened(by, 40),
      header.grafted(),
      header.taken(),
      text.columnRate(),
      text.columnExpected(),
      text.columnEvened(),
      header.from(),
      header.to(),
      header.reading(),
    ],
    rows: () =>
      rows.map((row) => [
        called(row.group),
        ...[row.grafted, row.taken].map(countText),
        ...[row.rate, row.expected, row.evened, row.from, row.to].map(shareText),
        COMPARED_WORDS[row.reading](),
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
