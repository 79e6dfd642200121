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

const NONSENSE_SOURCE = "src/local/nonsense.ts";

describe("run.mjs", () => {
  let root: string;
  const { NONSENSE: _, ...env } = process.env;
  const runIn = (more: Readonly<Record<string, string>>, words: readonly string[]) =>
    spawnSync("node", ["src/build/run.mjs", ...words], {
      ...{ cwd: root, encoding: "utf8", env: { ...env, ...more } },
    });
  const run = (...words: string[]) => runIn({}, words);
  const bundle = (name = "src-hello") => statSync(path.join(root, `.build/${name}.mjs`)).mtimeMs;
  const write = (name: string, text: string) => writeFileSync(path.join(root, name), text);

  beforeAll(() => {
    root = mkdtempSync(path.join(tmpdir(), "run-"));
    mkdirSync(path.join(root, "src/build"), { recursive: true });
    mkdirSync(path.join(root, "src/local"));
    for (const file of ["src/build/run.mjs", NONSENSE_SOURCE]) {
      copyFileSync(file, path.join(root, file));
    }
    symlinkSync(path.resolve("node_modules"), path.join(root, "node_modules"), "dir");
    write("package-lock.json", "{}");
    write("src/word.ts", "export const word: string = 'hello';");
    write(
      "src/hello.ts",
      "import { word } from './word'; console.log(word, ...process.argv.slice(2)); await 0; process.exitCode = 3;",
    );
    // Written now, and a file is stale unless it is older than the bundle.
    const past = new Date(Date.now() - 60_000);
    const sources = ["src/word.ts", "src/hello.ts", "src/build/run.mjs", NONSENSE_SOURCE];
    for (const file of ["package-lock.json", ...sources]) {
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

  // A page that still said the nonsense of before made its tests red, and nothing told why.
  it("bundles nonsense beside the plain one, and anew when it is written otherwise", () => {
    const plain = bundle();
    const nonsense = () => {
      runIn({ NONSENSE: "1" }, ["src/hello.ts"]);
      return bundle("src-hello.nonsense");
    };
    const first = nonsense();
    expect(nonsense()).toBe(first);
    utimesSync(path.join(root, NONSENSE_SOURCE), new Date(), new Date());
    expect(nonsense()).toBeGreaterThan(first);
    expect(bundle()).toBe(plain);
  });

  it("says how it is used", () => {
    expect(run()).toMatchObject({ status: 1, stderr: expect.stringContaining("Usage") });
  });
});
