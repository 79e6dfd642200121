import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { generatedPages } from "./generated-pages";

/** Writes the generated pages. Run by npm run docs; a test fails when a page is stale. */
for (const [path, text] of await generatedPages(readFileSync("dist/Code.js", "utf8"))) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  console.log(path);
}
