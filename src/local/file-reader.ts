/**
 * The program that reads a person's file, in a process of its own with an end to its time and its
 * memory (see read-apart.ts). What to read comes in as JSON, and the tabs go out as JSON.
 */
import { text } from "node:stream/consumers";
import { Worker } from "node:worker_threads";
import { openFile } from "./open-file";
import { PersonError } from "./person-error";
import type { ReaderAnswer, ReaderTask } from "./read-apart";

/**
 * Looks at the whole process from a thread of its own, which goes on while the reading hangs. Node's
 * own limits bound neither time nor the memory of byte arrays.
 */
const WATCH = `
const { writeSync } = require("node:fs");
const { workerData } = require("node:worker_threads");
const over = (limit) => {
  writeSync(2, "\\nover " + limit + "\\n");
  process.kill(process.pid, "SIGKILL");
};
setInterval(() => {
  const { user, system } = process.cpuUsage();
  if ((user + system) / 1000 > workerData.cpuMs) over("time");
  if (process.memoryUsage.rss() > workerData.bytes) over("memory");
}, 20);
`;

const task = JSON.parse(await text(process.stdin)) as ReaderTask;
const watch = new Worker(WATCH, { eval: true, workerData: task.limits });
await new Promise((resolve) => watch.once("online", resolve));
process.stdout.write(JSON.stringify(answer()), () => void watch.terminate());

function answer(): ReaderAnswer {
  try {
    return { drafts: openFile(task.file, new Set(task.addInNames)) };
  } catch (error) {
    if (error instanceof PersonError) return { trouble: error.message };
    throw error;
  }
}
