/** A text as a part of a pattern that finds just it: messages hold brackets and dots. */
export function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
