import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import type { FunctionEntry } from "../functions/index";
import { nonsense } from "../local/nonsense";
import * as text from "../sentences/made/page";
import { escapeHtml } from "./escape-html";
import { type BundledPackage, bundledPackages } from "./licences/bundled-packages";
import { shortNotices } from "./licences/notices";
import { smaller } from "./smaller";
import { projectVersion, versionDefined } from "./version";

const FOLDER = "src/sidebar";

export interface BuiltSidebar {
  readonly page: string;
  /** The packages of which the page holds something. */
  readonly packages: readonly BundledPackage[];
}

/** The sidebar's page alone, as builtSidebar makes it. */
export async function sidebarPage(registry: readonly FunctionEntry[]): Promise<string> {
  return (await builtSidebar(registry)).page;
}

/**
 * The sidebar as one page that asks for nothing else: style and script inlined, and the list of
 * functions as the registry tells them.
 *
 * @throws Error where the page would be taken for something else by the server that serves it
 */
export async function builtSidebar(registry: readonly FunctionEntry[]): Promise<BuiltSidebar> {
  const [script, style, roundSheetStyle] = await Promise.all([
    bundled("main.ts"),
    bundled("page.css"),
    bundled("styles/round-sheet.css"),
  ]);
  const packages = [script, style, roundSheetStyle].flatMap((one) => one.packages);
  const notices = ["/*", `Nursery batches ${projectVersion()}`, ...shortNotices(packages), "*/"];
  const code = `${notices.join("\n")}\n${script.text}`;
  const page = [
    // Before the script, in which braces are its own.
    ["{title}", text.nursery()],
    ["{caution}", text.caution()],
    ["{functions}", text.allFunctions()],
    ["{forCells}", text.forCells()],
    ["<!-- style -->", `<style>${style.text}</style>`],
    ["<!-- round sheet style -->", `<style>${roundSheetStyle.text}</style>`],
    ["<!-- functions -->", functionItems(registry)],
    ["<!-- version -->", projectVersion()],
    ["<!-- script -->", `<script>${inlineScript(code)}</script>`],
  ].reduce(
    (page, [place = "", content = ""]) => page.replaceAll(place, () => content),
    readFileSync(join(FOLDER, "page.html"), "utf8"),
  );
  // Served as a template, this would begin a piece of server code.
  if (page.includes("<?")) throw new Error("the sidebar page holds <?");
  return { page, packages };
}

interface BundledText {
  readonly text: string;
  readonly packages: readonly BundledPackage[];
}

async function bundled(name: string): Promise<BundledText> {
  const { outputFiles, metafile } = await build({
    entryPoints: [join(FOLDER, name)],
    bundle: true,
    write: false,
    platform: "browser",
    format: "iife",
    target: "es2020",
    // Latin letters alone: the page is pasted by hand, through editors of any encoding.
    charset: "ascii",
    define: versionDefined(),
    minify: true,
    // What they ask is collected, short, by licences/.
    legalComments: "none",
    metafile: true,
    plugins: [nonsense],
    logLevel: "warning",
  });
  const text = outputFiles[0]?.text ?? "";
  return {
    text: (name.endsWith(".css") ? text : smaller(text, { ascii: true })).trim(),
    packages: bundledPackages(metafile, process.cwd()),
  };
}

/**
 * Code that can stand between script tags.
 *
 * @throws Error where it holds the start of a comment, after which a page reads on past the end tag
 * Source: HTML Living Standard, "Restrictions for contents of script elements".
 */
export function inlineScript(code: string): string {
  if (code.includes("<!--")) throw new Error("the sidebar's script holds <!--");
  return code.replace(/<\/(script)/gi, "<\\/$1");
}

function functionItems(registry: readonly FunctionEntry[]): string {
  return registry
    .map(
      ({ name, sentence, example }) =>
        `<dt><code>${escapeHtml(name)}</code></dt>\n<dd>${escapeHtml(sentence)}<br><code>${escapeHtml(example)}</code></dd>`,
    )
    .join("\n");
}
