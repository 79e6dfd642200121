/** A corner of a chart. */
export interface Corner {
  readonly end: "left" | "right";
  readonly side: "top" | "foot";
}

const CORNERS: readonly Corner[] = [
  { end: "right", side: "foot" },
  { end: "left", side: "foot" },
  { end: "right", side: "top" },
  { end: "left", side: "top" },
];
/** About as wide as a few words are in a page of 300 pixels, as a part of the chart's width. */
const WIDTH = 0.3;
/** From the foot or the top to the middle of the words, as a share of 1: half a letter's height. */
const AWAY = 0.04;
const LOOKS = 12;

/**
 * The corner where a course leaves words the most room.
 *
 * @param rates the course, in equal steps from left to right, each in the middle of its step; 0 to 1
 */
export function clearCorner(rates: readonly number[]): Corner {
  const room = ({ end, side }: Corner) => {
    const middle = side === "foot" ? AWAY : 1 - AWAY;
    return Math.min(
      ...Array.from({ length: LOOKS + 1 }, (_, look) => {
        const inside = (WIDTH * look) / LOOKS;
        const rate = courseAt(rates, end === "left" ? inside : 1 - inside);
        return rate === null ? 1 : Math.abs(rate - middle);
      }),
    );
  };
  return CORNERS.reduce((best, corner) => (room(corner) > room(best) ? corner : best));
}

/** Where the course stands at a part of the width; null before its first and after its last point. */
function courseAt(rates: readonly number[], at: number): number | null {
  const step = at * rates.length - 0.5;
  const before = rates[Math.floor(step)];
  const after = rates[Math.ceil(step)];
  if (before === undefined || after === undefined) return null;
  return before + (step - Math.floor(step)) * (after - before);
}
