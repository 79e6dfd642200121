// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const inTheWay = (d: { readonly tab: string | number; readonly cell: string | number; readonly more: number }): string => d.tab + " shows no answer: " + d.cell + " " + plural(d.more, { "0": "is", one: "and " + count(d.more) + " more cell are", other: "and " + count(d.more) + " more cells are" }) + " in its way. Choose Refresh the due list in the Nursery menu to move " + plural(d.more, { "0": "it", other: "them" }) + " aside";

export const noRoom = (d: { readonly tab: string | number }): string => d.tab + " shows no answer: it has no room, or what it reads is gone. Make the tabs again in Set up";
