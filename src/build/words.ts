import { readFileSync, writeFileSync } from "node:fs";
import { wordTables } from "./word-tables";

/** Writes the tables that are made from the files of words. Run by npm run words. */
try {
  for (const [path, text] of wordTables(readFileSync("README.md", "utf8"))) {
    writeFileSync(path, text);
    console.log(path);
  }
} catch (error) {
  // What is wrong stands in a file of words, not in this program.
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
