// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, share } from "../runtime";

export const all = (): string => "All together";

export const asTable = (): string => "As a table";

export const by = (): string => "Show losses by";

export const cost = (d: { readonly cost: string | number }): string => "Cost " + d.cost;

export const counting = (): string => "Counting losses";

export const culledAt = (d: { readonly stage: string | number; readonly reason: string | number }): string => d.stage + ": " + d.reason;

export const group = (): string => "Group";

export const none = (): string => "No plants are counted yet.";

export const noReason = (): string => "No reason written";

export const plantsAndShare = (d: { readonly plants: number; readonly share: number }): string => count(d.plants) + " (" + share(d.share) + ")";

export const reading = (): string => "Each bar starts where the one above ends.";

export const readingReasons = (): string => "Why plants were culled, as the log says, and what the counts miss besides.";

export const title = (): string => "Where plants are lost";
