import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { expect, it } from "vitest";
import { promptModule } from "../../src/local/prompt-engine";

const FILE = "@univerjs/sheets-formula/lib/es/index.js";

it("changes two lines of the engine's module, and no other file", () => {
  const path = resolve("node_modules", FILE);
  const lines = readFileSync(path, "utf8").split("\n");
  const changed = (promptModule(path) ?? "").split("\n");
  expect(changed.filter((line, at) => line !== lines[at]).map((line) => line.trim())).toEqual([
    "}, 0);",
    "if (!this._disposed) this._startProgress();",
  ]);
  expect(promptModule(resolve("node_modules/@univerjs/core/lib/es/index.js"))).toBeNull();
});

it("refuses a version of the engine that is written otherwise", () => {
  const folder = mkdtempSync(join(tmpdir(), "engine-"));
  const path = join(folder, FILE);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, "export const another = 1;");
  expect(() => promptModule(path)).toThrow("no longer fits");
  rmSync(folder, { recursive: true });
});
