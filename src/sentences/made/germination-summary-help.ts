// Made by npm run sentences from the files of sentences; a test holds it equal.

export const answers = (): string =>
  "One row a measure, with its unit. With two or four samples of 100 seeds a last line says whether they agree.";

export const counts = (): string =>
  "Seeds newly come up at each inspection. Two or four columns for samples sown alike.";

export const days = (): string =>
  "Days since sowing of each inspection, one column.";

export const sentence = (): string =>
  "How well and how fast seed came up: share, days to half, mean time, speed.";

export const sown = (): string =>
  "Seeds sown in all.";
