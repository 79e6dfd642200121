import { describe, expect, it } from "vitest";
import { countsOf, daysOf, isSaid, names, readTyped } from "./typed-rows";

describe("headers that say more than a column's name", () => {
  // People saw the column of days ignored without a word.
  it.each([
    "Sown (dd/mm/yyyy)",
    "Sown (d/m/yy)",
    "Sown (m/d/yy)",
    "Sown\n(mm/dd/yyyy)",
    "Sown [dd-mm-yyyy]",
    "Sown dd.mm.yy",
    "Date de semis (jj/mm/aaaa)",
    "Fecha de siembra (dd/mm/aaaa)",
    "Tgl semai (hh/bb/tttt)",
  ])("reads the days under %j", (header) => {
    const records = readTyped([
      ["Batch", header, "Seeds sown"],
      ["B-1", "2026-03-02", 120],
    ]);
    expect(daysOf(records, "sowing")).toEqual(["2026-03-02"]);
  });

  it("lists a column of days that it can't make out", () => {
    const records = readTyped([
      ["Batch", "Sown", "Zweite Öffnung"],
      ["B-1", "2026-03-02", "2026-05-02"],
      ["B-2", "2026-03-09", "2026-05-09"],
    ]);
    expect(isSaid(records, { column: "Zweite Öffnung" })).toBe(true);
  });
});

describe("a header of two rows", () => {
  // People saw a counted step's columns left out where the step's name itself has a word for
  // days, plants or nothing in it ("count", "for").
  it.each([
    ["Survival count", "take count"],
    ["Success count", "take count"],
    ["Take count", "take count"],
    ["Fit for sale", "ready"],
    ["Ready for sale", "ready"],
    ["Fin d'élevage", "ready"],
    ["Pret à la vente", "ready"],
    ["Conteo de prendimiento", "take count"],
    ["Listo para venta", "ready"],
  ])("reads the day and the plants under %j", (group, step) => {
    const records = readTyped([
      ["Batch", "Sowing", "", group, ""],
      ["", "Date", "No.", "Date", "No."],
      ["B-1", "2026-03-02", 120, "2026-08-02", 80],
    ]);
    expect(daysOf(records, step)).toEqual(["2026-08-02"]);
    expect(countsOf(records, step)).toEqual([80]);
  });

  it.each([
    ["Wrap released", "first release"],
    ["Buds move", "bud break"],
    ["Première poussée", "first flush"],
    ["Abertura da fita", "first release"],
    ["Quebra da gema", "bud break"],
    ["Buka ikatan pertama", "first release"],
  ])("reads the day under %j, which has no plants beside it", (group, step) => {
    const records = readTyped([
      ["Batch", "Sowing", "", group],
      ["", "Date", "No.", "Date"],
      ["B-1", "2026-03-02", 120, "2026-08-02"],
    ]);
    expect(daysOf(records, step)).toEqual(["2026-08-02"]);
  });
});

describe("a row with one group above the header", () => {
  it("says of which step a bare date and number are, and no further", () => {
    const records = readTyped([
      ["", "Borbulhia", "", "", ""],
      ["Lote", "Data", "Qtd.", "Pegas", "Obs"],
      ["B-1", "2026-08-02", 80, 70, "Borb"],
    ]);
    expect(daysOf(records, "grafting")).toEqual(["2026-08-02"]);
    expect(countsOf(records, "grafting")).toEqual([80]);
    expect(countsOf(records, "take count")).toEqual([70]);
  });

  it("is a title where it stands over no bare date or number", () => {
    const records = readTyped([
      ["", "Borbulhia 2026", "", ""],
      ["Lote", "Variedade", "Semeado em", "Sementes semeadas"],
      ["B-1", "Alba", "2026-03-02", 120],
    ]);
    expect(countsOf(records, "sowing")).toEqual([120]);
    expect(records.batches.map(({ variety }) => variety)).toEqual(["Alba"]);
  });
});

describe("a header that comes again", () => {
  // People saw the second table read by the first one's columns.
  it("is known when its first column is the office's own", () => {
    const records = readTyped([
      ["Batch", "Sown", "Seeds sown"],
      ["B-1", "2026-03-02", 120],
      [],
      ["Photo", "Seeds sown", "Batch", "Sown"],
      ["IMG_1", 130, "B-2", "2026-03-09"],
    ]);
    expect(names(records)).toEqual(["B-1", "B-2"]);
    expect(countsOf(records, "sowing")).toEqual([120, 130]);
  });

  it("is known when its first text has a digit", () => {
    const records = readTyped([
      ["1re poussée", "Lot", "Semé le", "Graines"],
      ["2026-06-02", "B-1", "2026-03-02", 120],
      ["1re poussée", "Lot", "Semé le", "Graines"],
      ["2026-06-09", "B-2", "2026-03-09", 130],
    ]);
    expect(names(records)).toEqual(["B-1", "B-2"]);
  });
});
