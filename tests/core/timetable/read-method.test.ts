import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { methodReader } from "../../../src/core/timetable/read-method";
import { builtInTimetable, readTimetable } from "../../../src/core/timetable/read-timetable";
import { csvRows } from "../../samples/csv-rows";

const readBuiltIn = methodReader(builtInTimetable());
const built = (method: string, crop = "") => {
  const reading = readBuiltIn({ method, crop });
  return reading.code === "method" ? reading.method.name : reading.code;
};
/** A timetable of methods with these names. */
const own = (...names: string[]) => {
  const rows = names.flatMap((name) => [
    [name, "Sowing", "", "", "", "", "yes"],
    [name, "Ready", "Sowing", 20, 30, 45, "yes"],
  ]);
  const header = ["Method", "Step", "After", "From day", "Usual day", "By day", "Counted"];
  const read = methodReader(readTimetable(gridOf([header, ...rows])).timetable);
  return (method: string, crop = "") => {
    const reading = read({ method, crop });
    return reading.code === "method" ? reading.method.name : reading.code;
  };
};

// Source: tests/checks/office-words/SOURCE.md, invented, by someone who had not seen the program.
const LINES = csvRows(readFileSync("tests/checks/office-words/values.csv", "utf8"))
  .filter(([, , kind]) => kind === "method")
  .map(([id, , , , crop, spelling, is, , must, , common]) => ({
    id: id as string,
    crop: crop === "any" ? "" : (crop as string),
    spelling: spelling as string,
    is: is as string,
    must: must as string,
    common: common === "yes",
  }));
/** The built-in method of a crop and a way; a pair of ways is one where a crop has one of them. */
const OF_CROP: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  cocoa: {
    ...{ "cleft graft": "Cocoa cleft graft", "top wedge graft": "Cocoa cleft graft" },
    ...{ "patch bud": "Cocoa green patch bud", "green patch bud": "Cocoa green patch bud" },
  },
  mango: {
    ...{ "cleft graft": "Mango cleft graft", "top wedge graft": "Mango cleft graft" },
    "epicotyl (stone) graft": "Mango stone graft",
  },
  citrus: { "T-bud": "Citrus T-bud" },
  cashew: { "softwood graft": "Cashew softwood graft" },
  rubber: { "patch bud": "Rubber green bud", "green patch bud": "Rubber green bud" },
  avocado: { "cleft graft": "Avocado cleft graft", "top wedge graft": "Avocado cleft graft" },
  coffee: { "hypocotyl graft": "Coffee hypocotyl graft" },
};

/** "Side-cleft", "GB": read by this writer, and not by the next (practice/), so they are asked about. */
const IN_DOUBT = ["V021", "V042"];

describe("methods as offices write them", () => {
  it.each(IN_DOUBT)("%s is asked about, since writers differ", (id) => {
    const { crop, spelling } = LINES.find((line) => line.id === id) as (typeof LINES)[number];
    expect(built(spelling, crop)).toBe("no-such-method");
  });

  const isPlain = ({ id, must }: (typeof LINES)[number]) =>
    must !== "ask" && !IN_DOUBT.includes(id);
  it.each(LINES.filter(isPlain))("$id $spelling is a $is", (line) => {
    const { crop, spelling, is } = line;
    const expected =
      is === "cutting" ? "Rooted cutting" : (OF_CROP[crop]?.[is] ?? "no-such-method");
    expect(built(spelling, crop)).toBe(expected);
  });

  it.each(LINES.filter(({ must }) => must === "ask"))("$id $spelling is asked about", (line) => {
    expect(["no-such-method", "several-methods"]).toContain(built(line.spelling));
  });

  it("knows the ways themselves: with a method of each, none is taken for another", () => {
    const WAYS: Readonly<Record<string, string>> = {
      ...{ "cleft graft": "Cleft", "top wedge graft": "Top wedge", "side graft": "Side graft" },
      ...{ "side veneer graft": "Veneer", "approach graft": "Approach", "patch bud": "Patch bud" },
      ...{ "green patch bud": "Green patch bud", "T-bud": "T-bud", "chip bud": "Chip bud" },
      ...{ "softwood graft": "Softwood", "epicotyl (stone) graft": "Stone graft" },
      ...{ "hypocotyl graft": "Hypocotyl", cutting: "Cutting", seedling: "Seedlings" },
    };
    const read = own(...Object.values(WAYS));
    const lines = LINES.filter(isPlain);
    const wrong = lines
      .map(({ id, spelling, is }) => [id, spelling, read(spelling), WAYS[is]])
      .filter(([, , found, expected]) => found !== expected);
    expect(wrong).toEqual([]);
    for (const { id, spelling } of LINES.filter(({ must }) => must === "ask")) {
      expect([id, ["no-such-method", "several-methods"].includes(read(spelling))]).toEqual([
        id,
        true,
      ]);
    }
  });
});

describe("methods and crops", () => {
  it.each([
    ["Stone", "Mango", "Mango stone graft"],
    ["Cleft", "Avo", "Avocado cleft graft"],
    ["mango cleft", "", "Mango cleft graft"],
    ["T budding", "", "Citrus T-bud"],
    ["Softwood", "", "Cashew softwood graft"],
    ["Avocado", "", "Avocado cleft graft"],
    ["cuttings", "Cocoa", "Rooted cutting"],
    ["COCOA cleft-graft", "", "Cocoa cleft graft"],
    ["", "", "Cocoa cleft graft"],
    ["", "Agrumes", "Citrus T-bud"],
    // The first of all is of this crop; of mango there are two, and neither is meant before the other.
    ["", "Cocoa", "Cocoa cleft graft"],
    ["", "Mango", "several-methods"],
    // Budded young in bags, or in the field for stumps: the crop alone tells neither, nor that it is budded.
    ["", "Rubber", "several-methods"],
    ["Rubber", "", "several-methods"],
    ["Budded", "Rubber", "several-methods"],
    ["okulasi", "Karet", "several-methods"],
    ["Budded stump", "", "Rubber budded stump"],
    ["stump", "Hévéa", "Rubber budded stump"],
    ["green budding", "Rubber", "Rubber green bud"],
    ["", "Theobroma x", "no-such-method"],
    // Three crops are grafted so, and nothing says which.
    ["Cleft", "", "several-methods"],
    ["Mango", "", "several-methods"],
    ["", "Jackfruit", "no-such-method"],
    ["Cleft", "Jackfruit", "no-such-method"],
    ["Cocoa cleft graft", "Mango", "no-such-method"],
    ["Plum budding", "", "no-such-method"],
  ])("%j of %j is %s", (method, crop, expected) => {
    expect(built(method, crop)).toBe(expected);
  });

  it("are asked about where a way without a crop is near to another crop's", () => {
    // Guava is the only one that says wedge; cocoa's cleft may be what is meant.
    const read = own("Cocoa cleft graft", "Guava wedge graft");
    expect(read("wedge")).toBe("several-methods");
    expect(read("sambung pucuk")).toBe("several-methods");
    expect(read("wedge", "Guava")).toBe("Guava wedge graft");
    expect(read("wedge", "Cocoa")).toBe("Cocoa cleft graft");
  });

  // "Okulasi" of rubber was read as the green bud, though a patch bud of every crop stood beside it.
  it("are asked about where a bud may be the crop's own or that of every crop", () => {
    const read = own("Patch bud", "Rubber green bud");
    expect(read("okulasi", "Rubber")).toBe("several-methods");
    expect(read("okulasi hijau", "Rubber")).toBe("Rubber green bud");
  });

  it("are held against the names of an own timetable in the same way", () => {
    const one = own("Cocoa top graft");
    expect(one("greffe en fente")).toBe("Cocoa top graft");
    expect(one("Cocoa")).toBe("Cocoa top graft");
    expect(one("Budded")).toBe("no-such-method");
    const two = own("Plum budding", "Plum cuttings", "Method 2");
    expect(two("plum")).toBe("several-methods");
    expect(two("bud", "Plum")).toBe("Plum budding");
    expect(two("METHOD 2", "Plum")).toBe("Method 2");
    expect(two("Method 3")).toBe("no-such-method");
  });
});
