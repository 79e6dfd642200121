import { existsSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { fileDrafts } from "./file-drafts";
import { MOST_FILE_BYTES } from "./file-limits";
import { tooLarge } from "./file-sentences";
import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";

/**
 * The tabs of a person's file, told apart by its ending. The file is only read; one that nobody knows
 * is read apart (see read-apart.ts).
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is missing, of another kind, damaged, empty or too large
 */
export function openFile(file: string, addInNames: ReadonlySet<string>): SheetDraft[] {
  if (!existsSync(file)) throw new PersonError(`There is no file ${file}`);
  const about = statSync(file);
  if (!about.isFile()) throw new PersonError(`${file} is not a file but a folder or the like`);
  if (about.size > MOST_FILE_BYTES) throw new PersonError(tooLarge(path.basename(file)));
  return fileDrafts(readFileSync(file), path.basename(file), addInNames);
}
