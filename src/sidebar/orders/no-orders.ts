import { actionButton } from "../controls/action-button";
import { listed } from "../controls/count-words";
import { element } from "../controls/element";
import { userText } from "../controls/user-text";
import type { SidebarContext } from "../section";

export interface NoOrdersOptions {
  readonly context: SidebarContext;
  /** The columns that a tab of orders has. */
  readonly columns: readonly string[];
  /** Reads anew; the button is gone then. */
  readonly onMade: () => Promise<void>;
}

/** What is needed where no tab holds orders, and a button that makes one. */
export function noOrders({ context, columns, onMade }: NoOrdersOptions): HTMLElement {
  const { call, status } = context;
  const make = actionButton({
    label: "Make an Orders tab",
    kind: "main",
    status,
    doing: "Making the tab",
    work: async () => {
      const { tab } = await call("sidebarMakeOrders", null);
      await onMade();
      status.say("Made the tab ", userText(tab), ": write a row an order, or plan one here.");
    },
  });
  return element(
    "div",
    {},
    element(
      "p",
      {},
      "To see what becomes of your orders, keep them in a tab with a row an order and the columns ",
      userText(listed(columns)),
      ".",
    ),
    element("div", { class: "buttons" }, make),
  );
}
