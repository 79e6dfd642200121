/** A sentence of a piece that stands within others. @example capital("not a date") // "Not a date" */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
