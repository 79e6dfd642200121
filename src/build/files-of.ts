import { readdirSync, readFileSync } from "node:fs";

/** Text of each file of a folder that is written by hand, by its name, in the order of the letters. */
export function filesOf(folder: string): ReadonlyMap<string, string> {
  const names = readdirSync(folder)
    .filter((name) => /^[a-z-]+\.ts$/.test(name))
    .sort();
  return new Map(names.map((name) => [name, readFileSync(`${folder}/${name}`, "utf8")]));
}
