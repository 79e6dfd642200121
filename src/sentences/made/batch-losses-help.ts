// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "For each group what it started with, and below it where those plants went. Each plant is in one row. Culled plants show the reason that the log gives. Cost is what the lost plants had used by then: needs and work of the steps behind them.";

export const by = (): string => "A header of your table, such as \"Variety\", \"Place\", \"Batch\" or \"Season\". \"Reason\" lists the reasons for culling. Leave blank for all together.";

export const prices = (): string => "Your table of prices: Item, Price, and Per. Leave it out to see plants alone.";

export const sentence = (): string => "Where plants are lost, stage by stage and why, and what that has cost.";
