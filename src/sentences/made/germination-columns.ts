// Made by npm run sentences from the files of sentences; a test holds it equal.

export const batch = (): string => "Batch";

export const germination = (): string => "Germination";

export const halfUp = (): string => "Half up after days";

export const high = (): string => "High";

export const lastInspection = (): string => "Last inspection, day";

export const low = (): string => "Low";

export const measure = (): string => "Measure";

export const othersByThen = (): string => "Others by then";

export const samples = (): string => "Samples";

export const seedsSown = (): string => "Seeds sown";

export const unit = (): string => "Unit";

export const up = (): string => "Came up";

export const value = (): string => "Value";

export const headers = () => ({ batch: "Batch", germination: "Germination", halfUp: "Half up after days", high: "High", lastInspection: "Last inspection, day", low: "Low", measure: "Measure", othersByThen: "Others by then", samples: "Samples", seedsSown: "Seeds sown", unit: "Unit", up: "Came up", value: "Value" });
