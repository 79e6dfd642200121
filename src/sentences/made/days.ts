// Made by npm run sentences from the files of sentences; a test holds it equal.

import { select } from "../runtime";

export const day = (d: { readonly day: string | number; readonly month: string | number; readonly year: string | number }): string => d.day + " " + d.month + " " + d.year;

export const dayMonth = (d: { readonly day: string | number; readonly month: string | number }): string => d.day + " " + d.month;

export const month = (d: { readonly month: string | number; readonly year: string | number }): string => d.month + " " + d.year;

export const monthName = (d: { readonly number: "1" | "10" | "11" | "12" | "2" | "3" | "4" | "5" | "6" | "7" | "8" | "9" }): string => select(d.number, { "1": "Jan", "2": "Feb", "3": "Mar", "4": "Apr", "5": "May", "6": "Jun", "7": "Jul", "8": "Aug", "9": "Sep", "10": "Oct", "11": "Nov", "12": "Dec", other: "" });

export const weekdayDay = (d: { readonly weekday: string | number; readonly day: string | number; readonly month: string | number }): string => d.weekday + " " + d.day + " " + d.month;

export const weekdayName = (d: { readonly number: "0" | "1" | "2" | "3" | "4" | "5" | "6" }): string => select(d.number, { "0": "Sun", "1": "Mon", "2": "Tue", "3": "Wed", "4": "Thu", "5": "Fri", "6": "Sat", other: "" });

export const weekOf = (d: { readonly day: string | number }): string => "week of " + d.day;

export const window = (d: { readonly from: string | number; readonly by: string | number }): string => d.from + " – " + d.by;
