/** How files come into the page and go out of it. */
export interface FileButtons {
  readonly opener: HTMLInputElement;
  readonly saver: HTMLButtonElement;
  /** What is shown while a file is held over the page. */
  readonly dropHint: HTMLElement;
}

const XLSX_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/**
 * @param open called with the file that the person has chosen or dropped
 * @param save called when the person wants a copy
 */
export function connectFileButtons(
  { opener, saver, dropHint }: FileButtons,
  open: (file: File) => void,
  save: () => void,
): void {
  opener.addEventListener("change", () => {
    const [file] = opener.files ?? [];
    if (file) open(file);
    // Choosing the same file again is a change too.
    opener.value = "";
  });
  saver.addEventListener("click", save);
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

/** Hands the bytes of a workbook to the browser as a download. */
export function download(bytes: Uint8Array<ArrayBuffer>, fileName: string): void {
  const address = URL.createObjectURL(new Blob([bytes], { type: XLSX_TYPE }));
  const link = document.createElement("a");
  link.href = address;
  link.download = fileName;
  link.click();
  // Not at once: the browser may still be reading.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
