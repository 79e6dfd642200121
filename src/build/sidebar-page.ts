import { readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import type { FunctionEntry } from "../functions/index";
import { projectVersion, versionDefined } from "./version";

const FOLDER = "src/sidebar";

/**
 * The sidebar as one page that asks for nothing else: style and script inlined, and the list of
 * functions as the registry tells them.
 *
 * @throws Error where the page would be taken for something else by the server that serves it
 */
export async function sidebarPage(registry: readonly FunctionEntry[]): Promise<string> {
  const [script, style, roundSheetStyle] = await Promise.all(
    ["main.ts", "page.css", "styles/round-sheet.css"].map(bundled),
  );
  const page = [
    ["<!-- style -->", `<style>${style}</style>`],
    ["<!-- round sheet style -->", `<style>${roundSheetStyle}</style>`],
    ["<!-- functions -->", functionItems(registry)],
    ["<!-- version -->", projectVersion()],
    ["<!-- script -->", `<script>${inlineScript(script ?? "")}</script>`],
  ].reduce(
    (text, [place, content]) => text.replace(place ?? "", () => content ?? ""),
    readFileSync(join(FOLDER, "page.html"), "utf8"),
  );
  // Served as a template, this would begin a piece of server code.
  if (page.includes("<?")) throw new Error("the sidebar page holds <?");
  return page;
}

async function bundled(name: string): Promise<string> {
  const { outputFiles } = await build({
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
    legalComments: "none",
    logLevel: "warning",
  });
  return outputFiles[0]?.text.trim() ?? "";
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

function escapeHtml(text: string): string {
  return text
    .replace(/&/g, "&amp;")
    .replace(/</g, "&lt;")
    .replace(/>/g, "&gt;")
    .replace(/"/g, "&quot;");
}
