import { readFileSync, writeFileSync } from "node:fs";
import { languageLists } from "./language-lists";

/** Writes the lists of languages, which the programs behind npm run words and sentences import. */
for (const [path, text] of languageLists()) {
  if (readFileSync(path, "utf8") === text) continue;
  writeFileSync(path, text);
  console.log(path);
}
