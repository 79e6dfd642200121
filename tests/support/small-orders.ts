import { generalShare, generalShares } from "../../src/sentences/made/records";
import { askTable } from "./ask";

/** A small invented nursery that orders are asked of, and how: cocoa in stock, and more that comes. */
export const AS_OF = "2026-11-25";
export const RECORDS = [
  ...[["Batch", "Variety", "Sown", "Seeds sown", "Grafted on", "Grafts made", "Takes", "Ready on"]],
  ["A-1", "Amberlow", "2026-03-01", 200, "2026-06-01", 150, 120, "2026-10-01"],
  ["A-2", "Amberlow", "2026-07-01", 200, "2026-10-01", 150, "", ""],
  ["C-1", "Corvane", "2026-03-01", 200, "2026-06-01", 150, 60, "2026-10-01"],
];
export const HEADER = ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"];
/** The closing words: its cocoa counts on a share of nurseries in general. */
export const COUNTS_ON = generalShares({
  shares: [
    generalShare({
      ...{ step: "Ready", kept: 0.9, mean: 0.9, own: "no", methods: ["Cocoa cleft graft"] },
    }),
  ],
});
export const outlook = (orders: unknown[][], ...more: unknown[]) =>
  askTable("ORDER_OUTLOOK", [orders, RECORDS, "", AS_OF, ...more]);
export const one = (...order: unknown[]) => outlook([HEADER, order])[0] as Record<string, unknown>;
