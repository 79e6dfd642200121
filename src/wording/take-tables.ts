import {
  type Answer,
  COMPARED_COLUMNS,
  type ComparedTakes,
  type GroupColumn,
  type Initials,
  REASON_COLUMNS,
  SUMMARY_COLUMNS,
  type SummedTakes,
  type TakeReasons,
  type TakesRemark,
  type TakeTrend,
  TREND_COLUMNS,
} from "../core";
import { headers } from "../sentences/made/take-columns";
import { together } from "./sentence-of";
import { tableOf } from "./table-of";
import {
  aloneSentence,
  COMPARED_WORDS,
  groupText,
  periodWords,
  REASON_WORDS,
  ratedWords,
  TREND_WORDS,
  takesRemarks,
} from "./takes";

/** Take rates by group: a row a group, with what its rate leaves out. */
export function summaryTable({ by, groups, remarks }: SummedTakes): Answer {
  return tableOf({
    own: by.map(({ name }) => name),
    columns: SUMMARY_COLUMNS,
    headers: headers(),
    rows: groups.map((one) => ({
      own: one.group.map(groupText),
      cells: { ...one, remarks: takesRemarks(one.remarks, "cell") },
    })),
    remark: takesRemarks(remarks, "cell"),
  });
}

/**
 * The comparison: a row a group, and below it who stands alone.
 *
 * @param called how people are called; by the names in the records if left out
 */
export function comparedTable(takes: ComparedTakes, called?: Initials): Answer {
  const { by, evenFor, groups, alone, aloneBatches, remarks } = takes;
  const nobody = aloneSentence(
    alone.map(({ group, stratum }) => ({
      group: labels(group, by, called).join(" "),
      stratum: labels(stratum, evenFor, called).join(" "),
    })),
    aloneBatches,
  );
  return tableOf({
    own: by.map(({ name }) => name),
    columns: COMPARED_COLUMNS,
    headers: headers(),
    rows: groups.map((one) => ({
      own: labels(one.group, by, called),
      cells: { ...one, reading: COMPARED_WORDS[one.reading]() },
    })),
    remark: together(
      [nobody, takesRemarks(remarks, "cell")].filter((one): one is string => one !== null),
    ),
  });
}

function labels(
  texts: readonly string[],
  columns: readonly GroupColumn[],
  called: Initials = (name) => name,
): readonly string[] {
  return texts.map((text, index) =>
    text !== "" && columns[index]?.people ? called(text) : groupText(text),
  );
}

/** Take rates by period of grafting: a row a period. */
export function trendTable({ by, periods, remarks }: TakeTrend): Answer {
  return tableOf({
    own: [headers().period, ...by.map(({ name }) => name)],
    columns: TREND_COLUMNS,
    headers: headers(),
    rows: periods.map((one) => ({
      own: [periodWords(one), ...one.group.map(groupText)],
      cells: { ...one, reading: one.reading === null ? null : TREND_WORDS[one.reading]() },
    })),
    remark: takesRemarks(remarks, "cell"),
  });
}

/**
 * Which recorded columns go with takes: a row a column, most first. Best and Worst are blank where no
 * link is clear, and for people, since nobody is called the worst where nobody has asked for people to
 * be compared.
 */
export function reasonsTable({ reasons, remarks }: TakeReasons): Answer {
  const hidden = reasons.some(({ people, best }) => people && best !== null);
  const [first, ...others] = remarks;
  const all: (TakesRemark | undefined)[] = [
    first,
    hidden ? { code: "people-not-named" } : undefined,
    ...others,
  ];
  return tableOf({
    columns: REASON_COLUMNS,
    headers: headers(),
    rows: reasons.map(({ people, best, worst, ...one }) => ({
      cells: {
        ...one,
        best: best === null || people ? null : ratedWords(best),
        worst: worst === null || people ? null : ratedWords(worst),
        reading: REASON_WORDS[one.reading](),
      },
    })),
    remark: takesRemarks(
      all.filter((one) => one !== undefined),
      "cell",
    ),
  });
}
