import * as text from "../../../sentences/made/orders-page";
import type { AddOrderRequest, OrdersAnswer } from "../../../wire/orders";
import { actionButton } from "../../controls/action-button";
import { element } from "../../controls/element";
import type { Control } from "../../controls/while-working";
import type { SidebarContext } from "../../section";
import { stateOf } from "../../state";
import { askedList } from "../../writing/asked-list";
import { writtenNotice } from "../../writing/written-notice";

export type NewOrder = Omit<AddOrderRequest, "sure">;

export interface AddOrderOptions {
  readonly context: SidebarContext;
  /** The outlook as last read; null before. */
  readonly known: () => OrdersAnswer | null;
  /** Disabled while something is written. */
  readonly also: readonly Control[];
  /** The order as it would be written. */
  readonly entered: () => NewOrder;
  /** Told the order's name as it was written. */
  readonly onNamed: (name: string) => void;
  /** Puts what was written where it stays. */
  readonly onDone: (notice: HTMLElement) => void;
  /** Reads the outlook anew. */
  readonly onWritten: () => Promise<void>;
}

export interface AddOrder {
  readonly button: HTMLButtonElement;
  /** Where the script's questions are shown. */
  readonly holder: HTMLElement;
  /** Takes questions away that are about something else by now. */
  forget(): void;
}

/** The button that writes an order to the orders, with the questions before and the notice after. */
export function orderAdder(options: AddOrderOptions): AddOrder {
  const { context, known, also, entered, onNamed, onDone, onWritten } = options;
  const { call, status } = context;
  const holder = element("div");
  const state = stateOf({ isTabMade: false });

  const button = actionButton({
    label: text.addOrder(),
    kind: "main",
    status,
    also,
    doing: text.writingOrder(),
    work: () => write(entered(), []),
  });
  /** @param sure the questions that were asked and answered already */
  const write = async (order: NewOrder, sure: readonly string[]): Promise<void> => {
    const before = known();
    if (before !== null && before.ordersTab === null && !state.now.isTabMade) {
      await call("sidebarMakeOrders", null);
      state.set({ isTabMade: true });
    }
    const answer = await call("sidebarAddOrder", { ...order, sure });
    if (answer.written.length === 0 && answer.asked.length === 0) {
      throw new Error(text.nothingWritten());
    }
    if (answer.written.length === 0) {
      const asked = askedList({
        questions: answer.asked,
        status,
        onAnyway: () => write(order, [...sure, ...answer.asked.map(({ id }) => id)]),
        onLeave: () => {
          holder.replaceChildren();
          button.focus();
          status.say(text.leftUnwritten());
        },
      });
      holder.replaceChildren(asked);
      asked.focus();
      return;
    }
    holder.replaceChildren();
    button.hidden = true;
    // An order without a name got one.
    const named = answer.written.find(({ header }) => header === before?.orderHeader[0])?.value;
    const name = order.order || String(named ?? "");
    onNamed(name);
    const onTakenBack = () => {
      button.hidden = false;
      return readAnew(text.takenBack());
    };
    const what = name || text.aNewOrder();
    const notice = writtenNotice({
      context,
      title: text.addedTitle(),
      what,
      answer,
      onTakenBack,
    });
    onDone(notice);
    notice.focus();
    await readAnew(text.written());
    status.say(text.added());
  };
  /** The list behind stands as it was until then: the page says that it is still at work. */
  const readAnew = async (done: string) => {
    const end = status.working(text.workingOut());
    try {
      await onWritten();
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw new Error(text.notReadAgain({ why, done }));
    } finally {
      end();
    }
  };
  return { button, holder, forget: () => holder.replaceChildren() };
}
