import { existsSync, readdirSync, readFileSync } from "node:fs";
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
      expect.arrayContaining(["../faults", "pure-rand/distribution/uniformFloat64"]),
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

  // "src/core/<folder>/index.ts" is a folder's face; one without hides nothing, as does what stands in no folder.
  const hasFace = (folder: string) => existsSync(`src/core/${folder}/index.ts`);
  const pastTheFace = (imports: readonly Import[]) =>
    imports.flatMap((one) => {
      const target = targetOf(one)?.split("/") ?? [];
      const [, core, folder, ...inside] = target;
      const own = one.file.split("/").slice(0, 3).join("/") === `src/core/${folder}`;
      const past = folder !== undefined && hasFace(folder) && inside.length > 0;
      const isWrong = core === "core" && (own ? inside.length === 0 : past);
      return isWrong ? [`${one.file} imports ${one.from}`] : [];
    });

  it("has folders that know one another by their faces alone, and their own files without", () => {
    expect(pastTheFace(files.flatMap(importsOf))).toEqual([]);
  });

  it("has faces that are lists by hand, short enough to be read", () => {
    const faces = files.filter((file) => /^src\/core\/[^/]+\/index\.ts$/.test(file));
    expect(faces.length).toBeGreaterThan(15);
    for (const face of faces) {
      expect(
        code(face)
          .replace(/export (type )?\{[^}]*\} from "[^"]+";/g, "")
          .trim(),
        face,
      ).toBe("");
    }
  });

  it("would be told of who goes past a face, or asks at its own", () => {
    const by = (file: string, from: string) => pastTheFace([{ file, from, typeOnly: true }]);
    expect(by("src/core/due/a.ts", "../dates/b")).toEqual(["src/core/due/a.ts imports ../dates/b"]);
    expect(by("src/core/due/a.ts", "../due")).toEqual(["src/core/due/a.ts imports ../due"]);
    expect(by("src/core/index.ts", "./due/a")).toEqual(["src/core/index.ts imports ./due/a"]);
    expect(
      ["../dates", "./c", "../answer"].flatMap((from) => by("src/core/due/a.ts", from)),
    ).toEqual([]);
  });
});
