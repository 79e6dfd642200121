import type { ColumnGuess } from "../../workbook/sidebar-calls";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { shortened } from "../controls/shortened";
import { userText } from "../controls/user-text";
import { SURE_WORDS } from "./column-groups";

export interface ColumnItemOptions {
  readonly guess: ColumnGuess;
  readonly choices: readonly string[];
  readonly onChange: (readAs: string | null) => void;
}

/** How a column was understood, with values from it, and what else it may be read as. */
export function columnItem({ guess, choices, onChange }: ColumnItemOptions): HTMLElement {
  const { header, readAs, sure, others, samples } = guess;
  const surety = element("p", { class: "quiet" }, sureWords(sure, others));
  const item = element(
    "div",
    { class: "column" },
    element(
      "p",
      {},
      element(
        "strong",
        {},
        header === "" ? `Column ${guess.column + 1}, without a header` : userText(header),
      ),
    ),
    sampleLine(samples),
  );
  if (header === "") {
    item.append(element("p", { class: "quiet" }, "Give it a header in the sheet to have it read."));
    return item;
  }
  const known = readAs === null || choices.includes(readAs) ? choices : [readAs, ...choices];
  const select = choice(
    [{ value: "", label: "leave alone" }, ...known.map((one) => ({ value: one, label: one }))],
    readAs ?? "",
  );
  select.addEventListener("change", () => {
    const now = select.value === "" ? null : select.value;
    surety.textContent = now === readAs ? sureWords(sure, others) : "Changed by you.";
    onChange(now);
  });
  const label = element(
    "span",
    {},
    "Read as",
    element("span", { class: "unseen" }, `: ${shortened(header)}`),
  );
  item.append(field(label, select), surety);
  return item;
}

function sampleLine(samples: readonly string[]): HTMLElement {
  const shown = samples.filter((sample) => sample !== "");
  if (shown.length === 0) return element("p", { class: "quiet" }, "No values yet.");
  return element(
    "ul",
    { class: "samples", "aria-label": "Values" },
    ...shown.map((sample) => element("li", {}, element("bdi", {}, shortened(sample, 60)))),
  );
}

function sureWords(sure: ColumnGuess["sure"], others: readonly string[]): string {
  const also = others.length === 0 ? "" : ` Could also be: ${shortened(others.join(", "))}.`;
  return `How sure: ${SURE_WORDS[sure]}.${also}`;
}
