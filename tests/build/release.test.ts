import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { CFB } from "@e965/xlsx";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { launchChromium } from "../../src/build/chromium";
import { installPage } from "../../src/build/install/install-page";
import { releaseFiles } from "../../src/build/install/release-files";
import { zipFile } from "../../src/build/install/zip-file";
import { projectVersion } from "../../src/build/version";
import { type BuiltAddIn, buildAnew } from "../support/built-add-in";

const VERSION = projectVersion();
const FOLDER = `nursery-batches-${VERSION}`;
const PASTED = ["Code.js", "Sidebar.html", "appsscript.json"];

let built: BuiltAddIn;
let browser: Browser;
beforeAll(async () => {
  built = buildAnew();
  for (const name of ["LICENSE", "sample-sheets"])
    symlinkSync(resolve(name), join(built.root, name));
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

describe("the release", () => {
  it("is one zip, which another program reads, with the three files, how to install and what is new", () => {
    const run = spawnSync(
      process.execPath,
      [resolve("src/build/run.mjs"), resolve("src/build/install/release.ts")],
      { cwd: built.root, encoding: "utf8" },
    );
    expect([run.status, run.stderr]).toEqual([0, ""]);
    const zip = CFB.read(readFileSync(join(built.root, "out", `${FOLDER}.zip`)), {
      type: "buffer",
    });
    const held = (name: string) => {
      const entry = CFB.find(zip, `/${FOLDER}/${name}`);
      return entry === null ? null : Buffer.from(entry.content).toString("utf8");
    };
    expect(PASTED.map((name) => held(`script/${name}`))).toEqual(PASTED.map(built.read));
    expect(held("INSTALL.html")).toContain("<title>Install Nursery batches");
    expect(held("WHAT-IS-NEW.txt")).toBe(readFileSync("src/CHANGELOG.md", "utf8"));
    expect(held("LICENSE.txt")).toContain("Apache License");
    expect(held("NOTICES.txt")).toContain("Nicolas DUBIEN");
    expect(held("blank-template.xlsx")).not.toBeNull();
  });

  it("is the same, byte by byte, whenever and wherever it is made", async () => {
    const files = await releaseFiles(built.root, VERSION);
    const zoneBefore = process.env.TZ;
    const zips = ["Pacific/Apia", "America/New_York"].map((zone) => {
      process.env.TZ = zone;
      return Buffer.from(zipFile(files)).toString("base64");
    });
    if (zoneBefore === undefined) delete process.env.TZ;
    else process.env.TZ = zoneBefore;
    expect(zips[0] === zips[1]).toBe(true);
  });
});

describe("the install page", () => {
  it("opens from the disk, asks for no other file, and copies each file whole", async () => {
    const page = (await releaseFiles(built.root, VERSION)).find(({ name }) =>
      name.endsWith("INSTALL.html"),
    );
    const folder = join(built.root, "opened");
    mkdirSync(folder);
    writeFileSync(join(folder, "INSTALL.html"), page?.content ?? "");
    const address = pathToFileURL(join(folder, "INSTALL.html")).href;
    const tab = await browser.newPage();
    const complaints: string[] = [];
    tab.on("pageerror", (error) => complaints.push(error.message));
    tab.on("request", (request) => {
      if (request.url() !== address) complaints.push(request.url());
    });
    await tab.goto(address);
    expect(await tab.title()).toBe(`Install Nursery batches ${VERSION}`);
    await tab.evaluate(() => {
      document.body.append(Object.assign(document.createElement("textarea"), { id: "editor" }));
    });
    const labels = ["Copy the script", "Copy the page", "Copy the list of permissions"];
    for (const [at, name] of PASTED.entries()) {
      await tab.getByRole("button", { name: labels[at] as string }).click();
      await tab.getByText("Copied. Now paste it").nth(at).waitFor();
      await tab.locator("#editor").fill("");
      await tab.locator("#editor").press("Control+V");
      expect((await tab.locator("#editor").inputValue()) === built.read(name)).toBe(true);
    }
    expect(complaints).toEqual([]);
    rmSync(folder, { recursive: true });
    await tab.close();
  });

  it("shows the version and what is new of it", async () => {
    const [first] = await releaseFiles(built.root, VERSION);
    expect(first?.name).toBe(`${FOLDER}/INSTALL.html`);
    const page = String(first?.content);
    expect(page).toContain(`<p>Release ${VERSION}</p>`);
    expect(page).toContain(`<h2>${VERSION}`);
    expect(page).toContain('href="#what-is-new"');
    expect(page).not.toMatch(/<!-- (version|texts|copy)/);
  });

  const texts = {
    ...{ version: "1.2.3", changes: "", frame: "<!-- texts -->" },
    ...{
      install: "Do it\n\n<!-- copy a.js: Take it -->",
      files: { "a.js": 'if (a < b) c("</textarea>")' },
    },
  };

  it("keeps the text of a file from ending the box that it stands in", async () => {
    expect(await installPage(texts)).toContain("if (a &lt; b) c(&quot;&lt;/textarea&gt;&quot;)");
  });

  it("is not made where a file or a link would be missing", async () => {
    const asking = (install: string) => installPage({ ...texts, install });
    await expect(asking("<!-- copy b.js: Take it -->")).rejects.toThrow("copies no file b.js");
    await expect(asking("nothing")).rejects.toThrow("no button for a.js");
    await expect(asking("<!-- copy a.js: Take it -->\n\n[more](../more.md)")).rejects.toThrow(
      "the release has nothing at ../more.md",
    );
  });
});
