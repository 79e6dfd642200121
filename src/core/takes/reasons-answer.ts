import { type Answer, type AnswerValue, columns } from "../answer";
import { leftOutRemark } from "../records/records";
import { notUsedSentences } from "./counted-batches";
import {
  type RatedGroup,
  type ReasonReading,
  type ReasonsQuestion,
  type TakeReason,
  takeReasons,
} from "./take-reasons";

export const NOT_CAUSING =
  "Going with takes is not causing them: what else changed at the same time?";
/** Nobody is called the worst where nobody has asked for people to be compared. */
const NOT_NAMED = "People are not named here: to compare them fairly, use TAKE_COMPARED.";

const WORDS: Readonly<Record<ReasonReading, string>> = {
  stays: "goes with takes, also where the other columns are alike",
  "others may be behind": "goes with takes, but what else differed may be behind it",
  "not told apart": "goes with takes; too few batches to tell it from the others",
  alone: "goes with takes",
  "only beside": "shows only where the other columns are alike",
  "no clear link": "no clear link",
  "too few to tell": "too few to tell",
};

/**
 * Which recorded columns go with takes, as a table: a row a column, most first.
 *
 * Best and Worst are groups with their take rate, everything else as it is over all batches; they
 * are blank where no link is clear, and for people, of which the remark tells.
 *
 * @throws InputError "unknown-column" when the records have no grafts or no takes
 */
export function reasonsAnswer(question: ReasonsQuestion): Answer {
  const { reasons, batches } = takeReasons(question);
  const hidden = reasons.some(({ people, best }) => people && best !== null);
  const remarks = [
    NOT_CAUSING,
    hidden ? NOT_NAMED : null,
    ...notUsedSentences(batches),
    leftOutRemark(question.records),
  ];
  return {
    columns: columns({
      Column: "text",
      Groups: "count",
      "Spread explained": "share",
      Best: "text",
      Worst: "text",
      Reading: "text",
    }),
    rows: reasons.map(reasonRow),
    remark: remarks.filter((one) => one !== null).join(" "),
  };
}

function reasonRow(reason: TakeReason): AnswerValue[] {
  const { column, people, groups, explained, best, worst, reading } = reason;
  const said = (one: RatedGroup | null) =>
    one === null || people ? null : `${one.name} (${Math.round(one.takeRate * 100)} %)`;
  return [column, groups, explained, said(best), said(worst), WORDS[reading]];
}
