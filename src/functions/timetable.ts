import { builtInTimetable, timetableRows } from "../core";
import * as help from "../sentences/made/timetable-help";
import { timetableTable } from "../wording/timetable";
import type { HelpOf } from "./entry";
import { functionOf } from "./function-of";
import { textOrNone } from "./parameter";

export const timetable = functionOf({ method: textOrNone }, ({ method }) =>
  timetableTable(timetableRows(builtInTimetable(), method)),
);

export const timetableHelp: HelpOf<typeof timetable> = {
  says: help,
  example: '=TIMETABLE("Cocoa cleft graft")',
  onSample: "=TIMETABLE()",
};
