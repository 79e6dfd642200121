import { type Answer, LOAD_COLUMNS, type PlaceLoads, type PlaceRemark } from "../core";
import { headers } from "../sentences/made/place-columns";
import * as text from "../sentences/made/places";
import { fewNames } from "./names";
import { RECORDS_REMARKS } from "./records";
import { type SentencesOf, sentenceOf, together } from "./sentence-of";
import { ROW_TROUBLES } from "./small-tables";
import { tableOf } from "./table-of";

const MOST_NAMES = 6;

const few = (names: readonly string[]) => fewNames(names, MOST_NAMES);

const REMARKS: SentencesOf<PlaceRemark> = {
  ...RECORDS_REMARKS,
  ...ROW_TROUBLES,
  "places-not-listed": ({ places }) => text.notListed({ places: few(places) }),
  "places-empty": ({ places }) => text.empty({ places: few(places) }),
  "batches-without-place": text.withoutPlace,
  "one-week-alone": ({ batches }) => text.oneWeek({ batches: few(batches) }),
  "nothing-recorded": ({ batches }) => text.forgotten({ batches: few(batches) }),
  "not-counted": ({ batches }) => text.notCounted({ batches: few(batches) }),
  "planned-after": ({ batches, weeks }) => text.plannedAfter({ batches: few(batches), weeks }),
  "stand-longer": text.standLonger,
};

/** How full places get: a row a place and week. */
export function placeTable({ weeks, remarks }: PlaceLoads): Answer {
  return tableOf({
    columns: LOAD_COLUMNS,
    headers: headers(),
    rows: weeks.map((one) => ({ cells: { ...one, place: one.place || text.noPlace() } })),
    remark: together(remarks.map((one) => sentenceOf(REMARKS, one))),
  });
}
