import { builtInTimetable, cocoaCleftGraftMeasures, timetableRows } from "../core";
import { timetableTable } from "../wording/timetable";
import { methodPictures } from "./forecast-pictures";

/** The page about the built-in methods as Markdown: every number with its source. */
export function timetablePage(): string {
  const { columns, rows } = timetableTable(timetableRows(builtInTimetable(), null));
  const cell = (value: unknown) => String(value ?? "").replace(/\|/g, "\\|");
  return [
    "# Built-in timetables",
    "",
    "Made by `npm run docs` from the methods; do not edit by hand. These are defaults to start from and",
    "to replace by your own: copy what `=TIMETABLE()` shows into a tab and change it there.",
    "",
    "Days are counted from the step named under After: the earliest, the usual and the latest. Of 100",
    "batches 95 are taken to fall inside, 5 to be late. *Kept of 100* is how many plants of those counted",
    "before pass the step.",
    "",
    "Days below 0 are work ahead of the step: -10 / -9 / -8 after Grafting is nine days before it. *Every days*",
    "makes a step care that is repeated, from From day on until By day or the step under *Until*; it is listed by",
    "place, on its day, and never late.",
    "",
    `| ${columns.map(({ name }) => name).join(" | ")} |`,
    `|${columns.map(() => " --- |").join("")}`,
    ...rows.map((row) => `| ${row.map(cell).join(" | ")} |`),
    "",
    "## A batch by each method, from its start to ready",
    "",
    ...methodPictures().flatMap(([name]) => [
      `![Days of each step: ${name.replace(".svg", "").replace(/-/g, " ")}](pictures/${name})`,
      "",
    ]),
    "## How the cocoa cleft graft is measured out",
    "",
    "One inch is 2.54 cm exactly (international yard and pound agreement, 1959).",
    "",
    "| Step | Measure | From | To | Unit | Source |",
    "| --- | --- | --- | --- | --- | --- |",
    ...cocoaCleftGraftMeasures.map(
      ({ step, measure, from, to, unit, source }) =>
        `| ${step} | ${measure} | ${from} | ${to} | ${unit} | ${source} |`,
    ),
    "",
    "Blades, strong alcohol, flame and sprays hurt people, and plants that move may carry pests: the",
    "labels of what you use, the rules of your place and licensed practice come first.",
    "",
  ].join("\n");
}
