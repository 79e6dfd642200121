import { type Answer, columns } from "../answer";
import type { Initials } from "../people/initials";
import { leftOutRemark } from "../records/records";
import type { FairReading } from "../statistics/fair-comparison";
import {
  type ComparedQuestion,
  type ComparedTakes,
  comparedTakes,
  type StandsAlone,
} from "./compared-takes";
import { batchesText, notUsedSentences } from "./counted-batches";
import type { GroupColumn } from "./group-column";

const READINGS: Readonly<Record<FairReading, string>> = {
  above: "above the rest",
  below: "below the rest",
  alike: "no clear difference",
  "too few": "too few to tell",
};
/** Groups with nobody to compare with that are named before the rest are counted. */
const MOST_NAMED = 6;

/**
 * The comparison as a table: a row a group, and in the remark who stands alone.
 *
 * @param called how people are called; by the names in the records if left out
 * @throws InputError "unknown-column", also when a column is both compared and evened for
 */
export function comparedAnswer(question: ComparedQuestion, called?: Initials): Answer {
  const compared = comparedTakes(question);
  const { by, groups, batches } = compared;
  const remarks = [
    aloneSentence(compared, called),
    ...notUsedSentences(batches),
    leftOutRemark(question.records),
  ].filter((one) => one !== null);
  return {
    columns: [
      ...by.map(({ name }) => ({ name, kind: "text" as const })),
      ...columns({
        Grafted: "count",
        Taken: "count",
        "Take rate": "share",
        "Expected rate": "share",
        "Evened rate": "share",
        From: "share",
        To: "share",
        Reading: "text",
      }),
    ],
    rows: groups.map((one) => [
      ...labels(one.group, by, called),
      one.grafted,
      one.taken,
      one.takeRate,
      one.expectedRate,
      one.evenedRate,
      one.from,
      one.to,
      READINGS[one.reading],
    ]),
    remark: remarks.length === 0 ? null : remarks.join(". "),
  };
}

function labels(
  texts: readonly string[],
  columns_: readonly GroupColumn[],
  called: Initials = (name) => name,
): readonly string[] {
  return texts.map((text, place) =>
    text === "" ? "(blank)" : columns_[place]?.people ? called(text) : text,
  );
}

function aloneSentence(
  { by, evenFor, alone, aloneBatches }: ComparedTakes,
  called: Initials | undefined,
): string | null {
  if (alone.length === 0) return null;
  const words = ({ group, stratum }: StandsAlone) =>
    `${labels(group, by, called).join(" ")} in ${labels(stratum, evenFor, called).join(" ")}`;
  const named = alone.slice(0, MOST_NAMED).map(words).join("; ");
  const more = alone.length > MOST_NAMED ? ` and ${alone.length - MOST_NAMED} more` : "";
  return `Nobody to compare with: ${named}${more} (${batchesText(aloneBatches)}, counted but not judged)`;
}
