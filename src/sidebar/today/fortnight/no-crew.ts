import type { WorkAnswer } from "../../../workbook/sidebar-calls";
import { actionButton } from "../../controls/action-button";
import { listed } from "../../controls/count-words";
import { element } from "../../controls/element";
import { isolated } from "../../controls/shortened";
import type { SidebarContext } from "../../section";

/** What is missing before work can be planned; null where nothing is. */
export function missingCrew({ crewTab, crewHeader, persons }: WorkAnswer): string | null {
  const columns = listed(crewHeader);
  if (crewTab === null) {
    return `To see whether the hands are there, make a tab called Crew with a row a person and the columns ${columns}.`;
  }
  if (persons.length > 0) return null;
  return `The tab ${isolated(crewTab)} names nobody yet: fill in a row a person under ${columns}.`;
}

/** The sentence, and a button that makes an empty tab where there is none. */
export function noCrew(
  context: SidebarContext,
  {
    answer,
    sentence,
    onMade,
  }: {
    readonly answer: WorkAnswer;
    readonly sentence: string;
    readonly onMade: () => Promise<void>;
  },
): HTMLElement {
  const make = actionButton({
    label: "Make an empty Crew tab",
    status: context.status,
    doing: "Making the tab",
    work: async () => {
      const { tab } = await context.call("sidebarMakeCrew", null);
      await onMade();
      context.status.say(`Made the tab ${tab}: fill in who is there and how many hours a day.`);
    },
  });
  return element(
    "div",
    {},
    element("p", {}, sentence),
    answer.crewTab === null ? element("div", { class: "buttons" }, make) : null,
  );
}
