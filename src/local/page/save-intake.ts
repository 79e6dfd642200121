import { closeSync, openSync, readdirSync, rmSync, writeSync } from "node:fs";
import path from "node:path";
import * as text from "../../sentences/made/local-page";
import { MOST_SAVED_BYTES } from "../file-limits";
import type { PageIntake } from "./page-server";
import { type SavedCopy, XLSX_TYPE } from "./saved-copy";

/** Another program may take the same name at the same moment; not so often, though. */
const TRIES = 20;

/**
 * Writes what the page hands over beside a file: under a new name each time, never over anything, and
 * into no other folder. The page has no say in the name.
 * @param file the path of the file that the program was started with
 */
export function saveIntake(file: string): PageIntake {
  return {
    type: XLSX_TYPE,
    most: MOST_SAVED_BYTES,
    take(bytes) {
      // The first bytes of a zip file; nothing else is a workbook.
      if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) throw new Error(text.noWorkbook());
      const saved: SavedCopy = { name: writeBeside(path.resolve(file), bytes) };
      return { type: "application/json", content: JSON.stringify(saved) };
    },
  };
}

function writeBeside(file: string, bytes: Uint8Array): string {
  const folder = path.dirname(file);
  // A copy of a copy is the next copy.
  const stem = path.basename(file, path.extname(file)).replace(/-saved-\d+$/, "");
  let name = "";
  try {
    let number = highestNumber(folder, stem);
    for (let tries = 1; ; tries += 1) {
      number += 1;
      name = `${stem}-saved-${number}.xlsx`;
      const opened = openNew(path.join(folder, name));
      if (opened !== null) {
        writeWhole(opened, path.join(folder, name), bytes);
        return name;
      }
      if (tries === TRIES) throw new Error(text.isThere({ name }));
    }
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code ?? (error as Error).message;
    throw new Error(text.cantWrite({ name: name || text.copy(), file: path.basename(file), why }));
  }
}

/** The copies are numbered in the order in which they were saved, whichever have been deleted since. */
function highestNumber(folder: string, stem: string): number {
  const start = `${stem}-saved-`;
  const numbers = readdirSync(folder)
    .filter((name) => name.startsWith(start))
    .map((name) => /^(\d{1,9})\.xlsx$/i.exec(name.slice(start.length))?.[1])
    .map(Number)
    .filter(Number.isInteger);
  return numbers.reduce((most, number) => Math.max(most, number), 0);
}

/** Makes a file that was not there. @returns null when the name is taken, by a link too */
function openNew(path: string): number | null {
  try {
    return openSync(path, "wx");
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return null;
    throw error;
  }
}

/** Half a workbook is worse than none. */
function writeWhole(opened: number, path: string, bytes: Uint8Array): void {
  try {
    for (let at = 0; at < bytes.length; ) at += writeSync(opened, bytes, at);
    closeSync(opened);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  }
}
