import { copyFileSync, existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { registry } from "../functions/index";
import { NONSENSE_BRACKET, nonsense } from "../local/nonsense";
import { bundledPackages } from "./licences/bundled-packages";
import { fullNotices, shortNotices } from "./licences/notices";
import { LOADED, loaderHead, loaderTail } from "./loader";
import { packMethods } from "./pack-methods";
import { packWords } from "./pack-words";
import { builtSidebar } from "./sidebar-page";
import { smaller } from "./smaller";
import { isStale } from "./stale";
import { stubs } from "./stubs";
import { projectVersion, versionDefined } from "./version";

const DIST = "dist";
const NOTICES = join(".build", "NOTICES.txt");

/** Makes dist/: exactly the three files that are pushed. */
async function makeDist(): Promise<void> {
  const bundle = await build({
    entryPoints: ["src/main.ts"],
    bundle: true,
    write: false,
    format: "iife",
    globalName: LOADED,
    // Class fields and private names are refused by the script server; es2020 lowers them.
    target: "es2020",
    minify: true,
    define: versionDefined(),
    plugins: [nonsense, packWords, packMethods],
    // What they ask is collected, short, by licences/.
    legalComments: "none",
    metafile: true,
    logLevel: "warning",
  });
  const packages = bundledPackages(bundle.metafile, process.cwd());
  const head = [`// Nursery batches ${projectVersion()}`, "/*", ...shortNotices(packages), "*/"];
  const sidebar = await builtSidebar(registry);
  rmSync(DIST, { recursive: true, force: true });
  mkdirSync(DIST);
  const inside = `${loaderHead()}\n${bundle.outputFiles[0]?.text ?? ""}\n${loaderTail()}`;
  const code = [
    ...head,
    "/** @OnlyCurrentDoc */",
    smaller(inside, { ascii: false }),
    "",
    stubs(registry),
  ];
  writeFileSync(join(DIST, "Code.js"), code.join("\n"));
  writeFileSync(join(DIST, "Sidebar.html"), sidebar.page);
  copyFileSync("appsscript.json", join(DIST, "appsscript.json"));
  // Beside dist/, which holds what is pushed and nothing else; a release takes it along.
  mkdirSync(".build", { recursive: true });
  writeFileSync(NOTICES, fullNotices([...packages, ...sidebar.packages]));
}

/** Whether dist/ says nonsense: after a check of that which was cut off, it may. */
function isNonsense(): boolean {
  const code = join(DIST, "Code.js");
  return existsSync(code) && readFileSync(code, "utf8").includes(NONSENSE_BRACKET);
}

if (
  !process.argv.includes("--if-stale") ||
  isStale(join(DIST, "Code.js"), ["src", "appsscript.json", "package.json", "package-lock.json"]) ||
  isNonsense() !== Boolean(process.env.NONSENSE)
) {
  await makeDist();
}
