import { gridOf } from "../../../src/core/cells/cell";
import { readTimetable } from "../../../src/core/timetable/read-timetable";
import { sheetValues } from "../../support/sheet-values";

/** A small made-up method in which every kind of column is filled. */
export const SMALL = `
  Method      | Step   | After  | From day | Usual day | By day | Counted | Kept of 100 | Per person-hour | Needs                    | Caution | Source
  Plum budding | Sowing |        |          |           |        | yes     |             | 200             | bag 1; potting mix 1.4 l |         | made up
  Plum budding | Budding | Sowing | 80      | 90        | 100    | yes     | 80          | 25              | strip 38.1 cm            | Blades  | made up
  Plum budding | Ready  | Budding | 20      | 30        | 45     | yes     | 90          |                 |                          |         | made up`;

/** Reads a timetable typed as text. */
export function timetableOf(text: string) {
  return readTimetable(gridOf(sheetValues(text)));
}

/** What is wrong with a timetable typed as text: row, column, which fault, and the names in it. */
export function faultsOf(text: string): string[] {
  return timetableOf(text).faults.map(({ row, column, found, code, leftOut, ...facts }) =>
    [row, column, code, ...Object.values(facts).flat()].join(" "),
  );
}
