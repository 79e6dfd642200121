import { existsSync } from "node:fs";
import path from "node:path";
import { type ParseArgsConfig, parseArgs } from "node:util";
import { noFile } from "../sentences/made/file-faults";
import * as text from "../sentences/made/program-faults";
import { PersonError } from "./person-error";

type Options = NonNullable<ParseArgsConfig["options"]>;
type Parsed<Own extends Options> = ReturnType<
  typeof parseArgs<{ args: string[]; allowPositionals: true; options: Own }>
>;

/** Values by the names of the options, and the file, each where it is given. */
export interface ProgramWords<Own extends Options> {
  readonly values: Parsed<Own>["values"];
  readonly file?: string;
}

/**
 * The words behind a command of the local workbook, by its options; at most one may be a file.
 *
 * @throws PersonError when a word is no option, or more than one is a file
 */
export function programWords<const Own extends Options>(
  words: readonly string[],
  options: Own,
): ProgramWords<Own> {
  const { values, positionals } = parsed(words, options);
  if (positionals.length > 1) throw new PersonError(text.oneFile({ files: positionals }));
  return { values, ...(positionals[0] === undefined ? {} : { file: positionals[0] }) };
}

function parsed<const Own extends Options>(words: readonly string[], options: Own): Parsed<Own> {
  try {
    return parseArgs({ args: [...words], allowPositionals: true, options });
  } catch (error) {
    const [why = ""] = (error as Error).message.split(/[.\n]/);
    throw new PersonError(text.unknownWords({ why }));
  }
}

/** The file of a name, in the first of the folders that has it. @throws PersonError when none has */
export function fileAsked(named: string, folders: readonly string[]): string {
  const found = folders
    .map((folder) => path.resolve(folder, named))
    .find((file) => existsSync(file));
  if (found === undefined) throw new PersonError(noFile({ file: named }));
  return found;
}

/** How a workbook writes days and numbers, such as "fr_FR". @throws PersonError when it is none */
export function localeAsked(found = "en_GB"): string {
  if (/^[a-z]{2,3}(?:[_-][A-Za-z]{2,4})?$/.test(found)) return found;
  throw new PersonError(text.needsLocale({ found }));
}

/** @returns undefined where nothing is asked @throws PersonError when it is no whole number up to `most` */
export function wholeNumberAsked(
  option: string,
  found: string | undefined,
  most: number,
): number | undefined {
  if (found === undefined) return undefined;
  if (/^\d+$/.test(found) && Number(found) <= most) return Number(found);
  throw new PersonError(text.needsNumber({ option, most: String(most), found }));
}
