/** What the person at the screen sees of the script, beside the cells. */
export interface Desk {
  readonly menus: { readonly name: string; readonly items: readonly MenuItem[] }[];
  readonly sidebars: { readonly title: string; readonly characters: number }[];
  readonly toasts: string[];
}

export interface MenuItem {
  readonly label: string;
  /** Name of the script's function behind it. */
  readonly runs: string;
}

export const desk: Desk = { menus: [], sidebars: [], toasts: [] };

interface Page {
  readonly title: string;
  readonly content: string;
}

const pages = new WeakMap<object, Page>();

/** The page behind what HtmlService gave. */
function pageOf(output: object): Page {
  const page = pages.get(output);
  if (!page) throw new Error("showSidebar was not given a page of HtmlService");
  return page;
}

/** SpreadsheetApp.getUi(): menus and the sidebar, as far as the add-in uses them. */
export const ui = { createMenu: menu, showSidebar };

function menu(name: string): object {
  const items: MenuItem[] = [];
  const made = {
    addItem(label: string, runs: string) {
      items.push({ label, runs });
      return made;
    },
    addToUi() {
      desk.menus.push({ name, items });
    },
  };
  return made;
}

function showSidebar(output: object): void {
  const { title, content } = pageOf(output);
  desk.sidebars.push({ title, characters: content.length });
}

/** HtmlService with the project's only page. @param file its name, without ".html" */
export function htmlService(file: string, content: string): object {
  return {
    createHtmlOutputFromFile(name: string) {
      if (name !== file) throw new Error(`No HTML file named ${name} was found.`);
      let title = "";
      const output = {
        setTitle(text: string) {
          title = text;
          pages.set(output, { title, content });
          return output;
        },
      };
      pages.set(output, { title, content });
      return output;
    },
  };
}
