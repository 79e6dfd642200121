// Made by npm run sentences from the files of sentences; a test holds it equal.

export const before = (): string => "Before it is written";

export const cutOff = (): string => "Cut off, look at the cells";

export const inCell = (d: { readonly where: string | number }): string => "in " + d.where;

export const inLogOnly = (): string => "in the write log only";

export const leave = (): string => "Leave as it is";

export const nothingWritten = (): string => "Nothing was written yet.";

export const notTakenBack = (): string => "Not taken back";

export const notTakenBackSee = (): string => "Not taken back. See why above.";

export const notYet = (): string => "Nothing is written yet.";

export const older = (): string => "Older ones are in the tab Write log.";

export const readAgain = (): string => "Read again";

export const reading = (): string => "Reading the write log";

export const stands = (): string => "Now there";

export const takeBack = (): string => "Take back";

export const taken = (): string => "Taken back";

export const takenDone = (): string => "Taken back.";

export const taking = (): string => "Taking it back";

export const title = (): string => "Last writes";

export const what = (d: { readonly task: string | number; readonly about: string | number }): string => d.task + ", " + d.about;

export const when = (d: { readonly when: string | number; readonly who: string | number }): string => d.when + ", " + d.who;

export const would = (): string => "Would be";

export const writeAnyway = (): string => "Write anyway";

export const writing = (): string => "Writing to the records";

export const written = (): string => "Written";

export const writtenNamed = (d: { readonly what: string | number }): string => "Written: " + d.what;
