import { describe, expect, it } from "vitest";
import * as setUp from "../../src/sentences/made/set-up-page";
import * as text from "../../src/sentences/made/tables-page";
import { isolated } from "../../src/sidebar/controls/shortened";
import type { BesideGuess, TablesAnswer } from "../../src/wire/beside";
import type { ColumnGuess } from "../../src/wire/columns";
import { opened } from "./fixed-answers";
import { sidebarTests } from "./sidebar-tests";

const openSidebar = sidebarTests();

const column = (at: number, header: string, readAs: string | null): ColumnGuess => ({
  ...{ column: at, header, readAs, sure: readAs === null ? "not used" : "sure" },
  ...{ others: [], holds: null, samples: [{ text: "20", initials: null }] },
});
const table = (more: Partial<BesideGuess>): BesideGuess => ({
  ...{ table: "orders", name: "Orders", tab: null, likely: null, lostTab: null, isRead: true },
  ...{ columns: [], choices: ["Order", "Customer", "Wanted"] },
  ...more,
});
const CREW = table({ table: "crew", name: "Crew", tab: "Team", choices: ["Person"] });

async function open() {
  const answer = (orders: BesideGuess): TablesAnswer => ({
    tabs: ["Team", "Wishes"],
    tables: [orders, CREW],
  });
  const sidebar = await openSidebar({
    sidebarOpen: () => ({ ...opened, timetables: [] }),
    sidebarTables: ({ told }) =>
      told.length === 0
        ? answer(table({ likely: "Wishes", lostTab: "Orders 25" }))
        : answer(
            table({
              ...{ tab: told[0]?.tab || null, isRead: false },
              columns: [column(0, "Ref", "Order"), column(1, "Pieces", null)],
            }),
          ),
  });
  const { page } = sidebar;
  await sidebar.section("set-up");
  await page.getByText(text.title()).click();
  await page.waitForFunction(() => document.querySelector(":disabled") === null);
  return sidebar;
}
const requests = (sidebar: Awaited<ReturnType<typeof open>>, call: string) =>
  sidebar.asked.filter(({ name }) => name === call).map(({ request }) => request);

// Only a row typed into the settings tab could say where orders stand, and under which headers.
describe("the tables beside the records, in Set up", () => {
  it("are looked for when they are opened, each with the tab in which it stands", async () => {
    const sidebar = await openSidebar();
    await sidebar.section("set-up");
    expect(requests(sidebar, "sidebarTables")).toEqual([]);
    await sidebar.close();
    const { page } = await open();
    const groups = page.locator("#section-set-up details details summary");
    await groups.first().waitFor();
    expect(await groups.allTextContents()).toEqual([`Orders ${text.noTab()}`, "Crew Team"]);
  });

  it("offer the likeliest tab first, and name one that is gone", async () => {
    const { page } = await open();
    await page.getByText(`Orders ${text.noTab()}`).click();
    const options = page.getByLabel(text.tabOf({ name: "Orders" })).locator("option");
    await options.first().waitFor({ state: "attached" });
    expect(await options.allTextContents()).toEqual([
      text.noTab(),
      text.likelyTab({ tab: "Wishes" }),
      "Team",
    ]);
    const shown = await page.locator("#section-set-up").textContent();
    expect(shown).toContain(text.lostTab({ tab: isolated("Orders 25") }));
    expect(shown).toContain(text.whatFor({ table: "orders" }));
  });

  it("are pointed at and told, and sent with the rest when the tabs are made", async () => {
    const sidebar = await open();
    const { page } = sidebar;
    await page.getByText(`Orders ${text.noTab()}`).click();
    await page.getByLabel(text.tabOf({ name: "Orders" })).selectOption("Wishes");
    await page.getByText(text.notReadYet({ name: "Orders" })).waitFor();
    await page.getByLabel(setUp.readAsOf({ header: "Pieces" })).selectOption("Wanted");
    await page.getByLabel(setUp.readAsOf({ header: "Ref" })).selectOption(setUp.leaveAlone());
    const told = { table: "orders", tab: "Wishes", columns: [] };
    expect(requests(sidebar, "sidebarTables")).toEqual([
      { tab: "Records", told: [] },
      { tab: "Records", told: [told] },
    ]);
    await page.getByRole("button", { name: setUp.makeAgain() }).click();
    await page.getByText(setUp.made()).waitFor();
    const columns = [
      { header: "Pieces", readAs: "Wanted" },
      { header: "Ref", readAs: null },
    ];
    expect(requests(sidebar, "sidebarSetUp")).toMatchObject([{ tables: [{ ...told, columns }] }]);
  });

  it("send nothing where nothing was changed", async () => {
    const sidebar = await open();
    await sidebar.page.getByRole("button", { name: setUp.makeAgain() }).click();
    await sidebar.page.getByText(setUp.made()).waitFor();
    expect(requests(sidebar, "sidebarSetUp")).toMatchObject([{ tables: [] }]);
  });
});
