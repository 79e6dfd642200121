import { disclosure } from "./disclosure";
import { type Child, element } from "./element";

export interface Group {
  readonly title: Child;
  /** What is in it, in few words or as a number. */
  readonly tally: string;
  readonly open: boolean;
  /** Made when it is first opened. */
  readonly content: () => Node;
}

/** A part of a section under its own heading, which folds it. */
export function group({ title, tally, open, content }: Group): HTMLDetailsElement {
  return disclosure({
    kind: "group",
    open,
    summary: element("h3", {}, title, " ", element("span", { class: "tally" }, tally)),
    content,
  });
}
