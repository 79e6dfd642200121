import * as text from "../../sentences/made/today-sheet";
import type { PlannedPart, WorkAnswer } from "../../wire/work";
import { partRemarks } from "../../wording/work";
import { dayText, weekdayText, windowText } from "../controls/day-words";
import { type Child, element } from "../controls/element";
import { hoursCounted, hoursText } from "../controls/hours-words";
import { paragraph } from "../controls/paragraph";
import { userText, wholeText } from "../controls/user-text";
import { sheetCautions } from "./sheet-cautions";
import * as sheet from "./sheet-table";

export interface PersonSheet {
  readonly workbook: string;
  readonly work: WorkAnswer;
}

const COLUMNS: readonly sheet.SheetColumn[] = [
  { header: text.day, width: "day" },
  sheet.TASK,
  sheet.BATCH,
  { header: text.place, width: "text" },
  sheet.PLANTS,
  { header: text.hours, width: "number" },
  { header: text.dayDone, width: "day" },
  sheet.COUNTED,
  sheet.NOTE,
];

/** The planned work on paper: a page a person, and at the end what is given to nobody. */
export function personSheet({ workbook, work }: PersonSheet): HTMLElement {
  const { asOf, days, persons, parts, unassigned, remark } = work;
  const nobodys = [...parts.filter(({ person }) => person === null), ...unassigned];
  const pages: readonly (readonly [Child, readonly PlannedPart[]])[] = [
    ...persons.map(
      (name) => [userText(name), parts.filter(({ person }) => person === name)] as const,
    ),
    [text.unassigned(), nobodys],
  ];
  const window = windowText(asOf, days[days.length - 1]?.day ?? asOf);
  const filled = pages.filter(([, own]) => own.length > 0);
  return element(
    "main",
    {},
    ...filled.map(([title, own], at) =>
      element(
        "section",
        { class: "person" },
        element("h1", {}, text.title({ day: dayText(asOf) })),
        paragraph(userText(workbook), ` · ${window} · ${hoursWords(own)}`),
        sheet.sheetTable(title, COLUMNS, own.map(partRow)),
        sheetCautions(own),
        remark === null || at < filled.length - 1 ? null : paragraph(wholeText(remark)),
      ),
    ),
  );
}

function hoursWords(parts: readonly PlannedPart[]): string {
  const known = parts.flatMap(({ hours }) => hours ?? []);
  if (known.length === 0) return text.hoursUnknown();
  return hoursCounted(known.reduce((sum, one) => sum + one, 0));
}

function partRow(part: PlannedPart): HTMLElement {
  const { day, task, batch, place, plants, hours, by, remarks, counted } = part;
  const remark = partRemarks(remarks);
  return element(
    "tr",
    {},
    element("td", {}, day === null ? text.byDay({ day: weekdayText(by) }) : weekdayText(day)),
    element(
      "th",
      { scope: "row" },
      userText(task),
      ...(remark === "" ? [] : [element("br"), element("small", {}, userText(remark))]),
    ),
    element("td", {}, userText(batch)),
    element("td", {}, userText(place)),
    sheet.numberCell(plants),
    sheet.numberCell(hours, hoursText),
    element("td", { class: "blank" }),
    sheet.countBlank(counted),
    element("td", { class: "blank wide" }),
  );
}
