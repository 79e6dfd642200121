import type { AlertButtons, ScriptMenu, ScriptMenuItem } from "./desk";
import { type Execution, type ServiceObject, serviceObject } from "./execution";
import { textArgument } from "./grid-arguments";
import { pageOf } from "./html-service";
import { ServiceError, signatureError } from "./service-error";

const BUTTON_SETS: readonly AlertButtons[] = ["OK", "OK_CANCEL", "YES_NO", "YES_NO_CANCEL"];
const BUTTONS = ["CLOSE", "OK", "CANCEL", "YES", "NO"] as const;

/** Ui of the spreadsheet service. */
export function uiService(run: Execution): ServiceObject {
  const refuseInTrigger = (method: string) => {
    if (run.power === "full") return;
    throw new ServiceError(`You do not have permission to call Ui.${method}.`);
  };
  return serviceObject(run, "Ui", {
    methods: {
      createMenu: (title: unknown) =>
        menuBuilder(run, textArgument(title, "SpreadsheetApp.Ui.createMenu")),
      showSidebar(page: unknown) {
        refuseInTrigger("showSidebar");
        run.desk.sidebar(pageOf(page, "SpreadsheetApp.Ui.showSidebar"));
      },
      alert(...parameters: unknown[]) {
        refuseInTrigger("alert");
        const texts = parameters.filter((one): one is string => typeof one === "string");
        const [title = "", prompt] = texts;
        const last = parameters.at(-1);
        const buttons = BUTTON_SETS.find((set) => set === buttonSets.get(last as object)) ?? "OK";
        const expected = texts.length + (buttonSets.has(last as object) ? 1 : 0);
        if (texts.length === 0 || expected !== parameters.length) {
          throw signatureError(parameters, "SpreadsheetApp.Ui.alert");
        }
        const answer = run.desk.alert(prompt === undefined ? "" : title, prompt ?? title, buttons);
        return BUTTON[answer];
      },
    },
    properties: { Button: BUTTON, ButtonSet: BUTTON_SET },
  });
}

/** Values that are equal to themselves and to nothing else, in every run of a script. */
const BUTTON = Object.freeze(Object.fromEntries(BUTTONS.map((name) => [name, namedValue(name)])));
const BUTTON_SET = Object.freeze(
  Object.fromEntries(BUTTON_SETS.map((name) => [name, namedValue(name)])),
);
const buttonSets = new WeakMap<object, string>(
  BUTTON_SETS.map((name) => [BUTTON_SET[name] as object, name]),
);

function namedValue(name: string): object {
  return Object.freeze({ toString: () => name, name: () => name });
}

/** The menus behind the builders that scripts hold. */
const builtMenus = new WeakMap<object, () => ScriptMenu>();

function menuBuilder(run: Execution, title: string): ServiceObject {
  const items: (ScriptMenuItem | ScriptMenu | null)[] = [];
  const menu = (): ScriptMenu => ({ title, items: [...items] });
  const builder: ServiceObject = serviceObject(run, "Menu", {
    methods: {
      addItem(label: unknown, calls: unknown) {
        const method = "SpreadsheetApp.Menu.addItem";
        items.push({ label: textArgument(label, method), calls: textArgument(calls, method) });
        return builder;
      },
      addSeparator() {
        items.push(null);
        return builder;
      },
      addSubMenu(sub: unknown) {
        const built = typeof sub === "object" && sub ? builtMenus.get(sub) : undefined;
        if (!built) throw signatureError([sub], "SpreadsheetApp.Menu.addSubMenu");
        items.push(built());
        return builder;
      },
      addToUi() {
        run.desk.menu(menu());
      },
    },
  });
  builtMenus.set(builder, menu);
  return builder;
}
