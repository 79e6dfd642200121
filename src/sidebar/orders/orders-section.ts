import * as text from "../../sentences/made/orders-page";
import type { OrdersAnswer } from "../../wire/orders";
import { dayText } from "../controls/day-words";
import { element } from "../controls/element";
import { sentenceNodes } from "../controls/sentence-nodes";
import { userText, wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Section, SidebarContext } from "../section";
import { noOrders } from "./no-orders";
import { tallyWords } from "./order-words";
import { outlook } from "./outlook";
import { planPart } from "./plan/plan-part";

/** What becomes of the open orders, and what to do; a new order planned, kept, and followed in a tab. */
export function ordersSection(context: SidebarContext): Section {
  const { call, status } = context;
  const head = element("div", { tabindex: -1 }, element("h2", {}, text.title()));
  const list = element("div");
  const readAgain = element("button", { type: "button", class: "plain" }, text.readAgain());

  let turns = 0;

  /** An answer that a newer question has overtaken is older than what is shown, or will be. */
  const refresh = async () => {
    turns += 1;
    const turn = turns;
    const answer = await call("sidebarOrders", null);
    if (turn === turns) show(answer);
  };
  const load = () =>
    whileWorking({
      status,
      doing: text.workingOut(),
      controls: [readAgain],
      work: refresh,
    });
  const plan = planPart({ context, onWritten: refresh });
  const show = (answer: OrdersAnswer) => {
    head.replaceChildren(...headOf(answer));
    if (answer.ordersTab === null) {
      const onMade = async () => {
        await refresh();
        head.focus();
      };
      head.append(noOrders({ context, columns: answer.orderHeader, onMade }));
    }
    if (answer.remark !== null) {
      head.append(element("div", { class: "note" }, wholeText(answer.remark)));
    }
    list.replaceChildren(...outlook(answer));
    plan.offer(answer);
  };
  readAgain.addEventListener("click", () => void load());
  return { element: element("section", {}, head, plan.element, list, readAgain), load };
}

function headOf({ orders, ordersTab, asOf }: OrdersAnswer): HTMLElement[] {
  if (ordersTab === null) return [element("h2", {}, text.title())];
  return [
    element("h2", {}, text.title()),
    element("p", {}, element("strong", {}, tallyWords(orders))),
    element(
      "p",
      { class: "quiet" },
      ...sentenceNodes(({ tab }) => text.fromTab({ tab, asOf: dayText(asOf) }), {
        tab: userText(ordersTab),
      }),
    ),
  ];
}
