import type { SetUpCalls } from "../../wire/set-up";
import { columnGuesses } from "../set-up/column-guesses";
import { setUp } from "../set-up/set-up";
import type { AnswerersOf } from "./answerer";
import { columnChoices, tablesTold } from "./beside";
import {
  anyText,
  anyTextOrNull,
  listOf,
  record,
  textIfSent,
  textOrNull,
  texts,
  yes,
  yesOrNoIfSent,
} from "./fields";

export const setUpCalls: AnswerersOf<SetUpCalls> = {
  sidebarColumns: {
    asked: { tab: anyText, timetable: textOrNull, columns: columnChoices },
    answer: columnGuesses,
  },
  sidebarSetUp: {
    asked: {
      tables: tablesTold,
      tab: anyText,
      columns: columnChoices,
      words: listOf(record({ word: anyText, name: anyTextOrNull, notSame: yes })),
      timetable: textOrNull,
      methods: texts,
      compareBy: textIfSent,
      initials: yesOrNoIfSent,
      looks: yesOrNoIfSent,
      tabs: texts,
    },
    answer: setUp,
  },
};
