import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { Metafile } from "esbuild";

/** A package of which something stands in a built file. */
export interface BundledPackage {
  readonly name: string;
  readonly version: string;
  /** An SPDX expression such as "MIT", as its package.json says. */
  readonly licence: string;
  /** Texts of its files LICENSE and COPYING; at least one. */
  readonly licenceTexts: readonly string[];
  /** Texts of its NOTICE files. */
  readonly noticeTexts: readonly string[];
  /** Those of its files of which something stands there. */
  readonly sources: readonly string[];
}

const LICENCE_FILE = /^(licen[cs]e|copying)([-.]|$)/i;
const NOTICE_FILE = /^notice([-.]|$)/i;

/**
 * The packages that a build has put something of into its files, by name. What was read but left out
 * whole is not among them.
 *
 * @param folder what the paths in the metafile start from
 * @throws Error where a package names no licence or brings no text of it
 */
export function bundledPackages(metafile: Metafile, folder: string): readonly BundledPackage[] {
  const sources = new Map<string, Set<string>>();
  for (const { inputs } of Object.values(metafile.outputs)) {
    for (const [file, { bytesInOutput }] of Object.entries(inputs)) {
      const home = packageFolder(file);
      if (home === null || bytesInOutput === 0) continue;
      const found = sources.get(home) ?? new Set();
      sources.set(home, found.add(path.resolve(folder, file)));
    }
  }
  return [...sources]
    .map(([home, files]) => readPackage(path.resolve(folder, home), [...files]))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** The package's folder within a path; null for files of our own and of plugins. */
function packageFolder(file: string): string | null {
  return /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(file)?.[1] ?? null;
}

function readPackage(home: string, sources: readonly string[]): BundledPackage {
  const { name, version, license } = JSON.parse(
    readFileSync(path.join(home, "package.json"), "utf8"),
  ) as { name: string; version: string; license?: unknown };
  const texts = (pattern: RegExp) =>
    readdirSync(home)
      .filter((file) => pattern.test(file))
      .map((file) => readFileSync(path.join(home, file), "utf8").trim());
  const licenceTexts = texts(LICENCE_FILE);
  if (typeof license !== "string" || license === "") {
    throw new Error(`${name} is bundled and names no licence`);
  }
  if (licenceTexts.length === 0) throw new Error(`${name} is bundled and has no licence text`);
  const noticeTexts = texts(NOTICE_FILE);
  return { name, version, licence: license, licenceTexts, noticeTexts, sources };
}
