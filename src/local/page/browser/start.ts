/**
 * The local page: the grid, the add-in's menu and sidebar around it, and its functions in the
 * formulas. Everything that it needs comes from its own server (see page-start.ts).
 */
import * as text from "../../../sentences/made/local-page";
import { registerCustomFunctions } from "../../custom-function";
import { PersonError } from "../../person-error";
import { type ScriptSettings, scriptServices } from "../../script-services";
import { sheetsOf } from "../../sheet-cells";
import { type SheetDraft, workbookData } from "../../workbook-data";
import { writeXlsx } from "../../xlsx-out";
import { errorWords, seededRandom } from "../call-answerer";
import type { PageStart } from "../page-start";
import { createEngine } from "./engine-page";
import { connectFileButtons } from "./file-buttons";
import { registerFormulaHelp } from "./formula-help";
import { menuButtons } from "./menu-buttons";
import { messages } from "./messages";
import { pageDesk } from "./page-desk";
import { part } from "./page-parts";
import { readInWorker } from "./read-in-worker";
import { download, saveBeside } from "./save-copy";
import { openScriptFrame } from "./script-frames";
import { openSession, revealSelection, type Session } from "./session";
import { sidebarFrame } from "./sidebar";
import { exposeForTests } from "./test-handle";
import { unsavedWork } from "./unsaved-work";
import { workingSign } from "./working-sign";
import "./page.css";

async function startPage(given: PageStart): Promise<void> {
  const browserZone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const settings: ScriptSettings = {
    locale: given.locale,
    scriptZone: browserZone,
    spreadsheetZone: given.zone ?? browserZone,
  };
  const resized = () => window.dispatchEvent(new Event("resize"));
  const unsaved = unsavedWork(part("saved-state"), resized);
  const random = given.seed === null ? Math.random : seededRandom(given.seed);
  const notices = messages(part("messages"));
  const working = workingSign(part("status"));
  const { univer, injector } = createEngine("grid", settings.spreadsheetZone);

  // The functions of formulas live in one frame for good; runs of the script get a fresh one each.
  const formulaFrame = await openScriptFrame();
  await formulaFrame.load(scriptServices(settings));
  const functions = new Set(formulaFrame.functionNames());
  const custom = given.catalogue.flatMap((entry) => {
    const call = formulaFrame.functionNamed(entry.name);
    return call ? [{ ...entry, call }] : [];
  });
  const addInNames = new Set(custom.map(({ name }) => name.toUpperCase()));

  let session: Session | null = null;
  let fileName = "";
  const act = async (work: (open: Session) => Promise<void>) => {
    try {
      if (session) await working(work(session));
    } catch (error) {
      notices.trouble(errorWords(error).text);
    }
  };
  const menus = menuButtons(part("menus"), (name) => void act((open) => open.perform(name)));
  const sidebar = sidebarFrame(part("sidebar"), {
    address: given.sidebarAddress,
    functions: () => Array.from(functions).filter((name) => !name.endsWith("_")),
    call: (name, argumentsText) => working((session as Session).answer(name, argumentsText)),
    random,
    resized,
  });
  const desk = pageDesk({
    menus,
    messages: notices,
    sidebar,
    reveal: () => revealSelection(univer),
  });

  const openDrafts = async (name: string, drafts: readonly SheetDraft[]) => {
    session?.close();
    sidebar.close();
    menus.clear();
    fileName = name;
    part("file-name").textContent = name;
    unsaved.opened(name);
    session = openSession(workbookData(name, drafts), {
      univer,
      settings,
      desk,
      pages: given.pages,
      functions,
      changed: unsaved.changed,
      noteLine: part("note"),
    });
    await act((open) => open.open());
  };
  // Functions have to be known before the first workbook is calculated.
  registerCustomFunctions(injector, { functions: custom, realm: formulaFrame.realm, settings });
  await openDrafts(given.fileName, given.drafts);
  registerFormulaHelp(injector, custom);

  connectFiles(given, {
    act,
    unsaved,
    addInNames,
    open: openDrafts,
    fileName: () => fileName,
  });
  exposeForTests(() => session as Session, settings);
}

/** What the buttons for files work on. */
interface FileWork {
  /** Does something with the open workbook, and says what goes wrong. */
  act(work: (open: Session) => Promise<void>): Promise<void>;
  readonly unsaved: ReturnType<typeof unsavedWork>;
  readonly addInNames: ReadonlySet<string>;
  open(name: string, drafts: readonly SheetDraft[]): Promise<void>;
  fileName(): string;
}

/** The buttons that open a file, save it beside the one that was opened, and download it. */
function connectFiles(
  given: PageStart,
  { act, unsaved, addInNames, open, fileName }: FileWork,
): void {
  const saver = part<HTMLButtonElement>("save-beside");
  saver.hidden = !given.savesBeside;
  const openFile = async (file: File) => {
    const drafts = await readInWorker(file, addInNames);
    if (!unsaved.mayBeLost(file.name)) return;
    await open(file.name, drafts);
    // The page does not know where this file lies.
    saver.hidden = true;
  };
  /** @param keep keeps the workbook's bytes; gives the sentence that says where */
  const saveCopy = (keep: (bytes: Uint8Array<ArrayBuffer>) => Promise<string> | string) =>
    act(async ({ book, settled }) => {
      await settled();
      const at = unsaved.now();
      const bytes = writeXlsx(sheetsOf(book.workbook, book.formulas), addInNames);
      unsaved.saved(at, await keep(bytes as Uint8Array<ArrayBuffer>));
    });
  connectFileButtons(
    {
      opener: part<HTMLInputElement>("open-file"),
      saver,
      downloader: part<HTMLButtonElement>("save-file"),
      dropHint: part("drop-hint"),
    },
    {
      open: (file) => void act(() => openFile(file)),
      save: () =>
        void saveCopy(async (bytes) =>
          text.savedBeside({ name: await saveBeside(bytes), file: fileName() }),
        ),
      download: () =>
        void saveCopy((bytes) => {
          const name = `${fileName().replace(/\.[^.]*$/, "")}.xlsx`;
          download(bytes, name);
          return text.downloaded({ name });
        }),
    },
  );
}

async function givenStart(): Promise<PageStart> {
  const answer = await fetch("start.json");
  if (!answer.ok) throw new Error(await answer.text());
  return answer.json();
}

givenStart()
  .then(startPage)
  .catch((error: unknown) => {
    const line = part("status");
    line.textContent =
      error instanceof PersonError
        ? error.message
        : text.cantStart({ why: errorWords(error).text });
    console.error(error);
  });
