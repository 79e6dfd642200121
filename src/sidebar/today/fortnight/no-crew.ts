import * as text from "../../../sentences/made/work-page";
import type { WorkAnswer } from "../../../wire/work";
import { actionButton } from "../../controls/action-button";
import { element } from "../../controls/element";
import { paragraph } from "../../controls/paragraph";
import { isolated } from "../../controls/shortened";
import type { SidebarContext } from "../../section";

/** What is missing before work can be planned; null where nothing is. */
export function missingCrew({ crewTab, crewHeader, persons }: WorkAnswer): string | null {
  const columns = crewHeader;
  if (crewTab === null) return text.noCrew({ columns });
  return persons.length > 0 ? null : text.nobodyNamed({ tab: isolated(crewTab), columns });
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
    label: text.makeCrew(),
    status: context.status,
    doing: text.making(),
    work: async () => {
      const { tab } = await context.call("sidebarMakeCrew", null);
      await onMade();
      context.status.say(text.madeCrew({ tab }));
    },
  });
  return element(
    "div",
    {},
    paragraph(sentence),
    answer.crewTab === null ? element("div", { class: "buttons" }, make) : null,
  );
}
