import vm from "node:vm";
import { type IWorkbookData, UniverInstanceType, type Workbook } from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { bareContext, loadBundle } from "./bundle";
import { readCatalogue } from "./catalogue";
import { registerCustomFunctions } from "./custom-function";
import { formulaEngine } from "./formula-engine";
import type { ScriptSettings } from "./script-services";
import { type SheetCells, sheetsOf } from "./sheet-cells";
import { areaOfA1 } from "./spreadsheet-app/area";
import { calculationWatch } from "./spreadsheet-app/calculation-watch";
import { type Conditions, conditions } from "./spreadsheet-app/conditions";
import { type Desk, type DeskNotes, notedDesk } from "./spreadsheet-app/desk";
import { type EditTrigger, editTrigger } from "./spreadsheet-app/edit-trigger";
import type { Power, ServiceObject } from "./spreadsheet-app/execution";
import { openBook } from "./spreadsheet-app/open-book";
import { argumentsText, resultText } from "./spreadsheet-app/run-values";
import {
  endingRun,
  type ScriptHost,
  type ScriptHostOptions,
  type ScriptRun,
  scriptHost,
} from "./spreadsheet-app/script-host";
import { ownRealm, REALM_SOURCE, type ScriptRealm } from "./spreadsheet-app/script-realm";
import { typeIn } from "./spreadsheet-app/typing";
import { watchUserEdits } from "./spreadsheet-app/user-edits";
import { wallClock } from "./wall-clock";

/** A workbook without a screen in which a built script runs: menus, sidebar calls, triggers, formulas. */
export interface ScriptWorkbook extends Pick<ScriptHost, "meter" | "lock" | "book"> {
  /** What scripts have shown the person, and the answers that the person will give. */
  readonly desk: DeskNotes;
  readonly edits: EditTrigger;
  /** What people do to their workbooks: charts, protections, merges, tables, another locale. */
  readonly conditions: Conditions;
  /** Errors that onEdit threw. */
  readonly editErrors: readonly unknown[];
  /**
   * Calls a top-level function as a menu item does, in a context of its own; the result is the
   * script's own value. @throws what the function throws, or Error when there is no such function
   */
  call(name: string, ...parameters: readonly unknown[]): unknown;
  /** Calls a function as the sidebar does: what passes is copied, private functions are not there. */
  run(name: string, ...parameters: readonly unknown[]): unknown;
  /** Calls onOpen, if the script has one. */
  open(): void;
  /** Types into a cell as a person does; onEdit runs soon after. @param cell such as "B2" */
  type(sheet: string, cell: string, text: string): void;
  /** Puts texts into a block of cells at once, as a paste does. @param cell its upper left corner */
  paste(sheet: string, cell: string, rows: readonly (readonly string[])[]): void;
  /** The services in a run of their own with values of this context; `end` gives back its lock. */
  begin(power?: Power): { globals: Readonly<Record<string, ServiceObject>>; end(): void };
  /** The services for a test that looks and acts without being counted. */
  uncounted(): Readonly<Record<string, ServiceObject>>;
  sheets(): SheetCells[];
  /** Resolves when every trigger has run and every formula is calculated. */
  settled(): Promise<void>;
  close(): void;
}

export interface ScriptWorkbookOptions
  extends Pick<ScriptHostOptions, "lateRefusals" | "hasDocumentLock"> {
  readonly settings: ScriptSettings;
  /** Pages of the project by their name without the ending. */
  readonly pages?: Readonly<Record<string, string>>;
  /** Milliseconds since 1970-01-01 UTC. */
  readonly now?: () => number;
  /** In place of the desk that only takes notes. */
  readonly desk?: Desk;
}

let last: { readonly code: string; readonly script: vm.Script } | null = null;

/** A script that was compiled a moment ago keeps what the engine has learned of it. */
function compiled(code: string): vm.Script {
  if (last?.code !== code) last = { code, script: new vm.Script(code, { filename: "Code.js" }) };
  return last.script;
}

/** What runs a script, each time in a context of its own, as the platform does. */
function contexts(host: ScriptHost, script: vm.Script) {
  return <Result>(
    power: Power,
    use: (context: vm.Context, realm: ScriptRealm, run: ScriptRun) => Result,
  ): Result => {
    const context = bareContext();
    const realm: ScriptRealm = vm.runInContext(REALM_SOURCE, context);
    const run = host.begin(realm, power);
    return endingRun(run, () => {
      Object.assign(context, run.globals);
      script.runInContext(context);
      return use(context, realm, run);
    });
  };
}

/** A top-level function of a script. @throws Error when there is none of that name */
function functionIn(context: vm.Context, name: string) {
  const found: unknown = context[name];
  // From memory: the wording.
  if (typeof found !== "function") throw new Error(`Script function not found: ${name}`);
  return (...parameters: readonly unknown[]): unknown =>
    Reflect.apply(found, undefined, parameters);
}

/**
 * Opens a workbook, and puts the script to work in it.
 *
 * Longer than most: what the workbook has is made in the order in which each needs the others.
 *
 * @param code the text of the built script; it may hold no function at all
 */
export function openScriptWorkbook(
  code: string,
  data: IWorkbookData,
  options: ScriptWorkbookOptions,
): ScriptWorkbook {
  // One object, so that a change of the locale reaches services and functions alike.
  const settings = { ...options.settings };
  const univer = formulaEngine(settings.spreadsheetZone);
  univer.registerPlugin(UniverDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  const injector = univer.__getInjector();
  if (readCatalogue(code).length > 0) {
    registerCustomFunctions(injector, loadBundle(code, settings));
  }
  const watch = calculationWatch(injector);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    // Workbooks of one id would share what the engine keeps (see engine.ts).
    { ...data, id: crypto.randomUUID() },
  );
  const book = openBook(injector, workbook);
  const noted = notedDesk();
  const host = scriptHost(book, {
    settings,
    desk: options.desk ?? noted.desk,
    page: (name) => options.pages?.[name] ?? null,
    now: options.now ?? Date.now,
    ...(options.lateRefusals ? { lateRefusals: options.lateRefusals } : {}),
    ...(options.hasDocumentLock === false ? { hasDocumentLock: false } : {}),
  });
  const clock = wallClock(options.settings.spreadsheetZone);
  const inContext = contexts(host, compiled(code));
  const editErrors: unknown[] = [];
  const edits = editTrigger(
    async (edit) =>
      inContext("limited", (context, _, run) => {
        if (typeof context.onEdit === "function")
          functionIn(context, "onEdit")(run.editEvent(edit));
      }),
    (error) => editErrors.push(error),
  );
  const unwatch = watchUserEdits(book, edits.hear);
  const enter = (sheetName: string, cell: string, rows: readonly (readonly string[])[]) => {
    const sheet = workbook.getSheetBySheetName(sheetName);
    const size = sheet && { rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
    const at = size && areaOfA1(cell, size);
    if (!sheet || !at) throw new Error(`There is no cell ${cell} in a tab ${sheetName}`);
    const { year } = clock.fieldsOf((options.now ?? Date.now)());
    typeIn(book, sheet.getSheetId(), {
      corner: at,
      rows,
      typing: { locale: settings.locale, year },
    });
  };

  return {
    book,
    meter: host.meter,
    lock: host.lock,
    conditions: conditions(book, settings),
    desk: noted.notes,
    edits,
    editErrors,
    call: (name, ...parameters) =>
      inContext("full", (context) => functionIn(context, name)(...parameters)),
    run(name, ...parameters) {
      const passed = argumentsText(parameters);
      if (name.endsWith("_")) throw new Error(`Script function not found: ${name}`);
      return inContext("full", (context, realm) => {
        const copies = realm.parse(passed) as unknown[];
        return JSON.parse(resultText(functionIn(context, name)(...copies)));
      });
    },
    open() {
      inContext("limited", (context) => {
        if (typeof context.onOpen === "function") functionIn(context, "onOpen")();
      });
    },
    type: (sheet, cell, text) => enter(sheet, cell, [[text]]),
    paste: enter,
    begin(power = "full") {
      const run = host.begin(ownRealm(), power);
      return { globals: run.globals, end: run.end };
    },
    uncounted: () => host.begin(ownRealm(), "full", false).globals,
    sheets: () => sheetsOf(workbook, book.formulas),
    async settled() {
      await edits.idle();
      await watch.settled();
    },
    close() {
      unwatch();
      watch.stop();
      univer.dispose();
    },
  };
}
