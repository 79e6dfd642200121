import vm from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/menu";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";

let built: BuiltAddIn;
let script: vm.Script;
beforeAll(() => {
  built = buildAddIn();
  script = new vm.Script(built.read("Code.js"));
});

const ITEMS = [
  `${text.open()}: showSidebar`,
  `${text.refresh()}: refreshDueList`,
  `${text.writeTicked()}: writeTicked`,
  "added",
];

/**
 * What the script does when one of its triggers runs. Anything but the menu and the question where
 * the script came from is refused, as for an add-on that the workbook has not yet begun to use.
 *
 * Source: developers.google.com/workspace/add-ons/concepts/editor-auth-lifecycle.
 */
function menuMadeBy(trigger: "onOpen" | "onInstall", source: () => unknown): readonly string[] {
  const done: string[] = [];
  const refusing = (service: string, allowed: object) =>
    new Proxy(allowed, {
      get: (target, name) => {
        if (name in target) return Reflect.get(target, name);
        throw new Error(`You do not have permission to call ${service}.${String(name)}`);
      },
    });
  const menu = {
    addItem: (label: string, name: string) => {
      done.push(`${label}: ${name}`);
      return menu;
    },
    addToUi: () => done.push("added"),
  };
  const ui = refusing("Ui", {
    createMenu: (title: string) => {
      done.push(`menu ${title}`);
      return menu;
    },
    createAddonMenu: () => {
      done.push("menu of the add-on");
      return menu;
    },
  });
  const nothing = (service: string) => refusing(service, {});
  const context = vm.createContext({
    SpreadsheetApp: refusing("SpreadsheetApp", { getUi: () => ui }),
    ScriptApp: refusing("ScriptApp", {
      InstallationSource: { NONE: "NONE", WEB_STORE_ADD_ON: "WEB_STORE_ADD_ON" },
      getInstallationSource: source,
    }),
    PropertiesService: nothing("PropertiesService"),
    LockService: nothing("LockService"),
    Session: nothing("Session"),
    Utilities: nothing("Utilities"),
    HtmlService: nothing("HtmlService"),
  });
  script.runInContext(context);
  context[trigger]({ authMode: "NONE" });
  return done;
}

describe.each(["onOpen", "onInstall"] as const)("%s", (trigger) => {
  it("makes a menu in the bar where the script belongs to the workbook", () => {
    expect(menuMadeBy(trigger, () => "NONE")).toEqual([`menu ${text.menu()}`, ...ITEMS]);
  });

  it.each(["WEB_STORE_ADD_ON", "APPS_MARKETPLACE_DOMAIN_ADD_ON"])(
    "makes the add-on's menu where the script came from the marketplace: %s",
    (source) => {
      expect(menuMadeBy(trigger, () => source)).toEqual(["menu of the add-on", ...ITEMS]);
    },
  );

  it("makes a menu where even the way it came can't be asked", () => {
    const refused = () => {
      throw new Error("You do not have permission to call ScriptApp.getInstallationSource");
    };
    expect(menuMadeBy(trigger, refused)).toEqual([`menu ${text.menu()}`, ...ITEMS]);
  });
});
