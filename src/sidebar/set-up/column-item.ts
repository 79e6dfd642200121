import * as text from "../../sentences/made/set-up-page";
import type { NamedText } from "../../wire/named-text";
import type { ColumnGuess } from "../../wire/set-up";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { paragraph, quiet } from "../controls/paragraph";
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
  const surety = quiet(sureWords(sure, others));
  const item = element(
    "div",
    { class: "column" },
    paragraph(
      element(
        "strong",
        {},
        header === "" ? text.noHeader({ column: String(guess.column + 1) }) : userText(header),
      ),
    ),
    sampleLine(samples, people),
  );
  if (header === "") {
    item.append(quiet(text.giveHeader()));
    return item;
  }
  const known = readAs === null || choices.includes(readAs) ? choices : [readAs, ...choices];
  const select = choice(
    [{ value: "", label: text.leaveAlone() }, ...known.map((one) => ({ value: one, label: one }))],
    readAs ?? "",
  );
  select.addEventListener("change", () => {
    const now = select.value === "" ? null : select.value;
    surety.textContent = now === readAs ? sureWords(sure, others) : text.changedByYou();
    onChange(now);
  });
  select.setAttribute("aria-label", text.readAsOf({ header: shortened(header) }));
  item.append(field(text.readAs(), select), surety);
  return item;
}

function sampleLine(samples: readonly NamedText[], people: PeopleShown): HTMLElement {
  const filled = samples.filter((sample) => sample.text !== "");
  if (filled.length === 0) return quiet(text.noValues());
  const list = element("ul", { class: "samples", "aria-label": text.values() });
  const draw = () => {
    const shown = filled.map((sample) => shortened(people.called([sample]), 60));
    list.replaceChildren(...shown.map((one) => element("li", {}, element("bdi", {}, one))));
  };
  draw();
  people.onChange(draw);
  return list;
}

function sureWords(sure: ColumnGuess["sure"], others: readonly string[]): string {
  const also = others.length === 0 ? [] : [text.couldBe({ others: shortened(others.join(", ")) })];
  return [SURE_WORDS[sure](), ...also].join(" ");
}
