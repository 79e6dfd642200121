import type { StatusLine } from "./status-line";

export type Control =
  | HTMLButtonElement
  | HTMLSelectElement
  | HTMLInputElement
  | HTMLFieldSetElement;

export interface Work {
  readonly status: StatusLine;
  /** What is going on, as "Reading the due list". */
  readonly doing: string;
  /** Disabled meanwhile. While the first is, nothing new is begun. */
  readonly controls: readonly [Control, ...Control[]];
  readonly work: () => Promise<void>;
}

/**
 * Does one thing at a time for a control: disables it, says so if it takes long, says what failed,
 * and gives the keyboard its place back.
 */
export async function whileWorking({ status, doing, controls, work }: Work): Promise<void> {
  if (controls[0].disabled) return;
  const focused = document.activeElement;
  const held = controls.filter((control) => !control.disabled);
  for (const control of held) control.disabled = true;
  status.clear();
  const end = status.working(doing);
  try {
    await work();
  } catch (error) {
    status.fail(error instanceof Error ? error.message : String(error));
  } finally {
    end();
    for (const control of held) control.disabled = false;
    // A disabled control loses the focus; unless the work moved it on, it goes back.
    const nobody = document.activeElement === null || document.activeElement === document.body;
    if (nobody && focused instanceof HTMLElement && focused.isConnected) focused.focus();
  }
}
