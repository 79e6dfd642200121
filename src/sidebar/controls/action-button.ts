import { type Child, element } from "./element";
import type { StatusLine } from "./status-line";
import { type Control, whileWorking } from "./while-working";

export interface ActionOptions {
  readonly label: Child;
  readonly status: StatusLine;
  readonly doing: string;
  readonly work: () => Promise<void>;
  readonly kind?: "main" | "plain" | "link";
  /** What else is disabled meanwhile. */
  readonly also?: readonly Control[];
}

/** A button that does one thing at a time and tells how it went. */
export function actionButton(options: ActionOptions): HTMLButtonElement {
  const { label, status, doing, work, kind = "plain", also = [] } = options;
  const button = element("button", { type: "button", class: kind }, label);
  button.addEventListener("click", () => {
    void whileWorking({ status, doing, controls: [button, ...also], work });
  });
  return button;
}
