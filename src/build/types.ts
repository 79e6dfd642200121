import { spawnSync } from "node:child_process";
import { whereSentencesStand } from "./where-sentences-stand";

/** The types of all folders; what TypeScript says, and where a sentence stands that it misses. */
const pretty = process.stdout.isTTY ? ["--pretty"] : [];
const { status, stdout } = spawnSync("npx", ["tsc", "--build", ...pretty], {
  encoding: "utf8",
  shell: process.platform === "win32",
});
process.stdout.write(stdout);
const hint = whereSentencesStand(stdout);
if (hint !== null) console.log(`\n${hint}`);
process.exitCode = status ?? 1;
