import type { NurseryKind } from "./nursery-truth";
import { WHO, type Who } from "./ranges";
import { STAGES, type Stage } from "./records-on-day";
import { type NurseryScore, QUANTITIES, type Quantity } from "./score-nursery";
import { type CoverLine, coverLine } from "./tally";
import { type CoverVerdict, coverVerdict, limitsOf, widthVerdict } from "./verdict";

interface Block {
  readonly text: string;
  /** One line for each of our covers outside its goal. */
  readonly outsideGoal: readonly string[];
  readonly outsideHard: readonly string[];
  /** One line for each quantity in which a rival that covers as well is narrower. */
  readonly wider: readonly string[];
}

const NAME_WIDTH = 18;
const HEADS: Readonly<Record<Quantity, string>> = {
  days: "cover     ±    sooner later   days  score given   ours there",
  plants: "cover     ±    fewer  more   of100  score given   ours there",
};
const MARK: Readonly<Record<CoverVerdict, string>> = {
  "in goal": "  ",
  "outside goal": "! ",
  "outside hard limit": "!!",
};

/**
 * The table of one setting and level: ours by the stage of the batch, and the rivals.
 *
 * @param rivalStages whether the rivals are shown by stage too
 */
export function calibrationBlock(
  kind: NurseryKind,
  {
    level,
    scores,
    rivalStages,
  }: {
    readonly level: number;
    readonly scores: readonly NurseryScore[];
    readonly rivalStages: boolean;
  },
): Block {
  const title = `${kind.pastBatches} past batches, varieties ${kind.varieties}, level ${level}`;
  const { goal, hard } = limitsOf(level);
  const lineOf = (who: Who, quantity: Quantity, stage: Stage | "all") =>
    coverLine(scores, { level, who, quantity, stage });
  const rows = WHO.flatMap((who) => [
    [who, who, "all"] as const,
    ...STAGES.map((stage) => [`  ${stage}`, who, stage] as const),
  ]).filter(([, who, stage]) => who === "ours" || stage === "all" || rivalStages);
  const ranges = lineOf("ours", "days", "all")?.ranges ?? 0;
  const lines = [
    `${title} · goal ${goal.join(" to ")}, hard limit ${hard.join(" to ")} · ${scores.length} nurseries, ${ranges} ranges of days`,
    `${"".padEnd(NAME_WIDTH)}${QUANTITIES.map((quantity) => HEADS[quantity]).join(" | ")}`,
    ...rows.map(
      ([name, who, stage]) =>
        name.padEnd(NAME_WIDTH) +
        QUANTITIES.map((quantity) => {
          const line = lineOf(who, quantity, stage);
          return lineText(line, { level, who, stage }).padEnd(HEADS[quantity].length);
        }).join(" | "),
    ),
  ];
  const outsideGoal: string[] = [];
  const outsideHard: string[] = [];
  const wider: string[] = [];
  for (const quantity of QUANTITIES) {
    const cover = lineOf("ours", quantity, "all")?.cover ?? 0;
    const said = `${title}, ${quantity}: cover ${cover.toFixed(3)}`;
    const verdict = coverVerdict(cover, level);
    if (verdict === "outside hard limit") outsideHard.push(said);
    if (verdict === "outside goal") outsideGoal.push(said);
    const rivals = new Map(WHO.slice(1).map((who) => [who, lineOf(who, quantity, "all")]));
    const { asGood, beatenBy } = widthVerdict(quantity, level, rivals);
    lines.push(
      `  ${quantity}: ${
        asGood.length === 0
          ? "no rival covers as well"
          : beatenBy.length === 0
            ? `narrower than each rival that covers as well (${asGood.join(", ")})`
            : `NOT narrower than ${beatenBy.join(", ")}`
      }`,
    );
    if (beatenBy.length > 0) wider.push(`${title}, ${quantity}: ${beatenBy.join(", ")}`);
  }
  lines.push(forgottenText(scores), "");
  return { text: lines.join("\n"), outsideGoal, outsideHard, wider };
}

function lineText(
  line: CoverLine | null,
  {
    level,
    who,
    stage,
  }: { readonly level: number; readonly who: Who; readonly stage: Stage | "all" },
): string {
  if (line === null) return "none given";
  const marked = who === "ours" && stage === "all";
  return [
    line.cover.toFixed(3),
    marked ? MARK[coverVerdict(line.cover, level)] : "  ",
    line.error.toFixed(3),
    line.below.toFixed(3).padStart(7),
    line.above.toFixed(3).padStart(6),
    line.width.toFixed(1).padStart(6),
    line.score.toFixed(1).padStart(6),
    line.given.toFixed(2).padStart(5),
    who === "ours" ? "" : `${line.oursCover.toFixed(3)} ${line.oursWidth.toFixed(1).padStart(5)}`,
  ].join(" ");
}

/** Rows that ended without a word: not scored, but a range for them is a range too many. */
function forgottenText(scores: readonly NurseryScore[]): string {
  const rows = scores.reduce((sum, { forgotten }) => sum + forgotten, 0);
  const given = scores.reduce((sum, { forgottenGiven }) => sum + forgottenGiven, 0);
  return `  forgotten rows, not scored: ${rows}, of which ours gives a ready day to ${given}`;
}
