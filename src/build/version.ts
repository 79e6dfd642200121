import { readFileSync } from "node:fs";

/** Name under which the built files find their version. */
const NAME = "ADD_IN_VERSION";

/** The version of the project that is built, from package.json, its one source. */
export function projectVersion(): string {
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version?: unknown };
  if (typeof version !== "string") throw new Error("package.json names no version");
  return version;
}

/** What makes the version known inside a bundle. */
export function versionDefined(): Readonly<Record<string, string>> {
  return { [NAME]: JSON.stringify(projectVersion()) };
}
