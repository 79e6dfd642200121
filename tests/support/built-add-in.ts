import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

/** The add-in as the build makes it, in a folder of its own, so that no test shares dist/. */
export interface BuiltAddIn {
  /** The project's folder: sources linked, dist made. */
  readonly root: string;
  read(file: string): string;
}

let built: BuiltAddIn | null = null;

/**
 * What the project's own build command makes, in a folder that is only read; it is made when the first
 * test of a process asks for it.
 */
export function buildAddIn(): BuiltAddIn {
  built ??= buildAnew();
  return built;
}

/** The same in a folder of the test's own, in which it may write. */
export function buildAnew(): BuiltAddIn {
  const root = mkdtempSync(join(tmpdir(), "built-"));
  process.once("exit", () => rmSync(root, { recursive: true, force: true }));
  for (const name of ["src", "appsscript.json", "package.json"])
    symlinkSync(resolve(name), join(root, name));
  const run = spawnSync(
    process.execPath,
    [resolve("src/build/run.mjs"), resolve("src/build/build.ts")],
    { cwd: root, encoding: "utf8" },
  );
  if (run.status !== 0) throw new Error(`the build failed: ${run.stderr}`);
  return { root, read: (file) => readFileSync(join(root, "dist", file), "utf8") };
}
