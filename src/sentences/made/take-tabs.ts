// Made by npm run sentences from the files of sentences; a test holds it equal.

export const columnGone = (d: { readonly name: string | number }): string => "Nothing is compared: the records have no column \"" + d.name + "\" any more. Choose another in Set up";

export const noneChosen = (): string => "Nothing is compared. Choose in Set up what to compare";

export const noTakeRates = (d: { readonly why: string | number }): string => "No take rates: " + d.why + ". Add it, then make the tabs again in Set up";

export const nothingToEvenFor = (d: { readonly by: string | number }): string => "Nothing is compared: no column but " + d.by + " could explain a difference";
