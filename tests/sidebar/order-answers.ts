/* Longer than most: a list, orders in every state that the sidebar can show. */
import type { Amount, OrderAction } from "../../src/core";
import type {
  OrderRow,
  OrdersAnswer,
  PlannedOrderStep,
  PlanOrderAnswer,
} from "../../src/wire/orders";
import { ordersRemarks } from "../../src/wording/order-tables";
import { recordsRemarks } from "../../src/wording/records";
import { day } from "../support/days";

/**
 * Orders of an invented nursery and what becomes of them: the sample nursery's, and three more, as
 * ORDER_OUTLOOK and ORDER_PLAN answer on 25 Nov 2026.
 */

/** @example amounts("seed 473; wrap strip 129.6 m") */
function amounts(text: string): readonly Amount[] {
  return text.split("; ").map((one) => {
    const [, item = "", amount = "", unit = ""] = /^(\D+) ([\d.]+) ?(\w*)$/.exec(one) ?? [];
    return { item, amount: Number(amount), unit };
  });
}

function order(
  [name, customer, variety]: readonly [string, string, string],
  [wanted, delivered, by]: readonly [number, number, string],
  [likely, chance, shortBy, fullBy]: readonly [number, number, number, string | null],
  whatToDo: OrderAction,
): OrderRow {
  const isFine = ["fine", "all-delivered"].includes(whatToDo.code);
  return {
    ...{ order: name, customer, variety, wanted, delivered, by },
    ...{ likely, chance, shortBy, fullBy, whatToDo, isFine },
  };
}

export const orders: OrdersAnswer = {
  ...{ asOf: "2026-11-25", ordersTab: "Orders", assurance: 0.8 },
  orderHeader: ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"],
  orders: [
    order(
      ["O-03", "Growers' table C", "Brindlecap"],
      [180, 60, "2026-11-20"],
      [120, 0, 0, "2026-11-25"],
      { code: "too-late" },
    ),
    order(
      ["O-04", "Order desk A", "Corvane"],
      [120, 0, "2026-12-15"],
      [75, 0.062, 97, "2027-01-04"],
      { code: "too-late-to-start" },
    ),
    order(
      ["O-06", "Growers' table C", "Ellowen"],
      [90, 0, "2027-02-10"],
      [90, 1, 0, "2027-02-10"],
      { code: "fine" },
    ),
    order(
      ["O-07", "Order desk B", "Duskpod"],
      [260, 0, "2027-02-28"],
      [260, 0.607, 24, "2027-03-04"],
      { code: "too-late-to-start" },
    ),
    order(["O-10", "", "Duskpod"], [60, 60, "2027-03-31"], [0, 1, 0, null], {
      code: "all-delivered",
    }),
    order(["O-08", "Order desk D", "Corvane"], [350, 0, "2027-05-31"], [350, 1, 0, "2027-05-31"], {
      code: "fine",
    }),
    order(["O-11", "Growers' table C", "Ellowen"], [500, 40, "2027-08-15"], [460, 0.754, 6, null], {
      code: "graft-more",
      plants: 52,
      variety: "Ellowen",
      by: day("2027-04-11"),
    }),
    order(
      ["O-09", "Order desk A", "Amberlow or Brindlecap"],
      [900, 0, "2027-09-30"],
      [757, 0.042, 203, null],
      { code: "graft-more", plants: 521, variety: "Amberlow", by: day("2027-05-27") },
    ),
  ],
  varieties: ["Amberlow", "Brindlecap", "Corvane", "Duskpod", "Ellowen"],
  methods: ["Cocoa cleft graft", "Mango seedlings"],
  remark: ordersRemarks(
    [
      {
        code: "orders-left-out",
        rows: [{ row: 12, troubles: [{ code: "cell-blank", field: "wanted" }] }],
      },
    ],
    "page",
  ),
};

/** No tab with orders. */
export const noOrders: OrdersAnswer = { ...orders, ordersTab: null, orders: [], remark: null };

/** A step of which nothing is to be said. */
const NOTHING_SAID: Pick<PlannedOrderStep, "needs" | "facts" | "warnings" | "isPast" | "caution"> =
  { needs: [], facts: [], warnings: [], isPast: false, caution: "" };

const STEPS: readonly PlannedOrderStep[] = [
  {
    ...NOTHING_SAID,
    step: "Sowing",
    doBy: "2027-04-22",
    plants: 473,
    needs: amounts("seed 473; pod 14; bag 473; potting mix 676.4 l"),
    facts: [{ code: "more-than-plain", plants: 316, more: 157, chance: 0.89 }],
    warnings: [{ code: "outside-harvest", months: "Oct-Mar, May-Aug", last: day("2027-03-31") }],
    caution:
      "Sow within two days of opening the pod, or wash the seed clean of pulp. Wash hands after handling treated seed; read the label.",
  },
  {
    ...NOTHING_SAID,
    step: "Germination",
    doBy: "2027-05-06",
    plants: 405,
    facts: [{ code: "more-than-plain", plants: 273, more: 132, chance: 0.89 }],
  },
  {
    ...NOTHING_SAID,
    step: "Grafting",
    doBy: "2027-08-01",
    plants: 340,
    needs: amounts("scion 340; wrap strip 129.6 m"),
    facts: [{ code: "more-than-plain", plants: 232, more: 108, chance: 0.89 }],
    caution:
      "Blades: cut away from the body, keep knives sheathed, clean and disinfect between stocks as the product's label says. Strong alcohol burns and catches fire: no flame near it. Moving scion wood between farms may need a plant-health permit: ask first.",
  },
  {
    ...NOTHING_SAID,
    step: "First release",
    doBy: "2027-08-19",
    plants: 340,
    caution: "Blades: slit the wrap on the side away from the union and away from the hand.",
  },
  { ...NOTHING_SAID, step: "Bud break", doBy: "2027-09-09", plants: 340 },
  {
    ...NOTHING_SAID,
    step: "Take count",
    doBy: "2027-09-05",
    plants: 176,
    facts: [{ code: "more-than-plain", plants: 165, more: 11, chance: 0.89 }],
  },
  { ...NOTHING_SAID, step: "First flush", doBy: "2027-09-23", plants: 176 },
  {
    ...NOTHING_SAID,
    step: "Flush hardening",
    doBy: "2027-09-26",
    plants: 176,
    caution:
      "Sprays: only products registered for the crop, by a trained person, as the label says.",
  },
  { ...NOTHING_SAID, step: "Branching", doBy: "2027-10-15", plants: 176 },
  { ...NOTHING_SAID, step: "Union closed", doBy: "2027-11-14", plants: 176 },
  {
    ...NOTHING_SAID,
    step: "Ready",
    doBy: "2027-12-01",
    plants: 150,
    facts: [
      { code: "plain-division", plants: 150 },
      { code: "chances", ofPlants: 0.89, ofDays: 0.908 },
    ],
    caution:
      "Moving plants may spread pests and need a plant-health certificate: follow the rules of the place they leave and the place they go to.",
  },
];

/** 150 plants of Corvane by 1 Dec 2027. */
export const plan: PlanOrderAnswer = {
  method: "Cocoa cleft graft",
  steps: STEPS,
  needs: amounts("seed 473; pod 14; bag 473; potting mix 676.4 l; scion 340; wrap strip 129.6 m"),
  remark: recordsRemarks([{ code: "rows-left-out", rows: 2 }], "page"),
};

/** The same by 1 Feb 2027: the start is past. */
export const latePlan: PlanOrderAnswer = {
  ...plan,
  steps: [
    {
      step: "Sowing",
      doBy: "2026-06-23",
      plants: 473,
      needs: amounts("seed 473; pod 14; bag 473; potting mix 676.4 l"),
      facts: [{ code: "more-than-plain", plants: 316, more: 157, chance: 0.89 }],
      warnings: [
        { code: "start-was-due", day: day("2026-06-23") },
        { code: "started-now", asOf: day("2026-11-25"), wanted: 150, earliest: day("2027-07-06") },
        { code: "standing-can", by: day("2027-02-01"), plants: 150 },
      ],
      isPast: true,
      caution:
        "Sow within two days of opening the pod, or wash the seed clean of pulp. Wash hands after handling treated seed; read the label.",
    },
    {
      step: "Germination",
      doBy: "2026-07-07",
      plants: 405,
      needs: [],
      facts: [{ code: "more-than-plain", plants: 273, more: 132, chance: 0.89 }],
      warnings: [],
      isPast: true,
      caution: "",
    },
    {
      step: "Grafting",
      doBy: "2026-10-02",
      plants: 340,
      needs: amounts("scion 340; wrap strip 129.6 m"),
      facts: [{ code: "more-than-plain", plants: 232, more: 108, chance: 0.89 }],
      warnings: [{ code: "day-past" }],
      isPast: true,
      caution:
        "Blades: cut away from the body, keep knives sheathed, clean and disinfect between stocks as the product's label says. Strong alcohol burns and catches fire: no flame near it. Moving scion wood between farms may need a plant-health permit: ask first.",
    },
  ],
};
