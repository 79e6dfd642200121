import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { isOpen, making } from "../../sentences/made/local-page";
import { notBuilt, portTaken } from "../../sentences/made/program-faults";
import { page as pageHelp } from "../../sentences/made/program-help";
import { readCatalogue } from "../catalogue";
import { PersonError } from "../person-error";
import { fileAsked } from "../program-words";
import { readApart } from "../read-apart";
import { pageBundle } from "./page-bundle";
import { pageFiles, sidebarFiles } from "./page-files";
import { readPageOptions } from "./page-options";
import { type PageServer, type PageSite, servePage } from "./page-server";
import { saveIntake } from "./save-intake";
import { SAVE_ADDRESS } from "./saved-copy";

/** Where the page's program runs, and how it speaks. */
export interface PageSurroundings {
  /** The project's folder, with sample-sheets/ in it. */
  readonly root: string;
  /** Folders in which a file that is named without one is looked for, the first one first. */
  readonly folders: readonly string[];
  readonly print: (text: string) => void;
  /** Said before what takes some seconds. */
  readonly progress: (text: string) => void;
  readonly openBrowser: (address: string) => void;
}

const SAMPLE = "sample-sheets/hillside-nursery/hillside-nursery.xlsx";

export interface LocalPageServer extends PageServer {
  /** The sidebar's own origin, such as "http://127.0.0.1:40124/". */
  readonly sidebarAddress: string;
}

/**
 * Serves the local page until it is closed.
 * @param words the words after the program's name
 * @returns null when there was nothing to serve
 * @throws PersonError when something is wrong that the person can mend
 */
export async function runPage(
  words: readonly string[],
  at: PageSurroundings,
): Promise<LocalPageServer | null> {
  const options = readPageOptions(words);
  if (options.help) {
    at.print(pageHelp());
    return null;
  }
  const file =
    options.file === undefined ? path.join(at.root, SAMPLE) : fileAsked(options.file, at.folders);
  const dist = findDist(options.dist, at);
  const catalogue = readCatalogue(readFileSync(path.join(dist, "Code.js"), "utf8"));
  const addInNames = new Set(catalogue.map(({ name }) => name.toUpperCase()));
  const drafts = await readApart(file, addInNames);
  const bundle = await pageBundle(at.root, () => at.progress(making()));
  // Another port is another origin: the sidebar is kept apart from the page, as in the cloud.
  let pageOrigin = "'none'";
  const sidebar = await servePage(
    { files: sidebarFiles(bundle, () => pageOrigin), shownIn: "frame" },
    0,
  );
  const files = pageFiles({
    root: at.root,
    dist,
    bundle,
    start: {
      fileName: path.basename(file),
      drafts,
      savesBeside: options.file !== undefined,
      sidebarAddress: sidebar.address,
      locale: options.locale,
      zone: options.zone ?? null,
      seed: options.seed ?? null,
    },
  });
  const takes = options.file === undefined ? {} : { [`/${SAVE_ADDRESS}`]: saveIntake(file) };
  const server = await serve({ files, shownIn: "tab", takes }, options.port).catch(
    async (error) => {
      await sidebar.close();
      throw error;
    },
  );
  pageOrigin = new URL(server.address).origin;
  at.print(isOpen({ file: path.basename(file), address: server.address }));
  if (options.opensBrowser) at.openBrowser(server.address);
  return {
    address: server.address,
    sidebarAddress: sidebar.address,
    close: async () => {
      await Promise.all([server.close(), sidebar.close()]);
    },
  };
}

async function serve(site: PageSite, port: number): Promise<PageServer> {
  try {
    return await servePage(site, port);
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code !== "EADDRINUSE" && code !== "EACCES") throw error;
    throw new PersonError(portTaken({ port: String(port) }));
  }
}

function findDist(named: string, at: PageSurroundings): string {
  const dist = path.resolve(at.root, named);
  for (const name of ["Code.js", "Sidebar.html"]) {
    if (existsSync(path.join(dist, name))) continue;
    throw new PersonError(notBuilt({ file: path.join(named, name) }));
  }
  return dist;
}
