import { builtInTimetable, timetableAnswer } from "../core";
import { isMissing, textArgument } from "../door/index";
import type { FunctionHelp, FunctionRun } from "./entry";

export const timetableHelp: FunctionHelp = {
  name: "TIMETABLE",
  sentence: "The built-in steps of a method with their days, to read, or to copy and edit.",
  parameters: [["method?", "Name of a method; leave out for all."]],
  answers: "The timetable: one row a step, with its days, its kept share and the source of each.",
  example: '=TIMETABLE("Cocoa cleft graft")',
};

export const timetable: FunctionRun = (door, [method]) => {
  const name = isMissing(method) ? null : textArgument("method", door.cell(method));
  return door.out(timetableAnswer(builtInTimetable(), name));
};
