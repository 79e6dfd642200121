import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { coreList } from "./core-list";
import { functionLists } from "./function-lists";
import { languageLists } from "./language-lists";

/** Writes the lists that follow from the files of a folder, which other programs import. */
for (const [path, text] of [...languageLists(), ...functionLists(), ...coreList()]) {
  if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
  writeFileSync(path, text);
  console.log(path);
}
