import { describe, expect, it } from "vitest";
import { peopleOf } from "../../../src/core/people/people-of";
import { groupColumns } from "../../../src/core/takes/grouping";
import { reading } from "../records/reading";

const HEADER = ["Batch", "Variety", "Wrapping", "Fait par", "Grafter", "Grafted on", "Grafts made"];
const rows = [
  ["B1", "Nera", "Kesto", "Lio", "Orla", "2026-04-02", 10],
  ["B2", "Nera", "Orla", "", "Kesto", "2026-03-02", 10],
  ["B3", "Duskpod", "Zia", "Mio", "", "2026-02-02", 10],
  ["B4", "Duskpod", "", "", "Ana", "", ""],
];
const read = (order: readonly number[] = [0, 1, 2, 3]) =>
  reading([HEADER, ...order.map((at) => rows[at] ?? [])]);

describe("peopleOf", () => {
  it("names grafters by the day on which they first grafted, then who stands in other columns", () => {
    expect(peopleOf(read())).toEqual(["Kesto", "Orla", "Ana", "Zia", "Mio", "Lio"]);
  });

  it("is the same when the rows are sorted anew, and when somebody comes", () => {
    expect(peopleOf(read([3, 2, 1, 0]))).toEqual(peopleOf(read()));
    const later = ["B5", "Nera", "", "", "Abo", "2026-06-01", 5];
    const more = peopleOf(reading([HEADER, later, ...rows]));
    expect(more.slice(0, 2)).toEqual(["Kesto", "Orla"]);
    expect(more.indexOf("Abo")).toBe(2);
  });
});

describe("a column that groups are made of", () => {
  const people = (name: string) => groupColumns(name, read())[0]?.people;

  it("names people where it is the grafter's, where its header says so, and where grafters stand in it", () => {
    expect(["Grafter", "Fait par", "Wrapping"].map(people)).toEqual([true, true, true]);
  });

  it("names nobody else", () => {
    expect(["Variety", "Batch", "Month", "Grafted on"].map(people)).toEqual(Array(4).fill(false));
  });
});
