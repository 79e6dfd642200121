// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select } from "../runtime";

export const areTwo = (): string => "No, they are two";

export const choose = (): string => "Choose";

export const differ = (): string => "They differ from row to row";

export const differToDo = (d: { readonly name: string | number }): string => "Write the full name of its method, such as " + d.name + ", into each row. They get no dates before. Then read the table again.";

export const kept = (d: { readonly more: number }): string => plural(d.more, { "0": "", other: count(d.more) + " more to come once these are answered. " }) + "Your answers are kept in the settings tab, where you can change them.";

export const leaveOut = (): string => "None, leave them out";

export const methodBorne = (d: { readonly batches: number; readonly plants: number; readonly fits: number }): string => plural(d.batches, { one: count(d.batches) + " batch", other: count(d.batches) + " batches" }) + ", " + plural(d.plants, { one: count(d.plants) + " plant", other: count(d.plants) + " plants" }) + ". " + plural(d.fits, { "0": "No method is called so.", one: count(d.fits) + " method fits.", other: count(d.fits) + " methods fit." }) + " Until you choose, " + plural(d.batches, { one: "it gets", other: "they get" }) + " no dates and no forecast." + plural(d.batches, { one: "", other: " Your choice counts for all of them." });

export const namesBorne = (d: { readonly of: "batches" | "orders"; readonly batches: number; readonly rare: string | number; readonly others: number; readonly common: string | number }): string => select(d.of, { orders: plural(d.batches, { one: count(d.batches) + " order has", other: count(d.batches) + " orders have" }), batches: plural(d.batches, { one: count(d.batches) + " batch has", other: count(d.batches) + " batches have" }), other: "" }) + " " + d.rare + ", " + plural(d.others, { one: count(d.others) + " has", other: count(d.others) + " have" }) + " " + d.common + ". Until you choose, each counts as a name of its own.";

export const theSame = (d: { readonly column: string | number; readonly rare: string | number; readonly common: string | number }): string => d.column + ": is " + d.rare + " the same as " + d.common + "?";

export const whichMethod = (d: { readonly word: string | number }): string => d.word + ": which method is it?";

export const yesAs = (d: { readonly name: string | number }): string => "Yes, read both as " + d.name;
