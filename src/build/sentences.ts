import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { sentenceModules } from "./sentence-modules";

/** Writes the modules that are made from the files of sentences. Run by npm run sentences. */
const FOLDER = "src/sentences/made";
try {
  const modules = sentenceModules();
  rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER, { recursive: true });
  for (const [path, text] of modules) {
    writeFileSync(path, text);
    console.log(path);
  }
} catch (error) {
  // What is wrong stands in a file of sentences, not in this program.
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
