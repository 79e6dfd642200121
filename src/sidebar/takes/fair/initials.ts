/**
 * Names as initials, each still told from the others: a second "K." is "K. 2".
 *
 * @returns for each name its initials; what stands in brackets, such as "(blank)", stays
 * @example initialsOf(["Kesto", "Ana Paula", "Kay"]).get("Kay") // "K. 2"
 */
export function initialsOf(names: readonly string[]): ReadonlyMap<string, string> {
  const used = new Map<string, number>();
  return new Map(
    [...new Set(names)].map((name) => {
      if (name.startsWith("(")) return [name, name];
      const first = name
        .split(/[\s.-]+/)
        .filter((word) => word !== "")
        .map((word) => `${[...word][0]?.toUpperCase()}.`)
        .join(" ");
      const times = (used.get(first) ?? 0) + 1;
      used.set(first, times);
      return [name, times === 1 ? first : `${first} ${times}`];
    }),
  );
}
