import * as text from "../../sentences/made/words-page";
import type { NamedText } from "../../wire/named-text";
import type { MethodAsked, PairAsked, WordChoice, WordsAsked } from "../../wire/words";
import { type ChoiceOption, choice } from "../controls/choice";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { group } from "../controls/group";
import { quiet } from "../controls/paragraph";
import { isolated } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { stateOf } from "../state";

export interface WordsForm {
  readonly element: HTMLElement;
  /** What the person answered, and nothing else. */
  answers(): readonly WordChoice[];
  /** Methods that words were said to mean. */
  methods(): readonly string[];
  /** Asks anew, where columns were changed; what was answered and not yet used stays answered. */
  ask(words: WordsAsked): void;
  /** Asks what is left once the answers are used. */
  askRest(words: WordsAsked): void;
}

interface Question {
  /** Stays the same while people are called otherwise. */
  readonly id: string;
  readonly label: string;
  readonly hint: string;
}

/** The value of an option that stands for no answer yet; no answer is an index. */
const OPEN = "";

/**
 * What words in cells mean: methods that are not known, and names that look like one.
 *
 * Longer than most: one form, whose fields and answers belong together.
 */
export function wordsForm(first: WordsAsked, people: PeopleShown): WordsForm {
  const given = new Map<string, WordChoice>();
  const all = element("div");
  /** One question: under each label the answer that it stands for. */
  const question = (
    { id, label, hint }: Question,
    answers: readonly (readonly [label: string, answer: WordChoice])[],
  ) => {
    const chosen = given.get(id);
    const before = answers.findIndex(([, answer]) => isSame(answer, chosen));
    const options = answers.map(
      ([one], index): ChoiceOption => ({ value: `${index}`, label: one }),
    );
    const select = choice(
      [{ value: OPEN, label: text.choose() }, ...options],
      before === -1 ? OPEN : `${before}`,
    );
    select.setAttribute("aria-label", label);
    select.addEventListener("change", () => {
      const answer = answers[Number(select.value)]?.[1];
      if (select.value === OPEN || answer === undefined) given.delete(id);
      else given.set(id, answer);
    });
    return element("div", { class: "column" }, field(label, select, hint));
  };
  const method = ({ word, fits, batches, plants }: MethodAsked, choices: readonly string[]) => {
    const answer = (name: string | null): WordChoice => ({ word, name, notSame: false });
    const sorted = [...fits, ...choices.filter((one) => !fits.includes(one))];
    return question(
      {
        id: word,
        label: text.whichMethod({ word: isolated(word) }),
        hint: text.methodBorne({ batches, plants, fits: fits.length }),
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
    const content = () =>
      element(
        "div",
        {},
        ...methods.map((one) => method(one, choices)),
        ...pairs.map(pair),
        quiet(text.kept({ more })),
      );
    const title = text.title();
    all.replaceChildren(
      ...(number === 0
        ? []
        : [group({ title, tally: countText(number + more), open: true, content })]),
    );
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
  return { element: all, answers, methods, ask, askRest };
}

function isSame(one: WordChoice, other: WordChoice | undefined): boolean {
  return one.word === other?.word && one.name === other.name && one.notSame === other.notSame;
}
