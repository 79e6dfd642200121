// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string => "One row per step, and All with the needs added up. Plants is never less than the plain division by what is kept. Remark says both, and when it is too late.";

export const asOf = (): string => "The day you plan on. Left out, it is the latest day in the records, so give it if they have days to come.";

export const assurance = (): string => "Chance with which the order is to be met, as a share.";

export const harvest = (): string => "Months in which seed is harvested, such as \"Oct-Mar, May-Aug\", or a table of crops with such months.";

export const method = (): string => "Name of the method. Leave blank for the first of the timetable.";

export const readyBy = (): string => "The day by which they are to be ready.";

export const records = (): string => "Your table of batches with its header, so the plan uses your own losses and growing times.";

export const sentence = (): string => "An order planned backwards: by which day to do each step, from how many plants, with what needs.";

export const variety = (): string => "The variety wanted. With \"A or B\" the first is planned. Left out, one like your others.";

export const wanted = (): string => "Plants wanted, a whole number.";
