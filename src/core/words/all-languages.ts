import { english } from "./english";
import { french } from "./french";
import { indonesian } from "./indonesian";
import type { LanguageWords } from "./language-words";
import { portuguese } from "./portuguese";
import { spanish } from "./spanish";

/** Every language whose words are known. A table may mix them. */
export const allLanguages: readonly LanguageWords[] = [
  english,
  french,
  spanish,
  portuguese,
  indonesian,
];
