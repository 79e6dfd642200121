import { readFileSync } from "node:fs";
import { CONTRACT, contractWithNew } from "./contract";
import { exampleAnswers } from "./example-answers";
import { forecastPictures, methodPictures } from "./forecast-pictures";
import { functionReference } from "./function-reference";
import { readmeWithFunctions } from "./readme-functions";
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
  const answers = await exampleAnswers(code);
  return new Map([
    ["src/functions/README.md", functionReference(answers)],
    ["README.md", readmeWithFunctions(readFileSync("README.md", "utf8"))],
    [CONTRACT, contractWithNew(readFileSync(CONTRACT, "utf8"), answers)],
    ["src/workbook/reading/records-arguments.table.ts", recordsArguments()],
    ["src/core/timetable/README.md", timetablePage()],
    ...pictures("src/core/timetable", methodPictures()),
    ...pictures("src/core/projection", forecastPictures()),
  ]);
}
