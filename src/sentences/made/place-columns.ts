// Made by npm run sentences from the files of sentences; a test holds it equal.

export const holds = (): string => "Holds";

export const overBy = (): string => "Over by";

export const place = (): string => "Place";

export const plants = (): string => "Plants";

export const week = (): string => "Week";

export const weekFrom = (): string => "Week from";

export const headers = () => ({ holds: "Holds", overBy: "Over by", place: "Place", plants: "Plants", week: "Week", weekFrom: "Week from" });
