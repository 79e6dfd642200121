import { openNursery, smallRecords, tab, takesOf } from "../nursery";
import { type Action, answered, bare, called } from "./fail-in-turn";

const REQUEST = takesOf("B1", { note: "dry", who: "Orrin" });

const ORDER = {
  ...{ order: "N-1", customer: "Ana", variety: "Amberlow", wanted: 40, by: "2027-10-01" },
  sure: [],
};
const withOrders = () =>
  openNursery([
    smallRecords(),
    tab("Orders", [
      ["Order", "Customer", "Variety", "Wanted", "By", "Delivered"],
      ["O-1", "Bo", "", 10, "2027-09-01"],
    ]),
  ]).ready();
const ORDERS = { tab: "Orders", cell: "A3" };

/** What writes into the records and the orders: each action with a workbook in which it finds work. */
export const WRITING_ACTIONS: Record<string, Action> = {
  record: {
    prepare: () => bare().ready(),
    run: (nursery) => answered(nursery, "sidebarRecord", REQUEST),
    tabs: [],
  },
  "take back": {
    prepare() {
      const nursery = bare().ready();
      nursery.ask("sidebarRecord", REQUEST);
      return nursery;
    },
    run: (nursery) =>
      answered(nursery, "sidebarTakeBack", { logId: nursery.value("Write log", "A3") }),
    tabs: [],
  },
  "add order": {
    prepare: withOrders,
    run: (nursery) => answered(nursery, "sidebarAddOrder", ORDER),
    tabs: [],
    table: ORDERS,
  },
  "take order back": {
    prepare() {
      const nursery = withOrders();
      nursery.ask("sidebarAddOrder", ORDER);
      return nursery;
    },
    run: (nursery) =>
      answered(nursery, "sidebarTakeBack", { logId: nursery.value("Write log", "A3") }),
    tabs: [],
    table: ORDERS,
  },
  "write ticked": {
    prepare() {
      const nursery = bare().ready();
      const due = nursery.sheet("Due list");
      const row = nursery.values("Due list").findIndex((one) => one[5] === "Take count") + 1;
      due.getRange(row, 1, 1, 4).setValues([[true, 60, "Orrin", "dry"]]);
      return nursery;
    },
    run: (nursery) => called(nursery, "writeTicked"),
    tabs: [],
  },
};
