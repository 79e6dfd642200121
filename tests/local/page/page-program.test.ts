import { type ChildProcess, spawn } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { fakeAddIn } from "./fake-add-in";

const endings: (() => void)[] = [];
afterEach(() => {
  for (const end of endings.splice(0)) end();
});

/** Starts the program as npm start does, on a small table. */
function start(words: readonly string[], environment: NodeJS.ProcessEnv = {}) {
  const addIn = fakeAddIn();
  endings.push(addIn.remove);
  const child = spawn(
    process.execPath,
    ["src/build/run.mjs", "src/local/page.ts", addIn.table, "--dist", addIn.dist, ...words],
    { env: { ...process.env, DISPLAY: "", WAYLAND_DISPLAY: "", ...environment } },
  );
  endings.push(() => child.kill("SIGKILL"));
  return child;
}

/** The first address that the program prints. */
function address(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    const hear = (part: Buffer) => {
      said += part;
      const found = /http:\/\/127\.0\.0\.1:\d+\/[\w-]{24}\//.exec(said);
      if (found) resolve(found[0]);
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.on("exit", (code) => reject(new Error(`ended with ${code}: ${said}`)));
  });
}

/** A folder with an opener that writes down what it is asked to open. */
function fakeOpener() {
  const folder = mkdtempSync(path.join(tmpdir(), "opener-"));
  endings.push(() => rmSync(folder, { recursive: true, force: true }));
  const opened = path.join(folder, "opened");
  writeFileSync(opened, "");
  const opener = path.join(folder, "xdg-open");
  writeFileSync(opener, `#!/bin/sh\nprintf '%s' "$1" > '${opened}'\n`);
  chmodSync(opener, 0o755);
  return { folder, opened: () => readFileSync(opened, "utf8") };
}

async function ended(child: ChildProcess): Promise<number | null> {
  const code = new Promise<number | null>((resolve) => child.on("exit", resolve));
  child.kill("SIGINT");
  return code;
}

describe("npm start", () => {
  it("names the page's program, and npm run report the one for the terminal", () => {
    const { scripts } = JSON.parse(readFileSync("package.json", "utf8"));
    expect(scripts.start).toMatch(/ src\/local\/page\.ts$/);
    expect(scripts.report).toMatch(/ src\/local\/report\.ts$/);
  });

  it("prints the address and serves, on a machine without desktop or opener", async () => {
    const opener = fakeOpener();
    for (const environment of [
      // An opener but no desktop; a desktop but no opener.
      { PATH: `${opener.folder}${path.delimiter}${process.env.PATH}` },
      { DISPLAY: ":9", PATH: "" },
    ]) {
      const child = start([], environment);
      const answer = await fetch(await address(child));
      expect(answer.status).toBe(200);
      expect(await ended(child)).toBe(0);
    }
    expect(opener.opened()).toBe("");
  });

  it.skipIf(process.platform === "darwin" || process.platform === "win32")(
    "opens the page in the person's browser, unless told not to",
    async () => {
      const opener = fakeOpener();
      const desktop = {
        DISPLAY: ":9",
        PATH: `${opener.folder}${path.delimiter}${process.env.PATH}`,
      };
      const closed = start(["--no-open"], desktop);
      await fetch(await address(closed));
      await ended(closed);
      expect(opener.opened()).toBe("");
      const child = start([], desktop);
      const at = await address(child);
      await expect.poll(opener.opened).toBe(at);
      await ended(child);
    },
  );
});
