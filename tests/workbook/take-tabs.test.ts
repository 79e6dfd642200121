import { describe, expect, it } from "vitest";
import { nameList } from "../../src/core/cells/quoted";
import { live } from "../../src/sentences/made/own-tabs";
import { noSuchColumn, noSuchPeriod } from "../../src/sentences/made/take-faults";
import * as text from "../../src/sentences/made/takes-page";
import { periodText } from "../../src/sidebar/controls/day-words";
import { lastMonthSentence } from "../../src/sidebar/takes/take-words";
import { COMPARED_WORDS, REASON_WORDS, TREND_WORDS } from "../../src/wording/takes";
import { openNursery } from "./nursery";

describe("the sample nursery, set up", () => {
  it("has live tabs of the comparison, the trend and the reasons", async () => {
    const nursery = openNursery(undefined, { live: true }).ready();
    const again = { tab: "Records", columns: [], methods: [], compareBy: "Grafter" };
    nursery.ask("sidebarSetUp", again);
    await nursery.w.settled();
    const compared = nursery.values("Takes compared");
    expect(String(compared[0]?.[0])).toContain(
      live({ formula: 'TAKE_COMPARED(\'Records\'!A:AB;"Grafter";"Variety"…' }).split("…")[0],
    );
    const rowOf = (tab: string, name: string) =>
      nursery.values(tab).find((row) => row.includes(name));
    expect(rowOf("Takes compared", "Kesto")).toContain(COMPARED_WORDS.below());
    expect(rowOf("Takes compared", "Mirel")).toContain(COMPARED_WORDS.alike());
    expect(rowOf("Takes by month", "2026-03")).toContain(TREND_WORDS.low());
    expect(rowOf("What takes go with", "Rootstock")).toContain(REASON_WORDS["no clear link"]());
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
    expect(usual.reasonsRemarks[0]).toEqual({ code: "not-cause" });
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
    const { rate, usual } = takes ?? {};
    expect(rate?.toFixed(2)).toBe("0.68");
    expect(usual?.toFixed(2)).toBe("0.73");
    expect(takes && lastMonthSentence(takes)).toBe(
      text.lastMonthUsual({
        period: periodText("2026-10"),
        counted: "open",
        grafted: 333,
        rate: rate as number,
        usual: usual as number,
      }),
    );
  });

  it("refuses what is no column or no period in a sentence", () => {
    const nursery = openNursery().ready();
    const headers = (nursery.values("Records")[0] ?? [])
      .filter((header) => header !== "")
      .map(String);
    expect(nursery.refusal("sidebarCompareTakes", { by: "Moon", evenFor: "", period: "" })).toBe(
      noSuchColumn({ argument: "by", name: "Moon", known: nameList(headers) }),
    );
    expect(nursery.refusal("sidebarCompareTakes", { by: "", evenFor: "", period: "moon" })).toBe(
      noSuchPeriod({ found: "moon" }),
    );
  });
});
