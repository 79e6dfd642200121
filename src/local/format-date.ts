import type { WallClock } from "./wall-clock";

/**
 * A moment as text, by a pattern of the letters y M d H m s S and quoted text.
 *
 * Only the letters that mean the same to everyone; another letter is refused, not guessed.
 * @throws Error when the pattern holds another letter
 */
export function formatDate(date: Date, clock: WallClock, pattern: string): string {
  const at = clock.fieldsOf(date.getTime());
  const digits = (value: number, width: number) => String(value).padStart(width, "0");
  return pattern.replace(/'([^']*)'|([A-Za-z])\2*/g, (run, literal: string | undefined) => {
    if (literal !== undefined) return literal === "" ? "'" : literal;
    switch (run[0]) {
      case "y":
        return run.length === 2 ? digits(at.year % 100, 2) : digits(at.year, run.length);
      case "M":
        if (run.length > 2) break;
        return digits(at.month, run.length);
      case "d":
        return digits(at.day, run.length);
      case "H":
        return digits(at.hour, run.length);
      case "m":
        return digits(at.minute, run.length);
      case "s":
        return digits(at.second, run.length);
      case "S":
        return digits(at.millisecond, run.length);
    }
    throw new Error(`This host does not format "${run}" in a date pattern.`);
  });
}
