import * as text from "../sentences/made/page";
import { element } from "./controls/element";
import { paragraph } from "./controls/paragraph";
import { type Section, type SidebarContext, setUpOf } from "./section";

/** A section that has nothing to show before the workbook is set up, and then says so. */
export function needsSetUp(context: SidebarContext, section: Section): Section {
  const toSetUp = element("button", { type: "button", class: "main" }, text.goToSetUp());
  toSetUp.addEventListener("click", () => context.go("set-up"));
  const hint = element("div", {}, paragraph(text.notSetUp()), toSetUp);
  const holder = element("div", {}, hint);
  return {
    element: holder,
    load: async () => {
      if (setUpOf(context) === null) {
        holder.replaceChildren(hint);
        return;
      }
      holder.replaceChildren(section.element);
      await section.load();
    },
    lead: async (part) => (await section.lead?.(part)) ?? null,
  };
}
