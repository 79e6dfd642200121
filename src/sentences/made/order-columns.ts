// Made by npm run sentences from the files of sentences; a test holds it equal.

export const by = (): string => "By";

export const chance = (): string => "Chance in full";

export const doBy = (): string => "Do by";

export const fullBy = (): string => "Full by";

export const likely = (): string => "Likely set aside";

export const needs = (): string => "Needs";

export const order = (): string => "Order";

export const plants = (): string => "Plants";

export const remarks = (): string => "Remark";

export const shortBy = (): string => "Short by";

export const step = (): string => "Step";

export const variety = (): string => "Variety";

export const wanted = (): string => "Wanted";

export const whatToDo = (): string => "What to do";

export const headers = () => ({ by: "By", chance: "Chance in full", doBy: "Do by", fullBy: "Full by", likely: "Likely set aside", needs: "Needs", order: "Order", plants: "Plants", remarks: "Remark", shortBy: "Short by", step: "Step", variety: "Variety", wanted: "Wanted", whatToDo: "What to do" });
