// Made by npm run sentences from the files of this folder; a test holds it equal.

import { english } from "./english";
import type { Language } from "./language-type";

/** The file of every language, by its name. */
export const sentenceFiles = {
  english,
} satisfies Readonly<Record<string, Language>>;
