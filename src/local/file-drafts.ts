import { readCsv } from "./csv-in";
import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";
import { readXlsx } from "./xlsx-in";

/**
 * The tabs in the bytes of a person's file, told apart by the ending of its name.
 * @param addInNames names of the add-in's functions, upper case
 * @throws PersonError when it is of another kind, damaged or empty
 */
export function fileDrafts(
  bytes: Uint8Array,
  fileName: string,
  addInNames: ReadonlySet<string>,
): SheetDraft[] {
  const [, name = fileName, kind = ""] = /^(.*?)(\.[^.]*)?$/s.exec(fileName) ?? [];
  if (!/^\.(?:xlsx|csv)$/i.test(kind)) {
    throw new PersonError(`${fileName} is neither an .xlsx workbook nor a .csv table`);
  }
  if (bytes.length === 0) throw new PersonError(`${fileName} is empty`);
  if (kind.toLowerCase() === ".xlsx") return readXlsx(bytes, fileName, addInNames);
  return [readCsv(bytes, fileName, tabName(name))];
}

/** A file's name as a tab may be called: 31 characters at most, none of those that formulas use. */
function tabName(name: string): string {
  const clean = name.replace(/[[\]:*?/\\']/g, " ").trim();
  return clean.slice(0, 31) || "Sheet1";
}
