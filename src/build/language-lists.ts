import { readdirSync } from "node:fs";

const WORDS = "src/core/words";
const SENTENCES = "src/sentences";
/** A language's file is named by one word; what languages have in common, by two. */
const LANGUAGE_FILE = /^([a-z]+)\.ts$/;
/** But for what the compiled messages call, and a folder's public list. */
const COMMON = ["runtime.ts", "index.ts"];
/** The language that the others follow. */
const FIRST = "english";

/**
 * The lists of languages, by path, as they follow from the files in the two folders; the committed ones
 * are exactly these. A new file is listed by npm run words and npm run sentences.
 *
 * @param filesIn names of the files in a folder
 */
export function languageLists(
  filesIn: (folder: string) => readonly string[] = (folder) => readdirSync(folder),
): ReadonlyMap<string, string> {
  return new Map([
    [
      `${WORDS}/language-files.table.ts`,
      list(languagesOf(filesIn(WORDS)), {
        command: "words",
        name: "wordFiles",
        type: ["LanguageText", "language-text"],
      }),
    ],
    [
      `${SENTENCES}/language-files.table.ts`,
      list(languagesOf(filesIn(SENTENCES)), {
        command: "sentences",
        name: "sentenceFiles",
        type: ["Language", "language-type"],
      }),
    ],
  ]);
}

function languagesOf(files: readonly string[]): readonly string[] {
  const names = files
    .filter((file) => !COMMON.includes(file))
    .flatMap((file) => LANGUAGE_FILE.exec(file)?.[1] ?? []);
  return [FIRST, ...names.filter((name) => name !== FIRST).sort()];
}

interface List {
  readonly command: string;
  readonly name: string;
  /** The type of a language's file, and where it is declared. */
  readonly type: readonly [string, string];
}

function list(languages: readonly string[], { command, name, type: [type, from] }: List): string {
  const imports = [
    ...languages.map((one) => [one, `import { ${one} } from "./${one}";`] as const),
    [from, `import type { ${type} } from "./${from}";`] as const,
  ].sort(([one], [other]) => (one < other ? -1 : 1));
  return `// Made by npm run ${command} from the files of this folder; a test holds it equal.

${imports.map(([, line]) => line).join("\n")}

/** The file of every language, by its name. */
export const ${name} = {
${languages.map((one) => `  ${one},\n`).join("")}} satisfies Readonly<Record<string, ${type}>>;
`;
}
