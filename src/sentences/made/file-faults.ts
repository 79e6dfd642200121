// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, select } from "../runtime";

export const badWorkbook = (d: { readonly file: string | number }): string => d.file + " is damaged. It can't be opened as an .xlsx workbook";

export const empty = (d: { readonly file: string | number }): string => d.file + " is empty";

export const emptyTabs = (d: { readonly file: string | number }): string => d.file + " is empty. No tab has a filled cell";

export const hasPassword = (d: { readonly file: string | number }): string => d.file + " has a password. Save it without one first";

export const longText = (d: { readonly file: string | number; readonly most: number; readonly row: number; readonly where: "file" | "tab"; readonly tab: string | number }): string => d.file + " has a text of more than " + count(d.most) + " characters in row " + count(d.row) + select(d.where, { tab: " of " + d.tab, file: "", other: "" }) + ". Is a quotation mark left open there?";

export const noFile = (d: { readonly file: string | number }): string => "There is no file " + d.file;

export const notAFile = (d: { readonly file: string | number }): string => d.file + " is not a file but a folder or the like";

export const notATable = (d: { readonly file: string | number }): string => d.file + " is not a table, whatever its name says";

export const notAWorkbook = (d: { readonly file: string | number }): string => d.file + " is not an .xlsx workbook, whatever its name says";

export const oldOrLocked = (d: { readonly file: string | number }): string => d.file + " is an old .xls workbook or has a password. Save it as a plain .xlsx workbook first";

export const otherKind = (d: { readonly file: string | number }): string => d.file + " is neither an .xlsx workbook nor a .csv table";

export const tabDamaged = (d: { readonly file: string | number }): string => d.file + " is damaged. One of its tabs can't be read";

export const tabUnread = (d: { readonly file: string | number; readonly tab: string | number }): string => d.file + " is damaged. Its tab " + d.tab + " can't be read";

export const tooHungry = (d: { readonly file: string | number }): string => d.file + " is too large or damaged. Reading it takes too much memory";

export const tooLarge = (d: { readonly file: string | number; readonly most: number }): string => d.file + " is too large. We read files of at most " + count(d.most) + " MB";

export const tooLong = (d: { readonly file: string | number; readonly where: "file" | "tab"; readonly tab: string | number; readonly row: number; readonly most: number }): string => d.file + " is too long. " + select(d.where, { tab: "Tab " + d.tab, file: "It", other: "" }) + " has a value in row " + count(d.row) + ", and we read at most " + count(d.most) + " rows";

export const tooManyCells = (d: { readonly file: string | number; readonly most: number }): string => d.file + " is too large. It has more than " + count(d.most) + " filled cells";

export const tooManyCharacters = (d: { readonly file: string | number; readonly most: number }): string => d.file + " is too large. Its texts have more than " + count(d.most) + " characters";

export const tooManyMerges = (d: { readonly file: string | number; readonly tab: string | number; readonly most: number }): string => d.file + " is too large. " + d.tab + " has more than " + count(d.most) + " merged areas";

export const tooManyTabs = (d: { readonly file: string | number; readonly tabs: number; readonly most: number }): string => d.file + " is too large. It has " + count(d.tabs) + " tabs, and we read at most " + count(d.most);

export const tooSlow = (d: { readonly file: string | number }): string => d.file + " is too large or damaged. Reading it takes too long";

export const tooWide = (d: { readonly file: string | number; readonly where: "file" | "tab"; readonly tab: string | number; readonly column: number; readonly most: number }): string => d.file + " is too wide. " + select(d.where, { tab: "Tab " + d.tab, file: "It", other: "" }) + " has a value in column " + count(d.column) + ", and we read at most " + count(d.most) + " columns";

export const unpackedTooLarge = (d: { readonly file: string | number; readonly size: number; readonly most: number }): string => d.file + " is too large. Unpacked it has " + count(d.size) + " MB, and we read at most " + count(d.most);

export const unreadable = (d: { readonly file: string | number }): string => d.file + " can't be read. It is damaged, or made in a way that we don't know";
