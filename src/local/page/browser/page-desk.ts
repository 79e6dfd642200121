import type { AlertAnswer, AlertButtons, Desk } from "../../spreadsheet-app/desk";
import type { MenuButtons } from "./menu-buttons";
import type { Messages } from "./messages";
import type { SidebarFrame } from "./sidebar";

export interface DeskParts {
  readonly menus: MenuButtons;
  readonly messages: Messages;
  readonly sidebar: SidebarFrame;
  /** Brings the selected cells into view. */
  readonly reveal: () => void;
}

/** The page as what is in front of the person. */
export function pageDesk({ menus, messages, sidebar, reveal }: DeskParts): Desk {
  return {
    menu: menus.show,
    sidebar: sidebar.open,
    toast: messages.show,
    alert: ask,
    selected: reveal,
  };
}

/** With the browser's own boxes: only they let a script stand still until the person has answered. */
function ask(title: string, prompt: string, buttons: AlertButtons): AlertAnswer {
  const text = title === "" ? prompt : `${title}\n\n${prompt}`;
  switch (buttons) {
    case "OK":
      window.alert(text);
      return "OK";
    case "OK_CANCEL":
      return window.confirm(text) ? "OK" : "CANCEL";
    case "YES_NO":
      return window.confirm(`${text}\n\n(OK for yes, Cancel for no)`) ? "YES" : "NO";
    case "YES_NO_CANCEL":
      if (window.confirm(`${text}\n\n(OK for yes, Cancel for the other answers)`)) return "YES";
      return window.confirm(`${text}\n\n(OK for no, Cancel to do nothing)`) ? "NO" : "CANCEL";
  }
}
