// Made by npm run sentences from the files of sentences; a test holds it equal.

export const measure = (): string => "Measure";

export const unit = (): string => "Unit";

export const value = (): string => "Value";

export const headers = () => ({ measure: "Measure", unit: "Unit", value: "Value" });
