import { comparedAnswer, groupColumns } from "../core";
import { usualCompareBy, usualEvenFor } from "./compare-takes";
import { groupHeaders } from "./group-headers";
import { live, sentenceTab, valuesTab } from "./made-tabs";
import { initialsIn } from "./named-text";
import { OWN_TABS, ownTab } from "./own-tabs";
import type { RecordsNow } from "./records-tab";
import { NO_TAB } from "./settings";
import type { TabContent } from "./tab-content";

const SHARE = "0.0%";
const LEVEL = 0.95;

/** Tabs of the fair comparison, the trend and the reasons. */
export function takeTabs(now: RecordsNow, range: string): readonly TabContent[] {
  const { columnCells } = now.settings;
  const compared = comparedTab(now, range);
  return [
    ...(compared === null ? [] : [compared]),
    live(
      OWN_TABS.takesTrend,
      `TAKE_TREND(${range},"month",,${columnCells})`,
      [150, 70, 70, 80, 80, 90, 90, 120],
      { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE },
    ),
    live(
      OWN_TABS.takeReasons,
      `TAKE_REASONS(${range},${LEVEL},${columnCells})`,
      [170, 70, 120, 150, 150, 420],
      { 2: SHARE },
    ),
  ];
}

/**
 * The comparison by the column that was chosen, else by a usual one that names no people: live, but
 * for people who are to be called by initials, since a formula would show their names. Null where
 * there is nothing to compare, or no tab is wanted; a tab that is there then says so, so that nobody
 * stays ranked in it.
 */
export function comparedTab(now: RecordsNow, range: string): TabContent | null {
  const { records, settings, workbook, door } = now;
  const { compareBy, initials, columnCells } = settings;
  const name = OWN_TABS.takesCompared;
  const by = compareBy === "" ? usualCompareBy(records) : compareBy;
  const evenFor = by === null ? null : usualEvenFor(records, by);
  if (by === null || by === NO_TAB || (compareBy === "" && evenFor === null)) {
    return ownTab(workbook, name) === null
      ? null
      : sentenceTab(name, "No takes are compared here: Set up says by what they are");
  }
  if (!groupHeaders(records).includes(by)) {
    const text = `No comparison: the records have no column "${by}" any more; choose another in Set up`;
    return sentenceTab(name, text);
  }
  if (evenFor === null) {
    const text = `No comparison: there is nothing beside ${by} that takes could be evened for`;
    return sentenceTab(name, text);
  }
  const widths = [150, 70, 70, 80, 100, 90, 70, 70, 150];
  const formats = { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE, 7: SHARE };
  const people = [by, evenFor].some((one) => groupColumns(one, records)[0]?.people);
  if (people && initials) {
    const question = { records, by, evenFor, level: LEVEL };
    const rows = door.out(comparedAnswer(question, initialsIn(records)));
    return valuesTab({ workbook, name, what: "takes compared", rows, widths, formats });
  }
  const quoted = (text: string) => `"${text.replace(/"/g, '""')}"`;
  return live(
    name,
    `TAKE_COMPARED(${range},${quoted(by)},${quoted(evenFor)},${LEVEL},${columnCells})`,
    widths,
    formats,
  );
}
