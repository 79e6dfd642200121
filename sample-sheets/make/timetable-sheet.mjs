/**
 * The built-in timetable "Cocoa cleft graft" as the rows of a Timetable sheet,
 * to be edited there. It is read from the add-in's own sources, so that a copy
 * that was handed out and the built-in one can't differ unnoticed.
 */
import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";

const descriptionFile = "../../src/core/timetable/methods/cocoa-cleft-graft.ts";

const timetableHeader = [
  "Method",
  "Step",
  "After",
  "From day",
  "Usual day",
  "By day",
  "Counted",
  "Kept of 100",
  "Per person-hour",
  "Needs",
  "Caution",
  "Source",
];
/** The last day of care that a step ends; see src/core/timetable/step-row.ts. */
const FOR_EVER = 3660;
/** What only the blank template has: the invented nursery writes down neither care nor work ahead. */
const templateHeader = [...timetableHeader, "Every days", "Until"];

/** @type {import("../../src/core/timetable/method-description").MethodDescription} */
const cocoaCleftGraft = (await bundled(descriptionFile)).cocoaCleftGraft;

/** Name of the method. */
export const method = cocoaCleftGraft.name;

/**
 * The rows of a Timetable sheet, header first.
 *
 * @param {object} [own] what the nursery counted for itself
 * @param {Readonly<Record<string, number>>} own.perPersonHour plants per person-hour, by step
 * @param {string} own.source what the Source column says instead of the built-in sources
 * @returns {(string | number | null)[][]}
 */
export function timetableRows(own) {
  const steps = own === undefined ? cocoaCleftGraft.steps : cocoaCleftGraft.steps.filter(isKept);
  return [
    own === undefined ? templateHeader : timetableHeader,
    ...steps.map((step) => [
      method,
      step.name,
      step.after,
      ...step.days.map((days) => (days === FOR_EVER ? null : days)),
      step.counted ? "yes" : "no",
      step.keptOf100 ?? null,
      own?.perPersonHour[step.name] ?? step.perPersonHour ?? null,
      step.needs ?? null,
      step.caution ?? null,
      own?.source ?? step.source,
      ...(own === undefined ? [step.every ?? null, step.until ?? null] : []),
    ]),
  ];
}

/** @param {import("../../src/core/timetable/method-description").StepDescription} step */
function isKept({ name, days: [from], every }) {
  return name !== "Second release" && every === undefined && from >= 0;
}

/** @param {string} file a TypeScript file, from this folder */
async function bundled(file) {
  const built = buildSync({
    entryPoints: [fileURLToPath(new URL(file, import.meta.url))],
    bundle: true,
    format: "esm",
    write: false,
  });
  const text = built.outputFiles[0]?.text ?? "";
  return import(`data:text/javascript,${encodeURIComponent(text)}`);
}
