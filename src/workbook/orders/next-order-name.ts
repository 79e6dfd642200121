/**
 * A name for a new order: the next number in the style of the others where at least half of them
 * have one style, else "Order 4".
 *
 * @param names what stands in the column; none of them is given again, whatever its letters' size
 * @returns a number where the others are numbers
 * @example nextOrderName(["O-08", "O-09", "for the fair"]) // "O-10"
 */
export function nextOrderName(names: readonly unknown[]): string | number {
  const taken = new Set(names.map((name) => String(name).trim().toLowerCase()));
  taken.delete("");
  const styles = new Map<string, { count: number; last: number; width: number; text: boolean }>();
  for (const name of names) {
    if (typeof name !== "string" && typeof name !== "number") continue;
    const [, before, digits] = /^(.*?)(\d{1,9})$/s.exec(String(name).trim()) ?? [];
    if (before === undefined || digits === undefined) continue;
    const style = styles.get(before) ?? { count: 0, last: 0, width: 0, text: false };
    styles.set(before, {
      count: style.count + 1,
      last: Math.max(style.last, Number(digits)),
      width: Number(digits) >= style.last ? digits.length : style.width,
      text: style.text || typeof name === "string",
    });
  }
  const [usual] = [...styles].sort(([, a], [, b]) => b.count - a.count);
  const [before, style] =
    usual !== undefined && 2 * usual[1].count >= taken.size
      ? usual
      : ["Order ", { last: taken.size, width: 1, text: true }];
  for (let number = style.last + 1; ; number += 1) {
    const name = `${before}${String(number).padStart(style.width, "0")}`;
    if (!taken.has(name.toLowerCase())) return before === "" && !style.text ? number : name;
  }
}
