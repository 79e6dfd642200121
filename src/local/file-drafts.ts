import { empty, otherKind } from "../sentences/made/file-faults";
import { readCsv } from "./csv-in";
import { MOST_FILE_BYTES } from "./file-limits";
import { tooLarge } from "./file-sentences";
import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";
import { readXlsx } from "./xlsx-in";

/**
 * The tabs in the bytes of a person's file, told apart by the ending of its name; a workbook that is
 * named .csv is read as a workbook.
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is of another kind, damaged, empty or too large
 */
export function fileDrafts(
  bytes: Uint8Array,
  fileName: string,
  addInNames: ReadonlySet<string>,
): SheetDraft[] {
  const [, name = fileName, kind = ""] = /^(.*?)(\.[^.]*)?$/s.exec(fileName) ?? [];
  if (!/^\.(?:xlsx|csv)$/i.test(kind)) {
    throw new PersonError(otherKind({ file: fileName }));
  }
  if (bytes.length === 0) throw new PersonError(empty({ file: fileName }));
  if (bytes.length > MOST_FILE_BYTES) throw new PersonError(tooLarge(fileName));
  if (kind.toLowerCase() === ".xlsx" || isWorkbook(bytes)) {
    return readXlsx(bytes, fileName, addInNames);
  }
  return [readCsv(bytes, fileName, tabName(name))];
}

/** The first bytes of .xlsx workbooks, and of older ones or those with a password. */
function isWorkbook([first, second, third, fourth]: Uint8Array): boolean {
  const zip = first === 0x50 && second === 0x4b && third === 3 && fourth === 4;
  return zip || (first === 0xd0 && second === 0xcf && third === 0x11 && fourth === 0xe0);
}

/** A file's name as a tab may be called: 31 characters at most, none of those that formulas use. */
function tabName(name: string): string {
  const clean = name.replace(/[[\]:*?/\\']/g, " ").trim();
  return clean.slice(0, 31) || "Sheet1";
}
