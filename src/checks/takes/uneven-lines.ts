import { isTenth } from "../part-asked";
import { fallsSeen } from "./falls";
import { linksOf } from "./false-links";
import { comparedHeld, type HeldTally, summedHeld } from "./held-ranges";
import { eachSetting, GOALS, SETTINGS, type Seeds, slack } from "./settings";
import type { UnevenTakes } from "./uneven-takes";

/** Prints lines, and tells which of them miss their goal. */
export type UnevenLines = (seeds: Seeds, words: readonly string[]) => readonly string[];

const percent = (share: number) => `${(100 * share).toFixed(1)} %`.padStart(8);
const named = ({ sizes, correlation }: Pick<UnevenTakes, "sizes" | "correlation">) =>
  `${sizes[0]}-${sizes[1]}`.padEnd(9) + String(correlation).padEnd(5);

/** Ranges of TAKE_SUMMARY that hold. */
export const summedLines: UnevenLines = (seeds, words) => {
  console.log("\nTAKE_SUMMARY, groups differ: ranges of 95 that hold");
  return heldLines({
    seeds,
    words,
    groupings: SETTINGS.summed,
    called: "summed",
    heldOf: (kind) => summedHeld({ ...kind, varieties: 1, differ: SETTINGS.groupsDiffer }, seeds),
  });
};

/** Ranges of TAKE_COMPARED that hold, and whom it sets apart where nobody differs. */
export const comparedLines: UnevenLines = (seeds, words) =>
  [0, SETTINGS.groupsDiffer].flatMap((differ) => {
    const who = differ === 0 ? "nobody differs" : "groups differ";
    console.log(`\nTAKE_COMPARED evened for Variety, ${who}: ranges of 95 that hold`);
    return heldLines({
      seeds,
      words,
      groupings: SETTINGS.compared,
      called: `compared, ${who}`,
      heldOf: (kind) => comparedHeld({ ...kind, varieties: SETTINGS.varieties, differ }, seeds),
    });
  });

type Kind = Pick<UnevenTakes, "sizes" | "correlation" | "groups" | "tapeTells">;

function heldLines({
  seeds,
  words,
  groupings,
  called,
  heldOf,
}: {
  readonly seeds: Seeds;
  readonly words: readonly string[];
  readonly groupings: readonly (readonly number[])[];
  readonly called: string;
  readonly heldOf: (kind: Kind) => HeldTally;
}): readonly string[] {
  console.log(
    "  grafts   rho  batches                 held  smallest  largest    width   set apart",
  );
  return eachSetting().flatMap((setting) =>
    groupings.flatMap((groups) => {
      const tally = heldOf({ ...setting, groups, tapeTells: false });
      const line = `${named(setting)}${groups.join(",").padEnd(20)}`;
      const { held, smallest, largest, width, anyone } = tally;
      console.log(`  ${line}${[held, smallest, largest, width, anyone].map(percent).join("  ")}`);
      const ranges = seeds.count * groups.length;
      const least = GOALS.leastHeld - slack(words, GOALS.leastHeld, ranges);
      const most = GOALS.mostHeld + slack(words, GOALS.mostHeld, ranges);
      const batches = groups.reduce((sum, one) => sum + one, 0);
      const missed = held < least || (batches >= GOALS.mostHeldFrom && held > most);
      return missed ? [`${called} ${line.trim()}:${percent(held)}`] : [];
    }),
  );
}

/** Links of TAKE_REASONS that are not there, and the one that is. */
export const linkLines: UnevenLines = (seeds, words) => {
  console.log(
    "\nTAKE_REASONS: nurseries with a link that is not there, and with the one to the tape",
  );
  console.log("  grafts   rho  batches             grafter   any false   beside tape   tape found");
  return eachSetting().flatMap((setting) =>
    SETTINGS.compared.flatMap((groups) => {
      const kind = { ...setting, groups, varieties: SETTINGS.varieties, differ: 0 };
      const nothing = linksOf({ ...kind, tapeTells: false }, seeds);
      const tape = linksOf({ ...kind, tapeTells: true }, seeds);
      const line = `${named(setting)}${groups.join(",").padEnd(18)}`;
      console.log(
        `  ${line}${percent(nothing.grafter)}    ${percent(nothing.anyFalse)}      ${percent(tape.anyFalse)}     ${percent(tape.tape)}`,
      );
      const most = GOALS.mostFalseLinks + slack(words, GOALS.mostFalseLinks, seeds.count);
      const least = GOALS.leastTapeFound - slack(words, GOALS.leastTapeFound, seeds.count);
      return [
        nothing.anyFalse > most ? [`false links ${line.trim()}:${percent(nothing.anyFalse)}`] : [],
        tape.tape < least ? [`tape ${line.trim()}:${percent(tape.tape)}`] : [],
      ].flat();
    }),
  );
};

/** Falls that TAKE_TREND sees, and those that are none. */
export const fallLines: UnevenLines = (seeds, words) => {
  const { fall, before, batchesAMonth, correlations } = SETTINGS.trend;
  console.log(
    `\nTAKE_TREND by month: a fall of ${100 * fall} points from ${100 * before} % after two quiet years, no season`,
  );
  console.log(
    "  grafts   rho  batches a month  in three months   in a year   false signals a year",
  );
  return SETTINGS.sizes.flatMap((sizes) =>
    correlations.flatMap((correlation) =>
      batchesAMonth.flatMap((batches) => {
        const tally = fallsSeen({ sizes, correlation, batchesAMonth: batches }, seeds);
        const line = `${named({ sizes, correlation })}${String(batches).padStart(15)}`;
        console.log(
          `  ${line}         ${percent(tally.seen)}    ${percent(tally.seenInAYear)}${tally.falseSignals.toFixed(2).padStart(18)}`,
        );
        const least = GOALS.leastFallsSeen - slack(words, GOALS.leastFallsSeen, seeds.count);
        // Signals come one by one: their number varies as its own root.
        const most =
          GOALS.mostFalseSignals +
          (isTenth(words) ? 2 * Math.sqrt(GOALS.mostFalseSignals / seeds.count) : 0);
        return [
          tally.seen < least ? [`falls seen ${line.trim()}:${percent(tally.seen)}`] : [],
          tally.falseSignals > most
            ? [`false signals ${line.trim()}: ${tally.falseSignals.toFixed(2)}`]
            : [],
        ].flat();
      }),
    ),
  );
};
