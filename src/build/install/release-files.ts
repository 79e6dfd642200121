import { readFileSync } from "node:fs";
import path from "node:path";
import { installPage } from "./install-page";
import type { ZippedFile } from "./zip-file";

/** What is pasted, in the order in which the install page asks for it. */
const SCRIPT_FILES = ["Code.js", "Sidebar.html", "appsscript.json"];
const TEMPLATE = "sample-sheets/blank-template/blank-template.xlsx";

/**
 * The files of a release. The script stands in a folder of its own, out of the way of a double
 * click: some computers would run Code.js.
 *
 * @param root the project's folder, dist/ made
 */
export async function releaseFiles(root: string, version: string): Promise<readonly ZippedFile[]> {
  const text = (name: string) => readFileSync(path.join(root, name), "utf8");
  const script = SCRIPT_FILES.map((name) => [name, text(`dist/${name}`)] as const);
  const changes = text("src/CHANGELOG.md");
  const page = await installPage({
    version,
    install: text("src/build/install/README.md"),
    changes,
    frame: text("src/build/install/page-frame.html"),
    files: Object.fromEntries(script),
  });
  const folder = `nursery-batches-${version}`;
  return [
    { name: "INSTALL.html", content: page },
    { name: "WHAT-IS-NEW.txt", content: changes },
    { name: "LICENSE.txt", content: text("LICENSE") },
    { name: "NOTICES.txt", content: text(".build/NOTICES.txt") },
    { name: "blank-template.xlsx", content: readFileSync(path.join(root, TEMPLATE)) },
    ...script.map(([name, content]) => ({ name: `script/${name}`, content })),
  ].map(({ name, content }) => ({ name: `${folder}/${name}`, content }));
}
