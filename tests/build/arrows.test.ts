import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { transformSync } from "esbuild";
import { describe, expect, it } from "vitest";
import { type Import, importsOf, targetOf } from "../../src/build/imports-of";

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|mts|mjs|js)$/.test(name))
    .map((name) => join(folder, name));
}

/** The folder of src that an import points into; null for packages. */
function folderOf(one: Import): string | null {
  const parts = targetOf(one)?.split("/");
  if (!parts) return null;
  return parts[0] === "src" ? (parts[1] ?? null) : `outside: ${one.from}`;
}

const FOLDERS: Readonly<Record<string, readonly string[]>> = {
  sentences: ["sentences"],
  core: ["core"],
  wording: ["wording", "core", "sentences"],
  door: ["door", "core"],
  functions: ["functions", "door", "core", "wording", "sentences"],
  wire: ["wire", "core", "wording"],
  workbook: ["workbook", "door", "core", "wire", "wording", "sentences"],
  sidebar: ["sidebar", "core", "wire", "wording", "sentences"],
  local: ["local", "sentences"],
};

describe.each(Object.entries(FOLDERS))("src/%s", (folder, allowed) => {
  const imports = filesBelow(`src/${folder}`).flatMap(importsOf);

  it(`imports from ${allowed.join(", ")} alone`, () => {
    const wrong = imports.filter((one) => {
      const target = folderOf(one);
      return target !== null && !allowed.includes(target);
    });
    expect(wrong).toEqual([]);
  });

  // Of the sentences and their wording each file is one, so that a bundle takes along no more than it
  // says; of the types of the calls, since nothing of them is left in a bundle.
  it("reaches another folder through its public list", () => {
    const deep = imports.filter((one) => {
      const target = folderOf(one);
      const list =
        /^(\.\.\/)+((core|door)(\/index)?|wire\/[a-z-]+|sentences\/made\/[a-z-]+|wording\/[a-z-]+)$/;
      return target !== null && target !== folder && !list.test(one.from);
    });
    expect(deep).toEqual([]);
  });
});

describe("the folders of src", () => {
  it("are all watched, save the build and the checks, which may see all, and the one entry", () => {
    const folders = readdirSync("src", { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name);
    expect(folders.sort()).toEqual([...Object.keys(FOLDERS), "build", "checks"].sort());
  });

  it("meet in main.ts, which sees the functions and the workbook", () => {
    const imports = importsOf("src/main.ts");
    expect(new Set(imports.map(folderOf))).toEqual(new Set(["functions", "workbook"]));
  });

  it("hold nothing that runs in src/wire, on which page and script both stand", () => {
    const files = filesBelow("src/wire");
    expect(files.length).toBeGreaterThan(5);
    const running = files.filter((file) => {
      const { code } = transformSync(readFileSync(file, "utf8"), { loader: "ts" });
      return code.trim() !== "";
    });
    expect(running).toEqual([]);
  });
});

describe("packages", () => {
  const SMALL = /^(pure-rand|date-fns)/;

  it.each(["core", "door", "functions", "workbook"])(
    "that src/%s brings into the built file are chance and dates",
    (folder) => {
      const packages = filesBelow(`src/${folder}`)
        .flatMap(importsOf)
        .filter((one) => !one.from.startsWith("."));
      expect(packages.filter(({ from }) => !SMALL.test(from))).toEqual([]);
    },
  );

  it("are read as a script would: imports of each form are seen", () => {
    const seen = filesBelow("src/core/statistics").flatMap(importsOf);
    expect(seen.map(({ from }) => from)).toEqual(
      expect.arrayContaining(["../faults/input-error", "pure-rand/distribution/uniformFloat64"]),
    );
    expect(seen.some(({ typeOnly }) => typeOnly)).toBe(true);
  });
});

describe("src/core", () => {
  const files = filesBelow("src/core");
  const code = (file: string) =>
    readFileSync(file, "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");

  it("throws no dice, reads no clock, knows no Date", () => {
    expect(files.length).toBeGreaterThan(50);
    const forbidden = /Math\.random|Date\.now|\bnew Date\b|\bDate\s*[.(]|\bDate\b(?=\s*[,)])/;
    const wrong = files.filter((file) => forbidden.test(code(file)));
    expect(wrong).toEqual([]);
  });

  it("sees no spreadsheet, no page, no console", () => {
    const forbidden = /\b(SpreadsheetApp|HtmlService|Utilities|document|console|process)\./;
    expect(files.filter((file) => forbidden.test(code(file)))).toEqual([]);
  });
});
