import { expect, it } from "vitest";
import { SIDEBAR_CALLS } from "../../src/build/stubs";
import { openFile } from "../../src/local/open-file";
import { type SheetDraft, textCell } from "../../src/local/workbook-data";
import { HILLSIDE, type Nursery, openNursery } from "./nursery";

/** The sample's records, over and over with new names. */
function hillside(times: number): SheetDraft[] {
  return openFile(HILLSIDE, new Set()).map((draft) => {
    if (draft.name !== "Records") return draft;
    const [header = [], ...batches] = draft.rows.filter((row) => row.some(Boolean));
    const again = Array.from({ length: times }, (_, time) =>
      batches.map(([name, lot, ...rest]) => [
        textCell(`${String(name?.v)}${time === 0 ? "" : ` again ${time}`}`),
        lot,
        ...rest,
      ]),
    );
    return { ...draft, rows: [header, ...again.flat()] };
  });
}

const WEEK = { daysAhead: 7 };
const PLAN = {
  ...{ variety: "", wanted: 20, by: "2027-10-01", assurance: 0.8 },
  ...{ method: "", harvest: "" },
};

/**
 * The actions of the add-in that a person can start, in an order in which each finds work. A call of the
 * sidebar that is not among them is asked without a request, and needs a row where that is refused.
 */
function actions(nursery: Nursery): Record<string, () => unknown> {
  const task = nursery.ask("sidebarToday", WEEK).tasks.find((one) => one.dayHeader !== null);
  if (task === undefined) throw new Error("nothing is due");
  const { batch } = task;
  const request = { batch, task: task.task, day: "2026-11-25", count: null, who: "", note: "" };
  let logId = "";
  return {
    open: () => nursery.ask("sidebarOpen", null),
    today: () => nursery.ask("sidebarToday", WEEK),
    takes: () => nursery.ask("sidebarTakes", { by: "Variety" }),
    losses: () => nursery.ask("sidebarLosses", { by: "Variety" }),
    "compare takes": () =>
      nursery.ask("sidebarCompareTakes", { by: "Grafter", evenFor: "Variety", period: "" }),
    columns: () => nursery.ask("sidebarColumns", { tab: "Records" }),
    calendar: () => nursery.ask("sidebarCalendar", WEEK),
    work: () => nursery.ask("sidebarWork", { days: 14 }),
    "last writes": () => nursery.ask("sidebarLastWrites", null),
    "crew tab": () => nursery.ask("sidebarMakeCrew", null),
    select: () => nursery.ask("sidebarSelect", { row: 3, column: "Takes" }),
    record: () => {
      const { logId: id, asked } = nursery.ask("sidebarRecord", { ...request, sure: [] });
      if (id === null) throw new Error(JSON.stringify(asked));
      logId = id;
    },
    "take back": () => nursery.ask("sidebarTakeBack", { logId }),
    orders: () => nursery.ask("sidebarOrders", null),
    "plan order": () => nursery.ask("sidebarPlanOrder", PLAN),
    "order tab": () => nursery.ask("sidebarOrderTab", { ...PLAN, order: "N-1" }),
    "show orders": () => nursery.ask("sidebarMakeOrders", null),
    "add order": () => {
      const order = { order: "", customer: "Ana", variety: "", wanted: 20, by: "2027-10-01" };
      logId = nursery.ask("sidebarAddOrder", { ...order, sure: [] }).logId ?? "";
    },
    "take order back": () => nursery.ask("sidebarTakeBack", { logId }),
    refresh: () => nursery.w.call("refreshDueList"),
    "write ticked": () => {
      nursery.sheet("Due list").getRange("A3").setValue(true);
      nursery.w.call("writeTicked");
    },
    "set up": () => nursery.ask("sidebarSetUp", { tab: "Records", columns: [], methods: [] }),
  };
}

function counts(times: number): Record<string, number> {
  const nursery = openNursery(hillside(times)).ready();
  const found: Record<string, number> = {};
  const asked = new Set<string>();
  const heard: Nursery = {
    ...nursery,
    ask(name, request) {
      asked.add(name);
      return nursery.ask(name, request);
    },
  };
  const count = (name: string, run: () => unknown) => {
    nursery.w.meter.reset();
    run();
    found[name] = nursery.w.meter.total;
  };
  for (const [name, run] of Object.entries(actions(heard))) count(name, run);
  for (const name of SIDEBAR_CALLS.filter((one) => !asked.has(one))) {
    count(name, () => heard.ask(name, null as never));
  }
  expect([...asked].sort()).toEqual([...SIDEBAR_CALLS].sort());
  return found;
}

it("asks the spreadsheet no more often for 1,760 batches than for 176", () => {
  const few = counts(1);
  expect(Math.min(...Object.values(few))).toBeGreaterThan(0);
  // Each cell that is written is looked at once more, with the rows by which it is known.
  expect(few["add order"]).toBeLessThan(140);
  expect(few["take order back"]).toBeLessThan(140);
  expect(few.orders).toBeLessThan(60);
  expect(counts(10)).toEqual(few);
});
