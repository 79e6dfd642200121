import type { ReadyRow } from "../../core";
import * as text from "../../sentences/made/ahead-page";
import { readyNow } from "../../sentences/made/batches";
import type { AheadBatch } from "../../wire/ahead";
import { drawnWords } from "../charts/drawn-list";
import { rangeTrack } from "../charts/range-track";
import { countText } from "../controls/count-words";
import { dayText, monthText, windowText } from "../controls/day-words";
import { element } from "../controls/element";
import { longList } from "../controls/long-list";
import { paragraph } from "../controls/paragraph";
import { userText } from "../controls/user-text";

export interface MonthItemOptions {
  readonly row: ReadyRow;
  /** What the full width stands for, plants. */
  readonly most: number;
  readonly batches: readonly AheadBatch[];
  /** Whether the batches' varieties are to be told. */
  readonly tellVariety: boolean;
}

/** A month's range as a button; pressed, it lists the batches behind it. */
export function monthItem({ row, most, batches, tellVariety }: MonthItemOptions): HTMLElement {
  const { fewest, likely } = row;
  // Months without any stand among the others, so that no month seems to be missing.
  const none = row.most === 0;
  const isNow = row.month === "now";
  const range = none ? text.noneLikely() : rangeText([fewest, likely, row.most]);
  const byEnd = rangeText([row.fewestByEnd, row.likelyByEnd, row.mostByEnd]);
  const label = text.trackRange({ fewest, most: row.most, likely });
  const button = element(
    "button",
    { type: "button", class: "drawn", "aria-expanded": "false" },
    drawnWords("span", element("span", {}, whenText(row.month)), range),
    none ? null : rangeTrack({ from: fewest, likely, to: row.most, most, mark: "tick", label }),
    isNow ? null : element("span", { class: "quiet" }, text.byItsEnd({ numbers: byEnd })),
  );
  const behind = element("div", { class: "behind", hidden: true });
  button.addEventListener("click", () => {
    const open = button.getAttribute("aria-expanded") !== "true";
    button.setAttribute("aria-expanded", String(open));
    behind.hidden = !open;
    if (open && !behind.hasChildNodes()) behind.append(batchList(batches, { tellVariety, isNow }));
  });
  return element("div", {}, button, behind);
}

/** Plants from fewest over likely to most; one number where they are one. */
export function rangeText(numbers: readonly (number | null)[]): string {
  const known = numbers.flatMap((one) => one ?? []);
  return (new Set(known).size === 1 ? known.slice(0, 1) : known).map(countText).join(" – ");
}

/** What is ready now, or the month. */
export function whenText(month: string): string {
  return month === "now" ? readyNow() : monthText(month);
}

function batchList(
  batches: readonly AheadBatch[],
  { tellVariety, isNow }: { readonly tellVariety: boolean; readonly isNow: boolean },
): Node {
  if (batches.length === 0) {
    return paragraph(text.noBatch());
  }
  return element(
    "div",
    {},
    paragraph((isNow ? text.batchesReady : text.batches)({ batches: batches.length })),
    longList(batches, (batch) => batchWords(batch, tellVariety)),
  );
}

function batchWords(batch: AheadBatch, tellVariety: boolean): HTMLElement {
  const { fewest, likely, most, variety, place } = batch;
  const facts = [tellVariety ? variety : "", place].filter((fact) => fact !== "");
  const plants =
    fewest === null || likely === null || most === null
      ? text.notCounted()
      : text.plants({ numbers: rangeText([fewest, likely, most]) });
  return element(
    "div",
    { class: "batch" },
    paragraph(element("strong", {}, userText(batch.batch))),
    facts.length === 0
      ? null
      : paragraph(...facts.flatMap((fact, index) => [index === 0 ? "" : " · ", userText(fact)])),
    paragraph(daysWords(batch)),
    paragraph(plants),
  );
}

function daysWords({ isReady, readyFrom, readyLikely, readyBy }: AheadBatch): string {
  if (readyFrom === null || readyLikely === null || readyBy === null) {
    return isReady ? text.ready() : text.dayUnknown();
  }
  const day = dayText(readyLikely);
  if (!isReady) return text.likely({ window: windowText(readyFrom, readyBy), day });
  return readyFrom === readyBy ? text.readySince({ day }) : text.readySinceAbout({ day });
}
