import { filesOf } from "./files-of";

const WIRE = "src/wire";
const ANSWERS = "src/workbook/answers";
const CALLS = /^export interface (\w+Calls) \{/m;
const ANSWERERS = /^export const (\w+): AnswerersOf<\w+>/m;

/**
 * The lists of the sidebar's calls by path, as they follow from the files: each of src/wire with an interface
 * …Calls says what its calls are asked and answer, and each of src/workbook/answers with AnswerersOf answers
 * those of one.
 *
 * @param wire text of each file of src/wire, by its name
 * @param answers text of each file of src/workbook/answers, by its name
 */
export function callLists(
  wire = filesOf(WIRE),
  answers = filesOf(ANSWERS),
): ReadonlyMap<string, string> {
  const named = (files: ReadonlyMap<string, string>, pattern: RegExp) =>
    [...files].flatMap(([file, text]) => {
      const name = pattern.exec(text)?.[1];
      return name === undefined ? [] : [{ name, from: `./${file.replace(/\.ts$/, "")}` }];
    });
  const calls = named(wire, CALLS);
  const answerers = named(answers, ANSWERERS);
  return new Map([
    [
      `${WIRE}/calls.table.ts`,
      `${HEAD}${calls.map(({ name, from }) => `import type { ${name} } from "${from}";\n`).join("")}
export interface SidebarCalls
  extends ${calls.map(({ name }) => name).join(",\n    ")} {}
`,
    ],
    [
      `${ANSWERS}/sidebar-answers.table.ts`,
      `${HEAD}import type { SidebarCalls } from "../../wire/calls";
${[...answerers, { name: "type AnswerersOf", from: "./answerer" }]
  .sort((one, other) => (one.from < other.from ? -1 : 1))
  .map(({ name, from }) => `import ${name.replace(/(type )?(\w+)/, "$1{ $2 }")} from "${from}";\n`)
  .join("")}
/**
 * Everything that the page may ask of the script: the names that it may call follow from this, in the built
 * file and in the tests. A call that nothing answers does not compile.
 */
export const sidebarAnswers: AnswerersOf<SidebarCalls> = {
${answerers.map(({ name }) => `  ...${name},\n`).join("")}};
`,
    ],
  ]);
}

const HEAD =
  "// Made by npm run sentences from the files of this folder; a test holds it equal.\n\n";
