import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { registry } from "../../src/functions/registry";
import { english } from "../../src/sentences/english";
import { caution } from "../../src/sentences/made/page";
import { type BuiltAddIn, buildAnew } from "../support/built-add-in";

const FILES = ["Code.js", "Sidebar.html", "appsscript.json"];
let built: BuiltAddIn;
beforeAll(() => {
  built = buildAnew();
});

describe("what is pushed", () => {
  it("is three files", () => {
    expect(readdirSync(join(built.root, "dist")).sort()).toEqual(FILES);
  });

  it("is exactly those by clasp's own list, with the example project file", () => {
    const example = JSON.parse(readFileSync(".clasp.example.json", "utf8"));
    writeFileSync(
      join(built.root, ".clasp.json"),
      JSON.stringify({ ...example, scriptId: "no-project-at-all" }),
    );
    const clasp = resolve("node_modules/@google/clasp/build/src/index.js");
    const run = spawnSync(process.execPath, [clasp, "show-file-status", "--json"], {
      cwd: built.root,
      encoding: "utf8",
    });
    expect([run.status, run.stderr]).toEqual([0, ""]);
    const { filesToPush, untrackedFiles } = JSON.parse(run.stdout);
    expect(filesToPush.map((file: string) => basename(file)).sort()).toEqual(FILES);
    expect(untrackedFiles).toEqual([]);
  });

  it("asks for the open spreadsheet and its own pages, and for nothing else", () => {
    const manifest = JSON.parse(built.read("appsscript.json"));
    expect(manifest.oauthScopes).toEqual([
      "https://www.googleapis.com/auth/spreadsheets.currentonly",
      "https://www.googleapis.com/auth/script.container.ui",
    ]);
    expect(manifest.runtimeVersion).toBe("V8");
    expect(manifest.dependencies).toEqual({});
    expect(Object.keys(manifest)).not.toContain("webapp");
  });

  // Our sentences quote cells: batches, names, notes. They are for the person at the sheet alone.
  // NONE is "Exceptions are not logged": developers.google.com/apps-script/manifest, exceptionLogging.
  it("hands no sentence of a fault to a log outside the workbook", () => {
    expect(JSON.parse(built.read("appsscript.json")).exceptionLogging).toBe("NONE");
    expect(built.read("Code.js")).not.toMatch(/\b(console|Logger)\s*\./);
  });

  it("names no project of anybody's", () => {
    const example = JSON.parse(readFileSync(".clasp.example.json", "utf8"));
    expect(example.rootDir).toBe("dist");
    // A real id is one long word.
    expect(example.scriptId).toMatch(/ /);
  });
});

describe("the sidebar page", () => {
  it("lists every function with its sentence, and asks nothing of other servers", () => {
    const page = built.read("Sidebar.html");
    for (const { name, sentence } of registry) {
      expect(page).toContain(`<code>${name}</code>`);
      expect(page).toContain(sentence.replace(/"/g, "&quot;"));
    }
    expect(page).not.toMatch(/<!-- (functions|style|script|round sheet style) -->/);
    // The name of SVG's namespace is no address that anything is asked of.
    const addresses = page.replaceAll('"http://www.w3.org/2000/svg"', "");
    expect(addresses).not.toMatch(/https?:|\/\/[a-z0-9-]+\.[a-z]/i);
    const markup = page.replace(/<script>.*<\/script>/s, "");
    expect(markup).not.toMatch(/\s(src|href|action|srcset|on[a-z]+)\s*=/i);
    expect(page).not.toMatch(/@import|[\s:,]url\((?!["']?data:)/i);
    const askers =
      /\b(fetch|XMLHttpRequest|WebSocket|EventSource|sendBeacon|importScripts|import)\(/;
    expect(page).not.toMatch(askers);
    // One script, inline: what comes from the sheet is shown as text, never made into markup.
    expect(page.match(/<script[^>]*>/g)).toEqual(["<script>"]);
    expect(page).not.toMatch(/innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(/);
    // Served as a template, this would begin a piece of server code.
    expect(page).not.toContain("<?");
  });

  it("warns of blades, alcohol, flame, sprays and moving plants", () => {
    expect(built.read("Sidebar.html")).toContain(caution());
    expect(english.page.caution).toMatch(
      /blades.*alcohol.*flame.*sprays.*plants that move.*labels.*rules/is,
    );
  });
});
