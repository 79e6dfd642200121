import type { Records } from "../core";
import { usualComparison } from "./compare-takes";
import { type FormulaPart, formulaCall, LEFT_OUT, textPart } from "./formula-text";
import { OWN_TABS } from "./own-tabs";
import type { TabContent } from "./tab-content";

type MakeTab = (
  name: string,
  formula: string,
  widths: number[],
  formats: TabContent["formats"],
) => TabContent;

const SHARE = "0.0%";

/** Live tabs of the fair comparison, the trend and the reasons. Where nothing can be compared, without it. */
export function takeTabs(
  records: Records,
  range: FormulaPart,
  columns: FormulaPart,
  tab: MakeTab,
): readonly TabContent[] {
  const usual = usualComparison(records);
  return [
    ...(usual === null
      ? []
      : [
          tab(
            OWN_TABS.takesCompared,
            formulaCall("TAKE_COMPARED", [
              range,
              textPart(usual.by),
              textPart(usual.evenFor),
              LEFT_OUT,
              columns,
            ]),
            [150, 70, 70, 80, 100, 90, 70, 70, 150],
            { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE, 7: SHARE },
          ),
        ]),
    tab(
      OWN_TABS.takesTrend,
      formulaCall("TAKE_TREND", [range, textPart("month"), LEFT_OUT, columns]),
      [150, 70, 70, 80, 80, 90, 90, 120],
      { 3: SHARE, 4: SHARE, 5: SHARE, 6: SHARE },
    ),
    tab(
      OWN_TABS.takeReasons,
      formulaCall("TAKE_REASONS", [range, LEFT_OUT, columns]),
      [170, 70, 120, 150, 150, 420],
      { 2: SHARE },
    ),
  ];
}
