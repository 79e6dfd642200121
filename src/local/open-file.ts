import { existsSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { noFile, notAFile } from "../sentences/made/file-faults";
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
  if (!existsSync(file)) throw new PersonError(noFile({ file }));
  const about = statSync(file);
  if (!about.isFile()) throw new PersonError(notAFile({ file }));
  if (about.size > MOST_FILE_BYTES) throw new PersonError(tooLarge(path.basename(file)));
  return fileDrafts(readFileSync(file), path.basename(file), addInNames);
}
