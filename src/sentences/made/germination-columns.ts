// Made by npm run sentences from src/sentences/english.ts; a test holds it equal.

export const measure = (): string =>
  "Measure";

export const unit = (): string =>
  "Unit";

export const value = (): string =>
  "Value";

export const headers = () => ({
  measure: "Measure",
  unit: "Unit",
  value: "Value",
});
