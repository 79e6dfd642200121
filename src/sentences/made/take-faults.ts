// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count } from "../runtime";

export const comparedAndEvened = (d: { readonly argument: string | number; readonly name: string | number }): string => d.argument + " names \"" + d.name + "\", which is what you compare. Nobody would be left to compare with";

export const moreTakenThanGrafted = (d: { readonly taken: number; readonly grafted: number }): string => count(d.taken) + " taken of " + count(d.grafted) + " grafted";

export const moreTakenThanGraftedInList = (): string => "more taken than grafted";

export const noGrafts = (): string => "records has no column for Grafts made";

export const noSuchColumn = (d: { readonly argument: string | number; readonly name: string | number; readonly known: string | number }): string => d.argument + " names \"" + d.name + "\", which is not a column of the records. They have: " + d.known;

export const noSuchPeriod = (d: { readonly found: string | number }): string => "period is \"week\", \"month\" or \"quarter\", not \"" + d.found + "\"";

export const noTakes = (): string => "records has no column for Takes";
