import * as text from "../../../sentences/made/local-page";
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
  const whole = title === "" ? prompt : `${title}\n\n${prompt}`;
  switch (buttons) {
    case "OK":
      window.alert(whole);
      return "OK";
    case "OK_CANCEL":
      return window.confirm(whole) ? "OK" : "CANCEL";
    case "YES_NO":
      return window.confirm(text.askYesNo({ prompt: whole })) ? "YES" : "NO";
    case "YES_NO_CANCEL":
      if (window.confirm(text.askYesNoCancelFirst({ prompt: whole }))) return "YES";
      return window.confirm(text.askYesNoCancelThen({ prompt: whole })) ? "NO" : "CANCEL";
  }
}
