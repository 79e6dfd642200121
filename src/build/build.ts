import { copyFileSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { registry } from "../functions/index";
import { hostMathematics } from "./host-mathematics";
import { LOADED, loaderHead, loaderTail } from "./loader";
import { sidebarPage } from "./sidebar-page";
import { isStale } from "./stale";
import { stubs } from "./stubs";
import { projectVersion, versionDefined } from "./version";

const DIST = "dist";

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
    plugins: [hostMathematics],
    legalComments: "none",
    logLevel: "warning",
    banner: {
      js: `// Nursery batches ${projectVersion()}\n/** @OnlyCurrentDoc */\n${loaderHead()}`,
    },
    footer: { js: `${loaderTail()}\n\n${stubs(registry)}` },
  });
  const page = await sidebarPage(registry);
  rmSync(DIST, { recursive: true, force: true });
  mkdirSync(DIST);
  writeFileSync(join(DIST, "Code.js"), bundle.outputFiles[0]?.text ?? "");
  writeFileSync(join(DIST, "Sidebar.html"), page);
  copyFileSync("appsscript.json", join(DIST, "appsscript.json"));
}

if (
  !process.argv.includes("--if-stale") ||
  isStale(join(DIST, "Code.js"), ["src", "appsscript.json", "package.json"])
) {
  await makeDist();
}
