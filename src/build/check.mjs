/**
 * Everything that has to hold before a change is pushed: types, lint, and the tests in four time
 * zones. Run by npm run check; ends with the line "N passed, N failed".
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";

/** West, east of the date line, a half-hour zone, and none: where days go wrong first. */
const ZONES = ["UTC", "America/New_York", "Pacific/Apia", "Asia/Kolkata"];
const RESULTS = ".build/test-results.json";

let passed = 0;
let failed = 0;

function step(title, command, args, environment = {}) {
  console.log(`\n== ${title}`);
  const { status } = spawnSync(command, args, {
    stdio: "inherit",
    env: { ...process.env, ...environment },
    shell: process.platform === "win32",
  });
  return status === 0;
}

for (const [title, script] of [
  ["types", "types"],
  ["lint", "lint"],
]) {
  if (step(title, "npm", ["run", "--silent", script])) passed += 1;
  else failed += 1;
}

for (const zone of ZONES) {
  rmSync(RESULTS, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${RESULTS}`];
  const green = step(`tests in ${zone}`, "npm", ["test", "--silent", "--", ...reporters], {
    TZ: zone,
  });
  const results = existsSync(RESULTS) ? JSON.parse(readFileSync(RESULTS, "utf8")) : null;
  passed += results?.numPassedTests ?? 0;
  failed += results?.numFailedTests ?? 0;
  // A suite that breaks before its first test has no failed test to count.
  if (!green && (results?.numFailedTests ?? 0) === 0) failed += 1;
}

console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 && passed > 0 ? 0 : 1);
