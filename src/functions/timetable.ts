import { builtInTimetable, timetableAnswer } from "../core";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { textOrNone } from "./parameter";

export const timetable = functionOf({ method: textOrNone }, ({ method }) =>
  timetableAnswer(builtInTimetable(), method),
);

export const timetableHelp: HelpOf<typeof timetable> = {
  sentence: "The built-in steps of a method with their days, to read, or to copy and edit.",
  parameters: {
    method: "Name of a method; leave out for all.",
  },
  answers: "The timetable: one row a step, with its days, its kept share and the source of each.",
  example: '=TIMETABLE("Cocoa cleft graft")',
};
