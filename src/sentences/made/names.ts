// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

import { count } from "../runtime";

export const more = (d: { readonly names: number }): string =>
  count(d.names) + " more";
