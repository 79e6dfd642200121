import { describe, expect, it } from "vitest";
import type { TableTold } from "../../src/wire/beside";
import { type Nursery, openNursery, smallRecords, tab } from "./nursery";
import { toldWords } from "./told-words";

const ONCE = { tab: "Records", columns: [], methods: [] };
const guess = (nursery: Nursery, table: string, told: readonly TableTold[] = []) =>
  nursery.ask("sidebarTables", { tab: "Records", told }).tables.find((one) => one.table === table);

// Samples of seed were found or not; nobody could point at them, nor tell of their columns.
describe("samples of seed", () => {
  const counted = [
    ["Parti", "Pot", "Sent out", "Noch", "Jour"],
    ["B1", "a", 50, 30, 7],
    ["B2", "a", 50, 10, 7],
    ["B3", "a", 50, 35, 7],
  ];
  const samples: TableTold = {
    ...{ table: "germination", tab: "Pots" },
    columns: [
      { header: "Parti", readAs: "Batch" },
      { header: "Sent out", readAs: "Seeds sown" },
      { header: "Jour", readAs: "Day" },
      { header: "Noch", readAs: "Came up" },
      { header: "Pot", readAs: null },
    ],
  };

  it("can be pointed at, their headers told, and then their tab and the page answer alike", async () => {
    const nursery = openNursery([smallRecords(), tab("Pots", counted)], {
      ...{ newRows: 300, live: true },
    });
    expect(guess(nursery, "germination")?.tab).toBeNull();
    expect(guess(nursery, "germination", [samples])).toMatchObject({ tab: "Pots", isRead: true });
    nursery.ask("sidebarSetUp", { ...ONCE, tables: [samples], tabs: ["germination"] });
    await nursery.w.settled();
    expect(toldWords(nursery)).toContain("Germination | Pots | tab");
    const { rows } = nursery.ask("sidebarFace", { face: "germination" });
    expect(rows.map(([batch, , sown, up]) => [batch, sown, up])).toEqual([
      ["B1", 50, 30],
      ["B2", 50, 10],
      ["B3", 50, 35],
    ]);
    const shown = nursery.values("How seed came up").slice(3, 6);
    expect(shown.map(([batch, , sown, up]) => [batch, sown, up])).toEqual(
      rows.map(([batch, , sown, up]) => [batch, sown, up]),
    );
    // Left alone on purpose is no column that nobody reads.
    const { rows: troubles } = nursery.ask("sidebarCheck", null);
    expect(troubles.filter((one) => one.tab === "Pots")).toEqual([]);
  });

  it("are none where none is chosen", () => {
    const nursery = openNursery([
      smallRecords(),
      tab("Seed samples", [
        ["Batch", "Sample", "Seeds sown", "Day", "Came up"],
        ...counted.slice(1),
      ]),
    ]);
    expect(guess(nursery, "germination")?.tab).toBe("Seed samples");
    nursery.ask("sidebarSetUp", {
      ...ONCE,
      tables: [{ table: "germination", tab: "", columns: [] }],
    });
    expect(guess(nursery, "germination")?.tab).toBeNull();
    expect(nursery.ask("sidebarFace", { face: "germination" }).rows).toEqual([]);
  });
});
