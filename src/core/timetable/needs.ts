import type { Amount } from "../amounts";

/** What one plant needs of an item at a step. */
export type Need = Amount;

/**
 * Reads a list of needs per plant.
 *
 * @returns null when some part of the list is not "item amount unit"
 *
 * @example readNeeds("wrap strip 38.1 cm") // [{ item: "wrap strip", amount: 38.1, unit: "cm" }]
 */
export function readNeeds(text: string): readonly Need[] | null {
  const needs: Need[] = [];
  for (const part of text.split(/[;\n]/)) {
    if (part.trim() === "") continue;
    const match = /^\s*(.*\D)\s+(\d+(?:[.,]\d+)?)\s*(\p{L}*)\s*$/u.exec(part);
    if (!match) return null;
    needs.push({
      item: (match[1] as string).trim(),
      amount: Number((match[2] as string).replace(",", ".")),
      unit: match[3] as string,
    });
  }
  return needs;
}

/** Writes needs as readNeeds reads them. */
export function needsText(needs: readonly Need[]): string {
  return needs
    .map(({ item, amount, unit }) => `${item} ${amount}${unit === "" ? "" : ` ${unit}`}`)
    .join("; ");
}
