import * as text from "../../sentences/made/controls";

/** A whole number with its thousands apart. @example countText(50000) // "50,000" */
export const countText = (number: number): string => text.number({ number });

/** @example counted(1, "batch", "batches") // "1 batch" */
export function counted(count: number, one: string, many: string): string {
  return `${countText(count)} ${count === 1 ? one : many}`;
}

/** A share as a percentage without decimals. @param part 0 to 1 */
export const percentText = (part: number): string => text.percent({ part });

/** Names one after another. @example listed(["a", "b", "c"]) // "a, b and c" */
export const listed = (names: readonly string[]): string => text.names({ names });
