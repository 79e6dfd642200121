import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as pageText from "../../../src/sentences/made/page";
import * as records from "../../../src/sentences/made/records";
import * as setUp from "../../../src/sentences/made/set-up-page";
import * as words from "../../../src/sentences/made/words-page";
import { isolated } from "../../../src/sidebar/controls/shortened";
import { isChromiumMissing } from "./chromium";
import { type NurseryPage, openNurseryPage } from "./nursery-page";
import { oneAfterAnother } from "./one-after-another";

/** An invented office's own words: "Slip" is a way of grafting that no language knows, in the field of one. */
const TABLE = [
  "Bag lot,Clone,How,Shed,Grafted on,Grafts,Alive 1 mth",
  "L-1,Amberlow,Slip,N,2026-08-20,120,90",
  "L-2,Amberlow,slip,North,2026-09-14,100,80",
  "L-3,Corvane,Cleft,North,2026-10-01,80,",
  "L-4,Amberlo,Cleft,North,2026-10-24,60,",
  "L-5,Corvane,Wild,South,2026-10-24,40,",
  "L-6,Corvane,Cleft,South,2026-10-28,50,",
];

/** From the first opening to a due list in which every batch is read: the tests go on from one another. */
describe.skipIf(isChromiumMissing)("a table in an office's own words", () => {
  const folder = mkdtempSync(join(tmpdir(), "own-words-"));
  let nursery: NurseryPage;
  let presses = 0;
  beforeAll(async () => {
    const file = join(folder, "lots.csv");
    writeFileSync(file, `${TABLE.join("\n")}\n`);
    nursery = await openNurseryPage(file);
    await nursery.openSidebar();
  });
  afterAll(async () => {
    await nursery?.close();
    rmSync(folder, { recursive: true });
  });
  oneAfterAnother();

  /** A list is opened and one of its lines pressed. */
  const choose = async (label: string, option: string) => {
    await nursery.side().getByRole("combobox", { name: label }).selectOption(option);
    presses += 2;
    await nursery.settled();
  };
  const which = (word: string) => words.whichMethod({ word: isolated(word) });

  it("asks of a column of methods what each of its words means, once it is said to be one", async () => {
    const panel = nursery.side().locator("#section-set-up");
    expect(await panel.textContent()).not.toContain(which("Slip"));
    await choose(setUp.readAsOf({ header: "How" }), "Method");
    await choose(which("Slip"), "Cocoa cleft graft");
    await choose(which("Cleft"), "Cocoa cleft graft");
    await choose(which("Wild"), words.leaveOut());
    const [rare, common] = [isolated("Amberlo"), isolated("Amberlow")];
    await choose(words.theSame({ column: "Variety", rare, common }), words.yesAs({ name: common }));
  });

  it("makes the tabs with the answers, and asks no more", async () => {
    const side = nursery.side();
    // Nobody writes here when seed was sown.
    await side.getByRole("button", { name: setUp.makeWithout({ names: ["Sown"] }) }).click();
    presses += 1;
    await side.getByText(setUp.made()).waitFor();
    await nursery.settled();
    const panel = await side.locator("#section-set-up").textContent();
    expect(panel).toContain(setUp.openQuestions({ questions: 0 }));
    expect(await nursery.shown("Nursery settings", "A12:C16")).toEqual([
      ["Method", "How", "header"],
      ["Cocoa cleft graft", "Slip", "value"],
      ["Cocoa cleft graft", "Cleft", "value"],
      ["Leave alone", "Wild", "value"],
      ["Amberlow", "Amberlo", "value"],
    ]);
  });

  it("fills the due list, which names the one batch that was left out", async () => {
    const today = await nursery.section(pageText.today());
    presses += 1;
    const shown = (await today.textContent()) ?? "";
    for (const batch of ["L-3", "L-4", "L-6"]) expect(shown).toContain(batch);
    expect(shown).toContain(records.noSuchMethod({ batches: ["L-5"] }));
    const stages = await nursery.shown("Stages", "A4:C9");
    expect(stages.map(([batch, variety, method]) => [batch, variety, method])).toEqual([
      ["L-1", "Amberlow", "Cocoa cleft graft"],
      ["L-2", "Amberlow", "Cocoa cleft graft"],
      ["L-3", "Corvane", "Cocoa cleft graft"],
      ["L-4", "Amberlow", "Cocoa cleft graft"],
      ["L-5", "Corvane", "Wild"],
      ["L-6", "Corvane", "Cocoa cleft graft"],
    ]);
    // Two for each answer; one for the tabs without days of sowing, and one to look.
    expect(presses).toBe(12);
  });
});
