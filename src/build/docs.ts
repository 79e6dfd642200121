import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { forecastPictures, methodPictures } from "./forecast-pictures";
import { functionReference } from "./function-reference";
import { timetablePage } from "./timetable-page";

/** Writes the generated pages. Run by npm run docs; a test fails when a page is stale. */
const pages: readonly (readonly [path: string, text: string])[] = [
  ["src/functions/README.md", await functionReference(readFileSync("dist/Code.js", "utf8"))],
  ["src/core/timetable/README.md", timetablePage()],
  ...methodPictures().map(([name, svg]) => [`src/core/timetable/pictures/${name}`, svg] as const),
  ...forecastPictures().map(
    ([name, svg]) => [`src/core/projection/pictures/${name}`, svg] as const,
  ),
];
for (const [path, text] of pages) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}
console.log(pages.map(([path]) => path).join("\n"));
