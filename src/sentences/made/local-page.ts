// Made by npm run sentences from the files of sentences; a test holds it equal.

export const askOrLose = (d: { readonly file: string | number; readonly other: string | number }): string => d.file + " has changes here that are not saved.\n\nOpen " + d.other + " and lose them?";

export const askYesNo = (d: { readonly prompt: string | number }): string => d.prompt + "\n\n(OK for yes, Cancel for no)";

export const askYesNoCancelFirst = (d: { readonly prompt: string | number }): string => d.prompt + "\n\n(OK for yes, Cancel for the other answers)";

export const askYesNoCancelThen = (d: { readonly prompt: string | number }): string => d.prompt + "\n\n(OK for no, Cancel to do nothing)";

export const beingBuilt = (): string => "The add-in is being updated. Try again in a minute.";

export const cantStart = (d: { readonly why: string | number }): string => "The page can't start. " + d.why;

export const cantWrite = (d: { readonly name: string | number; readonly file: string | number; readonly why: string | number }): string => d.name + " can't be written beside " + d.file + " (" + d.why + "). Take Download as xlsx";

export const close = (): string => "Close";

export const copy = (): string => "A copy";

export const download = (): string => "Download as xlsx";

export const downloaded = (d: { readonly name: string | number }): string => "Given to the browser to download as " + d.name + ".";

export const fromElsewhere = (): string => "Another page asked for this. Type or paste the address into the browser yourself.";

export const grid = (): string => "Spreadsheet";

export const isOpen = (d: { readonly file: string | number; readonly address: string | number }): string => d.file + " is open at " + d.address + "\nPress Ctrl+C to end.";

export const isThere = (d: { readonly name: string | number }): string => d.name + " is there already";

export const letGo = (): string => "Let go to open the file. It is only read.";

export const making = (): string => "Making the page ready (once) ...";

export const menus = (): string => "Menus of the add-in";

export const messages = (): string => "Messages";

export const noAnswer = (d: { readonly why: string | number }): string => "The program that serves this page does not answer (" + d.why + "). Take Download as xlsx";

export const notHere = (): string => "Not here.";

export const nothingHere = (): string => "Nothing is here.";

export const nothingOfThisKind = (): string => "Nothing of this kind.";

export const nothingTaken = (): string => "Nothing is taken here.";

export const notSaved = (d: { readonly file: string | number }): string => "Not saved. What you type here, and what the sidebar writes to the records, is in this page only until you save a copy. " + d.file + " itself is never changed.";

export const noWorkbook = (): string => "This is no workbook.";

export const onlyAt = (d: { readonly address: string | number }): string => "This page is at " + d.address + " and nowhere else.";

export const openFile = (): string => "Open a file";

export const page = (): string => "Local page";

export const save = (): string => "Save";

export const savedBeside = (d: { readonly name: string | number; readonly file: string | number }): string => "Saved as " + d.name + ", beside " + d.file + ".";

export const scriptFails = (d: { readonly why: string | number }): string => "Code.js does not load. " + d.why;

export const scriptUnread = (): string => "Code.js can't be read";

export const sidebar = (): string => "Sidebar";

export const sidebarOf = (): string => "Sidebar of the add-in";

export const starting = (): string => "Starting …";

export const title = (d: { readonly file: string | number }): string => d.file + " – local page";

export const titleUnsaved = (d: { readonly file: string | number }): string => "● " + d.file + " – local page";

export const tooMuch = (): string => "This is too much.";

export const working = (): string => "Working …";

export const wrongAddress = (): string => "Nothing is here. The page is at the address that the program printed.";
