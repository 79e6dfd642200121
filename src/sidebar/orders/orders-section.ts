import * as text from "../../sentences/made/orders-page";
import type { OrdersAnswer } from "../../wire/orders";
import { dayText } from "../controls/day-words";
import { element } from "../controls/element";
import { notes, paragraph, quiet } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import { facePart } from "../faces/face-part";
import type { Section, SidebarContext } from "../section";
import { stateOf } from "../state";
import { noOrders } from "./no-orders";
import { tallyWords } from "./order-words";
import { outlook } from "./outlook";
import { planPart } from "./plan/plan-part";

interface OrdersState {
  /** How often the outlook was asked for. */
  readonly asked: number;
  /** The answer to the last time; null before. */
  readonly answer: OrdersAnswer | null;
}

/** What becomes of the open orders, and what to do; a new order planned, kept, and followed in a tab. */
export function ordersSection(context: SidebarContext): Section {
  const { call, status } = context;
  const head = element("div", { tabindex: -1 }, element("h2", {}, text.title()));
  const list = element("div");
  const readAgain = plainButton(text.readAgain(), () => void load());

  const state = stateOf<OrdersState>({ asked: 0, answer: null });

  /** An answer that a newer question has overtaken is older than what is shown, or will be. */
  const refresh = async () => {
    const asked = state.now.asked + 1;
    state.set({ asked });
    const answer = await call("sidebarOrders", null);
    if (asked === state.now.asked) state.set({ answer });
  };
  const load = () =>
    whileWorking({
      status,
      doing: text.workingOut(),
      controls: [readAgain],
      work: refresh,
    });
  const plan = planPart({ context, onWritten: refresh });
  state.on(["answer"], ({ answer }) => {
    if (answer === null) return;
    head.replaceChildren(...headOf(answer));
    if (answer.ordersTab === null) {
      const onMade = async () => {
        await refresh();
        head.focus();
      };
      head.append(noOrders({ context, columns: answer.orderHeader, onMade }));
    }
    head.append(...notes(answer.remark));
    list.replaceChildren(...outlook(answer));
    plan.offer(answer);
  });
  const faces = (["needs", "places", "costs"] as const).map((face) => facePart(context, face));
  return { element: element("section", {}, head, plan.element, list, ...faces, readAgain), load };
}

function headOf({ orders, ordersTab, asOf }: OrdersAnswer): HTMLElement[] {
  if (ordersTab === null) return [element("h2", {}, text.title())];
  return [
    element("h2", {}, text.title()),
    paragraph(element("strong", {}, tallyWords(orders))),
    quiet(
      ...sentenceNodes(({ tab }) => text.fromTab({ tab, asOf: dayText(asOf) }), {
        tab: userText(ordersTab),
      }),
    ),
  ];
}
