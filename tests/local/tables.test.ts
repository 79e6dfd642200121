import { describe, expect, it } from "vitest";
import { linesBelow } from "../../src/local/lines-below";
import type { SheetCell } from "../../src/local/sheet-cells";
import { textTable } from "../../src/local/tables";
import * as said from "../../src/sentences/made/report";

const cell = (value: string | number | boolean, pattern = ""): SheetCell => ({ value, pattern });
const row = (...values: (string | number | null)[]) =>
  values.map((value) => (value === null || value === "" ? null : cell(value)));

describe("textTable", () => {
  it("puts numbers right, days as ISO, and headers over several lines", () => {
    const rows = [
      row("Batch", "Do on", "Days late", "Take rate"),
      [cell("H1"), cell(46095, "d mmm yyyy"), cell(3), cell(0.5, "0.0%")],
      [cell("H22"), null, cell(12.25), null],
    ];
    expect(textTable(rows, { width: 31 })).toBe(
      [
        "                    Days   Take",
        "Batch  Do on        late   rate",
        "─────  ──────────  ─────  ─────",
        "H1     2026-03-14   3.00  50.0%",
        "H22                12.25",
      ].join("\n"),
    );
  });

  it("fits a line by wrapping text, and cuts nothing off", () => {
    const long = "Write the day as it was, then look at the neighbours of the cell as well";
    const table = textTable([row("Row", "What to do", "x"), row(2, long, `${long} again`)], {
      width: 60,
    });
    for (const line of table.split("\n")) expect(line.length).toBeLessThanOrEqual(60);
    const words = table.split(/\s+/);
    for (const word of long.split(" ")) {
      expect(words.filter((one) => one === word).length).toBeGreaterThanOrEqual(2);
    }
  });

  it("breaks a word that is longer than the line", () => {
    const table = textTable([row("a", "b"), row("x".repeat(200), "y")], { width: 40 });
    for (const line of table.split("\n")) expect(line.length).toBeLessThanOrEqual(40);
    expect(table.match(/x/g)).toHaveLength(200);
  });

  it("counts what it leaves out, and prints the remark below", () => {
    const rows = [
      row("Batch", "Plants"),
      ...Array.from({ length: 40 }, (_, index) => row(`B${index}`, index)),
      row("3 rows left out: see BATCH_CHECK", null),
    ];
    const lines = textTable(rows, { limit: 6 }).split("\n");
    expect(lines).toHaveLength(2 + 6 + 2);
    expect(lines.slice(-3)).toEqual([
      "B5          5",
      said.more({ more: 34 }),
      "3 rows left out: see BATCH_CHECK",
    ]);
  });

  it("prints the columns asked for that there are", () => {
    const rows = [row("A", "B", "C"), row("a", "b", "c")];
    expect(textTable(rows, { columns: ["C", "A", "Z"] })).toBe("C  A\n─  ─\nc  a");
  });

  it("says when there is no row", () => {
    expect(textTable([row("A", "B")])).toBe(`A  B\n─  ─\n${said.none()}`);
  });

  it("does not change its input", () => {
    const rows = [row("A", "B"), row("a", 1)];
    const before = structuredClone(rows);
    textTable(rows, { limit: 0 });
    expect(rows).toEqual(before);
  });
});

describe("linesBelow", () => {
  it("gives each text once, with what it goes with", () => {
    const rows = [
      row("Task", "Caution"),
      row("Grafting", "Blades"),
      row("Union closed", "Blades"),
      row("Grafting", "Blades"),
      row("Sowing", null),
      row("Potting", "Dust"),
    ];
    const below = { heading: "Cautions", column: "Caution", of: "Task" };
    expect(linesBelow(rows, below)).toEqual(["Grafting, Union closed: Blades", "Potting: Dust"]);
    expect(linesBelow([row("Task")], below)).toEqual([]);
  });
});
