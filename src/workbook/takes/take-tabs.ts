import { comparedTakes, groupColumns, NO_TAB, shortened } from "../../core";
import * as text from "../../sentences/made/take-tabs";
import { comparedTable } from "../../wording/take-tables";
import { type FormulaPart, formulaCall, LEFT_OUT, textPart } from "../host/formula-text";
import { groupHeaders } from "../reading/group-headers";
import { initialsIn } from "../reading/named-text";
import type { RecordsNow } from "../reading/records-tab";
import { TAKES_LEVEL } from "../reading/usual-grouping";
import { live, sentenceTab, valuesTab } from "../tabs/made-tabs";
import { OWN_TABS, ownTab } from "../tabs/own-tabs";
import type { TabContent } from "../tabs/tab-content";
import { usualCompareBy, usualEvenFor } from "./compare-takes";

const SHARE = "0.0%";

/** What every formula of takes is given. */
export interface TakeParts {
  readonly range: FormulaPart;
  readonly columns: FormulaPart;
  readonly timetable: FormulaPart;
}

/** Tabs of the fair comparison, the trend and the reasons. */
export function takeTabs(now: RecordsNow, parts: TakeParts): readonly TabContent[] {
  const { range, columns, timetable } = parts;
  const compared = comparedTab(now, parts);
  return [
    ...(compared === null ? [] : [compared]),
    live({
      name: OWN_TABS.takesTrend,
      formula: formulaCall("TAKE_TREND", [range, textPart("month"), LEFT_OUT, columns, timetable]),
      widths: [150, 70, 70, 80, 80, 90, 90, 120],
      formats: { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE },
    }),
    live({
      name: OWN_TABS.takeReasons,
      formula: formulaCall("TAKE_REASONS", [range, LEFT_OUT, columns, timetable]),
      widths: [170, 70, 120, 150, 150, 420],
      formats: { 2: SHARE },
    }),
  ];
}

/**
 * The comparison by the column that was chosen, else by a usual one that names no people: live, but
 * for people who are to be called by initials, since a formula would show their names. Null where
 * there is nothing to compare, or no tab is wanted; a tab that is there then says so, so that nobody
 * stays ranked in it.
 */
export function comparedTab(
  now: RecordsNow,
  { range, columns, timetable }: TakeParts,
): TabContent | null {
  const { records, settings, workbook, door } = now;
  const { compareBy, initials } = settings;
  const name = OWN_TABS.takesCompared;
  const widths = [150, 70, 70, 80, 100, 90, 70, 70, 150];
  // As wide as the comparison, which may stand there as values.
  const sentence = (said: string) => ({ ...sentenceTab(name, said), widths });
  const by = compareBy === "" ? usualCompareBy(records) : compareBy;
  const evenFor = by === null ? null : usualEvenFor(records, by);
  if (by === null || by === NO_TAB || (compareBy === "" && evenFor === null)) {
    return ownTab(workbook, name) === null ? null : sentence(text.noneChosen());
  }
  if (!groupHeaders(records).includes(by)) {
    return sentence(text.columnGone({ name: shortened(by) }));
  }
  if (evenFor === null) return sentence(text.nothingToEvenFor({ by }));
  const formats = { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE, 7: SHARE };
  const people = [by, evenFor].some((one) => groupColumns(one, records)[0]?.people);
  if (people && initials) {
    const takes = comparedTakes({ records, by, evenFor, level: TAKES_LEVEL });
    const rows = door.out(comparedTable(takes, initialsIn(records)));
    return valuesTab({ workbook, name, rows, widths, formats });
  }
  return live({
    name,
    formula: formulaCall("TAKE_COMPARED", [
      range,
      textPart(by),
      textPart(evenFor),
      LEFT_OUT,
      columns,
      timetable,
    ]),
    widths,
    formats,
  });
}
