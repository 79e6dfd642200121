import { expect, it } from "vitest";
import type { RequestOf } from "../../../src/wire/calls";
import { type Nursery, openNursery, tab } from "../nursery";
import { answered, callsToFail, type Kind, wrongsAfter } from "./fail-in-turn";

const RELEASE = "First release";
const RECORDS = [
  ["Batch", "Grafted on", "Grafts made"],
  ["B1", "2026-11-11", 50],
  ["B2", "2026-11-12", 60],
];
const wish: RequestOf<"sidebarRecord"> = {
  ...{ batch: "B1", task: RELEASE, day: "2026-11-25", count: null, who: "Tavi", note: "" },
  sure: [],
};

const ours = (nursery: Nursery) => nursery.values("Records").map((row) => row.slice(0, 3));
const added = (nursery: Nursery) => nursery.values("Records").map((row) => row.slice(3));

/** What the log says of the header and of the day. */
function saysWritten(nursery: Nursery): readonly boolean[] {
  const lines = nursery.values("Write log").slice(2);
  return ["D1", "D2"].map((cell) =>
    lines.some(
      (line) => line.some((one) => String(one).endsWith(cell)) && line.at(-1) === "written",
    ),
  );
}

// A column and the day in it are two writes: between them a column without a day may stand, and the log says so.
it.each<[string, Kind]>([
  ["does nothing and throws", "failAt"],
  ["does its work and throws", "failAfter"],
  ["throws, and all that follow", "stopAt"],
])("a service call that %s leaves a column once or not at all, and the log true", (_, kind) => {
  const model = openNursery([tab("Records", RECORDS)], { newRows: 60 }).ready();
  const sure = model.ask("sidebarRecord", wish).asked.map(({ id }) => id);
  const run = (nursery: Nursery) => answered(nursery, "sidebarRecord", { ...wish, sure });
  const start = model.saved();
  const before = ours(model);
  const calls = callsToFail(model, { run }, kind);
  expect(ours(model)).toEqual(before);
  expect(added(model)).toEqual([[RELEASE], ["2026-11-25"], [""]]);
  const judge = (nursery: Nursery) => {
    const wrong: string[] = [];
    const stand = () => [RELEASE, "2026-11-25"].map((one) => added(nursery).flat().includes(one));
    // A script that is cut off can undo nothing: the next one does, and the log says so till then.
    if (kind !== "stopAt" && `${stand()}` !== `${saysWritten(nursery)}`)
      wrong.push(`stands ${stand()}, the log says ${saysWritten(nursery)}`);
    if (`${ours(nursery)}` !== `${before}`) wrong.push("the rest of the table is not what it was");
    run(nursery);
    const filled = added(nursery);
    if (`${filled}` !== `${[[RELEASE], ["2026-11-25"], [""]]}`) wrong.push(`then ${filled}`);
    if (`${stand()}` !== `${saysWritten(nursery)}`) wrong.push("then the log is not true");
    return wrong;
  };
  expect(calls.length).toBeGreaterThan(10);
  expect(wrongsAfter({ start, run, calls, kind, judge })).toEqual({});
});
