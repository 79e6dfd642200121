// Made by npm run sentences from the files of sentences; a test holds it equal.

import { list } from "../runtime";

export const culled = (): string => "culled";

export const lostBy = (d: { readonly step: string | number }): string => "Lost by " + d.step;

export const noReason = (): string => "no reason written";

export const notCounted = (d: { readonly batches: readonly string[] }): string => "Left out, their plants were never counted: " + list(d.batches) + ".";

export const standing = (): string => "Standing";

export const withoutMethod = (d: { readonly batches: readonly string[] }): string => "Stage and cost are rough, the method is not known: " + list(d.batches) + ".";
