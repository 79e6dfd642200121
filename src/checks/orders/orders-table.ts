import { KINDS } from "../calibration/settings";
import type { StatedChance } from "./outlook-chances";
import type { PlannedTally } from "./planned-orders";

/** How one nursery's orders fared. */
export interface OrdersScore {
  /** Its kind's place in KINDS. */
  readonly kind: number;
  readonly planned: PlannedTally;
  readonly chances: readonly StatedChance[];
}

/** Between which shares of planned orders must be met. */
export const MET_LIMITS = { from: 0.77, to: 0.83 } as const;
/** So far may the share filled lie from the chance stated. */
export const CHANCE_LIMIT = 0.05;
/** A tenth with fewer orders tells too little to be judged: its own chance is more than the limit. */
export const LEAST_JUDGED = 300;

export interface MetShare {
  readonly orders: number;
  readonly met: number;
  readonly enough: number;
  readonly inTime: number;
  readonly lost: number;
  /** Standard error of met, from how nurseries differ. */
  readonly error: number;
}

/** Shares of all planned orders, 0 to 1. */
export function metShare(scores: readonly OrdersScore[]): MetShare {
  const sum = (part: keyof PlannedTally) =>
    scores.reduce((total, { planned }) => total + planned[part], 0);
  const orders = sum("orders");
  const met = sum("met") / orders;
  const squares = scores.reduce(
    (total, { planned }) => total + (planned.met / planned.orders - met) ** 2,
    0,
  );
  return {
    orders,
    met,
    enough: sum("enough") / orders,
    inTime: sum("inTime") / orders,
    lost: sum("lost") / orders,
    error: Math.sqrt(squares) / scores.length,
  };
}

export interface Tenth {
  /** From a tenth to the next, such as 3 for 0.3 to 0.4. */
  readonly tenth: number;
  readonly orders: number;
  /** Mean of the chances stated, and share of the orders filled. */
  readonly stated: number;
  readonly filled: number;
}

/** The orders by the tenth of the chance that was stated for them. */
export function tenths(chances: readonly StatedChance[]): readonly Tenth[] {
  return Array.from({ length: 10 }, (_, tenth) => {
    const own = chances.filter(({ stated }) => Math.min(9, Math.floor(stated * 10)) === tenth);
    const mean = (of: (one: StatedChance) => number) =>
      own.reduce((total, one) => total + of(one), 0) / Math.max(1, own.length);
    return {
      tenth,
      orders: own.length,
      stated: mean(({ stated }) => stated),
      filled: mean(({ filled }) => (filled ? 1 : 0)),
    };
  });
}

/**
 * The whole table, and what lies outside its limit.
 *
 * @param errors by how many standard errors a limit may be passed: 0 for a whole check
 */
export function ordersTable(
  scores: readonly OrdersScore[],
  errors = 0,
): {
  readonly lines: readonly string[];
  readonly outside: readonly string[];
} {
  const lines: string[] = [
    "Orders planned at 0.8 (shares in 100; met = enough plants and in time)",
  ];
  const outside: string[] = [];
  const metLine = (name: string, own: readonly OrdersScore[]): MetShare => {
    const share = metShare(own);
    const of = (value: number) => (100 * value).toFixed(1).padStart(6);
    lines.push(
      `${name.padEnd(26)} orders ${String(share.orders).padStart(5)}  met ${of(share.met)} ± ${(100 * share.error).toFixed(1)}  enough ${of(share.enough)}  in time ${of(share.inTime)}  lost ${of(share.lost)}`,
    );
    return share;
  };
  KINDS.forEach(({ pastBatches, varieties }, kind) => {
    const own = scores.filter((score) => score.kind === kind);
    if (own.length > 0) metLine(`${pastBatches} past, ${varieties}`, own);
  });
  const { met, error } = metLine("all", scores);
  const allowed = errors * error;
  if (met < MET_LIMITS.from - allowed || met > MET_LIMITS.to + allowed) {
    outside.push(`orders planned at 0.8 are met in ${(100 * met).toFixed(1)} of 100`);
  }
  const chanceLines = (name: string, own: readonly OrdersScore[], judged: boolean) => {
    lines.push(`Chances stated by ORDER_OUTLOOK, ${name}`);
    for (const { tenth, orders, stated, filled } of tenths(own.flatMap(({ chances }) => chances))) {
      const off = filled - stated;
      const far = orders >= LEAST_JUDGED && Math.abs(off) > CHANCE_LIMIT;
      const line = `${tenth / 10} to ${(tenth + 1) / 10}: stated ${(100 * stated).toFixed(1)}, filled ${(100 * filled).toFixed(1)} of 100`;
      lines.push(`  ${line}  (${orders} orders${far ? ", more than 5 off" : ""})`);
      if (far && judged) outside.push(line);
    }
  };
  for (const past of [...new Set(KINDS.map(({ pastBatches }) => pastBatches))]) {
    const own = scores.filter(({ kind }) => KINDS[kind]?.pastBatches === past);
    if (own.length > 0) chanceLines(`${past} past batches`, own, false);
  }
  chanceLines("all", scores, true);
  return { lines, outside };
}
