import type { ReadyRow } from "../../core";
import * as text from "../../sentences/made/ahead-page";
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
  const range = none ? text.noneLikely() : [fewest, likely, row.most].map(countText).join(" – ");
  const label = text.trackRange({ fewest, most: row.most, likely });
  const button = element(
    "button",
    { type: "button", class: "drawn", "aria-expanded": "false" },
    drawnWords("span", element("span", {}, monthText(row.month)), range),
    none ? null : rangeTrack({ from: fewest, likely, to: row.most, most, mark: "tick", label }),
  );
  const behind = element("div", { class: "behind", hidden: true });
  button.addEventListener("click", () => {
    const open = button.getAttribute("aria-expanded") !== "true";
    button.setAttribute("aria-expanded", String(open));
    behind.hidden = !open;
    if (open && !behind.hasChildNodes()) behind.append(batchList(batches, tellVariety));
  });
  return element("div", {}, button, behind);
}

function batchList(batches: readonly AheadBatch[], tellVariety: boolean): Node {
  if (batches.length === 0) {
    return paragraph(text.noBatch());
  }
  return element(
    "div",
    {},
    paragraph(text.batches({ batches: batches.length })),
    longList(batches, (batch) => batchWords(batch, tellVariety)),
  );
}

function batchWords(batch: AheadBatch, tellVariety: boolean): HTMLElement {
  const { fewest, likely, most, variety, place } = batch;
  const facts = [tellVariety ? variety : "", place].filter((fact) => fact !== "");
  const plants =
    fewest === null || likely === null || most === null
      ? text.notCounted()
      : text.plants({ numbers: [...new Set([fewest, likely, most])].map(countText).join(" – ") });
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
