import type { OpenAnswer } from "../wire/open";
import type { SetUpState } from "../wire/set-up";
import type { StatusLine } from "./controls/status-line";
import type { PeopleShown } from "./people/people-shown";
import type { Call } from "./script-call";

/** What every section is given. */
export interface SidebarContext {
  readonly call: Call;
  readonly status: StatusLine;
  readonly people: PeopleShown;
  /** What the script said when the page opened; null until it did. */
  opened(): OpenAnswer | null;
  /** Asks once more, after the workbook was set up. */
  reopen(): Promise<OpenAnswer>;
  /** Leads to a section, and to a part of it, which is opened. */
  go(key: string, part?: string): void;
  /** Leads to a part that stands in a section once that was read, such as a question. */
  lead(key: string, part: string): Promise<void>;
}

export interface Section {
  readonly element: HTMLElement;
  /** Reads anew what the section shows. */
  load(): Promise<void>;
  /** Where a part stands that is there once it was read, opened; null where it is not. */
  lead?(part: string): Promise<HTMLElement | null>;
}

/** A section in the page's list of them. */
export interface ListedSection {
  /** Its folder. */
  readonly key: string;
  /** What its tab says. */
  readonly title: () => string;
  readonly section: (context: SidebarContext) => Section;
}

/** How the workbook is set up; null where it is not yet. */
export function setUpOf(context: SidebarContext): SetUpState | null {
  return context.opened()?.setUp ?? null;
}
