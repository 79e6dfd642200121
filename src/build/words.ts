import { readFileSync, writeFileSync } from "node:fs";
import { wordTables } from "./word-tables";

/** Writes the tables that are made from the files of words. Run by npm run words. */
for (const [path, text] of wordTables(readFileSync("README.md", "utf8"))) {
  writeFileSync(path, text);
  console.log(path);
}
