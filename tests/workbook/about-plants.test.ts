import { expect, it } from "vitest";
import { headers } from "../../src/sentences/made/batch-columns";
import * as words from "../../src/sentences/made/batches";
import { plantsAbout } from "../../src/sentences/made/today-page";
import { askTable } from "../support/ask";
import { dueRow } from "./due-list";
import { AS_OF, openNursery, SMALL_HEADER, smallRow, tab } from "./nursery";

// Of 90 that came up some 72 are grafted, by the timetable's 80 of 100: nobody has counted them.
it("plants that nobody counted are about so many, on the due list, in its calendar and on the page", () => {
  const grown = {
    Sown: "2026-08-25",
    "Seeds sown": 100,
    "Germination day": "2026-09-09",
    Germinated: 90,
  };
  const grafted = { "Grafted on": "2026-10-24", "Grafts made": 80 };
  const rows = [
    { Batch: "B3", ...grown },
    { Batch: "B4", ...grafted },
  ].map(smallRow);
  const nursery = openNursery([tab("Records", [SMALL_HEADER, ...rows])]).ready();
  const { tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
  const found = (batch: string, task: string) =>
    tasks
      .filter((one) => one.batch === batch && one.task === task)
      .map(({ plants, isEstimate }) => [plants, isEstimate]);
  const [grafting] = found("B3", "Grafting");
  const about = Number(grafting?.[0]);
  expect(grafting?.[1]).toBe(true);
  expect([about > 65, about < 80]).toEqual([true, true]);
  expect(found("B4", "Take count")).toEqual([[80, false]]);
  const cell = (batch: string, task: string) =>
    nursery.sheet("Due list").getRange(`E${dueRow(nursery, batch, task)}`);
  expect(cell("B3", "Grafting").getValue()).toBe(about);
  const formats = [cell("B3", "Grafting"), cell("B4", "Take count")].map((one) =>
    one.getNumberFormat(),
  );
  expect(formats).toEqual(['"~"0', "0"]);
  const asked = askTable("BATCH_DUE", [nursery.values("Records"), "", AS_OF, 7]);
  const said = (batch: string, task: string) =>
    asked.find((row) => row.Batch === batch && row.Task === task)?.[headers().plantsAre];
  expect([said("B3", "Grafting"), said("B4", "Take count")]).toEqual([
    words.about(),
    words.counted(),
  ]);
  const { text } = nursery.ask("sidebarCalendar", { daysAhead: 7 });
  expect(text).toContain(plantsAbout({ plants: about }));
  expect(text).not.toContain(plantsAbout({ plants: 80 }));
});
