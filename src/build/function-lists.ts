import { filesOf } from "./files-of";

const FOLDER = "src/functions";
/** A function's file has its help beside it. */
const FUNCTION = /^export const (\w+)Help: HelpOf<typeof \1>/m;

interface Listed {
  /** As formulas call it. */
  readonly name: string;
  /** As its file exports it. */
  readonly exported: string;
  readonly file: string;
}

/**
 * The lists of custom functions, by path, as they follow from the files of their folder, by the letters
 * of their names; the committed ones are exactly these. A new file is listed by npm run sentences, which
 * its help needs anyway.
 *
 * @param files text of each file of the folder, by its name
 */
export function functionLists(
  files: ReadonlyMap<string, string> = filesOf(FOLDER),
): ReadonlyMap<string, string> {
  const listed = [...files]
    .flatMap(([file, text]): Listed[] => {
      const exported = FUNCTION.exec(text)?.[1];
      if (exported === undefined) return [];
      const name = exported.replace(/[A-Z]/g, (letter) => `_${letter}`).toUpperCase();
      return [{ name, exported, file: file.replace(/\.ts$/, "") }];
    })
    .sort((one, other) => (one.file < other.file ? -1 : 1));
  const imports = (suffix: string) =>
    listed.map(({ exported, file }) => `import { ${exported}${suffix} } from "./${file}";\n`);
  const rows = (suffix: string) =>
    listed.map(({ name, exported }) => `  ${name}: ${exported}${suffix},\n`);
  return new Map([
    [
      `${FOLDER}/runs.table.ts`,
      `${HEAD}${[...imports(""), FUNCTION_TYPE].sort(byPath).join("")}
/** What each custom function does. The built file has these, and their help in its stubs alone. */
export const runs = {
${rows("").join("")}} satisfies Readonly<Record<string, Pick<SheetFunction, "run">>>;

export type FunctionName = keyof typeof runs;
`,
    ],
    [
      `${FOLDER}/helps.table.ts`,
      `${HEAD}${[...imports("Help"), HELP_TYPE, RUNS].sort(byPath).join("")}
/** What is said of each. A function without its help, or help of none, does not compile. */
export const helps: { readonly [Name in FunctionName]: HelpOf<(typeof runs)[Name]> } = {
${rows("Help").join("")}};
`,
    ],
  ]);
}

const HEAD =
  "// Made by npm run sentences from the files of this folder; a test holds it equal.\n\n";
const FUNCTION_TYPE = 'import type { SheetFunction } from "./function-of";\n';
const HELP_TYPE = 'import type { HelpOf } from "./entry";\n';
const RUNS = 'import type { FunctionName, runs } from "./runs.table";\n';

const pathOf = (line: string) => /"(.*)"/.exec(line)?.[1] ?? "";

function byPath(one: string, other: string): number {
  return pathOf(one) < pathOf(other) ? -1 : 1;
}
