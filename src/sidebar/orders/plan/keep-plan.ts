import * as text from "../../../sentences/made/orders-page";
import type { OrdersAnswer, PlanOrderRequest } from "../../../wire/orders";
import { actionButton } from "../../controls/action-button";
import { element } from "../../controls/element";
import { field } from "../../controls/field";
import { quiet } from "../../controls/paragraph";
import { sentenceNodes } from "../../controls/sentence-nodes";
import { userText } from "../../controls/user-text";
import type { Control } from "../../controls/while-working";
import type { SidebarContext } from "../../section";
import { orderAdder } from "./add-order";

export interface KeepPlanOptions {
  readonly context: SidebarContext;
  /** What was planned and is shown: nothing else is ever written. */
  readonly request: PlanOrderRequest;
  /** The outlook as last read; null before. */
  readonly known: () => OrdersAnswer | null;
  /** The form's entries: disabled while something is written. */
  readonly fields: Control;
  /** Puts what was done where it stays. */
  readonly onDone: (notice: HTMLElement) => void;
  /** Reads the outlook anew. */
  readonly onWritten: () => Promise<void>;
}

export interface KeepPlan {
  readonly element: HTMLFieldSetElement;
  /** The form has changed, or changed back: what is shown is to be kept or not. */
  allow(isAllowed: boolean): void;
  /** The outlook was read anew. */
  offer(answer: OrdersAnswer): void;
}

/** An order's name and customer, and what may be done with a plan: add it to the orders, make a tab. */
export function keepPlan(options: KeepPlanOptions): KeepPlan {
  const { context, request, known, fields, onDone, onWritten } = options;
  const { call, status } = context;
  const entry = { type: "text", autocomplete: "off", maxlength: 200 };
  const order = element("input", entry);
  const customer = element("input", entry);
  const noTab = quiet(text.tabMadeFirst());
  const held = element("fieldset", {}, element("legend", {}, text.keepPlan()));
  const also = [held, fields];
  const { variety, wanted, by } = request;
  const adding = orderAdder({
    context,
    known,
    also,
    onDone,
    onWritten,
    entered: () => ({
      order: order.value.trim(),
      customer: customer.value.trim(),
      variety,
      wanted,
      by,
    }),
    onNamed: (name) => {
      order.value = name;
    },
  });
  const makeTab = actionButton({
    label: text.makeTab(),
    status,
    also,
    doing: text.makingTab(),
    work: async () => {
      const { tab } = await call("sidebarOrderTab", { ...request, order: order.value.trim() });
      const made = [element("strong", {}, text.madeTabTitle()), " ", userText(tab)];
      onDone(element("p", { class: "written" }, ...made));
      status.say(...sentenceNodes(text.madeTab, { tab: userText(tab) }));
    },
  });
  held.append(
    field(text.order(), order, text.orderHint()),
    field(text.customer(), customer),
    noTab,
    element("div", { class: "buttons" }, adding.button, makeTab),
    adding.holder,
  );
  const offer = (answer: OrdersAnswer | null) => {
    noTab.hidden = answer === null || answer.ordersTab !== null;
  };
  offer(known());
  return {
    element: held,
    offer,
    allow: (isAllowed) => {
      held.hidden = !isAllowed;
      if (!isAllowed) adding.forget();
    },
  };
}
