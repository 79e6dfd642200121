// Made by npm run sentences from the files of sentences; a test holds it equal.

export const amount = (): string => "Amount";

export const batch = (): string => "Batch";

export const by = (): string => "By";

export const day = (): string => "Day";

export const firstNeeded = (): string => "First needed";

export const hours = (): string => "Hours";

export const item = (): string => "Item";

export const neededFor = (): string => "For";

export const person = (): string => "Person";

export const place = (): string => "Place";

export const plants = (): string => "Plants";

export const remarks = (): string => "Remark";

export const task = (): string => "Task";

export const unit = (): string => "Unit";

export const variety = (): string => "Variety";

export const headers = () => ({ amount: "Amount", batch: "Batch", by: "By", day: "Day", firstNeeded: "First needed", hours: "Hours", item: "Item", neededFor: "For", person: "Person", place: "Place", plants: "Plants", remarks: "Remark", task: "Task", unit: "Unit", variety: "Variety" });
