/** A small invented workbook that the reference's examples are asked of. Days are ISO text here. */
export const exampleWorkbook: Readonly<Record<string, readonly (readonly (string | number)[])[]>> =
  {
    Records: [
      [
        ...[
          "Batch",
          "Variety",
          "Place",
          "Grafter",
          "Sown",
          "Seeds sown",
          "Grafted on",
          "Grafts made",
        ],
        ...["First release", "Takes", "Ready on", "Ready plants", "Dispatched"],
      ],
      [
        ...["A-01", "Amberlow", "Bay 1", "Kesto", "2026-03-02", 240, "2026-06-02", 170],
        ...["2026-06-16", 140, "2026-09-25", 128, 128],
      ],
      [
        ...["A-02", "Amberlow", "Bay 1", "Orrin", "2026-04-10", 200, "2026-07-10", 150],
        ...["2026-07-24", 111, "", "soon", ""],
      ],
      [
        ...["B-01", "Brindlecap", "Bay 2", "Kesto", "2026-05-20", 180, "2026-08-18", 130],
        ...["2026-09-01", 104, "", "", ""],
      ],
      [
        ...["B-02", "Brindlecap", "Bay 2", "Orrin", "2026-07-28", 220, "2026-10-27", 160],
        ...["", "", "", "", ""],
      ],
      ["A-03", "Amberlow", "Bay 1", "", "2026-09-01", 260, "", "", "", "", "", "", ""],
      ["B-03", "Brindlecap", "Bay 2", "", "2026-11-17", 300, "", "", "", "", "", "", ""],
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
