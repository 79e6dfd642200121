import { marked } from "marked";
import { escapeHtml } from "../escape-html";

/** Texts that the page is made of. */
export interface InstallTexts {
  readonly version: string;
  /** Markdown: how to install. A line `<!-- copy NAME: LABEL -->` becomes a button for that file. */
  readonly install: string;
  /** Markdown: what is new. */
  readonly changes: string;
  /** The page around them, with a comment in each place that is to be filled. */
  readonly frame: string;
  /** The files that can be copied from the page, by name. */
  readonly files: Readonly<Record<string, string>>;
}

/** Links of the texts, as they stand among the sources, to what they are in the release. */
const LINKS: Readonly<Record<string, string>> = { "../../CHANGELOG.md": "#what-is-new" };

/**
 * The page that shows how to install, as one file that opens in a browser without a network: the
 * texts of the files to paste are inside.
 *
 * @throws Error where a text asks for a file that is not there, or leads to a place that the release lacks
 */
export async function installPage(texts: InstallTexts): Promise<string> {
  const { version, install, changes, frame, files } = texts;
  const asked = new Set<string>();
  const withButtons = (await marked.parse(install)).replace(
    /<!-- copy (\S+): (.+?) -->/g,
    (_, name: string, label: string) => {
      const text = files[name];
      if (text === undefined) throw new Error(`the install page copies no file ${name}`);
      asked.add(name);
      return copyBox(name, label, text);
    },
  );
  const missing = Object.keys(files).filter((name) => !asked.has(name));
  if (missing.length > 0) throw new Error(`the install page has no button for ${missing}`);
  const body = [withButtons, `<section id="what-is-new">${await marked.parse(changes)}</section>`];
  return [
    ["<!-- version -->", escapeHtml(version)],
    ["<!-- texts -->", body.map(withLinks).join("\n")],
  ].reduce((page, [place, content]) => page.replaceAll(place ?? "", () => content ?? ""), frame);
}

function copyBox(name: string, label: string, text: string): string {
  const id = `file-${name.replace(/\W/g, "-")}`;
  return `<div class="copy">
<button type="button" data-copies="${id}">${escapeHtml(label)}</button>
<span role="status"></span>
<details><summary>If the button does nothing</summary>
<p>Click into the box, press Ctrl and A, then Ctrl and C.</p>
<textarea id="${id}" aria-label="${escapeHtml(name)}" readonly spellcheck="false" wrap="off" rows="6">
${escapeHtml(text)}</textarea></details>
</div>`;
}

/** Tables get a frame that scrolls by itself; links lead to where their text is in the release. */
function withLinks(html: string): string {
  return html
    .replace(/<table>/g, '<div class="table"><table>')
    .replace(/<\/table>/g, "</table></div>")
    .replace(/href="([^"]*)"/g, (whole, address: string) => {
      if (/^(https:|#)/.test(address)) return whole;
      const there = LINKS[address];
      if (there === undefined) throw new Error(`the release has nothing at ${address}`);
      return `href="${there}"`;
    });
}
