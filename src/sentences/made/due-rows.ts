// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list } from "../runtime";

export const asks = (d: { readonly asked: string | number }): string => "not written yet: " + d.asked + " Tick \"Yes, write it\" to go on.";

export const copy = (d: { readonly tab: string | number }): string => "this tab is a copy. Tick in the tab \"" + d.tab + "\"";

export const countBlank = (): string => "Count is blank: fill it to add it";

export const goneAlready = (): string => "taken back: it was gone already";

export const inLogOnly = (d: { readonly what: readonly string[] }): string => "In the write log only: " + list(d.what);

export const nameCount = (): string => "count";

export const nameNote = (): string => "note";

export const notMadeAnew = (d: { readonly why: string | number }): string => "not refreshed. " + d.why;

export const notTakenBack = (d: { readonly why: string | number }): string => "not taken back: " + d.why;

export const notWritten = (d: { readonly why: string | number }): string => "not written: " + d.why;

export const still = (): string => "still in the records: this list did not write it";

export const takenBack = (d: { readonly cells: string | number }): string => "taken back: " + d.cells;

export const there = (d: { readonly cells: string | number }): string => "already in the records: " + d.cells;

export const waits = (): string => "not written yet: another edit is being written. The next tick writes this one too";

export const written = (d: { readonly cells: string | number }): string => "written: " + d.cells;
