// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "First what doesn't fit, with the sum that proves it and the fewest hours more that would do. Then one row per person and part of a task, as near to the usual days as the hands allow. A task without known hours is a reminder on its usual day.";

export const closedDays = (): string => "A table of days on which nobody works: Day, and To for several. A weekday's name closes every such day.";

export const crew = (): string => "Your table of persons: Person, Tasks (blank for all), Hours a day, Days (Mon–Fri), Off from, Off to.";

export const days = (): string => "How many days to plan, 1 to 366.";

export const sentence = (): string => "Plans the tasks of the coming days by day and person, or says why they don't fit.";
