// Made by npm run sentences from the files of sentences; a test holds it equal.

export const ahead = (): string => "Ahead";

export const allFunctions = (): string => "Functions";

export const caution = (): string => "Blades, strong alcohol, flame and sprays hurt people. Plants that move may carry pests. The labels of what you use, the rules of your place and licensed practice come before anything written here.";

export const check = (): string => "Check";

export const forCells = (): string => "for the cells of the workbook";

export const goToSetUp = (): string => "Go to Set up";

export const noAnswer = (): string => "The script gave no answer. Try again. If that does not help, close this page and open it again from the menu.";

export const notInSpreadsheet = (): string => "Open this page from the Nursery menu of a spreadsheet. Alone it has nothing to show.";

export const notSetUp = (): string => "The workbook is not set up yet. First say which tab has your records.";

export const nursery = (): string => "Nursery batches";

export const olderScript = (d: { readonly page: string | number }): string => "This page is version " + d.page + " and the script is older. Reload the workbook. If they still differ, put in all files of one release again.";

export const orders = (): string => "Orders";

export const otherScript = (d: { readonly page: string | number; readonly script: string | number }): string => "This page is version " + d.page + " and the script is version " + d.script + ". Reload the workbook. If they still differ, put in all files of one release again.";

export const reading = (): string => "Reading the workbook";

export const scriptLacks = (d: { readonly name: string | number }): string => "The script has no " + d.name + ", so it is older than this page. Put in all files of one release, then reload the workbook.";

export const sections = (): string => "Sections";

export const setUp = (): string => "Set up";

export const severalAccounts = (d: { readonly message: string | number }): string => d.message + " If this browser is signed in with several accounts, sign out of all but the one that owns the workbook, then open this page again.";

export const takes = (): string => "Takes";

export const today = (): string => "Today";

export const tryAgain = (): string => "Try again";
