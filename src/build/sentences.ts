import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { sentenceModules } from "./sentence-modules";

/** Writes the modules that are made from the files of sentences. Run by npm run sentences. */
const FOLDER = "src/sentences/made";
const modules = sentenceModules();
rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
for (const [path, text] of modules) {
  writeFileSync(path, text);
  console.log(path);
}
