import * as text from "../../src/sentences/made/orders-page";
import type { PlanOrderRequest } from "../../src/wire/orders";
import type { Answers } from "./script-runner";
import { sidebarTestsAt } from "./sidebar-tests";

/** What the form is filled in with. */
export const REQUEST: PlanOrderRequest = {
  ...{ variety: "Corvane", wanted: 150, by: "2027-12-01", assurance: 0.8 },
  ...{ method: "Cocoa cleft graft", harvest: "Oct-Mar, May-Aug" },
};

/** The form of a new order in the built page, opened anew in every test of the file that calls this. */
export function orderForm() {
  const { open, sidebar, page } = sidebarTestsAt(async (opened) => {
    await opened.section("orders");
    await opened.page.getByText(text.planNew()).click();
    await opened.page.getByRole("combobox", { name: text.variety() }).waitFor();
  });

  const variety = () => page().getByRole("combobox", { name: text.variety() });
  const wanted = () => page().getByLabel(text.plantsWanted());
  const by = () => page().getByLabel(text.readyBy());
  const button = (name: string) => page().getByRole("button", { name, exact: true });
  const settled = () => page().waitForFunction(() => document.querySelector(":disabled") === null);
  const fillIn = async () => {
    await variety().fill(REQUEST.variety);
    await wanted().fill(String(REQUEST.wanted));
    await by().fill(REQUEST.by);
    await page().getByLabel(text.harvest()).fill(REQUEST.harvest);
  };
  return {
    ...{ variety, wanted, by, button, settled, open, fillIn, page, sidebar },
    order: () => page().getByRole("textbox", { name: text.order() }),
    shown: () => page().getByRole("group", { name: text.thePlan() }),
    /** Opens it, fills it in and has it planned. */
    planned: async (answers: Answers = {}) => {
      await open(answers);
      await fillIn();
      await button(text.plan()).click();
      await page().getByText(text.neededInAll()).waitFor();
      await settled();
    },
    /** What has the focus, by its words. */
    focused: () => page().evaluate(() => document.activeElement?.textContent ?? ""),
    status: () => page().locator("#status").textContent(),
    /** The requests of all calls of a name so far. */
    asked: (call: string) =>
      sidebar()
        .asked.filter(({ name }) => name === call)
        .map(({ request }) => request),
  };
}
