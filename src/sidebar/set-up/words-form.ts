import * as text from "../../sentences/made/words-page";
import type { NamedText } from "../../wire/named-text";
import type { MethodAsked, PairAsked, WordChoice, WordsAsked } from "../../wire/words";
import { type ChoiceOption, choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { paragraph, quiet } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { stateOf } from "../state";

export interface WordsForm {
  readonly element: HTMLElement;
  /** The question about a word; null where there is none. */
  card(word: string): HTMLElement | null;
  /** What the person answered, and nothing else. */
  answers(): readonly WordChoice[];
  /** Methods that words were said to mean. */
  methods(): readonly string[];
  /** Asks anew, where columns were changed; what was answered and not yet used stays answered. */
  ask(words: WordsAsked): void;
  /** Asks what is left once the answers are used. */
  askRest(words: WordsAsked): void;
}

interface Options {
  readonly people: PeopleShown;
  /** What was answered and not yet used, by question; answers are kept in it. */
  readonly given: Map<string, WordChoice>;
  readonly onChange: () => void;
  /** What leads to the rows that hold a word; null where nothing does yet. */
  readonly rowsLink: (word: string) => HTMLElement | null;
}

interface Question {
  /** Stays the same while people are called otherwise. */
  readonly id: string;
  /** The words it is about, as they are found in cells or called. */
  readonly words: readonly string[];
  readonly label: string;
  readonly hint: string;
  /** What to do where the rows do not all mean the same; null where that can't be. */
  readonly differs: (() => HTMLElement) | null;
}

/** The value of an option that stands for no answer yet; no answer is an index. */
const OPEN = "";
/** The value of the option by which rows differ, which is no answer either. */
const DIFFERS = "differs";

/**
 * What words in cells mean: methods that are not known, and names that look like one.
 *
 * Longer than most: one form, whose fields and answers belong together.
 */
export function wordsForm(
  first: WordsAsked,
  { people, given, onChange, rowsLink }: Options,
): WordsForm {
  const all = element("div");
  const cards: { readonly words: readonly string[]; readonly element: HTMLElement }[] = [];
  /** One question: under each label the answer that it stands for. */
  const question = (
    { id, words, label, hint, differs }: Question,
    answers: readonly (readonly [label: string, answer: WordChoice])[],
  ) => {
    const chosen = given.get(id);
    const before = answers.findIndex(([, answer]) => isSame(answer, chosen));
    const options = answers.map(
      ([one], index): ChoiceOption => ({ value: `${index}`, label: one }),
    );
    const select = choice(
      [
        { value: OPEN, label: text.choose() },
        ...options,
        ...(differs === null ? [] : [{ value: DIFFERS, label: text.differ() }]),
      ],
      before === -1 ? OPEN : `${before}`,
    );
    select.setAttribute("aria-label", label);
    const more = element("div", { "aria-live": "polite" });
    const asked = field(element("strong", {}, label), select, hint);
    const card = element("div", { class: "column" }, asked, more);
    const tell = () => {
      card.dataset.open = given.has(id) ? "no" : "yes";
      const toDo = select.value === DIFFERS ? differs?.() : null;
      // What one choice would do says nothing of rows that differ.
      (asked.lastChild as Element).textContent = toDo ? "" : hint;
      more.replaceChildren(toDo ?? "");
    };
    select.addEventListener("change", (event) => {
      const answer = answers[Number(select.value || -1)]?.[1];
      // Nothing is said by it.
      if (answer === undefined && !given.has(id)) event.stopPropagation();
      if (answer === undefined) given.delete(id);
      else given.set(id, answer);
      tell();
      onChange();
    });
    tell();
    cards.push({ words, element: card });
    return card;
  };
  const method = ({ word, fits, batches, plants }: MethodAsked, choices: readonly string[]) => {
    const answer = (name: string | null): WordChoice => ({ word, name, notSame: false });
    const sorted = [...fits, ...choices.filter((one) => !fits.includes(one))];
    return question(
      {
        id: word,
        words: [word],
        label: text.whichMethod({ word: isolated(word) }),
        hint: text.methodBorne({ batches, plants, fits: fits.length }),
        differs:
          batches < 2
            ? null
            : () =>
                element(
                  "div",
                  { class: "note" },
                  paragraph(text.differToDo({ name: isolated(sorted[0] ?? "") })),
                  rowsLink(word),
                ),
      },
      [...sorted.map((one) => [one, answer(one)] as const), [text.leaveOut(), answer(null)]],
    );
  };
  const pair = ({ column, rare, batches, common, others, of }: PairAsked) => {
    const called = (name: NamedText) => isolated(people.called([name]));
    const names = { rare: called(rare), common: called(common) };
    const same = (name: string, word: string): WordChoice => ({ word, name, notSame: false });
    return question(
      {
        id: `${rare.text}\n${common.text}`,
        words: [rare.text, rare.initials ?? ""],
        differs: null,
        label: text.theSame({ column, ...names }),
        hint: text.namesBorne({ ...names, batches, others, of }),
      },
      [
        [text.yesAs({ name: names.common }), same(common.text, rare.text)],
        [text.yesAs({ name: names.rare }), same(rare.text, common.text)],
        [text.areTwo(), { ...same(common.text, rare.text), notSame: true }],
      ],
    );
  };
  const state = stateOf({ asked: first });
  const draw = () => {
    const { methods, pairs, more, choices } = state.now.asked;
    const number = methods.length + pairs.length;
    cards.length = 0;
    all.replaceChildren(
      ...methods.map((one) => method(one, choices)),
      ...pairs.map(pair),
      ...(number === 0 ? [] : [quiet(text.kept({ more }))]),
    );
    onChange();
  };
  const ask = (words: WordsAsked) => state.set({ asked: words });
  state.on(["asked"], draw);
  draw();
  people.onChange(draw);
  const answers = () => [...given.values()];
  const methods = () =>
    answers().flatMap(({ name }) =>
      name !== null && state.now.asked.choices.includes(name) ? [name] : [],
    );
  const askRest = (words: WordsAsked) => {
    given.clear();
    ask(words);
  };
  /** A word may stand behind its crop in the question. */
  const card = (word: string) =>
    cards.find(({ words }) => words.includes(word))?.element ??
    cards.find(({ words: [one = ""] }) => one.endsWith(` ${word}`))?.element ??
    null;
  return { element: all, card, answers, methods, ask, askRest };
}

function isSame(one: WordChoice, other: WordChoice | undefined): boolean {
  return one.word === other?.word && one.name === other.name && one.notSame === other.notSame;
}
