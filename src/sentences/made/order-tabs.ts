// Made by npm run sentences from the files of sentences; a test holds it equal.

export const howOrders = (d: { readonly variety: string | number; readonly closed: string | number }): string => "one row per order. " + d.variety + ": \"A or B\" where either will do, blank for any. " + d.closed + ": a day or yes.";

export const noWorkPlan = (d: { readonly why: string | number }): string => "No work plan: " + d.why;

export const orders = (): string => "orders";

export const planLive = (d: { readonly row: string | number }): string => "live. Change row " + d.row + " and the plan follows.";
