/**
 * A formula that the workbook can't read stays in its cell as it was written and shows `#ERROR!`
 * with "Formula parse error.", whatever locale the workbook gets later. Source of the sentence:
 * public projects that met it (advanced-bidding-manager#1 and others).
 *
 * The engine has no such cells. It gets a formula of this host's own that holds the text.
 */
export const UNREAD_NAME = "UNREAD_FORMULA";

export const UNREAD_MESSAGE = "Formula parse error.";

const UNREAD = new RegExp(`^=${UNREAD_NAME}\\("((?:[^"]|"")*)"\\)$`);

/** The formula for the engine. @param text as it was written, with its "=" */
export function unreadFormula(text: string): string {
  return `=${UNREAD_NAME}("${text.replaceAll('"', '""')}")`;
}

/** The text as it was written, or null for a formula that could be read. */
export function unreadText(formula: string): string | null {
  const text = UNREAD.exec(formula)?.[1];
  return text === undefined ? null : text.replaceAll('""', '"');
}
