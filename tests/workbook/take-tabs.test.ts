import { describe, expect, it } from "vitest";
import { lastMonthSentence } from "../../src/sidebar/takes/take-words";
import { openNursery } from "./nursery";

describe("the sample nursery, set up", () => {
  it("has live tabs of the comparison, the trend and the reasons", async () => {
    const nursery = openNursery(undefined, { live: true }).ready();
    const again = { tab: "Records", columns: [], methods: [], compareBy: "Grafter" };
    nursery.ask("sidebarSetUp", again);
    await nursery.w.settled();
    const compared = nursery.values("Takes compared");
    expect(String(compared[0]?.[0])).toContain(
      'TAKE_COMPARED(\'Records\'!A:AB;"Grafter";"Variety"',
    );
    const rowOf = (tab: string, name: string) =>
      nursery.values(tab).find((row) => row.includes(name));
    expect(rowOf("Takes compared", "Kesto")).toContain("below the rest");
    expect(rowOf("Takes compared", "Mirel")).toContain("no clear difference");
    expect(rowOf("Takes by month", "2026-03")).toContain("low");
    expect(rowOf("What takes go with", "Rootstock")).toContain("no clear link");
  });

  it("answers the sidebar with the same, and with what can be chosen", () => {
    const nursery = openNursery().ready();
    const ask = (by: string, evenFor: string, period = "") =>
      nursery.ask("sidebarCompareTakes", { by, evenFor, period });
    // Nobody's takes are set beside another's before somebody asks for it.
    expect(ask("", "")).toMatchObject({ by: "Variety", evenFor: "Season", period: "month" });
    const usual = ask("Grafter", "");
    expect(usual).toMatchObject({ by: "Grafter", evenFor: "Variety", period: "month" });
    expect(usual.evenFors).toEqual(
      expect.arrayContaining([
        "Variety",
        "Month",
        "Season",
        "Rootstock age in weeks",
        "Variety+Month",
      ]),
    );
    expect(usual.evenFors).not.toContain("Grafter");
    expect(usual.compared.find(({ group }) => group[0]?.text === "Kesto")?.reading).toBe("below");
    expect(usual.trend.at(-1)).toMatchObject({ period: "2026-11", isOpen: true, rate: null });
    expect(usual.reasonsRemark).toMatch(/^Going with takes is not causing them/);
    expect(ask("Place", "Variety+Season", "quarter").trend[0]?.period).toBe("2024-Q3");
    // What is compared can't be evened for: the first that can is taken.
    expect(ask("Variety", "Variety").evenFor).not.toBe("Variety");
  });

  it("tells the round sheet of the last month without anybody's name", () => {
    const { takes } = openNursery().ready().ask("sidebarToday", { daysAhead: 7 });
    expect(takes).toMatchObject({
      period: "2026-10",
      isOpen: true,
      grafted: 333,
      reading: "usual",
    });
    expect(takes && lastMonthSentence(takes)).toBe(
      "Takes of grafts made in 2026-10 so far: 68 % of 333; usual is 73 %: nothing out of the ordinary.",
    );
  });

  it("refuses what is no column or no period in a sentence", () => {
    const nursery = openNursery().ready();
    expect(nursery.refusal("sidebarCompareTakes", { by: "Moon", evenFor: "", period: "" })).toMatch(
      /^by names "Moon", which is no column/,
    );
    expect(nursery.refusal("sidebarCompareTakes", { by: "", evenFor: "", period: "moon" })).toBe(
      'period must be "week", "month" or "quarter"; found "moon"',
    );
  });
});
