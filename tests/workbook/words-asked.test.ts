import { describe, expect, it } from "vitest";
import * as text from "../../src/sentences/made/records";
import { recordsRemarks } from "../../src/wording/records";
import { openNursery, tab } from "./nursery";
import { toldWords } from "./told-words";

const HEADER = ["Batch", "Variety", "Crop", "Method", "Grafter", "Grafted on", "Grafts made"];
/** An office's words: "Cleft" fits three crops, "Own way" none, and Amberlo may be Amberlow. */
const records = () =>
  tab("Records", [
    HEADER,
    ["B1", "Amberlow", "", "Cleft", "Kesto Mbo", "2026-10-24", 100],
    ["B2", "Amberlow", "", "cleft", "Kesto Mbo", "2026-10-24", 50],
    ["B3", "Amberlo", "", "Own way", "Kestos Mbo", "2026-10-24", 30],
    ["B4", "Amberlow", "Mango", "", "Kesto Mbo", "2026-10-24", 20],
    ["B5", "Amberlow", "Cocoa", "", "Kesto Mbo", "2026-10-24", 20],
  ]);
const ONCE = { tab: "Records", columns: [], methods: [] };
const value = (word: string, name: string | null) => ({ word, name, notSame: false });

// All rows "Cleft": Today said that nothing was due, and Set up went on without a word.
describe("words in cells that only the person knows", () => {
  it("are asked with what hangs on them, what was written in one way once", () => {
    const { words } = openNursery([records()]).ask("sidebarColumns", { tab: "Records" });
    const plants = words.methods.map((one) => [one.word, one.batches, one.plants, one.fits.length]);
    expect(plants).toEqual([
      ["Cleft", 2, 150, 3],
      ["Own way", 1, 30, 0],
      ["Mango", 1, 20, 2],
    ]);
    expect(words.pairs.map(({ column, rare, common }) => [column, rare.text, common.text])).toEqual(
      [
        ["Variety", "Amberlo", "Amberlow"],
        ["Grafter", "Kestos Mbo", "Kesto Mbo"],
      ],
    );
    expect(words.more).toBe(0);
  });

  // Check says of each what it is, so that the page can lead to its question.
  it("are known by the same words in Check, which leads to the questions", () => {
    const nursery = openNursery([records()], { newRows: 300 }).ready();
    const { rows } = nursery.ask("sidebarCheck", null);
    const told = rows.map(({ code, found, rows: all }) => [code, found, all]);
    expect(told).toContainEqual(["several-methods", "Cleft", [2, 3]]);
    expect(told).toContainEqual(["no-such-method", "Own way", [4]]);
    expect(told).toContainEqual(["near-alike", "Amberlo", [4]]);
    const { words } = nursery.ask("sidebarColumns", { tab: "Records" });
    expect(words.methods.map(({ word }) => word)).toEqual(["Cleft", "Own way", "Mango"]);
  });

  it("are kept in the settings tab, read from then on, and asked no more", async () => {
    const nursery = openNursery([records()], { live: true, newRows: 300 });
    const answer = nursery.ask("sidebarSetUp", {
      ...ONCE,
      methods: ["Cocoa cleft graft", "Mango stone graft", "Mango cleft graft"],
      words: [
        value("Cleft", "Cocoa cleft graft"),
        value("Own way", null),
        value("Mango", "Mango stone graft"),
        value("Amberlo", "Amberlow"),
        { word: "Kestos Mbo", name: "Kesto Mbo", notSame: true },
      ],
    });
    await nursery.w.settled();
    expect(answer.words).toMatchObject({ methods: [], pairs: [], more: 0 });
    expect(toldWords(nursery)).toEqual([
      "Cocoa cleft graft | Cleft | value",
      "Leave alone | Own way | value",
      "Mango stone graft | Mango | value",
      "Amberlow | Amberlo | value",
      "Kesto Mbo | Kestos Mbo | not the same",
    ]);
    const shown = nursery.values("Stages").slice(3, 8);
    expect(shown.map((row) => row.slice(0, 3))).toEqual([
      ["B1", "Amberlow", "Cocoa cleft graft"],
      ["B2", "Amberlow", "Cocoa cleft graft"],
      ["B3", "Amberlow", "Own way"],
      ["B4", "Amberlow", "Mango stone graft"],
      ["B5", "Amberlow", "Cocoa cleft graft"],
    ]);
    const { words } = nursery.ask("sidebarColumns", { tab: "Records" });
    expect(words).toMatchObject({ methods: [], pairs: [] });
  });

  it("are answered anew in the same row, and what is told of headers stays", () => {
    const nursery = openNursery([records()], { newRows: 300 });
    const columns = [{ header: "Grafter", readAs: null }];
    nursery.ask("sidebarSetUp", { ...ONCE, columns, words: [value("Cleft", null)] });
    nursery.ask("sidebarSetUp", { ...ONCE, words: [value("Cleft", "Cocoa cleft graft")] });
    nursery.ask("sidebarSetUp", { ...ONCE, words: [value("Cleft", "Cocoa cleft graft")] });
    expect(toldWords(nursery)).toEqual([
      "Leave alone | Grafter | header",
      "Cocoa cleft graft | Cleft | value",
    ]);
  });

  it("are asked of a column as soon as it is read as one of words", () => {
    const rows = [
      ["Batch", "Kind of", "Grafted on", "Grafts made"],
      ["B1", "Whip", "2026-10-24", 100],
    ];
    const nursery = openNursery([tab("Records", rows)]);
    const asked = (readAs: string | null) =>
      nursery.ask("sidebarColumns", {
        tab: "Records",
        columns: [{ header: "Kind of", readAs }],
      }).words.methods;
    expect(asked("Method").map(({ word }) => word)).toEqual(["Whip"]);
    expect(asked(null)).toEqual([]);
  });

  it("are asked so many at a time, those of most plants first, and the rest is counted", () => {
    const rows = Array.from({ length: 20 }, (_, at) => [
      ...[`B${at}`, "A", "", `Way ${"abcdefghijklmnopqrst"[at]} of ours`, ""],
      ...["2026-10-24", 10 + at],
    ]);
    const nursery = openNursery([tab("Records", [HEADER, ...rows])]);
    const { words } = nursery.ask("sidebarColumns", { tab: "Records" });
    expect(words.methods.map(({ plants }) => plants)).toEqual([29, 28, 27, 26, 25, 24, 23, 22]);
    expect(words.more).toBe(12);
  });
});

// Seen: 57 open batches of which no method was known, and "Nothing is late, due or coming".
describe("batches of which no method is known", () => {
  it("are named on the due list and on the page, with where it is settled", () => {
    const nursery = openNursery([records()], { newRows: 300 }).ready();
    const { remarks, tasks } = nursery.ask("sidebarToday", { daysAhead: 7 });
    expect(tasks.map(({ batch }) => batch)).not.toContain("B3");
    const said = recordsRemarks(remarks, "page") ?? "";
    expect(said).toContain(text.noSuchMethod({ batches: ["B3"] }));
    expect(said).toContain(text.methodsAsked());
    expect(nursery.value("Due list", "A1")).toContain(said);
    // The months ahead also say which shares they count on, of the batches that they have.
    const ahead = nursery.ask("sidebarAhead", null).remarks;
    const ofMethods = ahead.filter(({ code }) => code !== "general-shares");
    expect(recordsRemarks(ofMethods, "page")).toBe(said);
  });
});

// Two methods of rubber came to be where one was: what said the crop alone meant the one before.
describe("a crop of two methods", () => {
  const rubber = () =>
    openNursery(
      [
        tab("Records", [
          ["Batch", "Variety", "Crop", "Sown", "Seeds sown"],
          ["R1", "RVA 60", "Rubber", "2026-06-24", 100],
          ["R2", "RVA 60", "Karet", "2026-06-24", 50],
        ]),
      ],
      { live: true, newRows: 300 },
    );
  const [GREEN, STUMP] = ["Rubber green bud", "Rubber budded stump"];

  it("is asked about, with both by name, and its batches are named till it is answered", async () => {
    const nursery = rubber();
    const { words } = nursery.ask("sidebarColumns", { tab: "Records" });
    expect(words.methods.map(({ word, fits }) => [word, fits])).toEqual([
      ["Rubber", [GREEN, STUMP]],
      ["Karet", [GREEN, STUMP]],
    ]);
    nursery.ready();
    const said = () =>
      recordsRemarks(nursery.ask("sidebarToday", { daysAhead: 7 }).remarks, "page") ?? "";
    expect(said()).toContain(text.severalMethods({ batches: ["R1", "R2"] }));
    const told = [value("Rubber", STUMP as string), value("Karet", GREEN as string)];
    nursery.ask("sidebarSetUp", { ...ONCE, words: told });
    await nursery.w.settled();
    expect(said()).not.toContain("R1");
    const stages = nursery.values("Stages").slice(3, 5);
    expect(stages.map((row) => row.slice(0, 3))).toEqual([
      ["R1", "RVA 60", STUMP],
      ["R2", "RVA 60", GREEN],
    ]);
  });
});
