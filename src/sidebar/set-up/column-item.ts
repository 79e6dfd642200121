import * as text from "../../sentences/made/set-up-page";
import type { ColumnGuess } from "../../wire/columns";
import type { NamedText } from "../../wire/named-text";
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
  /** How it is read by now. */
  readonly now: string | null;
  readonly choices: readonly string[];
  readonly people: PeopleShown;
  readonly onChange: (readAs: string | null) => void;
}

export interface ColumnItem {
  readonly element: HTMLElement;
  /** Shows how the column is read by what was chosen elsewhere. */
  show(readAs: string | null): void;
}

/** How a column was understood, with values from it, and what else it may be read as. */
export function columnItem({
  guess,
  now,
  choices,
  people,
  onChange,
}: ColumnItemOptions): ColumnItem {
  const { header, readAs, samples } = guess;
  const surety = quiet(sureWords(guess));
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
    return { element: item, show: () => {} };
  }
  const known = readAs === null || choices.includes(readAs) ? choices : [readAs, ...choices];
  const select = choice(
    [{ value: "", label: text.leaveAlone() }, ...known.map((one) => ({ value: one, label: one }))],
    readAs ?? "",
  );
  const say = (chosen: string | null) => {
    surety.textContent = chosen === readAs ? sureWords(guess) : text.changedByYou();
  };
  const show = (chosen: string | null) => {
    select.value = chosen ?? "";
    say(chosen);
  };
  select.addEventListener("change", () => {
    const chosen = select.value === "" ? null : select.value;
    say(chosen);
    onChange(chosen);
  });
  show(now);
  select.setAttribute("aria-label", text.readAsOf({ header: shortened(header) }));
  item.append(field(text.readAs(), select), surety);
  return { element: item, show };
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

function sureWords({ readAs, sure, others, holds }: ColumnGuess): string {
  const held = holds === null ? [] : [text.leftHolds({ holds })];
  if (readAs === null && sure === "guessed") {
    return [text.mayBe({ others: shortened(others.join(", ")) }), ...held].join(" ");
  }
  const also = others.length === 0 ? [] : [text.couldBe({ others: shortened(others.join(", ")) })];
  return [SURE_WORDS[sure](), ...also, ...held].join(" ");
}
