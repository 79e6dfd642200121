import type { ColumnGuess, NamedText } from "../../workbook/sidebar-calls";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { shortened } from "../controls/shortened";
import { userText } from "../controls/user-text";
import type { PeopleShown } from "../people/people-shown";
import { SURE_WORDS } from "./column-groups";

export interface ColumnItemOptions {
  readonly guess: ColumnGuess;
  readonly choices: readonly string[];
  readonly people: PeopleShown;
  readonly onChange: (readAs: string | null) => void;
}

/** How a column was understood, with values from it, and what else it may be read as. */
export function columnItem({ guess, choices, people, onChange }: ColumnItemOptions): HTMLElement {
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
    sampleLine(samples, people),
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

function sampleLine(samples: readonly NamedText[], people: PeopleShown): HTMLElement {
  const filled = samples.filter(({ text }) => text !== "");
  if (filled.length === 0) return element("p", { class: "quiet" }, "No values yet.");
  const list = element("ul", { class: "samples", "aria-label": "Values" });
  const draw = () => {
    const shown = filled.map((sample) => shortened(people.called([sample]), 60));
    list.replaceChildren(...shown.map((text) => element("li", {}, element("bdi", {}, text))));
  };
  draw();
  people.onChange(draw);
  return list;
}

function sureWords(sure: ColumnGuess["sure"], others: readonly string[]): string {
  const also = others.length === 0 ? "" : ` Could also be: ${shortened(others.join(", "))}.`;
  return `How sure: ${SURE_WORDS[sure]}.${also}`;
}
