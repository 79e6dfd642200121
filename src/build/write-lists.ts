import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { callLists } from "./call-lists";
import { coreList } from "./core-list";
import { functionLists } from "./function-lists";
import { languageLists } from "./language-lists";
import { sectionList } from "./section-list";

/** Writes the lists that follow from the files of a folder, which other programs import. */
const lists = [languageLists, functionLists, coreList, callLists, sectionList];
for (const [path, text] of lists.flatMap((listsOf) => [...listsOf()])) {
  if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
  writeFileSync(path, text);
  console.log(path);
}
