import * as text from "../../sentences/made/takes-page";
import type { TakesRow } from "../../wire/takes";
import { takesRemarks } from "../../wording/takes";
import { drawnItem } from "../charts/drawn-list";
import { rangeTrack } from "../charts/range-track";
import { notes, quiet } from "../controls/paragraph";
import { userText } from "../controls/user-text";
import type { Called } from "../people/people-shown";

/** A group's take rate as a dot on its range, with the counts that it comes from. */
export function groupItem(row: TakesRow, called: Called): HTMLElement {
  const { group, rate, from, to } = row;
  const remark = takesRemarks(row.remarks, "page");
  return drawnItem({
    name: userText(called(group)),
    value: rate === null ? text.notCountedYet() : text.rate({ rate }),
    drawing:
      rate === null || from === null || to === null
        ? null
        : rangeTrack({ from, likely: rate, to, most: 1, mark: "dot", label: rangeWords(row) }),
    below: [row.batches === 0 ? null : quiet(countWords(row)), ...notes(remark)],
  });
}

/** A take rate with its range. @example rangeWords({ rate: 0.784, from: 0.69, to: 0.854 }) // "78\u00a0%, range 69\u00a0% to 85\u00a0%" */
export function rangeWords({ rate, from, to }: TakesRow): string {
  if (rate === null) return text.notCountedYet();
  if (from === null || to === null) return text.rate({ rate });
  return text.rateAndRange({ rate, from, to });
}

/** What a rate is counted from. @example countWords({ taken: 251, grafted: 320, batches: 2 }) // "251 taken of 320 grafted, 2 batches" */
export function countWords(row: TakesRow): string {
  return text.counts(row);
}
