// Made by npm run sentences from the files of sentences; a test holds it equal.

export const batch = (): string => "Batch";

export const cost = (): string => "Cost";

export const costOfReady = (): string => "Cost per ready plant";

export const hours = (): string => "Hours";

export const materials = (): string => "Materials";

export const headers = () => ({ batch: "Batch", cost: "Cost", costOfReady: "Cost per ready plant", hours: "Hours", materials: "Materials" });
