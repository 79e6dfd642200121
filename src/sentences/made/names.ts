// Made by npm run sentences from the files of sentences; a test holds it equal.

import { count } from "../runtime";

export const more = (d: { readonly names: number }): string => count(d.names) + " more";
