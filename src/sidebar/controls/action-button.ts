import { type Child, element } from "./element";
import type { StatusLine } from "./status-line";
import { whileWorking } from "./while-working";

export interface ActionOptions {
  readonly label: Child;
  readonly status: StatusLine;
  readonly doing: string;
  readonly work: () => Promise<void>;
  readonly kind?: "main" | "plain" | "link";
}

/** A button that does one thing at a time and tells how it went. */
export function actionButton(options: ActionOptions): HTMLButtonElement {
  const { label, status, doing, work, kind = "plain" } = options;
  const button = element("button", { type: "button", class: kind }, label);
  button.addEventListener("click", () => {
    void whileWorking({ status, doing, controls: [button], work });
  });
  return button;
}
