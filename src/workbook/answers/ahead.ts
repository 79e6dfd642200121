import { isoDay, readyPlants } from "../../core";
import type { AheadAnswer, AheadCalls } from "../../wire/ahead";
import { recordsNow } from "../reading/records-tab";
import { levelSet } from "../settings/numbers-set";
import type { AnswerersOf } from "./answerer";

/** The plants that get ready month by month, with the batches behind them. */
export function aheadAnswer(): AheadAnswer {
  const now = recordsNow();
  const question = { ...now, level: levelSet(now.settings) };
  const { rows, batches, remarks } = readyPlants(question);
  return {
    rows,
    batches: batches.map(({ batch, month, isReady, days, plants }) => ({
      batch: batch.name,
      variety: batch.variety,
      place: batch.place,
      month,
      isReady,
      readyFrom: days === null ? null : isoDay(days.from),
      readyLikely: days === null ? null : isoDay(days.likely),
      readyBy: days === null ? null : isoDay(days.by),
      fewest: plants?.fewest ?? null,
      likely: plants?.likely ?? null,
      most: plants?.most ?? null,
    })),
    remarks,
  };
}

export const aheadCalls: AnswerersOf<AheadCalls> = {
  sidebarAhead: { asked: null, answer: aheadAnswer },
};
