import * as text from "../../sentences/made/set-up-page";
import { element } from "../controls/element";
import { leadTo } from "../controls/lead-to";
import { plainButton } from "../controls/plain-button";
import { stateOf } from "../state";

/** How the work of Set up stands. */
export interface MakeState {
  /** Our names of the columns that answers need and that are not known. */
  readonly missing: readonly string[];
  readonly isSetUp: boolean;
  /** Whether something was said that the tabs do not follow yet. */
  readonly isChanged: boolean;
}

interface Led {
  /** The question that was led to last. */
  readonly led: HTMLElement | null;
}

export interface MakeBar {
  readonly element: HTMLFieldSetElement;
  show(state: MakeState): void;
}

/**
 * The button that makes the tabs, in view wherever the page stands, with what is open and the way to it.
 *
 * @param asked holds the questions, of which the open ones say so
 */
export function makeBar(make: HTMLButtonElement, asked: HTMLElement): MakeBar {
  const open = () => asked.querySelectorAll<HTMLElement>("[data-open=yes]");
  const state = stateOf<Led>({ led: null });
  const next = plainButton(text.nextQuestion(), () => {
    const { led } = state.now;
    const all = [...open()];
    // One that is passed over is not come back to before the others.
    const after = all.find(
      (one) => led && led.compareDocumentPosition(one) & Node.DOCUMENT_POSITION_FOLLOWING,
    );
    const to = after ?? all[0];
    state.set({ led: to ?? null });
    if (to !== undefined) leadTo(to);
  });
  const words = element("div", { "aria-live": "polite" });
  return {
    element: element(
      "fieldset",
      { class: "make-bar" },
      words,
      element("div", { class: "buttons" }, next, make),
    ),
    show: ({ missing, isSetUp, isChanged }) => {
      make.textContent =
        missing.length > 0
          ? text.makeWithout({ names: missing })
          : isSetUp
            ? text.makeAgain()
            : text.makeTabs();
      const questions = open().length;
      next.hidden = questions === 0;
      // One of the two is what comes next.
      const isNext = questions > 0 && !isChanged;
      next.className = isNext ? "main" : "plain";
      make.className = isNext || (isSetUp && !isChanged) ? "plain" : "main";
      words.textContent = [
        text.openQuestions({ questions }),
        ...(isChanged ? [text.notUsedYet()] : []),
      ].join(" ");
    },
  };
}
