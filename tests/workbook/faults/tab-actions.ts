import { SETTINGS } from "../nursery";
import { type Action, answered, bare, called } from "./fail-in-turn";

const OWN = [
  ...[SETTINGS, "Nursery timetable", "Due list", "Stages", "Ready by month", "Takes", "Checks"],
  ...["Takes compared", "Takes by month", "What takes go with", "Write log"],
  "Nursery overview",
];
// One method makes the same calls as all of them, in less time.
const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };

/** What the menu and the sidebar make tabs with: each action with a workbook in which it finds work. */
export const REFRESH: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => called(nursery, "refreshDueList"),
  tabs: ["Due list"],
};
export const SET_UP: Action = {
  prepare: bare,
  run: (nursery) => answered(nursery, "sidebarSetUp", ONCE),
  tabs: OWN,
  long: true,
};
export const SET_UP_AGAIN: Action = { ...SET_UP, prepare: () => bare().ready() };
export const MAKE_CREW: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => answered(nursery, "sidebarMakeCrew", null),
  tabs: ["Crew"],
};
export const MAKE_ORDERS: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => answered(nursery, "sidebarMakeOrders", null),
  tabs: ["Orders"],
};
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
export const MAKE_PLAN: Action = {
  prepare: () => {
    const nursery = bare().ready();
    answered(nursery, "sidebarOrderTab", PLAN);
    return nursery;
  },
  run: (nursery) => answered(nursery, "sidebarOrderTab", PLAN),
  tabs: ["Plan O-1"],
};
