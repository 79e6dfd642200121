import type { WorkCalls } from "../../wire/work";
import { makeCrewTab } from "../work/crew-tabs";
import { plannedDays } from "../work/planned-days";
import type { AnswerersOf } from "./answerer";
import { wholeNumber, yes } from "./fields";

export const workCalls: AnswerersOf<WorkCalls> = {
  sidebarWork: {
    asked: {
      days: wholeNumber({ least: 1, most: Number.POSITIVE_INFINITY, usual: 14 }),
      initials: yes,
    },
    answer: plannedDays,
  },
  sidebarMakeCrew: { asked: null, answer: makeCrewTab },
};
