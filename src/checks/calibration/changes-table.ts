import { metShare, type OrdersScore } from "../orders/orders-table";
import { type NurseryScore, QUANTITIES, type Quantity } from "./score-nursery";
import { CHANGED_KINDS, type CheckedNursery, checkedNursery } from "./settings";
import { coverLine } from "./tally";

/** How one nursery that changes came out. */
export interface ChangeScore {
  /** Its place in CHANGED_KINDS. */
  readonly kind: number;
  readonly ranges: NurseryScore;
  readonly planned: OrdersScore["planned"];
}

/** Seeds of their own, so that none of these is a nursery of another check. */
const FIRST_SEED = 7_000_000;
const SEEDS_A_KIND = 100_000;

export function changedNursery(kind: number, number: number): CheckedNursery {
  const invented = CHANGED_KINDS[kind];
  if (invented === undefined) throw new Error(`no change has place ${kind}`);
  return checkedNursery(invented, FIRST_SEED + kind * SEEDS_A_KIND + number);
}

interface Goal {
  readonly from: number;
  readonly to: number;
}

/** Where a change goes on, no rule that looks back can hold as well. */
const HARD_TO_FOLLOW = ["takes fall", "steps grow slower", "typed 25 days late"];
const DRIFTS = HARD_TO_FOLLOW.slice(0, 2);

function coverGoal(name: string, level: number): Goal {
  if (level > 0.9) return { from: 0.93, to: 0.97 };
  return { from: HARD_TO_FOLLOW.includes(name) ? 0.74 : 0.77, to: 0.83 };
}

const metGoal = (name: string): Goal => ({ from: DRIFTS.includes(name) ? 0.72 : 0.77, to: 0.83 });

/** Our interval score may lie so much above the plain rule's. */
const WORST_SCORE = 1.03;

/**
 * A line for each change, and what lies outside the goals.
 *
 * @param errors by how many standard errors a goal may be passed: 0 for a whole check
 */
export function changesTable(
  scores: readonly ChangeScore[],
  errors: number,
): { readonly lines: readonly string[]; readonly outside: readonly string[] } {
  const lines: string[] = [
    "Of 100 ranges at 0.8 (± its error; truths before and after them; and of 100 at 0.95), how wide",
    "they are, and interval scores: ours, and that of quantiles of the nursery's own past batches.",
    "Plants by 100 that stand. Of 100 orders planned at 0.8 those met, and of these enough, in time.",
    "",
    `${"".padEnd(24)}${"days: held  ±  before after  95   wide   ours  rule".padEnd(54)}plants: held ±  fewer  more  95   wide   ours  rule    met  ±  enough in time`,
  ];
  const outside: string[] = [];
  CHANGED_KINDS.forEach(({ change }, kind) => {
    const own = scores.filter((score) => score.kind === kind);
    if (own.length === 0 || change === undefined) return;
    const { name } = change;
    const judge = (what: string, share: number, { from, to, error }: Goal & { error: number }) => {
      const allowed = errors * error;
      if (share < from - allowed || share > to + allowed) {
        outside.push(
          `${name}: ${what} ${(100 * share).toFixed(1)}, wanted ${100 * from} to ${100 * to}`,
        );
      }
    };
    const parts = QUANTITIES.map((quantity) => part(own, quantity));
    QUANTITIES.forEach((quantity, at) => {
      const { at80, at95, score, rule } = parts[at] as Part;
      judge(`${quantity} at 0.8`, at80.cover, { ...coverGoal(name, 0.8), error: at80.error });
      judge(`${quantity} at 0.95`, at95.cover, { ...coverGoal(name, 0.95), error: at95.error });
      if (errors === 0 && score > rule * WORST_SCORE) {
        outside.push(
          `${name}: ${quantity} score ${score.toFixed(1)}, plain rule ${rule.toFixed(1)}`,
        );
      }
    });
    const met = metShare(own.map(({ planned }) => ({ kind, planned, chances: [] })));
    judge("orders met", met.met, { ...metGoal(name), error: met.error });
    const texts = parts.map(({ text }) => text.padEnd(54)).join("");
    lines.push(
      `${name.padEnd(24)}${texts}${hundred(met.met)} ${hundred(met.error, 4)} ${hundred(met.enough)} ${hundred(met.inTime)}`,
    );
  });
  return { lines, outside };
}

interface Part {
  readonly text: string;
  readonly at80: { readonly cover: number; readonly error: number };
  readonly at95: { readonly cover: number; readonly error: number };
  readonly score: number;
  readonly rule: number;
}

function part(own: readonly ChangeScore[], quantity: Quantity): Part {
  const line = (level: number, who: "ours" | "quantiles") => {
    const found = coverLine(
      own.map(({ ranges }) => ranges),
      { level, who, quantity, stage: "all" },
    );
    if (found === null) throw new Error("a change without ranges");
    return found;
  };
  const [at80, at95, rule] = [line(0.8, "ours"), line(0.95, "ours"), line(0.8, "quantiles")];
  const text = [
    hundred(at80.cover, 10),
    hundred(at80.error, 4),
    hundred(at80.below),
    hundred(at80.above),
    hundred(at95.cover),
    at80.width.toFixed(1).padStart(6),
    at80.score.toFixed(1).padStart(6),
    rule.score.toFixed(1).padStart(6),
  ].join(" ");
  return { text, at80, at95, score: at80.score, rule: rule.score };
}

function hundred(share: number, width = 5): string {
  return (100 * share).toFixed(1).padStart(width);
}
