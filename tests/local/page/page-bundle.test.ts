import { readFileSync, statSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { pageBundle } from "../../../src/local/page/page-bundle";
import { type PageFile, pageFiles, sidebarFiles } from "../../../src/local/page/page-files";
import { projectRoot } from "../../../src/local/project-root";
import { fakeAddIn } from "./fake-add-in";

/** Any other origin on this computer. */
const SIDEBAR = "http://127.0.0.1:9/";
const PAGE = "http://127.0.0.1:10";
const BUNDLING = 60_000;

describe("the page's files", () => {
  it(
    "are bundled once, until a source changes",
    async () => {
      const made = await pageBundle(projectRoot());
      const first = Object.values(made).map((file) => statSync(file).mtimeMs);
      await pageBundle(projectRoot());
      expect(Object.values(made).map((file) => statSync(file).mtimeMs)).toEqual(first);
      // Without the engine's dictionaries; with them it is 11 MB.
      expect(statSync(made.script).size).toBeLessThan(7_500_000);
      expect(statSync(made.frameScript).size).toBeLessThan(10_000);
    },
    BUNDLING,
  );

  it(
    "name no other place in their policies, and carry the add-in as it is built",
    async () => {
      const addIn = fakeAddIn();
      const bundle = await pageBundle(projectRoot());
      const files = pageFiles({
        root: projectRoot(),
        dist: addIn.dist,
        bundle,
        start: {
          ...{
            fileName: "x.csv",
            drafts: [],
            savesBeside: false,
            locale: "en_GB",
            zone: null,
            seed: 3,
          },
          sidebarAddress: SIDEBAR,
        },
      });
      const all = { ...files, sidebar: sidebarFiles(bundle, () => PAGE)["/"] as () => PageFile };
      const made = Object.entries(all).map(([address, file]) => ({ address, ...file() }));
      const policies = made
        .filter(({ policy }) => policy)
        .map(({ address, policy }) => [address, policy]);
      expect(policies.map(([address]) => address)).toEqual(["/", "/script.html", "sidebar"]);
      for (const [, policy] of policies) {
        expect(policy).toMatch(/^default-src '(?:self|none)'/);
        expect(policy).toContain("base-uri 'none'; form-action 'none'");
        expect(policy).toMatch(/frame-ancestors (?:'none'|'self'|http:\/\/127\.0\.0\.1:10)(?:;|$)/);
        expect(policy?.replace(SIDEBAR, "").replace(PAGE, "")).not.toMatch(
          /https?:|unsafe-eval|\*/,
        );
      }
      expect(files["/Code.js"]?.().content).toBe(readFileSync(`${addIn.dist}/Code.js`, "utf8"));
      const given = JSON.parse(String(files["/start.json"]?.().content));
      expect(given).toMatchObject({
        fileName: "x.csv",
        seed: 3,
        catalogue: [{ name: "DOUBLED", description: "Doubles every number." }],
        pages: { Sidebar: readFileSync(`${addIn.dist}/Sidebar.html`, "utf8") },
      });
      const page = String(files["/"]?.().content);
      for (const [, address] of page.matchAll(/(?:src|href)="(?!data:)([^"]*)"/g)) {
        expect(Object.keys(files)).toContain(`/${address}`);
      }
      expect(page).not.toMatch(/https?:/);
      addIn.remove();
    },
    BUNDLING,
  );
});
