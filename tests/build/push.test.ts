import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { keepTimeZone } from "../../src/build/push/keep-time-zone";
import { pushFiles, type RunClasp } from "../../src/build/push/push-files";

const OURS = readFileSync("appsscript.json", "utf8");

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "push-"));
  mkdirSync(join(root, "dist"));
  writeFileSync(join(root, "dist/appsscript.json"), OURS);
  writeFileSync(join(root, ".clasp.json"), '{ "scriptId": "some-script", "rootDir": "dist" }');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const zoneToPush = () =>
  JSON.parse(readFileSync(join(root, "dist/appsscript.json"), "utf8")).timeZone;

/** A cloud whose project has some manifest; none where it can't be read. Notes what is pushed. */
function cloudWith(manifest: string | null, pushed: unknown[]): RunClasp {
  return ([word, ...words], folder) => {
    if (word === "push") {
      pushed.push({ words, folder, zone: zoneToPush() });
      return 0;
    }
    expect(JSON.parse(readFileSync(join(folder, ".clasp.json"), "utf8"))).toEqual({
      scriptId: "some-script",
      rootDir: ".",
    });
    if (manifest === null) return 1;
    writeFileSync(join(folder, "appsscript.json"), manifest);
    writeFileSync(join(folder, "Code.js"), "// what is there now");
    return 0;
  };
}

describe("npm run push", () => {
  it("leaves the time zone of the project in the cloud as it is", () => {
    const pushed: unknown[] = [];
    pushFiles(root, cloudWith('{ "timeZone": "America/Bogota", "dependencies": {} }', pushed));
    expect(pushed).toEqual([{ words: ["--force"], folder: root, zone: "America/Bogota" }]);
    expect(existsSync(join(root, "dist/Code.js"))).toBe(false);
  });

  it("pushes nothing where the project can't be read", () => {
    const pushed: unknown[] = [];
    expect(() => pushFiles(root, cloudWith(null, pushed))).toThrow("Nothing was pushed");
    expect(pushed).toEqual([]);
  });

  it("says what is missing where no script is named", () => {
    rmSync(join(root, ".clasp.json"));
    expect(() => pushFiles(root, cloudWith(null, []))).toThrow("copy .clasp.example.json to it");
  });
});

describe("keepTimeZone", () => {
  it("changes the zone and nothing else", () => {
    const kept = JSON.parse(keepTimeZone(OURS, '{ "timeZone": "Asia/Kolkata" }'));
    expect(kept).toEqual({ ...JSON.parse(OURS), timeZone: "Asia/Kolkata" });
  });

  it.each(['{ "dependencies": {} }', '{ "timeZone": "" }'])("refuses %s", (cloud) => {
    expect(() => keepTimeZone(OURS, cloud)).toThrow("names no time zone");
  });
});
