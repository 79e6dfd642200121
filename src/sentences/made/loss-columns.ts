// Made by npm run sentences from the files of sentences; a test holds it equal.

export const cost = (): string => "Cost";

export const ofStarted = (): string => "Of started";

export const plants = (): string => "Plants";

export const reason = (): string => "Reason";

export const stage = (): string => "Stage";

export const headers = () => ({ cost: "Cost", ofStarted: "Of started", plants: "Plants", reason: "Reason", stage: "Stage" });
