import { expect, it } from "vitest";
import { doneAnyway } from "../../src/sentences/made/writing-faults";
import type { CallResult } from "../../src/wire/calls";
import { dueRow, setDue } from "./due-list";
import { type Nursery, openNursery, smallRecords, takesOf } from "./nursery";

/** The numbers of a run's last calls: from where all is written on. */
function lastCalls(run: (nursery: Nursery) => void, prepare: () => Nursery): number[] {
  const model = prepare();
  model.w.meter.reset();
  run(model);
  const { total } = model.w.meter;
  return [total - 2, total - 1, total].filter((n) => n > 0);
}

const small = () => openNursery([smallRecords()], { newRows: 60 }).ready();

// People saw "Service Spreadsheets failed", tried again, and were told that it is there already.
it("says that a task is written when only the end of the run failed", () => {
  const run = (nursery: Nursery) => void nursery.w.run("sidebarRecord", takesOf("B1"));
  const said = lastCalls(run, small).flatMap((n) => {
    const nursery = small();
    nursery.w.meter.failAt(n);
    const answer = nursery.w.run("sidebarRecord", takesOf("B1")) as CallResult<unknown>;
    const isWritten = nursery.value("Records", "M2") === 60;
    return isWritten && !answer.ok ? ["fault" in answer ? answer.fault.code : answer.error] : [];
  });
  expect(said.length).toBeGreaterThan(0);
  expect(new Set(said)).toEqual(new Set(["doneAnyway"]));
});

it("says so of ticks too, when what became of them could not be said in their rows", () => {
  const prepare = () => {
    const nursery = small();
    setDue(nursery, dueRow(nursery, "B1"), { Done: true, Count: 60 });
    nursery.w.meter.reset();
    return nursery;
  };
  const model = prepare();
  model.w.call("writeTicked");
  const said: string[] = [];
  for (let n = model.w.meter.total - 6; n <= model.w.meter.total; n += 1) {
    const nursery = prepare();
    nursery.w.meter.stopAt(n);
    try {
      nursery.w.call("writeTicked");
    } catch (error) {
      if (nursery.value("Records", "M2") === 60) said.push(String((error as Error).message));
    }
  }
  expect(said.length).toBeGreaterThan(2);
  const [begin = "", end = ""] = doneAnyway({ because: "|" }).split("|");
  const isTold = (sentence: string) => sentence.startsWith(begin) && sentence.endsWith(end);
  // Cut off before the log says "written" nobody can know yet.
  expect(said.filter(isTold).length).toBeGreaterThan(2);
});
