import { existsSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { fileDrafts } from "./file-drafts";
import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";

/**
 * The tabs of a person's file, told apart by its ending. The file is only read.
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is missing, of another kind, damaged or empty
 */
export function openFile(file: string, addInNames: ReadonlySet<string>): SheetDraft[] {
  if (!existsSync(file)) throw new PersonError(`There is no file ${file}`);
  if (!statSync(file).isFile())
    throw new PersonError(`${file} is not a file but a folder or the like`);
  return fileDrafts(readFileSync(file), path.basename(file), addInNames);
}
