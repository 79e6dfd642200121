import {
  BooleanNumber,
  CellValueType,
  HorizontalAlign,
  type ICellData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import { SetStyleCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { cellReader } from "./cell-reading";
import { type CellChanges, rangeOf, writeCells } from "./cell-writing";
import { isCheckbox, setInputRule } from "./data-validation";
import type { Execution } from "./execution";
import { gridArgument, textArgument } from "./grid-arguments";
import { inputRuleOf } from "./input-rule";
import { sheetOf } from "./open-book";
import { attemptOn, writeValues } from "./range-values";
import { refuseInTypedColumn, type TypedColumnAct } from "./refused-writes";
import { signatureError } from "./service-error";

const HORIZONTAL: Readonly<Record<string, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  normal: HorizontalAlign.UNSPECIFIED,
};
const VERTICAL: Readonly<Record<string, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  middle: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

/**
 * The methods of a range that change how its cells look and what input they take.
 *
 * Longer than most: a list of methods of a few lines each.
 */
export function rangeFormatMethods<Self>(
  run: Execution,
  {
    sheetId,
    area,
    self,
  }: { readonly sheetId: string; readonly area: Area; readonly self: () => Self },
) {
  const attempt = (write: () => void, act?: TypedColumnAct) =>
    attemptOn(run, {
      sheetId,
      area,
      write,
      check: () => {
        if (act) refuseInTypedColumn(run.book, { sheetId, area, act });
      },
    });
  const style = (type: keyof IStyleData, value: unknown): Self => {
    attempt(() =>
      run.book.execute(SetStyleCommand.id, {
        subUnitId: sheetId,
        range: rangeOf(area),
        style: { type, value },
      }),
    );
    return self();
  };
  const oneOf = <Item>(
    table: Readonly<Record<string, Item>>,
    word: unknown,
    method: string,
  ): Item => {
    const found = typeof word === "string" ? table[word] : undefined;
    if (found === undefined) throw signatureError([word], `SpreadsheetApp.Range.${method}`);
    return found;
  };
  /** Changes the cells one by one, from what each of them is. */
  const change = (
    cellAt: (row: number, column: number) => ICellData,
    act?: TypedColumnAct,
  ): Self => {
    const changes: CellChanges = {};
    for (let row = area.row; row < area.row + area.rows; row++) {
      const cells: Record<number, ICellData> = {};
      for (let column = area.column; column < area.column + area.columns; column++) {
        cells[column] = cellAt(row, column);
      }
      changes[row] = cells;
    }
    attempt(() => writeCells(run.book, { sheetId, area, changes }), act);
    return self();
  };
  const setPatterns = (patternAt: (row: number, column: number) => string): Self => {
    const cells = sheetOf(run.book, sheetId).getCellMatrix();
    return change((row, column) => {
      const type = cells.getValue(row, column)?.t;
      const pattern = patternAt(row - area.row, column - area.column);
      return {
        s: { n: { pattern } },
        // The engine would guess the type of a text anew under another format.
        ...(type === CellValueType.STRING || type === CellValueType.FORCE_STRING
          ? { t: type }
          : {}),
      };
    }, "format");
  };
  const noteAt = (row: number, column: number): string => {
    const custom = sheetOf(run.book, sheetId).getCellMatrix().getValue(row, column)?.custom;
    return typeof custom?.note === "string" ? custom.note : "";
  };

  return {
    setNumberFormat(pattern: unknown) {
      const text = textArgument(pattern, "SpreadsheetApp.Range.setNumberFormat");
      return setPatterns(() => text);
    },
    setNumberFormats(patterns: unknown) {
      const method = "SpreadsheetApp.Range.setNumberFormats";
      const rows = gridArgument(patterns, area, method);
      return setPatterns((row, column) => textArgument(rows[row]?.[column], method));
    },
    getNumberFormat: () => cellReader(run.book, sheetId)(area.row, area.column).pattern,
    setFontWeight: (weight: unknown) =>
      style(
        "bl",
        oneOf({ bold: BooleanNumber.TRUE, normal: BooleanNumber.FALSE }, weight, "setFontWeight"),
      ),
    setFontColor: (color: unknown) => style("cl", color === null ? null : { rgb: color }),
    setBackground: (color: unknown) => style("bg", color === null ? null : { rgb: color }),
    setWrap: (wraps: unknown) => style("tb", wraps ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW),
    setHorizontalAlignment: (word: unknown) =>
      style("ht", oneOf(HORIZONTAL, word, "setHorizontalAlignment")),
    setVerticalAlignment: (word: unknown) =>
      style("vt", oneOf(VERTICAL, word, "setVerticalAlignment")),
    setNote(note: unknown) {
      const text = note === null ? "" : textArgument(note, "SpreadsheetApp.Range.setNote");
      return change(() => ({ custom: text === "" ? null : { note: text } }) as ICellData);
    },
    getNote: () => noteAt(area.row, area.column),
    insertCheckboxes() {
      const rule = { kind: "checkbox", values: [], allowInvalid: false } as const;
      attempt(() => {
        setInputRule(run.book, { sheetId, area, rule });
        writeValues(run, {
          sheetId,
          area,
          valueAt: () => false,
          method: "SpreadsheetApp.Range.insertCheckboxes",
        });
      }, "rule");
      return self();
    },
    removeCheckboxes() {
      const read = cellReader(run.book, sheetId);
      const boxes = new Set<string>();
      for (let row = area.row; row < area.row + area.rows; row++) {
        for (let column = area.column; column < area.column + area.columns; column++) {
          if (isCheckbox(run.book, { sheetId, row, column })) boxes.add(`${row},${column}`);
        }
      }
      if (boxes.size === 0) return self();
      attempt(() => setInputRule(run.book, { sheetId, area, rule: null }), "rule");
      return change(
        (row, column) =>
          boxes.has(`${row},${column}`) && read(row, column).kind === "boolean"
            ? { v: null, t: null, f: null, si: null, p: null }
            : {},
        "rule",
      );
    },
    setDataValidation(rule: unknown) {
      const method = "SpreadsheetApp.Range.setDataValidation";
      const wanted = rule === null ? null : inputRuleOf(rule, method);
      attempt(() => setInputRule(run.book, { sheetId, area, rule: wanted }), "rule");
      return self();
    },
  };
}
