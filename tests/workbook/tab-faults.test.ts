import { describe, expect, it } from "vitest";
import { type Action, answered, bare, called, failInTurn } from "./fail-in-turn";
import { SETTINGS } from "./nursery";

const OWN = [
  ...[SETTINGS, "Nursery timetable", "Due list", "Stages", "Ready by month", "Takes", "Checks"],
  ...["Takes compared", "Takes by month", "What takes go with", "Write log"],
];
// One method makes the same calls as all of them, in less time.
const ONCE = { tab: "Records", columns: [], methods: ["Cocoa cleft graft"] };

const REFRESH: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => called(nursery, "refreshDueList"),
  tabs: ["Due list"],
};
const SET_UP: Action = {
  prepare: bare,
  run: (nursery) => answered(nursery, "sidebarSetUp", ONCE),
  tabs: OWN,
  long: true,
};
const SET_UP_AGAIN: Action = { ...SET_UP, prepare: () => bare().ready() };
const MAKE_CREW: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => answered(nursery, "sidebarMakeCrew", null),
  tabs: ["Crew"],
};
const MAKE_ORDERS: Action = {
  prepare: () => bare().ready(),
  run: (nursery) => answered(nursery, "sidebarMakeOrders", null),
  tabs: ["Orders"],
};
const PLAN = {
  ...{ order: "O-1", variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};
const MAKE_PLAN: Action = {
  prepare: () => {
    const nursery = bare().ready();
    answered(nursery, "sidebarOrderTab", PLAN);
    return nursery;
  },
  run: (nursery) => answered(nursery, "sidebarOrderTab", PLAN),
  tabs: ["Plan O-1"],
};

describe.each([
  [
    "does nothing and throws",
    "failAt",
    { REFRESH, SET_UP, SET_UP_AGAIN, MAKE_CREW, MAKE_ORDERS, MAKE_PLAN },
  ],
  [
    "does its work and throws",
    "failAfter",
    { REFRESH, SET_UP_AGAIN, MAKE_CREW, MAKE_ORDERS, MAKE_PLAN },
  ],
  ["throws, and all that follow", "stopAt", { REFRESH, MAKE_CREW, MAKE_ORDERS, MAKE_PLAN }],
] as const)("a service call that %s", (_, kind, actions) => {
  it.each(Object.entries(actions))(
    "in %s leaves our tabs whole, the old ones or the new ones, and the lock free",
    (_name, action) => {
      expect(failInTurn(action, kind)).toEqual({});
    },
    300_000,
  );
});
