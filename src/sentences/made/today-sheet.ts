// Made by npm run sentences from the files of sentences; a test holds it equal.

export const batch = (): string => "Batch";

export const byDay = (d: { readonly day: string | number }): string => "by " + d.day;

export const cautions = (): string => "Cautions";

export const counted = (): string => "Count";

export const day = (): string => "Day";

export const dayDone = (): string => "Day done";

export const fileTitle = (d: { readonly day: string | number }): string => "Round sheet " + d.day;

export const hours = (): string => "Hours";

export const hoursUnknown = (): string => "hours not known";

export const note = (): string => "Note";

export const notPrinted = (): string => "This browser does not let the page print. Print the due tab of the workbook instead.";

export const place = (): string => "Place";

export const plants = (): string => "Plants";

export const task = (): string => "Task";

export const title = (d: { readonly day: string | number }): string => "Round sheet, " + d.day;

export const unassigned = (): string => "Not given to anybody";

export const who = (): string => "Who";

export const window = (): string => "Window";
