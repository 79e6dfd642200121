import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { build } from "esbuild";
import { afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { bundledPackages } from "../../src/build/licences/bundled-packages";
import { fullNotices, shortNotices } from "../../src/build/licences/notices";
import { sourceNotices } from "../../src/build/licences/source-notices";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";

describe("the built files", () => {
  let built: BuiltAddIn;
  beforeAll(() => {
    built = buildAddIn();
  });

  it("carry our own licence", () => {
    for (const name of ["Code.js", "Sidebar.html"]) {
      expect(built.read(name)).toContain("Copyright 2026 the authors of Nursery batches.");
      expect(built.read(name)).toContain("Licensed under the Apache License, Version 2.0");
    }
  });

  it("carry the notices of all whose code they hold, and name nobody else", () => {
    const [notices] = built.read("Code.js").split("*/");
    for (const kept of [
      "MIT: pure-rand",
      "Nicolas DUBIEN",
      "Permission is hereby granted, free of charge",
    ]) {
      expect(notices).toContain(kept);
    }
    expect(notices).not.toMatch(/stdlib|esbuild|vitest/);
  });

  it("have the whole texts beside them, for a release", () => {
    const notices = readFileSync(join(built.root, ".build/NOTICES.txt"), "utf8");
    expect(notices).toContain("Permission is hereby granted, free of charge");
    expect(notices).toMatch(/pure-rand \d+\.\d+\.\d+/);
  });
});

describe("bundledPackages", () => {
  let root: string;
  beforeEach(() => {
    root = mkdtempSync(join(tmpdir(), "licences-"));
    put(
      "a",
      { license: "MIT" },
      { LICENSE: "MIT of a", "index.js": "export const a = () => 'a';" },
    );
  });
  afterEach(() => rmSync(root, { recursive: true, force: true }));

  function put(name: string, about: object, files: Readonly<Record<string, string>>): void {
    const folder = join(root, "node_modules", name);
    const all = { ...files, "package.json": JSON.stringify({ name, version: "1.0.0", ...about }) };
    for (const [file, text] of Object.entries(all)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
  }

  async function bundledBy(code: string) {
    const { metafile } = await build({
      ...{ absWorkingDir: root, bundle: true, write: false, metafile: true, outfile: "out.js" },
      ...{ format: "esm", treeShaking: true },
      stdin: { contents: code, resolveDir: root },
    });
    return bundledPackages(metafile, root);
  }

  it("gives name, version, licence and texts of what is in the bundle", async () => {
    put(
      "@b/c",
      { license: "Apache-2.0" },
      {
        ...{ "LICENSE.txt": "Apache of c", NOTICE: "Copyright of c" },
        "index.js": "export const c = 3;",
      },
    );
    const packages = await bundledBy(
      "import { a } from 'a'; import { c } from '@b/c'; console.log(a(), c);",
    );
    expect(packages).toMatchObject([
      { name: "@b/c", version: "1.0.0", licence: "Apache-2.0", noticeTexts: ["Copyright of c"] },
      { name: "a", version: "1.0.0", licence: "MIT", licenceTexts: ["MIT of a"], noticeTexts: [] },
    ]);
    const short = shortNotices(packages).join("\n");
    expect(short).toContain(
      "Apache-2.0 (www.apache.org/licenses/LICENSE-2.0): @b/ c\nCopyright of c",
    );
    expect(short).toContain("MIT: a\nMIT of a");
    expect(fullNotices(packages)).toContain("@b/c 1.0.0\n\nApache of c");
  });

  it("leaves out what was read and then left out", async () => {
    expect(await bundledBy("import { a } from 'a'; console.log(1);")).toEqual([]);
  });

  it.each([
    ["names no licence", {}, { LICENSE: "MIT" }],
    ["has no licence text", { license: "MIT" }, { "README.md": "MIT" }],
  ])("ends the build where a package %s", async (complaint, about, files) => {
    put("d", about, { ...files, "index.js": "export const d = 4;" } as Record<string, string>);
    await expect(bundledBy("import { d } from 'd'; console.log(d);")).rejects.toThrow(
      `d is bundled and ${complaint}`,
    );
  });

  it("finds the notices of earlier authors, equal terms once", () => {
    const quoted = (who: string) =>
      `/**\n* ## Notice\n*\n* \`\`\`text\n* (C) Copyright ${who}.\n*\n* Keep this\n* notice.\n* \`\`\`\n*/\n`;
    const file = join(root, "x.js");
    writeFileSync(file, `${quoted("B 2007")}let x = "\`\`\`text";\n${quoted("A 2006")}`);
    expect(sourceNotices([file])).toEqual([
      { copyrights: ["Copyright A 2006.", "Copyright B 2007."], terms: "Keep this notice." },
    ]);
  });
});

describe("the packages that we work with", () => {
  interface Locked {
    readonly license?: string;
    /** Of a folder of ours that stands in for a package, and has a line of its own. */
    readonly link?: boolean;
  }
  const { packages } = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
    packages: Readonly<Record<string, Locked>>;
  };
  const locked = Object.entries(packages).filter(([folder]) => folder !== "");

  it("name a licence, save two that come with others and bring its text", () => {
    const silent = locked
      .filter(([, { license, link }]) => license === undefined && !link)
      .map(([name]) => name);
    expect(silent).toEqual(["node_modules/@univerjs/telemetry", "node_modules/fuzzy"]);
    expect(readFileSync("node_modules/@univerjs/telemetry/LICENSE", "utf8")).toContain(
      "Apache License",
    );
    expect(readFileSync("node_modules/fuzzy/LICENSE-MIT", "utf8")).toContain(
      "Permission is hereby granted, free of charge",
    );
  });

  it("are free to use, and what we hand on asks for a notice alone", () => {
    const known =
      /^\(?(0BSD|Apache-2\.0|BSD|BSD-[23]-Clause|BSL-1\.0|BlueOak-1\.0\.0|CC-BY-3\.0|CC0-1\.0|ISC|MIT|MPL-2\.0|Unicode-DFS-2016)( (AND|OR) (Apache-2\.0|BSL-1\.0|CC0-1\.0|MIT))*\)?$/;
    const unknown = locked.filter(([, { license = "MIT" }]) => !known.test(license));
    expect(unknown).toEqual([]);
    const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as {
      dependencies: Readonly<Record<string, string>>;
    };
    const handedOn = Object.keys(dependencies).map(
      (name) => packages[`node_modules/${name}`]?.license,
    );
    expect(handedOn.every((one) => /^(MIT|Apache-2\.0( AND BSL-1\.0)?)$/.test(one ?? ""))).toBe(
      true,
    );
    expect(existsSync("LICENSE")).toBe(true);
  });
});

describe("notices of a package of several licences", () => {
  it("say all of them, with what it took over from elsewhere", async () => {
    const { metafile } = await build({
      stdin: { contents: 'import "@stdlib/math-base-special-betainc";', resolveDir: "." },
      bundle: true,
      write: false,
      metafile: true,
    });
    const packages = bundledPackages(metafile, process.cwd());
    expect(fullNotices(packages)).toContain("END OF TERMS AND CONDITIONS");
    expect(fullNotices(packages)).toContain(
      "Boost Software License - Version 1.0 - August 17th, 2003",
    );
    const notices = shortNotices(packages).join("\n");
    for (const kept of [
      "Apache-2.0 (www.apache.org/licenses/LICENSE-2.0): @stdlib/",
      "Apache-2.0 AND BSL-1.0 (",
      "math-base-special-betainc",
      "The Stdlib Authors.",
      "Copyright John Maddock 2006.",
      "Boost Software License, Version 1.0",
      "by Stephen L. Moshier",
    ]) {
      expect(notices).toContain(kept);
    }
  });
});
