import * as text from "../../sentences/made/set-up-page";
import type { ColumnGuess } from "../../wire/columns";
import type { NamedText } from "../../wire/named-text";
import { choice } from "../controls/choice";
import { columnLetter } from "../controls/column-letter";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { paragraph, quiet } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { sentenceNodes } from "../controls/sentence-nodes";
import { isolated, shortened } from "../controls/shortened";
import { userText } from "../controls/user-text";
import type { PeopleShown } from "../people/people-shown";
import { isOpen, SURE_WORDS } from "./column-groups";

/** What the person says that a column is; null to leave it alone. */
export type ColumnSaid = string | null;

export interface ColumnItemOptions {
  readonly guess: ColumnGuess;
  /** What was said of it by now; undefined where nothing was. */
  readonly said: ColumnSaid | undefined;
  readonly choices: readonly string[];
  readonly people: PeopleShown;
  /** Undefined takes back what was said. */
  readonly onSay: (said: ColumnSaid | undefined) => void;
}

export interface ColumnItem {
  readonly element: HTMLElement;
  /** Shows how the column is read by what was said elsewhere. */
  show(said: ColumnSaid | undefined): void;
}

/**
 * How a column was understood, with values from it, and what else it may be read as. One that was guessed is a
 * question: a button says yes to the guess, and what was said can be taken back.
 */
export function columnItem({ guess, said, choices, people, onSay }: ColumnItemOptions): ColumnItem {
  const { header, readAs, samples } = guess;
  const letter = columnLetter(guess.column);
  const title =
    header === ""
      ? [text.noHeader({ letter })]
      : sentenceNodes((facts) => text.columnAt({ letter, ...facts }), { header: userText(header) });
  const item = element(
    "div",
    { class: "column" },
    paragraph(element("strong", {}, ...title)),
    sampleLine(samples, people),
  );
  if (header === "") {
    item.append(quiet(heldWords(guess), text.giveHeader({ letter })));
    return { element: item, show: () => {} };
  }
  const known = readAs === null || choices.includes(readAs) ? choices : [readAs, ...choices];
  const select = choice(
    [{ value: "", label: text.leaveAlone() }, ...known.map((one) => ({ value: one, label: one }))],
    readAs ?? "",
  );
  const isAsked = isOpen(guess);
  const words = isAsked ? paragraph() : quiet();
  const say = (now: ColumnSaid | undefined) => {
    show(now);
    onSay(now);
  };
  const buttons = answerButtons(guess, select, say);
  const show = (now: ColumnSaid | undefined) => {
    const isSaid = now !== undefined;
    select.value = (isSaid ? now : readAs) ?? "";
    words.textContent = isSaid
      ? text.youSaid({ name: isolated(now ?? text.leaveAlone()) })
      : isAsked
        ? questionWords(guess)
        : sureWords(guess);
    buttons.show(isSaid);
    if (isAsked) item.dataset.open = isSaid ? "no" : "yes";
  };
  select.addEventListener("change", () => {
    const now = select.value === "" ? null : select.value;
    say(now === readAs ? undefined : now);
  });
  show(said);
  select.setAttribute("aria-label", text.readAsOf({ header: shortened(header) }));
  if (isAsked) item.append(words, buttons.element, field(text.readAs(), select));
  else item.append(field(text.readAs(), select), words);
  return { element: item, show };
}

/**
 * Yes to a guess by one press, and the way back from whatever was said; the focus stays on the column as its
 * buttons change.
 */
function answerButtons(
  guess: ColumnGuess,
  select: HTMLSelectElement,
  say: (said: ColumnSaid | undefined) => void,
): { readonly element: HTMLElement; show(isSaid: boolean): void } {
  const { readAs, others } = guess;
  const press = (label: string, said: ColumnSaid | undefined, next: () => HTMLElement) =>
    plainButton(label, () => {
      say(said);
      next().focus();
    });
  const best = readAs ?? others[0];
  const yes: HTMLButtonElement[] =
    isOpen(guess) && best !== undefined
      ? [
          press(text.yesItIs({ name: isolated(best) }), best, () => again),
          ...(readAs === null ? [press(text.noLeaveIt(), null, () => again)] : []),
        ]
      : [];
  const again: HTMLButtonElement = press(text.askAgain(), undefined, () => yes[0] ?? select);
  return {
    element: element("div", { class: "buttons" }, ...yes, again),
    show: (isSaid) => {
      for (const one of yes) one.hidden = isSaid;
      again.hidden = !isSaid;
    },
  };
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

/** What a column that is left alone holds, before what is said of it. */
function heldWords({ holds }: ColumnGuess): string {
  return holds === null ? "" : `${text.leftHolds({ holds })} `;
}

/** What is asked of a guess, why, and what counts until it is answered. */
function questionWords(guess: ColumnGuess): string {
  const { readAs, others } = guess;
  const [best = "", ...rest] = readAs === null ? others : [readAs, ...others];
  const name = isolated(best);
  const [held, meanwhile] =
    readAs === null ? [heldWords(guess), text.untilAnswerNot()] : ["", text.untilAnswer({ name })];
  return `${held}${text.isIt({ name })}${alsoWords(rest)} ${meanwhile}`;
}

function sureWords(guess: ColumnGuess): string {
  return heldWords(guess) + (SURE_WORDS[guess.sure]?.() ?? "") + alsoWords(guess.others);
}

function alsoWords(others: readonly string[]): string {
  return others.length === 0
    ? ""
    : ` ${text.couldBe({ others: others.map((one) => isolated(one)) })}`;
}
