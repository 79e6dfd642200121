import { spawnSync } from "node:child_process";
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

describe("run.mjs", () => {
  let root: string;
  const { NONSENSE: _, ...env } = process.env;
  const run = (...words: string[]) =>
    spawnSync("node", ["src/build/run.mjs", ...words], { cwd: root, encoding: "utf8", env });
  const bundle = () => statSync(path.join(root, ".build/src-hello.mjs")).mtimeMs;
  const write = (name: string, text: string) => writeFileSync(path.join(root, name), text);

  beforeAll(() => {
    root = mkdtempSync(path.join(tmpdir(), "run-"));
    mkdirSync(path.join(root, "src/build"), { recursive: true });
    copyFileSync("src/build/run.mjs", path.join(root, "src/build/run.mjs"));
    symlinkSync(path.resolve("node_modules"), path.join(root, "node_modules"), "dir");
    write("package-lock.json", "{}");
    write("src/word.ts", "export const word: string = 'hello';");
    write(
      "src/hello.ts",
      "import { word } from './word'; console.log(word, ...process.argv.slice(2)); await 0; process.exitCode = 3;",
    );
    // Written now, and a file is stale unless it is older than the bundle.
    const past = new Date(Date.now() - 60_000);
    for (const file of ["package-lock.json", "src/word.ts", "src/hello.ts", "src/build/run.mjs"]) {
      utimesSync(path.join(root, file), past, past);
    }
  });
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  it("runs a program with its words and keeps its exit code", () => {
    const { stdout, status } = run("src/hello.ts", "a", "--b");
    expect([stdout, status]).toEqual(["hello a --b\n", 3]);
  });

  it("bundles anew only when something that the program is made of has changed", () => {
    const first = bundle();
    run("src/hello.ts");
    expect(bundle()).toBe(first);
    write("src/word.ts", "export const word: string = 'changed';");
    expect(run("src/hello.ts").stdout).toBe("changed\n");
    expect(bundle()).toBeGreaterThan(first);
  });

  it("says how it is used", () => {
    expect(run()).toMatchObject({ status: 1, stderr: expect.stringContaining("Usage") });
  });
});
