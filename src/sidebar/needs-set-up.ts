import { element } from "./controls/element";
import { type Section, type SidebarContext, setUpOf } from "./section";

/** A section that has nothing to show before the workbook is set up, and then says so. */
export function needsSetUp(context: SidebarContext, section: Section): Section {
  const toSetUp = element("button", { type: "button", class: "main" }, "Go to Set up");
  toSetUp.addEventListener("click", () => context.go("set-up"));
  const hint = element(
    "div",
    {},
    element("p", {}, "The workbook is not set up yet: say first which tab holds your records."),
    toSetUp,
  );
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
  };
}
