// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, list, plural } from "../runtime";

export const dueListRefreshed = (d: { readonly some: number; readonly moved: readonly string[] }): string => "Due list refreshed" + plural(d.some, { "0": "", other: ". Moved out of the way: " + list(d.moved) });

export const menu = (): string => "Nursery";

export const moreMoved = (d: { readonly more: number }): string => count(d.more) + " more";

export const moved = (d: { readonly from: string | number; readonly to: string | number }): string => d.from + " to " + d.to;

export const open = (): string => "Open the sidebar";

export const refresh = (): string => "Refresh the due list";

export const title = (): string => "Nursery batches";

export const writeTicked = (): string => "Write ticked tasks";

export const written = (d: { readonly recorded: number; readonly takenBack: number; readonly refused: number }): string => plural(d.recorded, { one: count(d.recorded) + " task", other: count(d.recorded) + " tasks" }) + " written" + plural(d.takenBack, { "0": "", other: ", " + count(d.takenBack) + " taken back" }) + plural(d.refused, { "0": "", other: ", " + count(d.refused) + " not written. The due list says why" });
