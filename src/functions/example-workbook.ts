/** Cells of a row, with | between them; whole numbers are numbers, the rest is text. */
function row(cells: string): (string | number)[] {
  return cells
    .split("|")
    .map((cell) => cell.trim())
    .map((cell) => (/^\d+$/.test(cell) ? Number(cell) : cell));
}

/** A small invented workbook that the reference's examples are asked of. Days are ISO text here. */
export const exampleWorkbook: Readonly<Record<string, readonly (readonly (string | number)[])[]>> =
  {
    Records: [
      row(
        "Batch | Variety | Place | Grafter | Sown | Seeds sown | Grafted on | Grafts made | First release | Takes | Ready on | Ready plants | Dispatched",
      ),
      row(
        "A-01 | Amberlow | Bay 1 | Kesto | 2026-03-02 | 240 | 2026-06-02 | 170 | 2026-06-16 | 140 | 2026-09-25 | 128 | 128",
      ),
      row(
        "A-02 | Amberlow | Bay 1 | Orrin | 2026-04-10 | 200 | 2026-07-10 | 150 | 2026-07-24 | 111 |  | soon |",
      ),
      row(
        "B-01 | Brindlecap | Bay 2 | Kesto | 2026-05-20 | 180 | 2026-08-18 | 130 | 2026-09-01 | 104 |  |  |",
      ),
      row("B-02 | Brindlecap | Bay 2 | Orrin | 2026-07-28 | 220 | 2026-10-27 | 160 |  |  |  |  |"),
      row("A-03 | Amberlow | Bay 1 |  | 2026-09-01 | 260 |  |  |  |  |  |  |"),
      row("B-03 | Brindlecap | Bay 2 |  | 2026-11-17 | 300 |  |  |  |  |  |  |"),
    ],
    Takes: [
      ["Batch", "Variety", "Grafter", "Grafted on", "Grafts made", "Takes"],
      ["T-01", "Amberlow", "Kesto", "2026-02-03", 100, 71],
      ["T-02", "Amberlow", "Mirel", "2026-02-12", 90, 76],
      ["T-03", "Amberlow", "Orrin", "2026-02-21", 110, 83],
      ["T-04", "Duskpod", "Kesto", "2026-03-03", 100, 52],
      ["T-05", "Duskpod", "Mirel", "2026-03-12", 130, 83],
      ["T-06", "Amberlow", "Orrin", "2026-03-21", 110, 90],
      ["T-07", "Amberlow", "Kesto", "2026-04-03", 100, 65],
      ["T-08", "Duskpod", "Mirel", "2026-04-12", 100, 57],
      ["T-09", "Duskpod", "Orrin", "2026-04-21", 120, 69],
      ["T-10", "Amberlow", "Kesto", "2026-05-03", 130, 96],
      ["T-11", "Duskpod", "Mirel", "2026-05-12", 110, 68],
      ["T-12", "Amberlow", "Orrin", "2026-05-21", 90, 73],
      ["T-13", "Amberlow", "Kesto", "2026-06-03", 130, 92],
      ["T-14", "Amberlow", "Mirel", "2026-06-12", 100, 83],
      ["T-15", "Amberlow", "Orrin", "2026-06-21", 90, 75],
      ["T-16", "Duskpod", "Kesto", "2026-07-03", 90, 41],
      ["T-17", "Duskpod", "Mirel", "2026-07-12", 110, 71],
      ["T-18", "Amberlow", "Orrin", "2026-07-21", 90, 75],
      ["T-19", "Amberlow", "Kesto", "2026-08-03", 90, 64],
      ["T-20", "Duskpod", "Mirel", "2026-08-12", 90, 56],
      ["T-21", "Duskpod", "Orrin", "2026-08-21", 90, 58],
      ["T-22", "Amberlow", "Kesto", "2026-09-03", 130, 91],
      ["T-23", "Duskpod", "Mirel", "2026-09-12", 130, 77],
      ["T-24", "Amberlow", "Orrin", "2026-09-21", 130, 109],
    ],
    Orders: [
      ["Order", "Customer", "Variety", "Wanted", "By", "Delivered", "Closed"],
      ["O-1", "Hill co-op", "Amberlow", 90, "2026-12-20", 20, ""],
      ["O-2", "Lower farm", "Brindlecap", 95, "2027-01-20", "", ""],
      ["O-3", "Fern estate", "Amberlow or Brindlecap", 150, "2027-07-31", "", ""],
      ["O-4", "Lower farm", "Brindlecap", 260, "2027-10-31", "", ""],
    ],
    Steps: [
      row(
        "Method | Step | After | From day | Usual day | By day | Counted | Kept of 100 | Per person-hour | Needs",
      ),
      row(
        "Cocoa cleft graft | Sowing |  | 0 | 0 | 0 | yes |  | 90 | seed 1; pod 0.0283; bag 1; potting mix 1.43 l",
      ),
      row("Cocoa cleft graft | Germination | Sowing | 7 | 10 | 14 | yes | 85 | 400 |"),
      row(
        "Cocoa cleft graft | Grafting | Sowing | 75 | 90 | 120 | yes | 80 | 22 | scion 1; wrap strip 38.1 cm",
      ),
      row("Cocoa cleft graft | First release | Grafting | 12 | 14 | 18 |  |  | 80 |"),
      row("Cocoa cleft graft | Take count | Grafting | 28 | 30 | 35 | yes | 75 | 240 |"),
      row("Cocoa cleft graft | Union closed | Grafting | 80 | 90 | 105 |  |  | 70 |"),
      row("Cocoa cleft graft | Ready | Grafting | 105 | 112 | 122 | yes | 90 | 110 |"),
    ],
    Places: [
      ["Place", "Holds"],
      ["Bay 1", 400],
      ["Bay 2", 500],
    ],
    Prices: [
      ["Item", "Price", "Per"],
      ["Pod", 0.4, ""],
      ["Bag", 6, "100"],
      ["Potting mix", 2.5, "50 l"],
      ["Wrap strip", 0.12, "m"],
      ["Hour", 3, ""],
    ],
    Germination: [
      ["Day", "Came up"],
      [4, 0],
      [5, 4],
      [6, 17],
      [7, 10],
      [8, 7],
      [9, 1],
      [11, 1],
    ],
    Crew: [
      ["Person", "Tasks", "Hours a day", "Off from", "Off to"],
      ["Kesto", "", 6, "2026-12-01", "2026-12-04"],
      ["Orrin", "Grafting; Take count", 4, "", ""],
    ],
    "Closed days": [["Day"], ["Sunday"]],
    Settings: [["As-of day", "2026-11-25"]],
  };
