// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

import { count, plural } from "../runtime";

export const rowsLeftOutOfCell = (d: { readonly rows: number }): string =>
  plural(d.rows, { one: count(d.rows) + " row is", other: count(d.rows) + " rows are" }) + " left out: see BATCH_CHECK.";

export const rowsLeftOutOfPage = (d: { readonly rows: number }): string =>
  plural(d.rows, { one: count(d.rows) + " row is", other: count(d.rows) + " rows are" }) + " left out: see Check.";
