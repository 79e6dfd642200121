/*
 * Longer than most: an open workbook with all that the tests ask of it; each function is a few
 * lines.
 */
import { type ICellData, IResourceLoaderService, type IWorkbookData } from "@univerjs/core";
import { afterEach } from "vitest";
import { openFile } from "../../src/local/open-file";
import {
  openScriptWorkbook,
  type ScriptWorkbook,
  type ScriptWorkbookOptions,
} from "../../src/local/script-workbook";
import { serialOfIso } from "../../src/local/serial-day";
import { numberCell, type SheetDraft, textCell, workbookData } from "../../src/local/workbook-data";
import type { AnswerOf, CallResult, RequestOf, SidebarCallName } from "../../src/wire/calls";
import { faultSentence } from "../../src/wording/writing";
import type { WritingFault } from "../../src/wording/writing-codes";
import { buildAddIn } from "../support/built-add-in";

/** The day from which every test looks. */
export const AS_OF = "2026-11-25";
export const SETTINGS = "Nursery settings";
export const HILLSIDE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";

// biome-ignore lint/suspicious/noExplicitAny: a script has no types either
export type Sheet = any;
type Value = string | number | boolean;
/** Text such as "2026-11-24" makes a day; a cell of the engine's own is taken as it is. */
export type Made = Value | null | ICellData;

/** A workbook with the built add-in in it, used as people and the sidebar use it. */
export interface Nursery {
  readonly w: ScriptWorkbook;
  /** What a sidebar call answers. @throws Error with the sentence where it fails */
  ask<Name extends SidebarCallName>(name: Name, request: RequestOf<Name>): AnswerOf<Name>;
  /** What a call that fails gives as its reason; a sentence of another room as "said". */
  fault<Name extends SidebarCallName>(name: Name, request: RequestOf<Name>): WritingFault;
  /** The same as the page says it. */
  refusal<Name extends SidebarCallName>(name: Name, request: RequestOf<Name>): string;
  /** A tab for looking and acting without being counted. @throws Error where there is none */
  sheet(tab: string): Sheet;
  tabs(): string[];
  remove(tab: string): void;
  /** All values of a tab, days as ISO text. */
  values(tab: string): Value[][];
  value(tab: string, cell: string): Value;
  /** Everything that stands in a tab, formulas as such, for comparing. */
  snapshot(tab: string): string;
  /** The workbook as it stands, to open it again. */
  saved(): IWorkbookData;
  /** Set up with everything guessed, seen from AS_OF. */
  ready(tab?: string): Nursery;
}

function faultIn(refused: Extract<CallResult<never>, { ok: false }>): WritingFault {
  return "fault" in refused ? refused.fault : { code: "said", sentence: refused.error };
}

let code: string | null = null;
/** The text of the built script, read once for all tests of a process. */
function builtCode(): string {
  code ??= buildAddIn().read("Code.js");
  return code;
}

let still: string | null = null;
/** The same without the marks of custom functions. */
function stillCode(): string {
  still ??= builtCode().replace(/@customfunction/g, "");
  return still;
}

/** Workbooks that nobody has closed yet. */
const open = new Set<ScriptWorkbook>();
afterEach(() => {
  for (const workbook of open) workbook.close();
});

interface Options extends Pick<ScriptWorkbookOptions, "lateRefusals" | "hasDocumentLock"> {
  readonly spreadsheetZone?: string;
  /** The process's own if left out. */
  readonly scriptZone?: string;
  /** Whether our functions are calculated, which takes its time. */
  readonly live?: boolean;
  /** Rows of a new tab, where a test makes hundreds of them; 1000 if left out. */
  readonly newRows?: number;
  /** Such as "fr_FR"; "en_GB" if left out. */
  readonly locale?: string;
  /** Whether functions may not read what `TODAY()` gives. */
  readonly refusesToday?: boolean;
  /** Whether rows that a filter hides take nothing that a script writes. */
  readonly keepsFiltered?: boolean;
}

/** Opens a workbook for as long as the test runs. */
function openWorkbook(data: IWorkbookData, options: Options & { zone: string }): ScriptWorkbook {
  const { scriptZone = ownZone(), zone, live, newRows, locale = "en_GB", ...more } = options;
  const { refusesToday = false, keepsFiltered = false, spreadsheetZone: _, ...rest } = more;
  // Without its mark a function is none that the engine knows.
  const script = live ? builtCode() : stillCode();
  const w = openScriptWorkbook(script, structuredClone(data), {
    settings: {
      spreadsheetZone: zone,
      scriptZone,
      locale,
      refusesToday,
      keepsFiltered,
      ...(newRows === undefined ? {} : { newRows }),
    },
    ...rest,
    now: () => Date.UTC(2026, 10, 25, 9),
  });
  // A test that opens hundreds closes them, and then nothing may hold on to them.
  const closing: ScriptWorkbook = {
    ...w,
    close() {
      open.delete(closing);
      w.close();
    },
  };
  open.add(closing);
  return closing;
}

const ownZone = () => Intl.DateTimeFormat().resolvedOptions().timeZone;

/** The sample nursery's tabs, read once for all tests of a process. */
let hillside: readonly SheetDraft[] | null = null;

/** Workbooks after Set up by what they were before: the same Set up makes the same workbook. */
const setUpOf = new Map<string, IWorkbookData>();

/** @param drafts the tabs, or a workbook that was saved; the sample nursery when none are given */
export function openNursery(
  drafts?: readonly SheetDraft[] | IWorkbookData,
  options: Options = {},
): Nursery {
  hillside ??= openFile(HILLSIDE, new Set());
  const given = drafts ?? hillside;
  const zone = options.spreadsheetZone ?? options.scriptZone ?? ownZone();
  const data = "sheetOrder" in given ? given : workbookData("Trial", given);
  let w = openWorkbook(data, { ...options, zone });
  let isUntouched = true;
  // biome-ignore lint/suspicious/noExplicitAny: a script has no types either
  const services = () => w.uncounted() as any;
  const touched = () => {
    isUntouched = false;
    return w;
  };
  const book = () => {
    touched();
    return services().SpreadsheetApp.getActive();
  };
  const sheet = (tab: string): Sheet => {
    const found = book().getSheetByName(tab);
    if (found === null) throw new Error(`There is no tab ${tab}`);
    return found;
  };
  const plain = (value: unknown): Value =>
    Object.prototype.toString.call(value) === "[object Date]"
      ? services().Utilities.formatDate(value, zone, "yyyy-MM-dd")
      : (value as Value);
  const result = (name: string, request: unknown) =>
    touched().run(name, request) as CallResult<never>;
  const nursery: Nursery = {
    get w() {
      return touched();
    },
    ask(name, request) {
      const answer = result(name, request);
      if (answer.ok) return answer.data;
      throw new Error(faultSentence(faultIn(answer)));
    },
    refusal(name, request) {
      return faultSentence(nursery.fault(name, request));
    },
    fault(name, request) {
      const answer = result(name, request);
      if (!answer.ok) return faultIn(answer);
      throw new Error(`it did not refuse but answered ${JSON.stringify(answer.data)}`);
    },
    sheet,
    remove: (tab) => book().deleteSheet(sheet(tab)),
    tabs: () =>
      book()
        .getSheets()
        .map((one: Sheet) => one.getName()),
    values: (tab) =>
      sheet(tab)
        .getDataRange()
        .getValues()
        .map((row: unknown[]) => row.map(plain)),
    value: (tab, cell) => plain(sheet(tab).getRange(cell).getValue()),
    snapshot(tab) {
      const range = sheet(tab).getDataRange();
      return JSON.stringify([
        range.getValues().map((row: unknown[]) => row.map(plain)),
        range.getFormulas(),
      ]);
    },
    saved: () => savedWorkbook(touched()),
    ready(tab = "Records") {
      const start = isUntouched && !options.live ? JSON.stringify([data, options, zone, tab]) : "";
      const known = setUpOf.get(start);
      if (known) {
        w.close();
        w = openWorkbook(known, { ...options, zone });
      } else {
        nursery.ask("sidebarSetUp", { tab, columns: [], methods: [] });
        sheet(SETTINGS).getRange("B4").setValue(AS_OF);
        w.call("refreshDueList");
        if (start !== "") setUpOf.set(start, nursery.saved());
      }
      touched().meter.reset();
      return nursery;
    },
  };
  return nursery;
}

/** The workbook with what the engine keeps beside the cells, such as boxes to tick. */
function savedWorkbook({ book }: ScriptWorkbook): IWorkbookData {
  return structuredClone(
    book.injector.get(IResourceLoaderService).saveUnit(book.unitId),
  ) as IWorkbookData;
}

/** A tab's snapshot without the minute at which it was made: the clock may go on between two. */
export function withoutMinute(snapshot: string): string {
  return snapshot.replace(/\d{4}-\d\d-\d\d \d\d:\d\d/g, "");
}

const DAY = /^\d{4}-\d\d-\d\d$/;

function madeCell(made: Made): ICellData | undefined {
  if (made === null || made === "") return undefined;
  if (typeof made === "number") return numberCell(made);
  if (typeof made === "boolean") return { v: made ? 1 : 0, t: 3 };
  if (typeof made === "object") return made;
  return DAY.test(made)
    ? numberCell(serialOfIso(made) ?? Number.NaN, "yyyy-mm-dd")
    : textCell(made);
}

/** A tab that a test makes, header first. */
export function tab(name: string, rows: readonly (readonly Made[])[], room?: number): SheetDraft {
  return { name, rows: rows.map((row) => row.map(madeCell)), ...(room ? { room } : {}) };
}

export const SMALL_HEADER = [
  ...[
    "Batch",
    "Variety",
    "Place",
    "Grafter",
    "Sown",
    "Seeds sown",
    "Germination day",
    "Germinated",
  ],
  ...["Grafted on", "Grafts made", "First release", "Take count day", "Takes", "Ready on"],
  ...["Ready plants", "Note"],
] as const;

/** A row of the small table by header; the rest is blank. */
export function smallRow(cells: Partial<Record<(typeof SMALL_HEADER)[number], Made>>): Made[] {
  return SMALL_HEADER.map((header) => cells[header] ?? null);
}

/** A batch that was grafted so that its takes are due on the day of all tests here. */
export const GRAFTED = {
  ...{ Place: "Bay 1", Sown: "2026-07-20", "Seeds sown": 100 },
  ...{ "Germination day": "2026-07-30", Germinated: 90 },
  ...{ "Grafted on": "2026-10-24", "Grafts made": 80 },
};

/** Two invented batches whose takes are due: "B1" in row 2, "B2" in row 3. Take day L, takes M, note P. */
export function smallRecords(...more: readonly (readonly Made[])[]): SheetDraft {
  const batch = (name: string) =>
    smallRow({ Batch: name, Variety: "Amberlow", ...GRAFTED, "First release": "2026-11-07" });
  return tab("Records", [SMALL_HEADER, batch("B1"), batch("B2"), ...more]);
}

/** They alone, open and set up. */
export const smallNursery = () => openNursery([smallRecords()]).ready();

/** A request to record takes of "B1" on the day before. */
export function takesOf(
  batch: string,
  more: Partial<RequestOf<"sidebarRecord">> = {},
): RequestOf<"sidebarRecord"> {
  return {
    batch,
    task: "Take count",
    day: "2026-11-24",
    count: 60,
    who: "",
    note: "",
    sure: [],
    ...more,
  };
}
