import { forecastPictures, methodPictures } from "./forecast-pictures";
import { functionReference } from "./function-reference";
import { recordsArguments } from "./records-arguments";
import { timetablePage } from "./timetable-page";

/**
 * Every page and picture that is made from the code, by its path. The committed ones are exactly
 * these: a test compares them, and npm run docs writes them.
 *
 * @param code text of the built file, which calculates the examples
 */
export async function generatedPages(code: string): Promise<ReadonlyMap<string, string>> {
  const pictures = (folder: string, drawn: readonly (readonly [name: string, svg: string])[]) =>
    drawn.map(([name, svg]) => [`${folder}/pictures/${name}`, svg] as const);
  return new Map([
    ["src/functions/README.md", await functionReference(code)],
    ["src/workbook/reading/records-arguments.table.ts", recordsArguments()],
    ["src/core/timetable/README.md", timetablePage()],
    ...pictures("src/core/timetable", methodPictures()),
    ...pictures("src/core/projection", forecastPictures()),
  ]);
}
