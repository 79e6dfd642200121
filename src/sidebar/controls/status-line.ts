import * as text from "../../sentences/made/controls";
import { type Child, element } from "./element";

/** Sooner than this a call is over before anyone wonders: nothing is shown. Milliseconds. */
const PATIENCE = 500;

export interface StatusLine {
  readonly element: HTMLElement;
  /** Says what is going on once it takes longer than half a second. @returns ends it */
  working(doing: string): () => void;
  /** Says what was done. */
  say(...words: readonly Child[]): void;
  /** Says what went wrong; stays until dismissed or until something else is said. */
  fail(sentence: string): void;
  clear(): void;
}

/** The one line that tells what happens, also to those who hear the page. */
export function statusLine(): StatusLine {
  const words = element("p", { role: "status", "aria-live": "polite", class: "status-words" });
  const dismiss = element(
    "button",
    { type: "button", class: "link", hidden: true },
    text.dismiss(),
  );
  const line = element("div", { class: "status" }, words, dismiss);
  /** What is under way and told; the last one begun is shown. */
  const told: string[] = [];

  const show = (kind: "idle" | "working" | "said" | "failed", shown: readonly Child[]) => {
    line.dataset.kind = kind;
    words.replaceChildren(...shown.filter((child): child is Node | string => child !== null));
    dismiss.hidden = kind !== "failed";
  };
  const clear = () => show("idle", []);
  dismiss.addEventListener("click", clear);
  clear();

  return {
    element: line,
    working(doing) {
      let shown = false;
      const timer = setTimeout(() => {
        shown = true;
        told.push(doing);
        show("working", [text.doing({ doing })]);
      }, PATIENCE);
      return () => {
        clearTimeout(timer);
        if (!shown) return;
        told.splice(told.lastIndexOf(doing), 1);
        if (line.dataset.kind !== "working") return;
        const before = told[told.length - 1];
        if (before === undefined) clear();
        else show("working", [text.doing({ doing: before })]);
      };
    },
    say: (...shown) => show("said", shown),
    fail: (sentence) => show("failed", [sentence]),
    clear,
  };
}
