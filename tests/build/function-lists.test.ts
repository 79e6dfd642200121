import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { coreList } from "../../src/build/core-list";
import { functionLists } from "../../src/build/function-lists";
import { runs } from "../../src/functions/index";

describe("the list of core", () => {
  it.each([...coreList()])("%s is as its folders say: run npm run sentences", (path, text) => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("has the face of a folder, and each file of one that has none", () => {
    const core = mkdtempSync(join(tmpdir(), "core-"));
    for (const file of [
      "faced/index.ts",
      "faced/inside.ts",
      "bare/one.ts",
      "bare/two.ts",
      "alone.ts",
    ]) {
      mkdirSync(join(core, dirname(file)), { recursive: true });
      writeFileSync(join(core, file), "");
    }
    const [list = ""] = coreList(core).values();
    rmSync(core, { recursive: true });
    expect([...list.matchAll(/"(.*)"/g)].map(([, path]) => path)).toEqual([
      ...["./alone", "./bare/one", "./bare/two", "./faced"],
    ]);
  });
});

describe("the lists of functions", () => {
  it.each([...functionLists()])("%s is as its folder says: run npm run sentences", (path, text) => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("name a file by its export, of more words too, and pass over what is no function", () => {
    const lists = functionLists(
      new Map([
        ["plant-count.ts", "export const plantCountHelp: HelpOf<typeof plantCount> = {"],
        ["usual.ts", "export const DAYS = 7;"],
      ]),
    );
    const [runsList, helpsList] = [...lists.values()];
    expect(runsList).toContain('import { plantCount } from "./plant-count";');
    expect(runsList).toContain("{\n  PLANT_COUNT: plantCount,\n}");
    expect(helpsList).toContain("  PLANT_COUNT: plantCountHelp,");
    expect(runsList).not.toContain("usual");
  });

  it("lack no file that makes a function", () => {
    const makers = readdirSync("src/functions").filter((file) =>
      / = functionOf\(/.test(readFileSync(`src/functions/${file}`, "utf8")),
    );
    expect(Object.keys(runs)).toHaveLength(makers.length);
  });
});
