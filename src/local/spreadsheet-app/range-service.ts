import { SetSelectionsOperation, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { type Area, a1Of } from "./area";
import { rangeOf } from "./cell-writing";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { wholeArgument } from "./grid-arguments";
import { checkedArea } from "./range-bounds";
import { rangeFormatMethods } from "./range-formats";
import { attemptOn, rangeValueMethods } from "./range-values";
import { signatureError } from "./service-error";
import { sortColumns, sortRows } from "./sorted-rows";
import { createFilter, filterOf } from "./tab-filter";

interface AreaOfSheet extends Area {
  readonly sheetId: string;
}

/** The cells behind the ranges that scripts hold. */
const areas = new WeakMap<object, AreaOfSheet>();

/** The cells behind a range that a script hands over. @throws ServiceError when it is none */
export function areaBehind(range: unknown, method: string): AreaOfSheet {
  const known = typeof range === "object" && range ? areas.get(range) : undefined;
  if (!known) throw signatureError([range], method);
  return known;
}

/** Range of the spreadsheet service. */
export function rangeService(
  run: Execution,
  {
    sheetId,
    area,
    properties = {},
  }: {
    readonly sheetId: string;
    readonly area: Area;
    readonly properties?: Readonly<Record<string, unknown>>;
  },
): ServiceObject {
  const self = (): ServiceObject => range;
  const range: ServiceObject = serviceObject(run, "Range", {
    methods: {
      getRow: () => area.row + 1,
      getColumn: () => area.column + 1,
      getNumRows: () => area.rows,
      getNumColumns: () => area.columns,
      getLastRow: () => area.row + area.rows,
      getLastColumn: () => area.column + area.columns,
      getA1Notation: () => a1Of(area),
      getSheet: () => run.makes.sheet(sheetId),
      offset(rowOffset: unknown, columnOffset: unknown, rows?: unknown, columns?: unknown) {
        const method = "SpreadsheetApp.Range.offset";
        return rangeService(run, {
          sheetId,
          area: checkedArea(run, sheetId, {
            row: area.row + wholeArgument(rowOffset, method),
            column: area.column + wholeArgument(columnOffset, method),
            rows: rows === undefined ? area.rows : wholeArgument(rows, method),
            columns: columns === undefined ? area.columns : wholeArgument(columns, method),
          }),
        });
      },
      activate() {
        select(run, sheetId, area);
        return self();
      },
      createFilter: () => createFilter(run, sheetId, area),
      getFilter: () => filterOf(run, sheetId),
      sort(spec: unknown) {
        const by = sortColumns(spec, "SpreadsheetApp.Range.sort");
        attemptOn(run, { sheetId, area, write: () => sortRows(run.book, { sheetId, area, by }) });
        return self();
      },
      ...rangeValueMethods(run, { sheetId, area, self }),
      ...rangeFormatMethods(run, { sheetId, area, self }),
    },
    properties,
  });
  areas.set(range, { ...area, sheetId });
  return range;
}

/** Shows a tab and selects cells in it. */
export function select(run: Execution, sheetId: string, area: Area): void {
  run.book.execute(SetWorksheetActiveOperation.id, { subUnitId: sheetId });
  run.book.execute(SetSelectionsOperation.id, {
    subUnitId: sheetId,
    selections: [
      {
        range: rangeOf(area),
        primary: {
          ...rangeOf({ ...area, rows: 1, columns: 1 }),
          actualRow: area.row,
          actualColumn: area.column,
          isMerged: false,
          isMergedMainCell: false,
        },
        style: null,
      },
    ],
  });
  run.desk.selected();
}
