/** A whole number with its thousands apart. @example countText(50000) // "50,000" */
export function countText(count: number): string {
  const digits = String(Math.abs(Math.round(count)));
  return (count < 0 ? "−" : "") + digits.replace(/\B(?=(\d{3})+$)/g, ",");
}

/** @example counted(1, "batch", "batches") // "1 batch" */
export function counted(count: number, one: string, many: string): string {
  return `${countText(count)} ${count === 1 ? one : many}`;
}

/** A share as a percentage without decimals. @param share 0 to 1 */
export function percentText(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/** Words one after another. @example listed(["a", "b", "c"]) // "a, b and c" */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join("");
  return `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}
