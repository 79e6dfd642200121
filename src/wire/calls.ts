/**
 * The calls that the sidebar page may make, as types. What each is asked and what it answers stands in the file
 * of its section.
 *
 * Only numbers, text, yes/no, null and lists and records of them pass between the page and the
 * script, so every day is ISO 8601 text ("2026-11-25") and "nothing there" is null, never missing.
 */

import type { WritingFault } from "../wording/writing-codes";
import type { SidebarCalls } from "./calls.table";

/** What comes back from every call. A null in its place is a failure of the way between. */
export type CallResult<Answer> = (
  | { readonly ok: true; readonly data: Answer }
  /** One sentence for the person: what is wrong and what to do. */
  | { readonly ok: false; readonly error: string }
  /** The same where the page says it. */
  | { readonly ok: false; readonly fault: WritingFault }
) & {
  /** The script's version, which the page compares with its own. */
  readonly version: string;
};

export type { SidebarCalls };
export type SidebarCallName = keyof SidebarCalls;
export type RequestOf<Name extends SidebarCallName> = SidebarCalls[Name]["request"];
export type AnswerOf<Name extends SidebarCallName> = SidebarCalls[Name]["answer"];
