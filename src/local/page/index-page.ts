import * as text from "../../sentences/made/local-page";

/** What the page shows before its script runs. */
const TEXTS: Readonly<Record<string, string>> = {
  close: text.close(),
  download: text.download(),
  grid: text.grid(),
  letGo: text.letGo(),
  menus: text.menus(),
  messages: text.messages(),
  openFile: text.openFile(),
  page: text.page(),
  save: text.save(),
  sidebar: text.sidebar(),
  sidebarOf: text.sidebarOf(),
  starting: text.starting(),
};

const HTML: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", '"': "&quot;" };

/**
 * The page with its sentences: index.html names them in double braces.
 *
 * @throws Error that names one that there is not
 */
export function indexPage(html: string): string {
  return html.replace(/\{\{(\w+)\}\}/g, (_, name: string) => {
    const said = TEXTS[name];
    if (said === undefined) throw new Error(`index.html: there is no text ${name}`);
    return said.replace(/[&<"]/g, (sign) => HTML[sign] ?? sign);
  });
}
