import { about, noPlace } from "../../sentences/made/today-page";
import * as text from "../../sentences/made/today-sheet";
import type { TrendRow } from "../../wire/takes";
import type { DueTask, TodayAnswer } from "../../wire/today";
import { recordsRemarks } from "../../wording/records";
import { dayText, windowText } from "../controls/day-words";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { userText, wholeText } from "../controls/user-text";
import { lastMonthSentence } from "../takes/take-words";
import { byPlace, type PlaceTasks, statusTally } from "./places";
import { sheetCautions } from "./sheet-cautions";
import * as sheet from "./sheet-table";
import { statusWords } from "./task-words";

export interface RoundSheet extends Pick<TodayAnswer, "remarks"> {
  readonly workbook: string;
  readonly asOf: string;
  readonly tasks: readonly DueTask[];
  /** The last month's takes; null where none are counted. */
  readonly takes: TrendRow | null;
}

const COLUMNS: readonly sheet.SheetColumn[] = [
  sheet.TASK,
  sheet.BATCH,
  sheet.PLANTS,
  { header: text.window, width: "window" },
  { header: text.dayDone, width: "text" },
  sheet.COUNTED,
  { header: text.who, width: "text" },
  sheet.NOTE,
];

/** The due list on paper: by place, with blanks to fill in by hand. */
export function roundSheet({ workbook, asOf, tasks, takes, remarks }: RoundSheet): HTMLElement {
  const leftOut = recordsRemarks(remarks, "page");
  return element(
    "main",
    {},
    element("h1", {}, text.title({ day: dayText(asOf) })),
    paragraph(userText(workbook), ` · ${statusTally(tasks)}`),
    takes === null ? null : paragraph(lastMonthSentence(takes)),
    leftOut === null ? null : paragraph(wholeText(leftOut)),
    ...byPlace(tasks).map(placeTable),
    sheetCautions(tasks),
  );
}

function placeTable({ place, tasks }: PlaceTasks): HTMLElement {
  return sheet.sheetTable(place === "" ? noPlace() : userText(place), COLUMNS, tasks.map(taskRow));
}

function taskRow(task: DueTask): HTMLElement {
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, userText(task.task)),
    element("td", {}, userText(task.batch)),
    sheet.numberCell(task.plants, (plants) =>
      task.isEstimate ? about({ plants }) : String(plants),
    ),
    element("td", {}, windowText(task.from, task.by), element("br"), statusWords(task)),
    element("td", { class: "blank" }),
    sheet.countBlank(task.counted),
    element("td", { class: "blank" }),
    element("td", { class: "blank wide" }),
  );
}
