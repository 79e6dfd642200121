import { type DueEntry, dueRow, setDue } from "../due-list";
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
/** What stands in the due list's row of "B1" is written; what was entered there before is written already. */
function writingTicks(...entered: readonly DueEntry[]): Action {
  return {
    prepare() {
      const nursery = bare().ready();
      const row = dueRow(nursery, "B1");
      entered.forEach((entry, at) => {
        if (at > 0) nursery.w.call("writeTicked");
        setDue(nursery, row, entry);
      });
      return nursery;
    },
    run: (nursery) => called(nursery, "writeTicked"),
    tabs: [],
  };
}

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
  "write ticked": writingTicks({ Done: true, Count: 60, Who: "Orrin", Note: "dry" }),
  "take back a cleared tick": writingTicks({ Done: true, Count: 60, Note: "dry" }, { Done: false }),
  "correct a count": writingTicks({ Done: true, Count: 6 }, { Count: 60 }),
};
