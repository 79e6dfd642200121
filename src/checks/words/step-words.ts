import { gridOf } from "../../core";
import { recordsIn } from "./columns-read";
import type { ValueLine } from "./corpus";
import { alsoRight, stepKeys } from "./meanings";
import { localeOf } from "./office-table";
import { type WordRead, wordOutcome } from "./word-outcome";

/** What the corpus calls by other words than the reader of logs. */
const KINDS: Readonly<Record<string, string>> = { culling: "culled", dispatch: "dispatched" };
/** No step: naming the line as one that says none is right. */
const NO_STEP = "other work (no step)";

/** A step or what else was done, as a log names it in a line of its own. */
export function readStep({ spelling, language, is, must }: ValueLine): WordRead {
  const header = ["Date", "Batch", "Step", "Count"];
  const day = (at: number) => `2026-05-0${at}`;
  const grid = gridOf([
    header,
    [day(4), "C26-01", "Grafting", 120],
    [day(5), "C26-02", spelling, 100],
    [day(6), "C26-03", "Grafting", 90],
  ]);
  const records = recordsIn(grid, localeOf(language));
  if (records === null || records.tables[0]?.kind !== "log") throw new Error("no log was read");
  const line = records.lines.find(({ row }) => row === 3);
  const named = records.troubles.some(({ row }) => row === 3);
  const read =
    line === undefined ? null : line.what.kind === "step" ? line.what.key : line.what.kind;
  if (read === null && !named) return { as: "", outcome: "silent" };
  return { as: read ?? "", outcome: outcomeOf(read, { must, is }) };
}

function outcomeOf(read: string | null, { must, is }: Pick<ValueLine, "must" | "is">) {
  if (read !== null && must !== "ask" && alsoRight(is).includes(read)) return "right";
  return wordOutcome(read, { must, wanted: wantedFor(is) });
}

function wantedFor(is: string): readonly string[] {
  if (is === NO_STEP || is === "not plain") return [];
  return KINDS[is] === undefined ? stepKeys(is) : [KINDS[is]];
}
