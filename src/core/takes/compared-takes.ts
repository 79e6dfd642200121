import type { Kinds } from "../answer";
import { InputError } from "../faults";
import { leftOut, type Records } from "../records";
import { type FairReading, fairComparison } from "../statistics";
import { countedBatches, type TakenBatch } from "./counted-batches";
import type { GroupColumn } from "./group-column";
import { type BatchGroup, groupBatches, groupColumns } from "./grouping";
import { notUsed, type TakesRemark } from "./takes-remark";

export interface ComparedQuestion {
  readonly records: Records;
  /** The column whose groups are compared, or several joined with "+". */
  readonly by: string;
  /** The columns that groups are evened for, joined with "+". */
  readonly evenFor: string;
  /** Strictly between 0 and 1. */
  readonly level: number;
}

/** The columns of a group's row, behind those that groups are made of. */
export const COMPARED_COLUMNS = {
  grafted: "count",
  taken: "count",
  takeRate: "share",
  expectedRate: "share",
  evenedRate: "share",
  from: "share",
  to: "share",
  reading: "text",
} as const satisfies Kinds;

/** A group beside what all groups together reached with the same. Shares are 0 to 1. */
export interface ComparedTake {
  /** What stands in the columns compared, in their order; blank text where nothing does. */
  readonly group: readonly string[];
  readonly grafted: number;
  readonly taken: number;
  readonly takeRate: number;
  /** Takes at the rates of the group's strata ÷ grafts. */
  readonly expectedRate: number;
  /** Takes ÷ expected takes × the rate of all; null where the group shares no stratum with others. */
  readonly evenedRate: number | null;
  readonly from: number | null;
  readonly to: number | null;
  readonly reading: FairReading;
}

/** A group that nobody else stands beside in a stratum, each as the texts of its columns. */
export interface StandsAlone {
  readonly group: readonly string[];
  readonly stratum: readonly string[];
}

export interface ComparedTakes {
  readonly by: readonly GroupColumn[];
  readonly evenFor: readonly GroupColumn[];
  readonly groups: readonly ComparedTake[];
  readonly alone: readonly StandsAlone[];
  /** How many batches stand alone: they are counted, but not judged. */
  readonly aloneBatches: number;
  readonly remarks: readonly TakesRemark[];
}

/**
 * Take rates of groups, evened for what they could not choose: each group beside what all groups
 * together reached with the same varieties, months or whatever `evenFor` names.
 *
 * @throws InputError of a TakesFault, "compared-and-evened" when a column is both
 */
export function comparedTakes({ records, by, evenFor, level }: ComparedQuestion): ComparedTakes {
  const batches = countedBatches(records);
  const byColumns = groupColumns(by, records);
  const evenForColumns = groupColumns(evenFor, records, "evenFor");
  const both = evenForColumns.find(({ name }) => byColumns.some((one) => one.name === name));
  if (both !== undefined) {
    throw new InputError({ code: "compared-and-evened", argument: "evenFor", name: both.name });
  }
  const groups = grouped(batches.counted, byColumns);
  const strata = grouped(batches.counted, evenForColumns);
  const compared = fairComparison(
    batches.counted.map(({ grafted, taken }, at) => ({
      group: groups.groupOf[at] as number,
      stratum: strata.groupOf[at] as number,
      grafted,
      taken,
    })),
    groups.list.length,
    level,
  );
  const textsOf = (group: BatchGroup | undefined) => group?.values ?? [];
  return {
    by: byColumns,
    evenFor: evenForColumns,
    groups: compared.map(
      ({ grafted, taken, expected, evenedRate, range, reading }, at): ComparedTake => ({
        group: textsOf(groups.list[at]),
        grafted,
        taken,
        takeRate: taken / grafted,
        expectedRate: expected / grafted,
        evenedRate,
        from: range?.low ?? null,
        to: range?.high ?? null,
        reading,
      }),
    ),
    alone: compared.flatMap(({ alone }, at) =>
      alone.map((stratum) => ({
        group: textsOf(groups.list[at]),
        stratum: textsOf(strata.list[stratum]),
      })),
    ),
    aloneBatches: compared.reduce((sum, one) => sum + one.batches - one.comparable, 0),
    remarks: [...notUsed(batches), ...leftOut(records)],
  };
}

interface GroupedBatches {
  readonly list: readonly BatchGroup[];
  /** For each counted batch the index of its group in the list. */
  readonly groupOf: readonly number[];
}

function grouped(counted: readonly TakenBatch[], by: readonly GroupColumn[]): GroupedBatches {
  const list = groupBatches(
    counted.map(({ batch }) => batch),
    by,
  );
  const indexOf = new Map(
    list.flatMap((group, index) => group.batches.map((batch) => [batch, index] as const)),
  );
  return { list, groupOf: counted.map(({ batch }) => indexOf.get(batch) as number) };
}
