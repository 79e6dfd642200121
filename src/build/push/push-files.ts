import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { keepTimeZone } from "./keep-time-zone";

/** Runs clasp with some words in a folder and answers its exit code. */
export type RunClasp = (words: readonly string[], folder: string) => number;

const MANIFEST = "appsscript.json";

/**
 * Pushes dist/ to the script project that .clasp.json names, with the time zone that it has there.
 *
 * @param root the project's folder, dist/ made
 * @throws Error in a sentence where there is nothing to push to, or the project can't be read;
 * nothing is pushed then
 */
export function pushFiles(root: string, clasp: RunClasp): void {
  const settings = path.join(root, ".clasp.json");
  if (!existsSync(settings)) {
    throw new Error(
      "There is no .clasp.json: copy .clasp.example.json to it and put your script id in",
    );
  }
  const { scriptId } = JSON.parse(readFileSync(settings, "utf8")) as { scriptId?: unknown };
  const cloud = path.join(root, ".build", "cloud");
  rmSync(cloud, { recursive: true, force: true });
  mkdirSync(cloud, { recursive: true });
  writeFileSync(path.join(cloud, ".clasp.json"), JSON.stringify({ scriptId, rootDir: "." }));
  const there = path.join(cloud, MANIFEST);
  if (clasp(["pull"], cloud) !== 0 || !existsSync(there)) {
    throw new Error("Nothing was pushed: the script project in the cloud could not be read");
  }
  const ours = path.join(root, "dist", MANIFEST);
  writeFileSync(ours, keepTimeZone(readFileSync(ours, "utf8"), readFileSync(there, "utf8")));
  // Without asking: the manifest is ours, and what of it is the person's is kept.
  if (clasp(["push", "--force"], root) !== 0) throw new Error("clasp could not push");
}
