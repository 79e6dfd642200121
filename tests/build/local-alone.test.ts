import { readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, targetOf } from "../../src/build/imports-of";

const README = readFileSync("src/local/README.md", "utf8");

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(ts|mts|mjs|js)$/.test(name))
    .map((name) => join(folder, name).split(sep).join("/"));
}

/** The section of the README under a heading. */
function section(heading: string): string {
  return README.split(/^## /m).find((one) => one.startsWith(`${heading}\n`)) ?? "";
}

/** What stands first in the rows of the table in a section, without its quotes. */
function namedIn(heading: string): string[] {
  return [...section(heading).matchAll(/^\| `([^`]+)`/gm)].map(([, name]) => name ?? "");
}

/** The package that an import names: "@univerjs/sheets/locale/en-US" is one of @univerjs/sheets. */
function packageOf(from: string): string {
  return from.startsWith("@") ? from.split("/").slice(0, 2).join("/") : (from.split("/")[0] ?? "");
}

const OUTSIDE = filesBelow("src").filter((file) => !file.startsWith("src/local/"));
const PROGRAMS = /^src\/(build|checks)\//;
const pointsInside = (file: string) =>
  importsOf(file).flatMap((one) => {
    const target = targetOf(one);
    return target?.startsWith("src/local/") ? [target.slice("src/local/".length)] : [];
  });

describe("src/local stands alone", () => {
  it("imports the packages that its README names, and these alone", () => {
    const imported = filesBelow("src/local")
      .flatMap(importsOf)
      .map(({ from }) => from)
      .filter((from) => !from.startsWith(".") && !from.startsWith("node:"))
      .map(packageOf);
    const named = namedIn("What it stands on").flatMap((name) =>
      name.endsWith("/*") ? imported.filter((one) => one.startsWith(name.slice(0, -1))) : [name],
    );
    expect(named.length).toBeGreaterThan(5);
    expect([...new Set(imported)].sort()).toEqual([...new Set(named)].sort());
  });

  it("is reached from src/build, src/checks and tests, and from nothing that is handed out", () => {
    const reaching = OUTSIDE.filter((file) => pointsInside(file).length > 0);
    expect(reaching.length).toBeGreaterThan(5);
    expect(reaching.filter((file) => !PROGRAMS.test(file))).toEqual([]);
  });

  it("is reached through the files that its README names, all of which are used", () => {
    const tests = filesBelow("tests").filter((file) => !file.startsWith("tests/local/"));
    const used = [...OUTSIDE, ...tests].flatMap(pointsInside).map((file) => `${file}.ts`);
    expect([...new Set(used)].sort()).toEqual(namedIn("Who may stand on it").sort());
  });

  it("names no file of the project but what its README says it runs", () => {
    const paths = filesBelow("src/local").flatMap((file) =>
      [...readFileSync(file, "utf8").matchAll(/"(src\/(?!local\/)[^"]*)"/g)].map(
        ([, path]) => path,
      ),
    );
    expect(paths).toEqual(["src/build/run.mjs"]);
    expect(section("What it stands on")).toContain("`src/build/run.mjs`");
  });
});
