import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { callLists } from "../../src/build/call-lists";
import { coreList } from "../../src/build/core-list";
import { filesOf } from "../../src/build/files-of";
import { functionLists } from "../../src/build/function-lists";
import { sectionList } from "../../src/build/section-list";
import { runs } from "../../src/functions/index";

describe("each list", () => {
  const lists = [coreList(), functionLists(), callLists(), sectionList()];
  it.each(lists.flatMap((list) => [...list]))(
    "%s is as its folders say: run npm run sentences",
    (path, text) => {
      expect(readFileSync(path, "utf8")).toBe(text);
    },
  );
});

describe("the list of core", () => {
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

/** Where functions are held that were there before each had a test file of its own. */
const HELD_BY: Readonly<Record<string, string>> = {
  "batch-balance": "tests/core/balance/samples.test.ts",
  "batch-check": "tests/core/check/checked-records.test.ts",
  "batch-due": "tests/core/due/due-tasks.test.ts",
  "batch-lookback": "tests/core/projection/lookback.test.ts",
  "batch-ready": "tests/core/projection/ready-plants.test.ts",
  "batch-stages": "tests/core/projection/stages-and-steps.test.ts",
  "batch-steps": "tests/core/projection/stages-and-steps.test.ts",
  "take-compared": "tests/core/takes/compared-takes.test.ts",
  "take-range": "tests/functions/take-functions.test.ts",
  "take-rate": "tests/functions/take-functions.test.ts",
  "take-reasons": "tests/core/takes/take-reasons.test.ts",
  "take-summary": "tests/core/takes/summed-takes.test.ts",
  "take-trend": "tests/core/takes/take-trend.test.ts",
};

describe("the tests of functions", () => {
  const files = readdirSync("tests/functions");
  const functions = Object.keys(runs).map((name) => name.toLowerCase().replaceAll("_", "-"));

  it.each(functions)("hold %s", (name) => {
    const missing = `tests/functions/${name}.test.ts is missing: write it, against a source outside`;
    expect(name in HELD_BY || files.includes(`${name}.test.ts`), missing).toBe(true);
  });

  it("stand elsewhere only for functions that are there and have none", () => {
    for (const [name, file] of Object.entries(HELD_BY)) {
      expect(readFileSync(file, "utf8")).not.toBe("");
      expect(functions).toContain(name);
      expect(files).not.toContain(`${name}.test.ts`);
    }
  });
});

describe("the lists of calls", () => {
  it("name a file of calls and one of answers, and pass over what has none", () => {
    const lists = callLists(
      new Map([
        ["call-shape.ts", "export interface CallShape<Request, Answer> {"],
        ["plant-count.ts", "export interface PlantCountCalls {"],
      ]),
      new Map([
        ["plant-count.ts", "export const plantCountCalls: AnswerersOf<PlantCountCalls> = {"],
      ]),
    );
    const [calls = "", answers = ""] = [...lists.values()];
    expect(calls).toContain('import type { PlantCountCalls } from "./plant-count";');
    expect(calls).toContain("extends PlantCountCalls {}");
    expect(calls).not.toContain("CallShape");
    expect(answers).toContain('import { plantCountCalls } from "./plant-count";');
    expect(answers).toContain("  ...plantCountCalls,\n");
  });

  const answered = [...filesOf("src/workbook/answers").values()].join("");
  const groups = [...filesOf("src/wire")].flatMap(([file, text]) =>
    [...text.matchAll(/^export interface (\w+Calls) \{/gm)].map(([, name = ""]) => [file, name]),
  );
  it.each(groups)("src/wire/%s is answered: %s stand in src/workbook/answers", (_, name) => {
    expect(answered).toContain(`: AnswerersOf<${name}> = {`);
  });
});

describe("the list of sections", () => {
  it("puts a new section before Check, by the letters", () => {
    const [list = ""] = sectionList(["set-up", "today", "plant-count", "check", "bees"]).values();
    expect(
      [...list.matchAll(/key: "(.*?)", title: text\.(\w+)/g)].map(([, ...two]) => two),
    ).toEqual([
      ["today", "today"],
      ["bees", "bees"],
      ["plant-count", "plantCount"],
      ["check", "check"],
      ["set-up", "setUp"],
    ]);
  });

  it("lacks no file of a section: each stands in a folder of its name", () => {
    const files = readdirSync("src/sidebar", { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith("-section.ts"),
    );
    const [list = ""] = sectionList().values();
    expect(files.length).toBeGreaterThan(5);
    for (const file of files) expect(list).toContain(`from "./${file.replace(/\.ts$/, "")}"`);
  });
});
