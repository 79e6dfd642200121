import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { projectVersion } from "../../src/build/version";
import { nursery } from "../../src/sentences/made/page";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";

let built: BuiltAddIn;
beforeAll(() => {
  built = buildAddIn();
});

describe("the version", () => {
  it("is one and the same in package.json, the lock file and the built files", () => {
    const version = projectVersion();
    const lock = JSON.parse(readFileSync("package-lock.json", "utf8"));
    expect([lock.version, lock.packages[""].version]).toEqual([version, version]);
    expect(built.read("Code.js").split("\n")[0]).toBe(`// Nursery batches ${version}`);
    expect(built.read("Sidebar.html")).toContain(`<p>${nursery()} ${version}</p>`);
  });

  it("has an entry in the list of what is new, before those of older versions", () => {
    const versions = [...readFileSync("src/CHANGELOG.md", "utf8").matchAll(/^## (\S+)/gm)];
    expect(versions[0]?.[1]).toBe(projectVersion());
    expect(versions.length).toBeGreaterThan(1);
  });
});
