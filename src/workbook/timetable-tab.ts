import { builtInTimetable, timetableAnswer } from "../core";
import { OWN_TABS } from "./own-tabs";
import type { TabCell, TabContent } from "./tab-content";

/**
 * The timetable as a tab: the built-in steps, for the person to change.
 *
 * @param methods names of those that are wanted; all when there are none
 */
export function timetableTab(methods: readonly string[], madeAt: string): TabContent {
  const chosen = new Set(methods);
  const { columns, rows } = timetableAnswer(builtInTimetable(), null);
  return {
    name: OWN_TABS.timetable,
    madeBy: `timetable, copied ${madeAt} from the built-in steps. It is yours to change.`,
    rows: [
      columns.map(({ name }) => ({ text: name })),
      ...rows
        .filter(([method]) => chosen.size === 0 || chosen.has(String(method)))
        .map((row) => row.map(cell)),
    ],
    frozenRows: 2,
    widths: [150, 120, 110, 70, 70, 70, 70, 80, 90, 220, 320, 320],
    formats: {},
  };
}

function cell(value: unknown): TabCell {
  if (value === null || value === "") return null;
  return typeof value === "number" ? { number: value } : { text: String(value) };
}
