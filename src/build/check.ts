/**
 * Everything that has to hold before a change is pushed: types, lint, the tests, once more in other
 * time zones those that can depend on the zone, the fault suites whole, office words (three seconds), and a
 * tenth of each check against invented nurseries. Run by npm run check; ends with the line "N passed, N failed".
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { zoneTests } from "./zone-tests";

/** West, east of the date line, and a half-hour zone: where days go wrong first. */
const OTHER_ZONES = ["America/New_York", "Pacific/Apia", "Asia/Kolkata"];
/** Those of which a tenth is asked here; each says at its top how long the whole takes. */
const CHECKS = ["check:records", "check:takes", "check:calibration", "check:orders"];
const RESULTS = ".build/test-results.json";

let passed = 0;
let failed = 0;

function step(title: string, words: readonly string[], environment = {}): boolean {
  console.log(`\n== ${title}`);
  const started = Date.now();
  const { status } = spawnSync("npm", words, {
    stdio: "inherit",
    env: { ...process.env, ...environment },
    shell: process.platform === "win32",
  });
  console.log(`== ${title}: ${Math.round((Date.now() - started) / 1000)} s`);
  return status === 0;
}

function count(held: boolean): void {
  if (held) passed += 1;
  else failed += 1;
}

/** @param files the tests to run; all of them if there are none */
function tests(zone: string, files: readonly string[]): void {
  rmSync(RESULTS, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${RESULTS}`];
  const green = step(
    `${files.length === 0 ? "all" : files.length} test files in ${zone}`,
    ["test", "--silent", "--", ...reporters, ...files],
    { TZ: zone },
  );
  const results = existsSync(RESULTS) ? JSON.parse(readFileSync(RESULTS, "utf8")) : null;
  passed += results?.numPassedTests ?? 0;
  failed += results?.numFailedTests ?? 0;
  // A suite that breaks before its first test has no failed test to count.
  if (!green && (results?.numFailedTests ?? 0) === 0) failed += 1;
}

for (const script of ["types", "lint"]) count(step(script, ["run", "--silent", script]));
tests("UTC", []);
for (const zone of OTHER_ZONES) tests(zone, zoneTests());
count(step("every call of every action fails", ["run", "check:faults", "--", "--silent"]));
count(step("words as offices write them", ["run", "--silent", "check:words"]));
for (const check of CHECKS) count(step(`a tenth of ${check}`, ["run", check, "--", "--tenth"]));

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
