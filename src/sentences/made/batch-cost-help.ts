// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per begun batch: Materials from the timetable's Needs, Hours from its work rates, Cost of both, and Cost over the plants counted as ready or likely to be. A lot passes its cost on to the batches taken from it, by their plants. Below, for each method, all batches together, and what a started plant carries. What has no price is never 0: the last row names it.";

export const prices = (): string => "Your table of prices: Item, Price, and Per, the unit it is for. The item hour is a person's work. Leave blank for hours alone.";

export const sentence = (): string => "What each batch has cost so far in materials and hours, losses included.";
