import { quoted } from "../../core";
import * as text from "../../sentences/made/blocked-tabs";
import { cellName } from "../host/cell-name";
import { isOurFormula } from "../host/formula-text";
import { hasCells } from "../host/grid-tabs";
import { topCells } from "../host/top-cells";
import { PLAN_ANSWER_COLUMNS } from "../orders/order-plan-tab";
import type { RecordsNow } from "../reading/records-tab";
import { cellsInTheWay, isBlocked, type MovedNote, moveNotesAway } from "../tabs/notes-in-the-way";
import { isLiveName } from "../tabs/own-heads";
import { isOurs, isPlan, PLAN_TAB } from "../tabs/own-tabs";
import { chosenTabs, wantedTabs } from "./chosen-tabs";
import { formulaTabs } from "./formula-tabs";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A live tab whose answer finds no room, and the cell of its formula, from 1. */
interface BlockedTab {
  readonly sheet: Sheet;
  readonly name: string;
  readonly anchor: { readonly row: number; readonly column: number };
}

/** A formula of ours stands within these rows and columns, whatever was put in. */
const ROWS_LOOKED_AT = 12;

function blockedTabs(workbook: Workbook): readonly BlockedTab[] {
  return workbook.getSheets().flatMap((sheet): BlockedTab[] => {
    const name = sheet.getName();
    const mayBePlan = name.startsWith(`${PLAN_TAB} `);
    if (!(mayBePlan || isLiveName(name)) || !hasCells(sheet)) return [];
    const top = topCells(sheet, ROWS_LOOKED_AT, ROWS_LOOKED_AT);
    const shown = top.getDisplayValues();
    if (!shown.flat().some(isBlocked)) return [];
    const formulas = top.getFormulas();
    const row = formulas.findIndex((cells) => cells.some(isOurFormula));
    const column = formulas[row]?.findIndex(isOurFormula) ?? -1;
    if (!isBlocked(shown[row]?.[column]) || !(mayBePlan ? isPlan(sheet) : isOurs(sheet))) return [];
    return [{ sheet, name, anchor: { row: row + 1, column: column + 1 } }];
  });
}

/** A sentence for every live tab that shows no answer: what is in its way, and what mends it. */
export function blockedSentences(workbook: Workbook): readonly string[] {
  return blockedTabs(workbook).map(({ sheet, name, anchor }) => {
    const [first, ...others] = cellsInTheWay(sheet, anchor);
    if (first === undefined) return text.noRoom({ tab: name });
    const cell = `${cellName(first)} (${quoted(String(first.shown))})`;
    return text.inTheWay({ tab: name, cell, more: others.length });
  });
}

/** Moves what stands in the way of answers beside them. @returns what was moved, and where to */
export function freeBlockedTabs(now: RecordsNow): readonly MovedNote[] {
  const blocked = blockedTabs(now.workbook);
  if (blocked.length === 0) return [];
  const contents = [...formulaTabs(now), ...chosenTabs(now, wantedTabs(now.workbook, []))];
  const columns = new Map(contents.map(({ name, widths }) => [name, widths.length]));
  return blocked.flatMap(({ sheet, name, anchor }) =>
    moveNotesAway(sheet, anchor, columns.get(name) ?? PLAN_ANSWER_COLUMNS),
  );
}
