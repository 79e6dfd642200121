import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";

/** The add-in as the build makes it, in a folder of its own, so that no test shares dist/. */
export interface BuiltAddIn {
  /** The project's folder: sources linked, dist made. */
  readonly root: string;
  read(file: string): string;
}

const SOURCES = ["src", "appsscript.json", "package.json"];
const KEPT = resolve(".build", "tested");
const DAY = 24 * 3600 * 1000;
/** In a build that is not done: the process that is at it. */
const MAKER = "maker";

let built: BuiltAddIn | null = null;

/**
 * What the project's own build command makes, in a folder that is only read: built once for as long as
 * nothing that it is made of changes, whichever process asks first.
 */
export function buildAddIn(): BuiltAddIn {
  built ??= addInAt(kept(join(KEPT, stateOfSources())));
  return built;
}

/** The same in a folder of the test's own, in which it may write. */
export function buildAnew(): BuiltAddIn {
  const from = buildAddIn().root;
  const root = mkdtempSync(join(tmpdir(), "built-"));
  process.once("exit", () => rmSync(root, { recursive: true, force: true }));
  linkSources(root);
  for (const name of ["dist", ".build"])
    cpSync(join(from, name), join(root, name), { recursive: true });
  return addInAt(root);
}

function addInAt(root: string): BuiltAddIn {
  return { root, read: (file) => readFileSync(join(root, "dist", file), "utf8") };
}

/** Changes with every file of which a build is made. */
function stateOfSources(): string {
  const hash = createHash("sha256").update(process.env.NONSENSE ?? "");
  const files = readdirSync("src", { recursive: true, encoding: "utf8" }).sort();
  const read = [
    ...files.map((name) => join("src", name)),
    ...SOURCES.slice(1),
    "package-lock.json",
  ];
  for (const file of read) {
    const { mtimeMs, size } = statSync(file);
    hash.update(`${file} ${mtimeMs} ${size}\n`);
  }
  return hash.digest("hex").slice(0, 20);
}

/** Waits for the build that another process has begun, or makes it. */
function kept(folder: string): string {
  const making = `${folder}.making`;
  mkdirSync(KEPT, { recursive: true });
  while (!existsSync(folder)) {
    if (begun(making)) {
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 50);
      continue;
    }
    if (existsSync(folder)) rmSync(making, { recursive: true });
    else make(making, folder);
  }
  return folder;
}

/** Whether another process is at it; if none is, this one has begun. */
function begun(making: string): boolean {
  const maker = join(making, MAKER);
  const mine = `${making}.${process.pid}`;
  mkdirSync(mine, { recursive: true });
  writeFileSync(join(mine, MAKER), String(process.pid));
  try {
    // Onto a folder with something in it nothing is moved: of two that try, one has begun.
    renameSync(mine, making);
    return false;
  } catch {
    rmSync(mine, { recursive: true });
  }
  const pid = Number(existsSync(maker) ? readFileSync(maker, "utf8") : Number.NaN);
  if (Number.isInteger(pid) && !isRunning(pid)) rmSync(making, { recursive: true, force: true });
  return true;
}

/** Whether a process of this machine still runs. */
function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

function make(making: string, folder: string): void {
  linkSources(making);
  const run = spawnSync(
    process.execPath,
    [resolve("src/build/run.mjs"), resolve("src/build/build.ts")],
    { cwd: making, encoding: "utf8" },
  );
  if (run.status !== 0) {
    rmSync(making, { recursive: true, force: true });
    throw new Error(`the build failed: ${run.stderr}`);
  }
  rmSync(join(making, MAKER));
  renameSync(making, folder);
  for (const name of readdirSync(KEPT)) {
    const path = join(KEPT, name);
    const since = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Date.now() - since > DAY) rmSync(path, { recursive: true, force: true });
  }
}

function linkSources(root: string): void {
  for (const name of SOURCES) symlinkSync(resolve(name), join(root, name));
}
