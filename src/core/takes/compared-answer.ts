import { type Answer, columns } from "../answer";
import { quoted } from "../cells/quoted";
import { InputError } from "../input-error";
import { leftOutRemark, type Records } from "../records/records";
import { fairComparison } from "../statistics/fair-comparison";
import { batchesText, countedBatches, notUsedSentences, type TakenBatch } from "./counted-batches";
import type { GroupColumn } from "./group-column";
import { type BatchGroup, groupBatches, groupColumns } from "./grouping";

export interface ComparedQuestion {
  readonly records: Records;
  /** The column whose groups are compared, or several joined with "+". */
  readonly by: string;
  /** The columns that groups are evened for, joined with "+". */
  readonly evenFor: string;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/** Groups with nobody to compare with that are named before the rest are counted. */
const MOST_NAMED = 6;

/**
 * Take rates of groups, evened for what they could not choose: each group beside what all groups
 * together reached with the same varieties, months or whatever `evenFor` names.
 *
 * Expected rate: takes at the rates of the group's strata ÷ grafts. Evened rate: takes ÷ expected
 * takes × the rate of all; it and its range are blank where a group shares no stratum with others.
 * Such strata count in both and are named in the remark.
 *
 * @throws InputError "unknown-column", also when a column is both compared and evened for
 */
export function comparedAnswer({ records, by, evenFor, level }: ComparedQuestion): Answer {
  const batches = countedBatches(records);
  const by_ = groupColumns(by, records);
  const strata_ = groupColumns(evenFor, records, "evenFor");
  const both = strata_.find(({ name }) => by_.some((one) => one.name === name));
  if (both !== undefined) {
    throw new InputError(
      "unknown-column",
      `evenFor names ${quoted(both.name)}, which is what is compared: nobody would be left to compare with`,
    );
  }
  const groups = placed(batches.counted, by_);
  const strata = placed(batches.counted, strata_);
  const compared = fairComparison(
    batches.counted.map(({ grafted, taken }, place) => ({
      group: groups.places[place] as number,
      stratum: strata.places[place] as number,
      grafted,
      taken,
    })),
    groups.list.length,
    level,
  );
  const rows = compared.map((group, place) => [
    ...labels(groups.list[place]),
    group.grafted,
    group.taken,
    group.taken / group.grafted,
    group.expected / group.grafted,
    group.evenedRate,
    group.range?.low ?? null,
    group.range?.high ?? null,
    group.reading,
  ]);
  const alone = compared.flatMap((group, place) =>
    group.alone.map(
      (stratum) =>
        `${labels(groups.list[place]).join(" ")} in ${labels(strata.list[stratum]).join(" ")}`,
    ),
  );
  const aloneBatches = compared.reduce((sum, one) => sum + one.batches - one.comparable, 0);
  const remarks = [
    aloneSentence(alone, aloneBatches),
    ...notUsedSentences(batches),
    leftOutRemark(records),
  ].filter((one) => one !== null);
  return {
    columns: [
      ...by_.map(({ name }) => ({ name, kind: "text" as const })),
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
    rows,
    remark: remarks.length === 0 ? null : remarks.join(". "),
  };
}

interface Placed {
  readonly list: readonly BatchGroup[];
  /** For each counted batch the place of its group in the list. */
  readonly places: readonly number[];
}

function placed(counted: readonly TakenBatch[], by: readonly GroupColumn[]): Placed {
  const list = groupBatches(
    counted.map(({ batch }) => batch),
    by,
  );
  const placeOf = new Map(
    list.flatMap((group, place) => group.batches.map((batch) => [batch, place] as const)),
  );
  return { list, places: counted.map(({ batch }) => placeOf.get(batch) as number) };
}

function labels(group: BatchGroup | undefined): readonly string[] {
  return (group?.values ?? []).map((value) => value || "(blank)");
}

function aloneSentence(alone: readonly string[], batches: number): string | null {
  if (alone.length === 0) return null;
  const named = alone.slice(0, MOST_NAMED).join("; ");
  const more = alone.length > MOST_NAMED ? ` and ${alone.length - MOST_NAMED} more` : "";
  return `Nobody to compare with: ${named}${more} (${batchesText(batches)}, counted but not judged)`;
}
