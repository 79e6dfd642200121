// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

import { count, plural } from "../runtime";

export const dueListRefreshed = (): string =>
  "Due list refreshed";

export const menu = (): string =>
  "Nursery";

export const open = (): string =>
  "Open the sidebar";

export const refresh = (): string =>
  "Refresh the due list";

export const title = (): string =>
  "Nursery batches";

export const writeTicked = (): string =>
  "Write ticked tasks";

export const written = (d: { readonly recorded: number; readonly takenBack: number; readonly refused: number }): string =>
  plural(d.recorded, { one: count(d.recorded) + " task", other: count(d.recorded) + " tasks" }) + " written" + plural(d.takenBack, { "0": "", other: ", " + count(d.takenBack) + " taken back" }) + plural(d.refused, { "0": "", other: ", " + count(d.refused) + " not written. The due list says why" });
