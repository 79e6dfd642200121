import * as text from "../../sentences/made/today-sheet";
import { element } from "../controls/element";

export interface PrintOptions {
  readonly title: string;
  readonly content: HTMLElement;
  /** Id of the template in the page that holds the style of the printed page. */
  readonly styleId: string;
}

const FRAME = "print-frame";

/**
 * Prints an element on a page of its own, in a frame that is not seen: a new window may be blocked.
 * The frame stays until the printing is over.
 */
export async function printElement({ title, content, styleId }: PrintOptions): Promise<void> {
  document.querySelector(`.${FRAME}`)?.remove();
  const frame = element("iframe", {
    class: FRAME,
    title,
    tabindex: -1,
    "aria-hidden": "true",
    // Nothing but a skeleton as markup; what the workbook holds is put in as nodes.
    srcdoc: '<!DOCTYPE html><html lang="en"><head></head><body></body></html>',
  });
  await new Promise<void>((resolve) => {
    frame.addEventListener("load", () => resolve(), { once: true });
    document.body.append(frame);
  });
  const page = frame.contentDocument;
  const view = frame.contentWindow;
  if (page === null || view === null) {
    throw new Error(text.notPrinted());
  }
  page.title = title;
  const style = document.getElementById(styleId);
  if (style instanceof HTMLTemplateElement) page.head.append(style.content.cloneNode(true));
  page.body.append(content);
  view.addEventListener("afterprint", () => frame.remove());
  view.focus();
  view.print();
}
