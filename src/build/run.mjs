/**
 * Runs a TypeScript program of this project: node src/build/run.mjs src/local/report.ts [words]
 *
 * Bundles the program into .build/ first if anything that it is made of is newer than the bundle.
 * A bundle instead of a loader, because the spreadsheet engine's packages only load bundled.
 */
import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** Where it is set, programs say nonsense (nonsense.ts), and their bundles bear another name. */
const { NONSENSE } = process.env;
/** Packages count by the lock file alone; the others decide how a bundle is made. */
const ALWAYS_INPUTS = [
  "package-lock.json",
  "src/build/run.mjs",
  ...(NONSENSE ? ["src/local/nonsense.ts"] : []),
];

/** The bundle of a program, made anew if it is stale. @param entry path from the project's folder */
async function bundled(entry) {
  const name =
    entry.replace(/\.[^.]*$/, "").replace(/[\\/]+/g, "-") + (NONSENSE ? ".nonsense" : "");
  const bundle = path.join(root, ".build", `${name}.mjs`);
  const list = path.join(root, ".build", `${name}.inputs.json`);
  if (isFresh(bundle, list)) return bundle;

  const started = Date.now();
  const { build, transformSync } = await import("esbuild");
  const plugins = NONSENSE ? [await nonsense(transformSync)] : [];
  const result = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile: bundle,
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    // Some packages are CommonJS inside and ask for Node's own modules by require.
    banner: {
      js: 'import { createRequire as makeRequire } from "node:module"; const require = makeRequire(import.meta.url);',
    },
    external: ["@swc/core", "esbuild", "playwright-core"],
    plugins,
    metafile: true,
    write: false,
    logLevel: "warning",
  });
  const inputs = Object.keys(result.metafile.inputs).filter((file) => !/node_modules\//.test(file));
  mkdirSync(path.dirname(bundle), { recursive: true });
  // Moved into place whole: two programs may start at the same moment.
  const half = `${bundle}.${process.pid}`;
  writeFileSync(half, result.outputFiles[0].contents);
  writeFileSync(list, JSON.stringify({ started, inputs: [...ALWAYS_INPUTS, ...inputs] }, null, 1));
  renameSync(half, bundle);
  return bundle;
}

/** The plugin of a file of TypeScript, which Node can't load, though nothing of ours is bundled yet. */
async function nonsense(transformSync) {
  const { code } = transformSync(readFileSync(path.join(root, "src/local/nonsense.ts"), "utf8"), {
    loader: "ts",
  });
  return (await import(`data:text/javascript,${encodeURIComponent(code)}`)).nonsense;
}

function isFresh(bundle, list) {
  if (!existsSync(bundle) || !existsSync(list)) return false;
  const { started, inputs } = JSON.parse(readFileSync(list, "utf8"));
  return inputs.every((file) => {
    const input = path.join(root, file);
    return existsSync(input) && statSync(input).mtimeMs < started;
  });
}

const [entry, ...words] = process.argv.slice(2);
if (!entry) {
  console.error("Usage: node src/build/run.mjs PROGRAM.ts [words]");
  process.exit(1);
}
const bundle = await bundled(path.relative(root, path.resolve(root, entry)));
process.argv = [process.argv[0], bundle, ...words];
await import(pathToFileURL(bundle).href);
