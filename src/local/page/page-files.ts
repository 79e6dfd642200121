import { readFileSync } from "node:fs";
import path from "node:path";
import { readCatalogue } from "../catalogue";
import { indexPage } from "./index-page";
import type { PageBundle } from "./page-bundle";
import type { PageStart } from "./page-start";

/** A file of the page as it goes over the wire. */
export interface PageFile {
  readonly type: string;
  readonly content: string | Buffer;
  /** The content security policy of a document; absent for other files. */
  readonly policy?: string;
  /** Whether a browser must not keep it: it holds the person's data. */
  readonly isPrivate?: boolean;
}

/** The files of the page by their address; made anew for every request, so a new build shows at once. */
export type PageFiles = Readonly<Record<string, () => PageFile>>;

/**
 * The page may ask its own server and nobody else, and nobody may put it into a frame. The grid sets
 * styles from its script, hence 'unsafe-inline' for styles; its pictures are made in the page.
 */
const pagePolicy = (sidebarAddress: string) =>
  [
    "default-src 'self'",
    `frame-src 'self' ${sidebarAddress}`,
    "frame-ancestors 'none'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

/** The frames that the add-in's script runs in load that script and nothing else. */
const SCRIPT_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "frame-ancestors 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/**
 * The sidebar is one page with its scripts and styles inside; it may fetch and post nothing, and
 * stands in a frame of the page alone.
 */
const sidebarPolicy = (pageOrigin: string) =>
  [
    "default-src 'none'",
    "script-src 'unsafe-inline'",
    "style-src 'unsafe-inline'",
    "img-src data: blob:",
    "font-src data:",
    `frame-ancestors ${pageOrigin}`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");

export interface PageSources {
  /** The project's folder. */
  readonly root: string;
  /** The folder of the built add-in. */
  readonly dist: string;
  readonly bundle: PageBundle;
  readonly start: Omit<PageStart, "catalogue" | "pages">;
}

/** All that the page may ask for, by its address; each is read when it is asked for. */
export function pageFiles({ root, dist, bundle, start }: PageSources): PageFiles {
  const built = (name: string) => readFileSync(path.join(dist, name), "utf8");
  return {
    "/": () => ({
      type: "text/html",
      content: indexPage(
        readFileSync(path.join(root, "src/local/page/browser/index.html"), "utf8"),
      ),
      policy: pagePolicy(start.sidebarAddress),
    }),
    "/page.js": () => ({ type: "text/javascript", content: readFileSync(bundle.script) }),
    "/file-worker.js": () => ({
      type: "text/javascript",
      content: readFileSync(bundle.workerScript),
    }),
    "/page.css": () => ({ type: "text/css", content: readFileSync(bundle.styles) }),
    // Data and not a script: a script could be run by any page that knows its address.
    "/start.json": () => ({
      type: "application/json",
      content: startText({
        ...start,
        catalogue: readCatalogue(built("Code.js")),
        pages: { Sidebar: built("Sidebar.html") },
      }),
      isPrivate: true,
    }),
    "/script.html": () => ({
      type: "text/html",
      content: '<!doctype html><html lang="en"><head><title>The add-in</title></head></html>',
      policy: SCRIPT_POLICY,
    }),
    "/Code.js": () => ({ type: "text/javascript", content: built("Code.js") }),
  };
}

/**
 * The one file that the sidebar's frame starts from; served from an origin of its own.
 * @param pageOrigin the origin of the page around it, known once that is served
 */
export function sidebarFiles(bundle: PageBundle, pageOrigin: () => string): PageFiles {
  return {
    "/": () => ({
      type: "text/html",
      content: sidebarShell(readFileSync(bundle.frameScript, "utf8")),
      policy: sidebarPolicy(pageOrigin()),
    }),
  };
}

function startText(start: PageStart): string {
  return JSON.stringify(start);
}

/** An empty page that waits for the add-in's page and takes its place, keeping the way to the script. */
function sidebarShell(script: string): string {
  const inside = script.replaceAll("</script", "<\\/script");
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Sidebar</title><script>${inside}</script></head></html>`;
}
