import { describe, expect, it } from "vitest";
import { readCsv } from "../../src/local/csv-in";
import { empty } from "../../src/sentences/made/file-faults";

const bytes = (text: string) => new TextEncoder().encode(text);
/** The cells as value, or value and pattern. */
const read = (input: string | Uint8Array) =>
  readCsv(typeof input === "string" ? bytes(input) : input, "x.csv", "x").rows.map((row) =>
    row.map((cell) => {
      const style = cell?.s as { n?: { pattern: string } } | undefined;
      return style?.n ? [cell?.v, style.n.pattern] : cell?.v;
    }),
  );

describe("readCsv", () => {
  it("makes cells of plain numbers, ISO days and truth values", () => {
    expect(read("a,b,c,d,e\n12,-0.5,2026-03-14,2026-03-14 06:00,true")[1]).toEqual([
      12,
      -0.5,
      [46095, "yyyy-mm-dd"],
      [46095.25, "yyyy-mm-dd hh:mm:ss"],
      1,
    ]);
  });

  it.each([
    "0012",
    "=1+1",
    "+44 20",
    "-",
    "@home",
    "1e5",
    "3/4",
    "30 Feb",
    "2026-02-30",
    "1,5",
    "12%",
  ])("keeps %s as text", (text) => {
    expect(read(`a,b\n"${text}",x`)[1]).toEqual([text, "x"]);
    expect(readCsv(bytes(`a\n"${text}"`), "x.csv", "x").rows[1]?.[0]).toEqual({ v: text, t: 1 });
  });

  it("keeps a number that is too long for a cell as text", () => {
    expect(read("a\n1234567890123456")[1]).toEqual(["1234567890123456"]);
  });

  it("reads quotes, line ends inside them and both kinds of line end", () => {
    expect(read('note,n\r\n"he said ""no"",\nthen left",1\r\nlast,2')).toEqual([
      ["note", "n"],
      ['he said "no",\nthen left', 1],
      ["last", 2],
    ]);
  });

  it("leaves blank cells blank", () => {
    expect(read("a,b,c\n,,0\n\n1")).toEqual([
      ["a", "b", "c"],
      [undefined, undefined, 0],
      [undefined],
      [1],
    ]);
  });

  it("finds out the separator, and the decimal comma that goes with ;", () => {
    expect(read('a;"b, c";d\n1,5;x;-0,25')).toEqual([
      ["a", "b, c", "d"],
      [1.5, "x", -0.25],
    ]);
    expect(read("a\tb\n1\t2")[1]).toEqual([1, 2]);
  });

  it("reads UTF-8 with a mark, UTF-16 and Windows-1252", () => {
    expect(read("\ufeffé,b")[0]).toEqual(["é", "b"]);
    expect(read(new Uint8Array([0xff, 0xfe, 0xe9, 0, 0x2c, 0, 0x62, 0]))[0]).toEqual(["é", "b"]);
    expect(read(new Uint8Array([0xe9, 0x2c, 0x62]))[0]).toEqual(["é", "b"]);
  });

  it("is not fooled by a first header ID", () => {
    expect(read("ID,Batch\n1,B1")[0]).toEqual(["ID", "Batch"]);
  });

  it("says when nothing is in it", () => {
    expect(() => read(" , \n\n")).toThrow(empty({ file: "x.csv" }));
  });
});
