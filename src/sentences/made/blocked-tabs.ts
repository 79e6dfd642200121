// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count, plural } from "../runtime";

export const inTheWay = (d: { readonly tab: string | number; readonly more: number; readonly cell: string | number }): string =>
  d.tab + " shows no answer, since " + plural(d.more, { "0": d.cell + " is", one: d.cell + " and " + count(d.more) + " more cell are", other: d.cell + " and " + count(d.more) + " more cells are" }) + " in its way: choose Refresh the due list in the Nursery menu, which moves " + plural(d.more, { "0": "it", other: "them" }) + " beside";

export const noRoom = (d: { readonly tab: string | number }): string =>
  d.tab + " shows no answer, since it has no room or what it reads is gone: make the tabs again in Set up";
