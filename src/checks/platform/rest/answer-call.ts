import { type Area, areaNamed } from "./areas";
import { type BatchRequest, doRequest } from "./batch-requests";
import { cellAt } from "./cell-fields";
import { type RenderOption, type Shown, shown } from "./shown";
import { Refused, type StoredBook } from "./stored-book";
import { type Typed, typeInto } from "./typed-in";

/** A call of the Sheets REST API as the emulator hands it to what reaches the network. */
export interface RestCall {
  readonly method: string;
  /** "values", or null for the spreadsheet itself. */
  readonly subProp: string | null;
  readonly params: {
    readonly spreadsheetId: string;
    readonly range?: string;
    readonly ranges?: readonly string[];
    readonly valueRenderOption?: RenderOption;
    readonly requestBody?: {
      readonly requests?: readonly BatchRequest[];
      readonly data?: readonly {
        readonly range: string;
        readonly values: readonly (readonly Typed[])[];
      }[];
    };
  };
}

export interface RestAnswer {
  readonly data: unknown;
  readonly response: { readonly status: number; readonly error?: { readonly message: string } };
}

/** Answers a call from the workbook in memory; one that it can't do with status 400 and why. */
export function answerCall(book: StoredBook, call: RestCall): RestAnswer {
  try {
    return { data: answered(book, call), response: { status: 200 } };
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { data: null, response: { status: 400, error: { message: error.message } } };
  }
}

function answered(book: StoredBook, { method, subProp, params }: RestCall): unknown {
  const { ranges, range, valueRenderOption, requestBody } = params;
  switch (`${subProp ?? "spreadsheets"}.${method}`) {
    case "spreadsheets.get":
      return spreadsheet(book, ranges);
    case "spreadsheets.batchUpdate":
      return {
        replies: (requestBody?.requests ?? []).map((request) => doRequest(book, request)),
      };
    case "values.get":
      return { values: values(book, areaNamed(book, range ?? ""), valueRenderOption) };
    case "values.batchUpdate":
      for (const { range: where, values: typed } of requestBody?.data ?? []) {
        write(areaNamed(book, where), typed);
      }
      return {};
    default:
      throw new Refused(`the lent layer does not know the call ${subProp ?? ""} ${method}`);
  }
}

/** Properties of all sheets; with ranges, those sheets and their cells as well. */
function spreadsheet(book: StoredBook, ranges: readonly string[] | undefined): unknown {
  const told = { spreadsheetId: book.id, properties: { title: book.title } };
  // What is answered must not change when the workbook does.
  const copy = <Plain>(plain: Plain): Plain => JSON.parse(JSON.stringify(plain)) as Plain;
  if (!ranges) {
    return {
      ...told,
      sheets: book.sheets.map(({ properties }) => ({ properties: copy(properties) })),
    };
  }
  const sheets = ranges.map((range) => {
    const { sheet, top, bottom, left, right } = areaNamed(book, range);
    const rowData = Array.from({ length: bottom - top }, (_, row) => ({
      values: Array.from({ length: right - left }, (__, column) =>
        copy(sheet.rows[top + row]?.[left + column] ?? {}),
      ),
    }));
    const columnMetadata = Array.from({ length: right - left }, (_, at) => ({
      pixelSize: sheet.widths[left + at],
    }));
    return { properties: copy(sheet.properties), data: [{ rowData, columnMetadata }] };
  });
  return { ...told, sheets };
}

/** Without the blanks at the ends of rows and the blank rows at the end, as the API answers. */
function values(book: StoredBook, area: Area, option: RenderOption = "FORMATTED_VALUE"): Shown[][] {
  const { sheet, top, bottom, left, right } = area;
  const rows = sheet.rows.slice(top, bottom).map((row) =>
    withoutTail(
      Array.from((row ?? []).slice(left, right), (cell) => shown(book, cell, option)),
      (one) => one === "",
    ),
  );
  return withoutTail(rows, (row) => row.length === 0);
}

function withoutTail<Item>(items: Item[], isBlank: (item: Item) => boolean): Item[] {
  let end = items.length;
  while (end > 0 && isBlank(items[end - 1] as Item)) end -= 1;
  return items.slice(0, end);
}

function write(area: Area, typed: readonly (readonly Typed[])[]): void {
  typed.forEach((row, down) => {
    row.forEach((value, right) => {
      typeInto(cellAt(area, area.top + down, area.left + right), value);
    });
  });
}
