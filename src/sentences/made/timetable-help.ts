// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "The timetable: one row per step, its days, the share kept, and where the figures come from.";

export const method = (): string => "Name of a method. Leave it out for all.";

export const sentence = (): string => "The built-in steps of a method with their days, to read, or to copy and edit.";
