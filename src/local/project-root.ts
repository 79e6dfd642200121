import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The folder that holds package.json, above this file whether it runs bundled or not. @throws Error where there is none */
export function projectRoot(): string {
  let folder = path.dirname(fileURLToPath(import.meta.url));
  while (!existsSync(path.join(folder, "package.json"))) {
    const above = path.dirname(folder);
    if (above === folder) throw new Error("No package.json above the program");
    folder = above;
  }
  return folder;
}
