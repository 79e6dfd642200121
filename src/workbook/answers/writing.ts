import type { WritingCalls } from "../../wire/writing";
import { lastWrites } from "../tables/last-writes";
import { takeBack } from "../tables/take-back";
import { recordTask } from "../tasks/record-task";
import type { AnswerersOf } from "./answerer";
import { anyText, numberOrNull, texts, yes } from "./fields";

export const writingCalls: AnswerersOf<WritingCalls> = {
  sidebarRecord: {
    asked: {
      batch: anyText,
      task: anyText,
      day: anyText,
      count: numberOrNull,
      who: anyText,
      note: anyText,
      notDone: yes,
      sure: texts,
    },
    answer: recordTask,
  },
  sidebarTakeBack: { asked: { logId: anyText }, answer: takeBack },
  sidebarLastWrites: { asked: null, answer: lastWrites },
};
