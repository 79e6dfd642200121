import type { ScriptMenu } from "../../spreadsheet-app/desk";

/** The add-in's menus as buttons in the bar; each opens a list of what the menu offers. */
export interface MenuButtons {
  /** Adds a menu, or replaces the one of the same title. */
  show(menu: ScriptMenu): void;
  clear(): void;
}

/** @param chosen called with the name of the function that an item calls */
export function menuButtons(holder: HTMLElement, chosen: (calls: string) => void): MenuButtons {
  const menus = new Map<string, HTMLElement>();
  document.addEventListener("pointerdown", ({ target }) => {
    for (const menu of menus.values()) if (!menu.contains(target as Node)) setOpen(menu, false);
  });
  // The grid takes the focus away from the page without telling it.
  window.addEventListener("blur", () => {
    for (const menu of menus.values()) setOpen(menu, false);
  });
  return {
    show(menu) {
      const made = menuElement(menu, chosen);
      const old = menus.get(menu.title);
      if (old) old.replaceWith(made);
      else holder.append(made);
      menus.set(menu.title, made);
    },
    clear() {
      menus.clear();
      holder.replaceChildren();
    },
  };
}

function menuElement(menu: ScriptMenu, chosen: (calls: string) => void): HTMLElement {
  const whole = element("div", "menu");
  const opener = element("button", "plain-button opener");
  opener.textContent = menu.title;
  opener.setAttribute("aria-expanded", "false");
  const list = element("ul");
  list.hidden = true;
  list.setAttribute("aria-label", menu.title);
  list.append(
    ...itemElements(menu, (calls) => {
      setOpen(whole, false);
      chosen(calls);
    }),
  );
  opener.addEventListener("click", () => setOpen(whole, list.hidden !== false));
  whole.addEventListener("keydown", (event) => {
    const buttons = Array.from(list.querySelectorAll("button"));
    const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
    if (event.key === "Escape" && !list.hidden) {
      setOpen(whole, false);
      opener.focus();
    } else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      setOpen(whole, true);
      const step = event.key === "ArrowDown" ? 1 : -1;
      buttons[(at + step + buttons.length) % buttons.length]?.focus();
    }
  });
  whole.append(opener, list);
  return whole;
}

function itemElements(menu: ScriptMenu, chosen: (calls: string) => void): HTMLElement[] {
  return menu.items.flatMap((item) => {
    const line = element("li");
    if (item === null) {
      line.append(element("hr"));
      return [line];
    }
    if ("calls" in item) {
      const button = element("button", "plain-button item");
      button.textContent = item.label;
      button.addEventListener("click", () => chosen(item.calls));
      line.append(button);
      return [line];
    }
    line.className = "under";
    line.textContent = item.title;
    return [line, ...itemElements(item, chosen)];
  });
}

function setOpen(menu: HTMLElement, open: boolean): void {
  menu.querySelector(".opener")?.setAttribute("aria-expanded", String(open));
  const list = menu.querySelector("ul");
  if (list) list.hidden = !open;
}

function element<Name extends keyof HTMLElementTagNameMap>(
  name: Name,
  className = "",
): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  if (made instanceof HTMLButtonElement) made.type = "button";
  if (className) made.className = className;
  return made;
}
