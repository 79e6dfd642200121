// Made by npm run sentences from the files of sentences; a test holds it equal.

export const column = (): string => "Column";

export const found = (): string => "Found";

export const row = (): string => "Row";

export const rows = (): string => "Rows";

export const trouble = (): string => "Trouble";

export const whatHappens = (): string => "What happens";

export const whatToDo = (): string => "What to do";

export const headers = () => ({ column: "Column", found: "Found", row: "Row", rows: "Rows", trouble: "Trouble", whatHappens: "What happens", whatToDo: "What to do" });
