import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import type { Plugin } from "esbuild";
import { nonsense } from "../nonsense";
import { promptEngine } from "../prompt-engine";

/** The files of the page that are made from its sources. */
export interface PageBundle {
  /** Paths of the files on the disk. */
  readonly script: string;
  readonly styles: string;
  /** The script of the frame that the sidebar runs in. */
  readonly frameScript: string;
  /** The script of the thread that reads opened files. */
  readonly workerScript: string;
}

const FOLDER = "src/local/page/browser";
const ENTRIES = {
  page: `${FOLDER}/start.ts`,
  frame: `${FOLDER}/frame/frame.ts`,
  "file-worker": `${FOLDER}/file-worker.ts`,
};
/** Packages count by the lock file alone; the others decide how a bundle is made. */
const ALWAYS_INPUTS = [
  "package-lock.json",
  "src/local/page/page-bundle.ts",
  "src/local/nonsense.ts",
  "src/local/prompt-engine.ts",
];

/**
 * Bundles the page's scripts into .build/local-page/, if anything that they are made of is newer
 * than the last bundle.
 * @param root the project's folder
 * @param onStale called before the bundling, which takes some seconds
 */
export async function pageBundle(
  root: string,
  onStale: () => void = () => {},
): Promise<PageBundle> {
  const folder = path.join(root, ".build", bundleFolder());
  const made: PageBundle = {
    script: path.join(folder, "page.js"),
    styles: path.join(folder, "page.css"),
    frameScript: path.join(folder, "frame.js"),
    workerScript: path.join(folder, "file-worker.js"),
  };
  const list = path.join(folder, "inputs.json");
  if (isFresh(root, Object.values(made), list)) return made;

  onStale();
  const started = Date.now();
  const { build } = await import("esbuild");
  const result = await build({
    absWorkingDir: root,
    entryPoints: ENTRIES,
    outdir: folder,
    bundle: true,
    platform: "browser",
    target: "es2022",
    format: "iife",
    minify: true,
    define: { "process.env.NODE_ENV": '"production"' },
    loader: { ".woff2": "dataurl", ".svg": "dataurl", ".ttf": "dataurl", ".png": "dataurl" },
    plugins: [nonsense, promptEngine, withoutTextEditor],
    legalComments: "none",
    metafile: true,
    write: false,
    logLevel: "warning",
  });
  const inputs = Object.keys(result.metafile.inputs).filter(
    (file) => !/node_modules\//.test(file) && existsSync(path.join(root, file)),
  );
  mkdirSync(folder, { recursive: true });
  for (const file of result.outputFiles) {
    // Moved into place whole: two programs may start at the same moment.
    writeFileSync(`${file.path}.${process.pid}`, file.contents);
    renameSync(`${file.path}.${process.pid}`, file.path);
  }
  writeFileSync(list, JSON.stringify({ started, inputs: [...ALWAYS_INPUTS, ...inputs] }, null, 1));
  return made;
}

/** A page of nonsense stands beside the plain one, so that neither is ever taken for the other. */
function bundleFolder(): string {
  return process.env.NONSENSE ? "local-page-nonsense" : "local-page";
}

function isFresh(root: string, made: readonly string[], list: string): boolean {
  if (![...made, list].every((file) => existsSync(file))) return false;
  const { started, inputs } = JSON.parse(readFileSync(list, "utf8")) as {
    started: number;
    inputs: string[];
  };
  return inputs.every((file) => {
    const input = path.join(root, file);
    return existsSync(input) && statSync(input).mtimeMs < started;
  });
}

/**
 * Leaves out what only the engine's editor for long texts needs, which the page never opens: its
 * dictionaries for hyphens and its guesser of languages, 5 MB in all.
 */
const withoutTextEditor: Plugin = {
  name: "without-text-editor",
  setup(build) {
    build.onLoad(
      { filter: /engine-render[\\/]lib[\\/]es[\\/][a-z][a-z0-9-]*-[\w-]+\.js$/ },
      () => ({
        contents: "export default {}",
        loader: "js",
      }),
    );
    build.onResolve({ filter: /^franc-min$/ }, () => ({
      path: "franc-min",
      namespace: "left-out",
    }));
    build.onLoad({ filter: /.*/, namespace: "left-out" }, () => ({
      contents: 'export const franc = () => "und";',
      loader: "js",
    }));
  },
};
