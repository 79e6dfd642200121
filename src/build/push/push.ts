import { spawnSync } from "node:child_process";
import path from "node:path";
import { pushFiles } from "./push-files";

/** Pushes dist/ to the cloud: npm run push, which builds it first. */
const root = process.cwd();
const program = path.join(root, "node_modules/@google/clasp/build/src/index.js");
try {
  pushFiles(root, (words, folder) => {
    const { status } = spawnSync(process.execPath, [program, ...words], {
      cwd: folder,
      stdio: "inherit",
    });
    return status ?? 1;
  });
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
