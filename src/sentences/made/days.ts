// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

export const day = (d: { readonly day: string | number; readonly month: string | number; readonly year: string | number }): string =>
  d.day + " " + d.month + " " + d.year;

export const months = (): string =>
  "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec";
