import { builtInTimetable, timetableAnswer } from "../core";
import { isMissing, textArgument } from "../door/index";
import { type FunctionEntry, optional } from "./entry";

export const timetable: FunctionEntry = {
  name: "TIMETABLE",
  sentence: "The built-in steps of a method with their days, to read, or to copy and edit.",
  parameters: [optional("method", "Name of a method; leave out for all.")],
  answers: "The timetable: one row a step, with its days, its kept share and the source of each.",
  example: '=TIMETABLE("Cocoa cleft graft")',
  run: (door, [method]) => {
    const name = isMissing(method) ? null : textArgument("method", door.cell(method));
    return door.out(timetableAnswer(builtInTimetable(), name));
  },
};
