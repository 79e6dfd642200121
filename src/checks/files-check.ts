import { spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { text } from "node:stream/consumers";
import { HOSTILE_FILES, type HostileFile } from "./files/hostile-files";

/**
 * Gives the report a folder of files that are damaged or made to do harm, one after the other, and
 * prints what each took and what was said. Ends with 1 when one of them takes more than a person
 * should have to give, or ends in anything but its one sentence. Run by npm run check:files; words
 * behind a -- name the files, or parts of their names.
 */

const MOST_SECONDS = 20;
const MOST_MEGABYTES = 1000;

/**
 * Loaded into every program that the report starts, itself included: writes down what it took, while
 * it runs, since a program that is stopped has no last word.
 */
const NOTES = `
const { renameSync, writeFileSync } = require("node:fs");
const { isMainThread, threadId } = require("node:worker_threads");
const note = () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const took = { seconds: (userCPUTime + systemCPUTime) / 1e6, megabytes: maxRSS / 1024 };
  const name = process.env.NOTES_FOLDER + "/" + process.pid;
  // Moved into place whole: the program may be stopped at any moment.
  writeFileSync(name + "-" + threadId, JSON.stringify(took));
  renameSync(name + "-" + threadId, name + ".json");
};
process.on("exit", note);
// A thread that only watches goes on while the main one hangs.
if (isMainThread) {
  const { Worker } = require("node:worker_threads");
  new Worker(__filename, { env: process.env }).unref();
} else setInterval(note, 50);
`;

interface Took {
  readonly seconds: number;
  readonly megabytes: number;
}

interface Ended extends Took {
  readonly code: number | null;
  readonly output: string;
}

async function report(folder: string, file: HostileFile): Promise<Ended> {
  const notes = mkdtempSync(path.join(folder, "notes-"));
  const bytes = file.bytes();
  writeFileSync(path.join(folder, file.name), bytes);
  const child = spawn(
    process.execPath,
    ["src/build/run.mjs", "src/local/report.ts", path.join(folder, file.name), "--out", folder],
    {
      stdio: ["ignore", "pipe", "pipe"],
      env: {
        ...process.env,
        NOTES_FOLDER: notes,
        NODE_OPTIONS: `--require ${path.join(folder, "notes.cjs")}`,
      },
    },
  );
  const code = new Promise<number | null>((resolve) => child.once("close", resolve));
  const [complaints, , ended] = await Promise.all([text(child.stderr), text(child.stdout), code]);
  const took = readdirSync(notes)
    .filter((name) => name.endsWith(".json"))
    .map((name) => JSON.parse(readFileSync(path.join(notes, name), "utf8")) as Took);
  rmSync(path.join(folder, file.name));
  return {
    code: ended,
    output: complaints.trim(),
    seconds: took.reduce((sum, { seconds }) => sum + seconds, 0),
    // The report waits while the file is read: both are there at once.
    megabytes: took.reduce((sum, { megabytes }) => sum + megabytes, 0),
  };
}

/** What is wrong with how it ended; empty when nothing is. */
function faults(
  { code, output, seconds, megabytes }: Ended,
  { says, name }: HostileFile,
): string[] {
  const lines = output.split("\n").filter((line) => !/^Calculating .* \.\.\.$/.test(line));
  const found: string[] = [];
  if (seconds > MOST_SECONDS) found.push(`more than ${MOST_SECONDS} s`);
  if (megabytes > MOST_MEGABYTES) found.push(`more than ${MOST_MEGABYTES} MB`);
  if (says === null) {
    if (code !== 0) found.push("not read");
  } else if (code !== 1 || lines.length !== 1 || !lines[0]?.startsWith(name)) {
    found.push("not ended in one sentence");
  } else if (!says.test(lines[0])) found.push(`does not say ${says}`);
  return found;
}

const wanted = process.argv.slice(2);
const files = HOSTILE_FILES.filter(
  ({ name }) => wanted.length === 0 || wanted.some((word) => name.includes(word)),
);
const folder = mkdtempSync(path.join(tmpdir(), "hostile-files-"));
let missed = 0;
try {
  writeFileSync(path.join(folder, "notes.cjs"), NOTES);
  console.log(`${"".padEnd(36)}${"CPU s".padStart(7)}${"MB".padStart(7)}`);
  for (const file of files) {
    const ended = await report(folder, file);
    const found = faults(ended, file);
    if (found.length > 0) missed += 1;
    const took = `${ended.seconds.toFixed(1).padStart(7)}${ended.megabytes.toFixed(0).padStart(7)}`;
    const ending =
      file.says === null && ended.code === 0 ? "read" : ended.output.split("\n").at(-1);
    console.log(
      `${file.name.padEnd(36)}${took}  ${ending}${found.map((one) => `\n  MISSED: ${one}`).join("")}`,
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(
  `\n${files.length - missed} of ${files.length} files end within ${MOST_SECONDS} s of CPU and ${MOST_MEGABYTES} MB, read rightly or with their one sentence`,
);
if (missed > 0) process.exitCode = 1;
