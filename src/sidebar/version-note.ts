import * as text from "../sentences/made/page";
import { element } from "./controls/element";
import { stateOf } from "./state";

/** Put in by the build, from package.json. */
declare const ADD_IN_VERSION: string;

export interface VersionNote {
  readonly element: HTMLElement;
  /** Told of the version that an answer of the script names; null where it names none. */
  readonly heard: (version: string | null) => void;
}

interface NoteState {
  /** Null where both are the same. */
  readonly sentence: string | null;
}

/**
 * A note where the page and the script that answers it are of different versions: after an update
 * of one of the two files, or in a workbook that was open while it was updated.
 */
export function versionNote(): VersionNote {
  const holder = element("div", { role: "status" });
  const state = stateOf<NoteState>({ sentence: null });
  state.on(["sentence"], ({ sentence }) =>
    holder.replaceChildren(
      ...(sentence === null ? [] : [element("p", { class: "note" }, sentence)]),
    ),
  );
  return {
    element: holder,
    heard: (version) => state.set({ sentence: versionSentence(ADD_IN_VERSION, version) }),
  };
}

/** @returns null where both are the same */
export function versionSentence(page: string, script: string | null): string | null {
  if (page === script) return null;
  return script === null ? text.olderScript({ page }) : text.otherScript({ page, script });
}
