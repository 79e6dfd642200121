import * as header from "../../sentences/made/order-columns";
import * as text from "../../sentences/made/orders-page";
import type { OrderRow } from "../../wire/orders";
import { orderAction } from "../../wording/orders";
import { dayText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { paragraph, quiet } from "../controls/paragraph";
import { userText, wholeText } from "../controls/user-text";
import { ofTen } from "./chance-words";
import { byWords, daysLate, leftOf, plantsToDeliver, standingWords } from "./order-words";

export interface OrderItemOptions {
  readonly order: OrderRow;
  readonly asOf: string;
  /** The chance that "short by" and "full by" hold with, strictly between 0 and 1. */
  readonly assurance: number;
}

/** An order: what to do about it, what is to be delivered when, how likely; opened, how it stands. */
export function orderItem({ order, asOf, assurance }: OrderItemOptions): HTMLElement {
  const { order: name, customer, variety } = order;
  return element(
    "article",
    { class: "task order" },
    element(
      "h4",
      {},
      userText(name),
      ...(customer === "" || customer === name ? [] : [" · ", userText(customer)]),
    ),
    toDo(order),
    paragraph(
      variety === "" ? text.anyVariety() : userText(variety),
      ` · ${plantsToDeliver(order)}`,
    ),
    paragraph(byWords(order, asOf)),
    leftOf(order) === 0
      ? paragraph(mark(order, asOf))
      : disclosure({
          summary: element("span", {}, text.fullByThen(), " ", mark(order, asOf)),
          content: () => standing(order, assurance),
        }),
  );
}

/** How it stands, in words; the line around it only repeats them. */
function mark(order: OrderRow, asOf: string): HTMLElement {
  const kind = order.isFine ? " coming" : daysLate(order, asOf) > 0 ? " late" : "";
  return element("span", { class: `mark${kind}` }, standingWords(order, asOf));
}

/** The line that stands out where something is to be done; nothing where the group says it all. */
function toDo({ whatToDo, isFine }: OrderRow): HTMLElement | null {
  if (isFine) return null;
  const words = orderAction(whatToDo);
  return element(
    "p",
    { class: "to-do" },
    wholeText(words.charAt(0).toUpperCase() + words.slice(1)),
  );
}

function standing(order: OrderRow, assurance: number): HTMLElement {
  const { likely, shortBy, fullBy } = order;
  const fact = (name: string, text: string) => [element("dt", {}, name), element("dd", {}, text)];
  return element(
    "div",
    { class: "behind" },
    element(
      "dl",
      { class: "pairs" },
      ...fact(header.likely(), text.likelyOf({ likely, left: leftOf(order) })),
      ...fact(text.shortBy(), text.shortPlants({ plants: shortBy })),
      ...fact(header.fullBy(), fullBy === null ? text.neverFull() : dayText(fullBy)),
    ),
    quiet(text.lastTwoHold({ cases: ofTen(assurance) })),
  );
}
