import * as text from "../../sentences/made/orders-page";
import { actionButton } from "../controls/action-button";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { sentenceNodes } from "../controls/sentence-nodes";
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
    label: text.makeOrders(),
    kind: "main",
    status,
    doing: text.makingTab(),
    work: async () => {
      const { tab } = await call("sidebarMakeOrders", null);
      await onMade();
      status.say(...sentenceNodes(text.madeOrders, { tab: userText(tab) }));
    },
  });
  return element(
    "div",
    {},
    paragraph(text.keepOrders({ columns })),
    element("div", { class: "buttons" }, make),
  );
}
