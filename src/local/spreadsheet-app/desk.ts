/** A menu of the add-in; null is a line between two items. */
export interface ScriptMenu {
  readonly title: string;
  readonly items: readonly (ScriptMenuItem | ScriptMenu | null)[];
}

export interface ScriptMenuItem {
  readonly label: string;
  /** The name of the function that the item calls. */
  readonly calls: string;
}

/** A page that a script made. */
export interface ScriptPage {
  readonly title: string;
  readonly content: string;
}

export type AlertAnswer = "OK" | "CANCEL" | "YES" | "NO" | "CLOSE";
export type AlertButtons = "OK" | "OK_CANCEL" | "YES_NO" | "YES_NO_CANCEL";

/** What is in front of the person: everything that a script can show. */
export interface Desk {
  /** A menu of the same title is replaced. */
  menu(menu: ScriptMenu): void;
  sidebar(page: ScriptPage): void;
  /** @param seconds how long it stays; negative for until it is closed */
  toast(message: string, title: string, seconds: number): void;
  /** Asks and waits; the script stands still until the person has answered. */
  alert(title: string, prompt: string, buttons: AlertButtons): AlertAnswer;
  /** Called when a script has selected cells, so that they can be brought into view. */
  selected(): void;
}

/** What a desk without a person was shown, and the answers that it gives. */
export interface DeskNotes {
  readonly menus: Map<string, ScriptMenu>;
  readonly sidebars: ScriptPage[];
  readonly toasts: { message: string; title: string }[];
  readonly alerts: { title: string; prompt: string; buttons: AlertButtons }[];
  /** The answers to the next alerts; when there is none left the answer is "OK". */
  readonly answers: AlertAnswer[];
}

/** A desk that writes down what it is shown. */
export function notedDesk(): { desk: Desk; notes: DeskNotes } {
  const notes: DeskNotes = {
    menus: new Map(),
    sidebars: [],
    toasts: [],
    alerts: [],
    answers: [],
  };
  return {
    notes,
    desk: {
      menu: (menu) => notes.menus.set(menu.title, menu),
      sidebar: (page) => notes.sidebars.push(page),
      toast: (message, title) => notes.toasts.push({ message, title }),
      alert(title, prompt, buttons) {
        notes.alerts.push({ title, prompt, buttons });
        return notes.answers.shift() ?? "OK";
      },
      selected() {},
    },
  };
}
