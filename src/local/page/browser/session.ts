import {
  ICommandService,
  IUniverInstanceService,
  type IWorkbookData,
  type Univer,
  UniverInstanceType,
  type Workbook,
} from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { ScrollToCellCommand } from "@univerjs/sheets-ui";
import type { ScriptSettings } from "../../script-services";
import { type CalculationWatch, calculationWatch } from "../../spreadsheet-app/calculation-watch";
import type { Desk } from "../../spreadsheet-app/desk";
import { type EditTrigger, editTrigger } from "../../spreadsheet-app/edit-trigger";
import type { Power } from "../../spreadsheet-app/execution";
import { type OpenBook, openBook } from "../../spreadsheet-app/open-book";
import { resultText } from "../../spreadsheet-app/run-values";
import {
  endingRun,
  type ScriptHost,
  type ScriptRun,
  scriptHost,
} from "../../spreadsheet-app/script-host";
import { watchUserEdits } from "../../spreadsheet-app/user-edits";
import { watchChanges } from "../../spreadsheet-app/workbook-changes";
import { showCellNote } from "./cell-note";
import { openScriptFrame, type ScriptFrame } from "./script-frames";
import { showSpillFormats } from "./spill-formats";
import { readTyping } from "./typed-grid";

/** A workbook open in the page, with the add-in at work in it. */
export interface Session {
  readonly book: OpenBook;
  readonly host: ScriptHost;
  readonly edits: EditTrigger;
  /** Calls onOpen, if the script has one. */
  open(): Promise<void>;
  /** Calls a function as a menu item does. */
  perform(name: string): Promise<void>;
  /** Calls a function for the sidebar: JSON texts in and out. */
  answer(name: string, argumentsText: string): Promise<string>;
  /** Resolves when every trigger has run and every formula is calculated. */
  settled(): Promise<void>;
  close(): void;
}

export interface SessionParts {
  readonly univer: Univer;
  readonly settings: ScriptSettings;
  readonly desk: Desk;
  readonly pages: Readonly<Record<string, string>>;
  /** The names of the script's top-level functions. */
  readonly functions: ReadonlySet<string>;
  /** Called whenever the workbook is changed. */
  readonly changed: () => void;
  /** The line above the grid for the note of the selected cell. */
  readonly noteLine: HTMLElement;
}

/** A call does not wait longer than this for formulas that are still being calculated. */
const LONGEST_WAIT_MS = 800;

/**
 * Opens a workbook in the page, under an id of its own, and puts the script to work in it.
 *
 * Longer than most: what a session has is made in the order in which each needs the others.
 */
export function openSession(data: IWorkbookData, parts: SessionParts): Session {
  const { univer, settings } = parts;
  const injector = univer.__getInjector();
  const watch: CalculationWatch = calculationWatch(injector);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, {
    ...data,
    id: crypto.randomUUID(),
  });
  const book = openBook(injector, workbook);
  const host = scriptHost(book, {
    settings,
    desk: parts.desk,
    page: (name) => parts.pages[name] ?? null,
    now: Date.now,
  });

  const inFrame = async <Result>(
    power: Power,
    use: (frame: ScriptFrame, run: ScriptRun) => Result,
  ): Promise<Result> => {
    const frame = await openScriptFrame();
    const run = host.begin(frame.realm, power);
    try {
      await frame.load(run.globals);
      return endingRun(run, () => use(frame, run));
    } finally {
      frame.remove();
    }
  };
  const functionIn = (frame: ScriptFrame, name: string) => {
    const found = frame.functionNamed(name);
    if (!found) throw new Error(`Script function not found: ${name}`);
    return found;
  };
  const calculated = () =>
    Promise.race([watch.settled(), new Promise((resolve) => setTimeout(resolve, LONGEST_WAIT_MS))]);

  const edits = editTrigger(
    async (edit) => {
      if (!parts.functions.has("onEdit")) return;
      await inFrame("limited", (frame, run) => functionIn(frame, "onEdit")(run.editEvent(edit)));
    },
    (error) => console.error("onEdit", error),
  );
  const spills = showSpillFormats(injector);
  const endings = [
    watchUserEdits(book, edits.hear),
    watchChanges(book, parts.changed),
    showCellNote(injector, book, parts.noteLine),
    readTyping(injector, book, settings.locale),
    () => spills.dispose(),
    watch.stop,
  ];

  return {
    book,
    host,
    edits,
    async open() {
      if (!parts.functions.has("onOpen")) return;
      await inFrame("limited", (frame) => functionIn(frame, "onOpen")());
    },
    async perform(name) {
      await calculated();
      await inFrame("full", (frame) => functionIn(frame, name)());
    },
    async answer(name, argumentsText) {
      await calculated();
      return inFrame("full", (frame) => {
        const parameters = frame.realm.parse(argumentsText) as unknown[];
        return resultText(functionIn(frame, name)(...parameters));
      });
    },
    async settled() {
      await edits.idle();
      await watch.settled();
    },
    close() {
      for (const end of endings) end();
      injector.get(IUniverInstanceService).disposeUnit(book.unitId);
    },
  };
}

/** Scrolls the grid to the selected cells. */
export function revealSelection(univer: Univer): void {
  const injector = univer.__getInjector();
  const range = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
  if (range) injector.get(ICommandService).syncExecuteCommand(ScrollToCellCommand.id, { range });
}
