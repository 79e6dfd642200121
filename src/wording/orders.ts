import { ORDER_COLUMNS, type OrderAction, type OrderRowTroubles, type OrderTrouble } from "../core";
import * as text from "../sentences/made/orders";
import { dayWords } from "./days";
import { fewNames, unlessNear } from "./names";
import { type SentencesOf, sentenceOf } from "./sentence-of";
import { readAsSentence, unreadWords } from "./unread";

type More = Extract<OrderAction, { code: "start-more" | "graft-more" }>;

const moreWords =
  (any: typeof text.graft, named: typeof text.graftOf) =>
  ({ plants, variety, by: day }: More): string => {
    const by = dayWords(day);
    return variety === "" ? any({ plants, by }) : named({ plants, by, variety });
  };

const ACTIONS: SentencesOf<OrderAction> = {
  "all-delivered": text.allDelivered,
  fine: text.fine,
  "deliver-now": text.deliverNow,
  "too-late": text.tooLate,
  "too-late-to-start": text.tooLateToStart,
  "which-crop": text.whichCrop,
  "no-such-variety": unlessNear(text.noSuchVariety, text.varietyMeant),
  "start-more": moreWords(text.start, text.startOf),
  "graft-more": moreWords(text.graft, text.graftOf),
};

/** What to do for an order. */
export function orderAction(action: OrderAction): string {
  return sentenceOf(ACTIONS, action);
}

/** What an order is called. */
export function orderName(name: string): string {
  return name === "" ? text.noName() : name;
}

const TROUBLES: SentencesOf<OrderTrouble> = {
  "cell-unread": ({ field, why }) =>
    text.cellTrouble({ column: ORDER_COLUMNS[field], what: unreadWords(why) }),
  "cell-read-as": ({ field, readAs }) =>
    text.cellTrouble({ column: ORDER_COLUMNS[field], what: readAsSentence(readAs) }),
  "cell-blank": ({ field }) => text.cellBlank({ column: ORDER_COLUMNS[field] }),
  "cell-shows": ({ field, shown }) => text.cellShows({ column: ORDER_COLUMNS[field], shown }),
  "none-wanted": () => text.noneWanted({ column: ORDER_COLUMNS.wanted }),
};

/** Orders with what each names, ten at most and the number of the others. */
export function someOrders(
  orders: readonly { readonly order: string; readonly varieties: readonly string[] }[],
): readonly string[] {
  const said = orders
    .slice(0, ROWS_SAID)
    .map(({ order, varieties }) => text.varietyOf({ order: orderName(order), varieties }));
  const more = orders.length - said.length;
  return more === 0 ? said : [...said, text.moreOrders({ orders: more })];
}

/** Pairs of names, ten at most and the number of the others. */
export function somePairs(
  pairs: readonly (readonly [one: string, other: string])[],
): readonly string[] {
  const said = pairs.map(([one, other]) => text.oneOrOther({ one, other }));
  return fewNames(said, ROWS_SAID);
}

/** So many rows are said with their reason; of more the row alone. */
const ROWS_SAID = 10;

/** Rows of orders, each with what is amiss in it. */
export function orderRows(rows: readonly OrderRowTroubles[]): string {
  return rows
    .map(({ row, troubles }, index) =>
      index < ROWS_SAID
        ? text.row({
            row: String(row),
            reasons: troubles.map((one) => sentenceOf(TROUBLES, one)).join(", "),
          })
        : text.rowAlone({ row: String(row) }),
    )
    .join(", ");
}
