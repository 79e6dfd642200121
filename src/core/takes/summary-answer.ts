import { type Answer, columns } from "../answer";
import { leftOutRemark } from "../records/records";
import { batchesText } from "./counted-batches";
import {
  type SummaryQuestion,
  type SummedTake,
  type SummedTakes,
  summedTakes,
} from "./summed-takes";

/**
 * Take rates by group as a table. Batches whose takes are not counted yet are named in the remark.
 *
 * @throws InputError "unknown-column", also when the records have no grafts or no takes
 */
export function summaryAnswer(question: SummaryQuestion): Answer {
  const summed = summedTakes(question);
  return {
    // A column may be asked for twice, so the group columns are no keys of one object.
    columns: [
      ...summed.by.map(({ name }) => ({ name, kind: "text" as const })),
      ...columns({
        Batches: "count",
        Grafted: "count",
        Taken: "count",
        "Take rate": "share",
        From: "share",
        To: "share",
        "Batch spread": "number",
        Remark: "text",
      }),
    ],
    rows: summed.groups.map((one) => [
      ...one.group.map((text) => text || "(blank)"),
      ...[one.batches, one.grafted, one.taken, one.takeRate, one.from, one.to, summed.spread],
      summaryRemark(one, summed),
    ]),
    remark: leftOutRemark(question.records),
  };
}

/** What is left out of a group's rate, and what its range does not allow for; null where nothing. */
export function summaryRemark(
  { notCounted, impossible, batches }: SummedTake,
  { isSpreadUnknown }: SummedTakes,
): string | null {
  const parts: string[] = [];
  if (notCounted > 0) parts.push(`${batchesText(notCounted)} not counted yet`);
  if (impossible > 0) parts.push(`${batchesText(impossible)} left out: more taken than grafted`);
  if (isSpreadUnknown && batches > 0) {
    parts.push(
      "One batch a group: how much batches differ can't be told, the range may be too narrow",
    );
  }
  return parts.length === 0 ? null : parts.join("; ");
}
