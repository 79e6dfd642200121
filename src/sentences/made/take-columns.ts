// Made by npm run sentences from the files of sentences; a test holds it equal.

export const batches = (): string => "Batches";

export const best = (): string => "Best";

export const column = (): string => "Column";

export const evenedRate = (): string => "Evened rate";

export const expectedRate = (): string => "Expected rate";

export const explained = (): string => "Spread explained";

export const from = (): string => "From";

export const grafted = (): string => "Grafted";

export const groups = (): string => "Groups";

export const high = (): string => "Upper limit";

export const low = (): string => "Lower limit";

export const period = (): string => "Period";

export const reading = (): string => "Reading";

export const remarks = (): string => "Remark";

export const spread = (): string => "Batch spread";

export const taken = (): string => "Taken";

export const takeRate = (): string => "Take rate";

export const to = (): string => "To";

export const usualRate = (): string => "Usual rate";

export const worst = (): string => "Worst";

export const headers = () => ({ batches: "Batches", best: "Best", column: "Column", evenedRate: "Evened rate", expectedRate: "Expected rate", explained: "Spread explained", from: "From", grafted: "Grafted", groups: "Groups", high: "Upper limit", low: "Lower limit", period: "Period", reading: "Reading", remarks: "Remark", spread: "Batch spread", taken: "Taken", takeRate: "Take rate", to: "To", usualRate: "Usual rate", worst: "Worst" });
