import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/faces-page";
import { periodText } from "../../src/sidebar/controls/day-words";
import type { FaceName, IndexRow } from "../../src/wire/faces";
import { axeViolations } from "./axe-violations";
import type { OpenSidebar, SectionKey } from "./open-sidebar";
import { sampleAnswers } from "./sample-answers";
import { faceOf } from "./seed-face";
import { sidebarTests } from "./sidebar-tests";

const WHERE: readonly (readonly [FaceName, SectionKey])[] = [
  ["needs", "today"],
  ["places", "today"],
  ["needs", "orders"],
  ["places", "orders"],
  ["costs", "orders"],
  ["balance", "takes"],
  ["lookback", "ahead"],
  ["germination", "ahead"],
];
const settled = ({ page }: OpenSidebar) =>
  page.waitForFunction(() => document.querySelector(":disabled") === null);
const partOf = ({ page }: OpenSidebar, face: string, section: string) =>
  page.locator(`#section-${section} [data-part=${face}]`);

describe("answers that are tables", () => {
  const open = sidebarTests();

  it.each(WHERE)(
    "%s is found from %s, by keyboard, and says what its tab says",
    async (face, section) => {
      const sidebar = await open({ sidebarFace: ({ face: asked }) => faceOf(asked) });
      await sidebar.section(section);
      const part = partOf(sidebar, face, section);
      await part.locator("summary").first().focus();
      await sidebar.page.keyboard.press("Enter");
      await settled(sidebar);
      const answer = faceOf(face);
      expect(answer.rows.length).toBeGreaterThan(2);
      // The newest batches come first on the page.
      const first = ["needs", "places"].includes(face)
        ? answer.rows.slice(0, 3)
        : answer.rows.slice(-3);
      for (const [name] of first) {
        await part.getByText(String(name), { exact: true }).first().waitFor();
      }
      if (answer.remark !== null) {
        expect(await part.locator(".note").count()).toBe(1);
      }
      expect(await axeViolations(sidebar.page)).toEqual([]);
      expect(sidebar.complaints).toEqual([]);
    },
  );

  it("asks for a table when it is opened, and not before", async () => {
    const sidebar = await open();
    const asked = () => sidebar.asked.filter(({ name }) => name === "sidebarFace");
    await settled(sidebar);
    expect(asked()).toEqual([]);
    await partOf(sidebar, "needs", "today").locator("summary").click();
    await partOf(sidebar, "needs", "today").locator(".batch").first().waitFor();
    expect(asked().map(({ request }) => request)).toEqual([{ face: "needs" }]);
  });

  it("shows a place that gets too full open, and says so in words", async () => {
    const columns = (["text", "text", "count", "count", "count"] as const).map((kind, at) => ({
      name: `C${at}`,
      kind,
    }));
    const rows = [
      ["Bay 1", "2026-W48", 420, 400, 20],
      ["Bay 1", "2026-W49", 300, 400, 0],
      ["Bay 2", "2026-W48", 90, 200, 0],
      ["Bay 3", "2026-W48", 1200, null, null],
    ];
    const sidebar = await open({ sidebarFace: () => ({ columns, rows, remark: null }) });
    const part = partOf(sidebar, "places", "today");
    await part.locator("summary").first().click();
    await settled(sidebar);
    const places = part.locator("details.group");
    await places.first().waitFor();
    expect(
      await places.evaluateAll((all) => all.map((one) => (one as HTMLDetailsElement).open)),
    ).toEqual([true, false, false]);
    const heads = await places.locator("> summary").allTextContents();
    expect(heads[0]).toContain(text.tooFull());
    expect(heads[0]).toContain(text.overBy({ plants: 420, holds: 400, over: 20 }));
    expect(heads[1]).not.toContain(text.tooFull());
    expect(heads[1]).toContain(text.ofHolds({ plants: 90, holds: 200 }));
    expect(heads[2]).toContain(text.fullest({ plants: "1,200", week: periodText("2026-W48") }));
  });

  it("says that there is nothing, and why", async () => {
    const sidebar = await open({
      sidebarFace: () => ({ columns: [], rows: [], remark: "No tab of places." }),
    });
    const part = partOf(sidebar, "places", "today");
    await part.locator("summary").first().click();
    await part.locator(".note").waitFor();
    expect(await part.textContent()).toContain(text.nothing());
    expect(await part.locator(".note").textContent()).toBe("No tab of places.");
  });
});

describe("the index of all answers", () => {
  const open = sidebarTests();

  it("stands below every section, names each answer, and leads to its part", async () => {
    const sidebar = await open();
    const { page } = sidebar;
    await page.getByText(text.index()).click();
    await settled(sidebar);
    const index = sampleAnswers.sidebarIndex(null) as readonly IndexRow[];
    for (const { tab, answers } of index) {
      await page.getByRole("button", { name: tab, exact: true }).waitFor();
      await page.getByText(answers, { exact: true }).waitFor();
    }
    await page.getByRole("button", { name: "Batch costs", exact: true }).click();
    await settled(sidebar);
    const part = partOf(sidebar, "costs", "orders");
    await part.locator(".batch").first().waitFor();
    expect(await part.evaluate((one) => (one as HTMLDetailsElement).open)).toBe(true);
    expect(await part.evaluate((one) => one.contains(document.activeElement))).toBe(true);
    expect(sidebar.asked.map(({ name }) => name)).toContain("sidebarFace");
    expect(await axeViolations(page)).toEqual([]);
  });
});
