/* Longer than most: one job from beginning to end, whose steps go on from one another. */
import type { DueTask } from "../../wire/today";
import type { CellWritten } from "../../wire/writing";
import type { Emulated } from "./emulator";
import { ask, type HeadedRow, headedTab } from "./nursery-at-work";
import { found, type JobStep, must } from "./steps";

const RECORDS = "Records";
const DUE = "Due list";
const DUE_HEADERS = ["Done", "Count", "Written", "Task", "Batch"];
const BATCHES = 176;
/** What "Mark done" and a tick need of a task: a column for its day and one for its count. */
type Countable = DueTask & { readonly plants: number; countHeader: string; dayHeader: string };

/**
 * A nursery's first morning with the add-in, as a person does it.
 *
 * Longer than most: one job from its first step to its last, read as it is done.
 *
 * @param today ISO text of the day that the clock shows
 */
export function job(work: Emulated, today: string): JobStep[] {
  let made: readonly string[] = [];
  /** Tasks whose takes can be counted; the first is ticked, the second marked in the sidebar. */
  let countable: readonly Countable[] = [];
  let marked: { readonly logId: string; readonly written: readonly CellWritten[] } | null = null;

  const menuItem = (words: RegExp) =>
    found(
      work.desk.menus.flatMap(({ items }) => items).find(({ label }) => words.test(label)),
      `no menu item says ${words}`,
    );
  const due = () =>
    headedTab(work, DUE, DUE_HEADERS).rows.filter((row) => row.value("Task") !== "");
  const record = (batch: string) =>
    found(
      headedTab(work, RECORDS, ["Batch"]).rows.find((row) => row.value("Batch") === batch),
      `${batch} is not in ${RECORDS}`,
    );
  const dueToday = () => {
    const { setUp } = ask(work, "sidebarOpen", null);
    const { daysAhead } = found(setUp, "the workbook is not taken for one that is set up");
    return ask(work, "sidebarToday", { daysAhead });
  };
  const task = (at: number) => found(countable[at], `no task number ${at + 1} with a count`);

  return [
    {
      does: "open the workbook",
      see() {
        work.run("onOpen", {});
        const [menu, ...more] = work.desk.menus;
        const { name, items } = found(menu, "no menu was made");
        must(more.length === 0, "more than one menu was made");
        return `menu ${name} with ${items.map(({ label }) => label).join(", ")}`;
      },
    },
    {
      does: "open the sidebar from the menu",
      see() {
        work.run(menuItem(/sidebar/i).runs);
        const { title, characters } = found(work.desk.sidebars[0], "no sidebar was shown");
        return `page "${title}" of ${Math.round(characters / 1024)} KB`;
      },
    },
    {
      does: "the page asks what the workbook holds",
      see() {
        const { workbook, candidates, setUp, timetables } = ask(work, "sidebarOpen", null);
        const [first] = candidates;
        must(first?.tab === RECORDS, `the likeliest tab is ${first?.tab}, not ${RECORDS}`);
        must(first.rows === BATCHES, `${first.rows} rows of batches are seen, not ${BATCHES}`);
        must(setUp === null, "it takes the workbook for one that is set up");
        return `${workbook}: ${first.rows} rows in ${first.tab}, timetables ${timetables.map(({ tab }) => tab).join(", ") || "none"}`;
      },
    },
    {
      does: "Set up",
      see() {
        const before = new Set(work.person.tabs().map(({ name }) => name));
        const answer = ask(work, "sidebarSetUp", {
          tab: RECORDS,
          columns: [],
          methods: [],
          timetable: "Timetable",
        });
        made = answer.made;
        const now = work.person.tabs().map(({ name }) => name);
        const missing = made.filter((name) => !now.includes(name));
        must(made.length > 0 && missing.length === 0, `said to be made, but not there: ${missing}`);
        const unsaid = now.filter((name) => !before.has(name) && !made.includes(name));
        must(unsaid.length === 0, `there, but not said: ${unsaid}`);
        return `made ${made.join(", ")}`;
      },
    },
    {
      does: "the live tabs hold formulas",
      see() {
        const formulas = made.flatMap((tab) => work.person.formulas(tab).flat().filter(Boolean));
        must(formulas.length > 0, "not one formula was written");
        const asText = made.flatMap((tab) =>
          work.person
            .values(tab)
            .flat()
            .filter((value) => String(value).startsWith("=")),
        );
        must(asText.length === 0, `these stand as text: ${asText.join(" ")}`);
        return `${formulas.length}, such as ${formulas.find((one) => one.includes("BATCH_STAGES"))}`;
      },
    },
    {
      does: "the due list holds what the sidebar says is due",
      see() {
        const { tasks, asOf } = dueToday();
        must(asOf === today, `the sidebar looks from ${asOf}, not ${today}`);
        must(tasks.length > 0, "nothing is due");
        mustList(due(), tasks);
        const batches = new Set<string>();
        countable = tasks.filter((one): one is Countable => {
          const fits = one.countHeader !== null && one.dayHeader !== null && (one.plants ?? 0) > 0;
          // Two tasks of one batch would stand in one another's way.
          const isNew = fits && !batches.has(one.batch);
          if (isNew) batches.add(one.batch);
          return isNew;
        });
        must(countable.length >= 2, "fewer than two tasks have a column for their count");
        return `${tasks.length} tasks from ${asOf} on, all unticked`;
      },
    },
    {
      does: "refresh the due list from the menu",
      see() {
        work.run(menuItem(/refresh/i).runs);
        mustList(due(), dueToday().tasks);
        return `the same tasks; said: ${work.desk.toasts.at(-1)}`;
      },
    },
    {
      does: "fill the count of a task and tick it",
      see() {
        const { batch, task: step, plants, countHeader, dayHeader } = task(0);
        const row = () => found(rowOf(due(), step, batch), `${step} of ${batch} is not listed`);
        const { row: at, column } = row();
        work.person.type(DUE, { row: at, column: column("Count") }, plants - 1);
        work.person.type(DUE, { row: at, column: column("Done") }, true);
        const said = String(row().value("Written"));
        must(said.startsWith("✓ written"), `its row says: ${said || "nothing"}`);
        const cells = record(batch);
        mustHold(cells, dayHeader, `day ${today}`);
        mustHold(cells, countHeader, plants - 1);
        return `${step} of ${batch}: ${said}; ${dayHeader} and ${countHeader} hold it`;
      },
    },
    {
      does: "the ticked task leaves the list at the next refresh",
      see() {
        const { batch, task: step } = task(0);
        work.run(menuItem(/refresh/i).runs);
        const still = rowOf(due(), step, batch);
        must(
          !still,
          `${step} of ${batch} is still listed, and its row says: ${still?.value("Written")}`,
        );
        return `${due().length} tasks are left`;
      },
    },
    {
      does: "mark another task done in the sidebar",
      see() {
        const { batch, task: step, plants, countHeader, dayHeader } = task(1);
        const { written, asked, logId } = ask(work, "sidebarRecord", {
          batch,
          task: step,
          day: today,
          count: plants,
          who: "",
          note: "=1+1",
          sure: [],
        });
        must(asked.length === 0, `it asks: ${asked.map(({ id }) => id).join(" ")}`);
        marked = { written, logId: found(logId, "it gave nothing to take it back by") };
        mustHold(record(batch), dayHeader, `day ${today}`);
        mustHold(record(batch), countHeader, plants);
        return `${step} of ${batch}: ${written.map(({ where }) => where).join(", ")}`;
      },
    },
    {
      does: "a note that begins with = stands as text",
      see() {
        const notes = work.person.values(RECORDS).flat().map(String);
        must(
          notes.some((one) => one.includes("=1+1")),
          "the note is nowhere in the records",
        );
        const formulas = work.person.formulas(RECORDS).flat().filter(Boolean);
        must(formulas.length === 0, `it became a formula: ${formulas.join(" ")}`);
        return "it does";
      },
    },
    {
      does: "take it back",
      see() {
        const { batch, countHeader, dayHeader } = task(1);
        const { logId, written } = found(marked, "nothing was marked");
        const { restored, asked } = ask(work, "sidebarTakeBack", { logId });
        must(asked.length === 0, `it asks: ${asked.map(({ id }) => id).join(" ")}`);
        must(restored.length === written.length, `only ${restored.length} cells came back`);
        mustHold(record(batch), dayHeader, "");
        mustHold(record(batch), countHeader, "");
        return `${restored.map(({ where }) => where).join(", ")} as before`;
      },
    },
    {
      does: "make a tab with the plan of an order",
      see() {
        const { orders, assurance, methods } = ask(work, "sidebarOrders", null);
        const order = found(orders.at(-1), "no order is open");
        const { tab } = ask(work, "sidebarOrderTab", {
          order: order.order,
          variety: order.variety,
          wanted: order.wanted,
          by: order.by,
          assurance,
          method: methods[0] ?? "",
          harvest: "",
        });
        const plans = work.person.formulas(tab).flat().filter(Boolean);
        must(plans.length === 1, `${plans.length} formulas stand in ${tab}`);
        return `${orders.length} orders are open; ${tab} holds ${plans[0]}`;
      },
    },
  ];
}

function rowOf(rows: readonly HeadedRow[], task: string, batch: string): HeadedRow | undefined {
  return rows.find((row) => row.value("Task") === task && row.value("Batch") === batch);
}

function mustHold(row: HeadedRow, header: string, value: string | number): void {
  const holds = row.value(header);
  must(
    holds === value,
    `row ${row.row} holds ${JSON.stringify(holds)} under ${header}, not ${value}`,
  );
}

/** The due list must hold these tasks and no others, each with a box that is not ticked. */
function mustList(rows: readonly HeadedRow[], tasks: readonly DueTask[]): void {
  const named = (task: unknown, batch: unknown) => `${task} of ${batch}`;
  const listed = rows.map((row) => named(row.value("Task"), row.value("Batch"))).sort();
  const wanted = tasks.map(({ task, batch }) => named(task, batch)).sort();
  const missing = wanted.filter((one) => !listed.includes(one));
  const more = listed.filter((one) => !wanted.includes(one));
  must(missing.length === 0, `not in the due list: ${missing.join("; ")}`);
  must(more.length === 0, `in the due list alone: ${more.join("; ")}`);
  const ticked = rows.filter((row) => row.value("Done") !== false);
  must(ticked.length === 0, `row ${ticked[0]?.row} has no empty box`);
}
