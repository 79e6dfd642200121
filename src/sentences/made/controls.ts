// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural, select, share } from "../runtime";

export const allOfIt = (): string => "All of it";

export const away = (d: { readonly days: number; readonly when: "ago" | "ahead" }): string => plural(d.days, { "0": "today", one: select(d.when, { ahead: "tomorrow", ago: "yesterday", other: "" }), other: select(d.when, { ahead: "in " + count(d.days) + " days", ago: count(d.days) + " days ago", other: "" }) });

export const blank = (): string => "blank";

export const cut = (d: { readonly text: string | number; readonly length: number }): string => d.text + "… (" + count(d.length) + " characters in all)";

export const dismiss = (): string => "Dismiss";

export const doing = (d: { readonly doing: string | number }): string => d.doing + " …";

export const hours = (d: { readonly hours: string | number; readonly form: "many" | "one" }): string => d.hours + " " + select(d.form, { one: "hour", many: "hours", other: "" });

export const hoursOf = (d: { readonly asked: string | number; readonly hours: string | number }): string => d.asked + " of " + d.hours;

export const initials = (): string => "Initials instead of names";

export const no = (): string => "no";

export const number = (d: { readonly number: number }): string => count(d.number);

export const percent = (d: { readonly part: number }): string => share(d.part);

export const showMore = (d: { readonly next: number; readonly left: number }): string => "Show " + count(d.next) + " more of " + count(d.left);

export const underTenth = (): string => "under 0.1";

export const yes = (): string => "yes";
