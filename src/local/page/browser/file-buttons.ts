/** How files come into the page and go out of it. */
export interface FileButtons {
  readonly opener: HTMLInputElement;
  /** Saves a copy beside the file; hidden where that can't be done. */
  readonly saver: HTMLButtonElement;
  readonly downloader: HTMLButtonElement;
  /** What is shown while a file is held over the page. */
  readonly dropHint: HTMLElement;
}

/**
 * @param open called with the file that the person has chosen or dropped
 * @param save called when the person wants a copy beside the file
 * @param download called when the person wants a copy from the browser
 */
export function connectFileButtons(
  { opener, saver, downloader, dropHint }: FileButtons,
  {
    open,
    save,
    download,
  }: {
    readonly open: (file: File) => void;
    readonly save: () => void;
    readonly download: () => void;
  },
): void {
  opener.addEventListener("change", () => {
    const [file] = opener.files ?? [];
    if (file) open(file);
    // Choosing the same file again is a change too.
    opener.value = "";
  });
  saver.addEventListener("click", save);
  downloader.addEventListener("click", download);
  window.addEventListener(
    "keydown",
    (event) => {
      const isSave = (event.ctrlKey || event.metaKey) && !event.altKey && event.key === "s";
      if (!isSave) return;
      // The browser would save the page, which is not the workbook.
      event.preventDefault();
      (saver.hidden ? download : save)();
    },
    { capture: true },
  );
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
  // Before the grid sees it: the grid knows nothing of files.
  const hear = (
    name: "dragenter" | "dragover" | "dragleave" | "drop",
    act: (e: DragEvent) => void,
  ) =>
    window.addEventListener(
      name,
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        event.stopPropagation();
        act(event);
      },
      { capture: true },
    );
  hear("dragenter", () => {
    dropHint.hidden = false;
  });
  hear("dragover", () => {});
  hear("dragleave", ({ relatedTarget }) => {
    if (!relatedTarget) dropHint.hidden = true;
  });
  hear("drop", ({ dataTransfer }) => {
    dropHint.hidden = true;
    const [file] = dataTransfer?.files ?? [];
    if (file) open(file);
  });
}
