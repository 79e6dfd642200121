import { element } from "../controls/element";

/** Milliseconds after which the browser has surely begun to save. */
const UNTIL_SAVED = 60_000;

/** Offers text as a file to save. */
export function saveFile(fileName: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = element("a", { href: address, download: fileName, hidden: true });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), UNTIL_SAVED);
}
