// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

import { en, number, plural } from "../runtime";

export const rowsLeftOutOfCell = (d: { readonly rows: number }): string =>
  plural(d.rows, 0, en, { one: number("en", d.rows, 0) + " row is", other: number("en", d.rows, 0) + " rows are" }) + " left out: see BATCH_CHECK.";

export const rowsLeftOutOfPage = (d: { readonly rows: number }): string =>
  plural(d.rows, 0, en, { one: number("en", d.rows, 0) + " row is", other: number("en", d.rows, 0) + " rows are" }) + " left out: see Check.";
