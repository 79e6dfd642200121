import * as text from "../../../sentences/made/local-page";

/** Whether the open workbook has changes that are nowhere but in this page, and the signs of it. */
export interface UnsavedWork {
  /** A workbook has been opened. */
  opened(fileName: string): void;
  /** The workbook has been changed. */
  changed(): void;
  /** What has been changed up to now; to be handed to `saved` when a copy of it is kept. */
  now(): number;
  /** A copy of the workbook as it stood at that time is kept. @param words where, as a sentence */
  saved(at: number, words: string): void;
  /** Asks, if there is something to lose. @returns whether the workbook may be given up */
  mayBeLost(otherFile: string): boolean;
}

/**
 * Marks the page's title and shows a line while there is unsaved work; closing and reloading ask.
 * @param line the line below the bar; hidden as long as nothing has been changed
 * @param resized called when the room for the grid has changed
 */
export function unsavedWork(line: HTMLElement, resized: () => void): UnsavedWork {
  let fileName = "";
  let changes = 0;
  let kept = 0;
  const isUnsaved = () => changes > kept;

  const show = (words: string) => {
    document.title = (isUnsaved() ? text.titleUnsaved : text.title)({ file: fileName });
    line.classList.toggle("unsaved", isUnsaved());
    if (line.textContent === words) return;
    const wasHidden = line.hidden;
    line.textContent = words;
    line.hidden = words === "";
    if (line.hidden !== wasHidden) resized();
  };

  window.addEventListener("beforeunload", (event) => {
    // The browser asks in its own words.
    if (isUnsaved()) event.preventDefault();
  });

  return {
    opened(name) {
      fileName = name;
      changes = 0;
      kept = 0;
      show("");
    },
    changed() {
      changes += 1;
      if (changes === kept + 1) show(text.notSaved({ file: fileName }));
    },
    now: () => changes,
    saved(at, words) {
      kept = Math.max(kept, at);
      show(isUnsaved() ? text.notSaved({ file: fileName }) : words);
    },
    mayBeLost: (otherFile) =>
      !isUnsaved() || window.confirm(text.askOrLose({ file: fileName, other: otherFile })),
  };
}
