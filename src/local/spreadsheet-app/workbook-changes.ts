import { CommandType, ICommandService } from "@univerjs/core";
import type { OpenBook } from "./open-book";

/** Rows that the grid makes as high as their text, which changes nothing that is kept. */
const OWN_DOING = /auto-height/;

/**
 * Tells of every change of the workbook, by the person and by scripts: cells, looks, tabs, checks on
 * input. What formulas calculate is not told, nor what is only shown otherwise (a tab chosen, cells
 * selected).
 * @returns a function that ends it
 */
export function watchChanges(book: OpenBook, heard: () => void): () => void {
  const commands = book.injector.get(ICommandService);
  const watch = commands.onCommandExecuted(({ type, id, params }, options) => {
    if (type !== CommandType.MUTATION || options?.onlyLocal || OWN_DOING.test(id)) return;
    if ((params as { unitId?: string } | undefined)?.unitId === book.unitId) heard();
  });
  return () => watch.dispose();
}
