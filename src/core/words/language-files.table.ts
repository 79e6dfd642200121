// Made by npm run words from the files of this folder; a test holds it equal.

import { english } from "./english";
import { french } from "./french";
import { indonesian } from "./indonesian";
import type { LanguageText } from "./language-text";
import { portuguese } from "./portuguese";
import { spanish } from "./spanish";

/** The file of every language, by its name. */
export const wordFiles = {
  english,
  french,
  indonesian,
  portuguese,
  spanish,
} satisfies Readonly<Record<string, LanguageText>>;
