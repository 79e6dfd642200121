/** Where words may stand along a level line: at which end of it, and on which side. */
export interface WordsPlace {
  readonly end: "left" | "right";
  readonly side: "above" | "below";
}

const PLACES: readonly WordsPlace[] = [
  { end: "right", side: "above" },
  { end: "right", side: "below" },
  { end: "left", side: "above" },
  { end: "left", side: "below" },
];
/** About as wide as the words are in a page of 300 pixels, as a part of the chart's width. */
const WIDTH = 0.25;
/** The middle of the words from their line, as a share of 1: a letter's height in a chart of 150 pixels. */
const AWAY = 0.065;
const LOOKS = 12;

/**
 * The place beside a level line where a course stays farthest from the words.
 *
 * @param rates the course, in equal steps from left to right, each in the middle of its step; 0 to 1
 * @param line where the level line stands, 0 to 1
 */
export function clearPlace(rates: readonly number[], line: number): WordsPlace {
  const room = ({ end, side }: WordsPlace) => {
    const middle = line + (side === "above" ? AWAY : -AWAY);
    return Math.min(
      ...Array.from({ length: LOOKS + 1 }, (_, look) => {
        const inside = (WIDTH * look) / LOOKS;
        const rate = courseAt(rates, end === "left" ? inside : 1 - inside);
        return rate === null ? 1 : Math.abs(rate - middle);
      }),
    );
  };
  return PLACES.reduce((best, place) => (room(place) > room(best) ? place : best));
}

/** Where the course stands at a part of the width; null before its first and after its last point. */
function courseAt(rates: readonly number[], at: number): number | null {
  const step = at * rates.length - 0.5;
  const before = rates[Math.floor(step)];
  const after = rates[Math.ceil(step)];
  if (before === undefined || after === undefined) return null;
  return before + (step - Math.floor(step)) * (after - before);
}
