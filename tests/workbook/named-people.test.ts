import { describe, expect, it } from "vitest";
import { compareOther } from "../../src/sentences/made/set-up";
import { noHours } from "../../src/sentences/made/small-tables";
import * as takeTabs from "../../src/sentences/made/take-tabs";
import { groupAlone, peopleNotNamed } from "../../src/sentences/made/takes";
import { namedIn, namedNursery } from "../sidebar/named-nursery";
import { type Nursery, SETTINGS } from "./nursery";

const ONCE = { tab: "Records", columns: [], methods: [] };
/** The person's own tabs, in which names stand anyway. */
const OWN = ["Records", "Crew"];

/** Who is named in full in which of the tabs that we made. */
function named(nursery: Nursery): Record<string, readonly string[]> {
  return Object.fromEntries(
    nursery
      .tabs()
      .filter((name) => !OWN.includes(name))
      .map((name) => [name, namedIn(JSON.stringify(nursery.values(name)))] as const)
      .filter(([, names]) => names.length > 0),
  );
}
const text = (nursery: Nursery, tab: string) => JSON.stringify(nursery.values(tab));

// Set up ranked the grafters by name, in a tab that everybody who opens the workbook sees.
describe("tabs that Set up makes", () => {
  it("rank nobody by name unless that is asked for", async () => {
    const nursery = namedNursery(true);
    await nursery.w.settled();
    expect(text(nursery, "Takes compared")).toContain('\\"Variety\\";\\"Season\\"');
    expect(text(nursery, "What takes go with")).toContain(peopleNotNamed());
    // Who does what on which day is asked for by keeping a tab of persons.
    expect(Object.keys(named(nursery))).toEqual(["Work plan"]);
  });

  it("compare the grafters where that is chosen, and say so when it is done again", async () => {
    const nursery = namedNursery(true);
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Grafter" });
    await nursery.w.settled();
    expect(named(nursery)["Takes compared"]).toEqual([
      "Ann",
      "Kesto",
      "Mary Ann",
      "Kito",
      "Mirel Ando",
    ]);
    expect(nursery.ask("sidebarColumns", { tab: "Records" })).toMatchObject({
      compareBy: "Grafter",
      comparable: [
        { header: "Variety", people: false },
        { header: "Place", people: false },
        { header: "Grafter", people: true },
      ],
    });
    // What is left out stays as it is.
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.sheet("Takes compared").getRange("A3").getFormula()).toContain('"Grafter"');
  });

  it("leave nobody ranked where no such tab is wanted any more", () => {
    const nursery = namedNursery();
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Grafter" });
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "" });
    expect(nursery.value("Takes compared", "A3")).toBe(takeTabs.noneChosen());
    expect(nursery.ask("sidebarColumns", { tab: "Records" }).compareBy).toBe("");
  });

  it("say so where the column that was chosen is gone", () => {
    const nursery = namedNursery();
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Place" });
    nursery.sheet("Records").getRange("C1").setValue("Weather");
    nursery.ask("sidebarSetUp", ONCE);
    expect(nursery.value("Takes compared", "A3")).toBe(takeTabs.columnGone({ name: "Place" }));
    expect(nursery.refusal("sidebarSetUp", { ...ONCE, compareBy: "Place" })).toBe(
      compareOther({ header: "Place" }),
    );
  });
});

describe("with initials wanted", () => {
  const asked = { ...ONCE, compareBy: "Grafter", initials: true };

  it("no tab that we made names anybody, and the numbers are those of the live tab", async () => {
    const nursery = namedNursery(true);
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Grafter" });
    await nursery.w.settled();
    const before = nursery.values("Takes compared");
    nursery.ask("sidebarSetUp", asked);
    await nursery.w.settled();
    expect(named(nursery)).toEqual({});
    const after = nursery.values("Takes compared");
    expect(after.map((row) => row.slice(1)).slice(1)).toEqual(
      before.map((row) => row.slice(1)).slice(1),
    );
    expect(after.slice(3, 8).map(([who]) => who)).toEqual(["A.", "K.", "K. 2", "M. A.", "M. A. 2"]);
    const alone = groupAlone({ group: "M. A.", stratum: "Nera" });
    expect(after.flat().join()).toContain(alone);
    expect(nursery.sheet("Takes compared").getRange("A3").getFormula()).toBe("");
    expect(text(nursery, "Work plan")).toContain(noHours({ name: "K. O." }));
    expect(nursery.ask("sidebarOpen", null).setUp?.initials).toBe(true);
  });

  it("values give way to a live tab, and to a sentence, in the same sheet", async () => {
    const nursery = namedNursery(true);
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Grafter" });
    await nursery.w.settled();
    const live = nursery.values("Takes compared");
    const sheet = () => nursery.sheet("Takes compared");
    const id = sheet().getSheetId();
    nursery.ask("sidebarSetUp", asked);
    sheet().getRange("K5").setValue("a note of the person's own");
    nursery.ask("sidebarSetUp", { ...asked, initials: false });
    await nursery.w.settled();
    expect(nursery.values("Takes compared").map((row) => row.slice(0, 9))).toEqual(live);
    nursery.ask("sidebarSetUp", asked);
    nursery.ask("sidebarSetUp", { ...asked, compareBy: "" });
    const rest = nursery.values("Takes compared").slice(2).flat();
    expect(rest.filter((cell) => cell !== "")).toEqual([
      takeTabs.noneChosen(),
      "a note of the person's own",
    ]);
    expect(sheet().getSheetId()).toBe(id);
  });

  it("a live tab into which a row was put shows no names beside its values", async () => {
    const nursery = namedNursery(true);
    nursery.ask("sidebarSetUp", { ...ONCE, compareBy: "Grafter" });
    nursery.sheet("Takes compared").insertRowsAfter(1, 2);
    nursery.ask("sidebarSetUp", asked);
    await nursery.w.settled();
    expect(named(nursery)).toEqual({});
    expect(
      nursery
        .values("Takes compared")
        .slice(3, 8)
        .map(([who]) => who),
    ).toEqual([...["A.", "K.", "K. 2", "M. A.", "M. A. 2"]]);
  });

  it("the tabs with initials are made anew with the due list", () => {
    const nursery = namedNursery();
    nursery.ask("sidebarSetUp", asked);
    nursery.sheet("Records").getRange("M2").setValue(1);
    const taken = () => nursery.value("Takes compared", "C4");
    const before = taken();
    nursery.w.call("refreshDueList");
    expect(taken()).not.toBe(before);
    expect(named(nursery)).toEqual({});
  });

  it("plans the fortnight for initials, the same as in the records", () => {
    const nursery = namedNursery();
    const work = nursery.ask("sidebarWork", { days: 14, initials: true });
    expect(namedIn(JSON.stringify(work))).toEqual([]);
    expect([...work.persons].sort()).toEqual(["A.", "K.", "K. 2", "M. A.", "M. A. 2"]);
    expect(work.remark).toContain(noHours({ name: "K. O." }));
  });
});

describe("the settings tab", () => {
  it("of an older add-in gets its rows when Set up is run again, and is read before that", () => {
    const nursery = namedNursery();
    const header = nursery.sheet("Records").getRange("B1");
    header.setValue("Sort of plant");
    const columns = [{ header: "Sort of plant", readAs: "Variety" }];
    nursery.ask("sidebarSetUp", { ...ONCE, columns });
    const settings = nursery.sheet(SETTINGS);
    expect(nursery.values(SETTINGS)[11]?.slice(0, 2)).toEqual(["Variety", "Sort of plant"]);
    settings.deleteRows(8, 3);
    expect(nursery.ask("sidebarToday", { daysAhead: 7 }).tasks.length).toBeGreaterThan(0);
    expect(nursery.ask("sidebarTakes", { by: "" }).by).toBe("Sort of plant");
    nursery.ask("sidebarSetUp", { ...ONCE, initials: true });
    const rows = nursery.values(SETTINGS).slice(7, 12);
    expect(rows.map((row) => row.slice(0, 2))).toEqual([
      ["Takes compared by", ""],
      ["People", "initials"],
      ["Looks", "shown"],
      ["Our name", "Your word"],
      ["Variety", "Sort of plant"],
    ]);
    expect(nursery.ask("sidebarTakes", { by: "" }).by).toBe("Sort of plant");
  });

  it("takes whatever is typed for people but their names as initials", () => {
    const nursery = namedNursery();
    const initials = (typed: string) => {
      nursery.sheet(SETTINGS).getRange("B9").setValue(typed);
      return nursery.ask("sidebarOpen", null).setUp?.initials;
    };
    expect(["names", "Names ", "", "initials", "initiales"].map(initials)).toEqual([
      ...[false, false, false, true, true],
    ]);
  });
});
