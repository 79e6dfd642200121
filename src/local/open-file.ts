import { existsSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { readCsv } from "./csv-in";
import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";
import { readXlsx } from "./xlsx-in";

/**
 * The tabs of a person's file, told apart by its ending. The file is only read.
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is missing, of another kind, damaged or empty
 */
export function openFile(file: string, addInNames: ReadonlySet<string>): SheetDraft[] {
  const fileName = path.basename(file);
  if (!existsSync(file)) throw new PersonError(`There is no file ${file}`);
  if (!statSync(file).isFile())
    throw new PersonError(`${file} is not a file but a folder or the like`);
  const kind = path.extname(file).toLowerCase();
  if (kind !== ".xlsx" && kind !== ".csv") {
    throw new PersonError(`${fileName} is neither an .xlsx workbook nor a .csv table`);
  }
  const bytes = readFileSync(file);
  if (bytes.length === 0) throw new PersonError(`${fileName} is empty`);
  if (kind === ".xlsx") return readXlsx(bytes, fileName, addInNames);
  return [readCsv(bytes, fileName, tabName(path.basename(file, path.extname(file))))];
}

/** A file's name as a tab may be called: 31 characters at most, none of those that formulas use. */
function tabName(name: string): string {
  const clean = name.replace(/[[\]:*?/\\']/g, " ").trim();
  return clean.slice(0, 31) || "Sheet1";
}
