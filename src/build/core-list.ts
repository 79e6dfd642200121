import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

const CORE = "src/core";
const FACE = "index.ts";
const FILE = /^[a-z-]+\.ts$/;

/**
 * The public list of core by its path, as it follows from its folders: the face of each, or, of a folder that
 * has none, whatever its files export.
 */
export function coreList(core = CORE): ReadonlyMap<string, string> {
  const entries = readdirSync(core, { withFileTypes: true });
  const opened = entries.flatMap((entry) => {
    if (!entry.isDirectory())
      return FILE.test(entry.name) && entry.name !== FACE ? [entry.name] : [];
    const folder = join(core, entry.name);
    if (existsSync(join(folder, FACE))) return [entry.name];
    return readdirSync(folder)
      .filter((file) => FILE.test(file))
      .map((file) => `${entry.name}/${file}`);
  });
  const lines = opened
    .map((path) => `./${path.replace(/\.ts$/, "")}`)
    .sort()
    .map((path) => `export * from "${path}";\n`);
  return new Map([[join(core, FACE), `${HEAD}${lines.join("")}`]]);
}

const HEAD = `/**
 * Everything that the rest of the project may use of core: what each folder shows. Made by npm run sentences
 * from the folders; a test holds it equal.
 */

`;
