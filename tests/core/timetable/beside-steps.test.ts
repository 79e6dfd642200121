import { describe, expect, it } from "vitest";
import { gridOf } from "../../../src/core/cells/cell";
import { readTimetable } from "../../../src/core/timetable/read-timetable";
import { TIMETABLE_HEADER } from "../../../src/core/timetable/timetable-header";
import { timetableRows } from "../../../src/core/timetable/timetable-rows";
import { faultsOf, timetableOf } from "./typed-timetable";

const HEADER = `Method | Step     | After    | From day | Usual day | By day | Counted | Every days | Until`;
const PLUM = `
  ${HEADER}
  Plum   | Sowing         |          |     |     |     | yes |    |
  Plum   | Grafting       | Sowing   | 80  | 90  | 100 | yes |    |
  Plum   | Ready          | Grafting | 100 | 110 | 120 | yes |    |`;
const AHEAD = "Plum | Defoliating    | Grafting | -10 | -9  | -8  |     |    |";
const WEEDING = "Plum | Weeding        | Sowing   |     |     |     |     | 14 | Ready";
const SUCKERS = "Plum | Stock shoots   | Grafting | 14  |     | 90  |     | 7  |";

describe("a row whose days are below 0", () => {
  it("is work ahead of its step, and no step that batches pass", () => {
    const { timetable, faults } = timetableOf(`${PLUM}\n${AHEAD}`);
    expect(faults).toEqual([]);
    const [method] = timetable.methods;
    expect(method?.steps.map(({ name }) => name)).toEqual(["Sowing", "Grafting", "Ready"]);
    expect(method?.ready).toBe(2);
    const ahead = method?.ahead.map(({ name, after, from, usual, by }) => [
      name,
      after,
      from,
      usual,
      by,
    ]);
    expect(ahead).toEqual([["Defoliating", 1, -10, -9, -8]]);
  });

  it("may end on the day of the step, and not behind it", () => {
    const onTheDay = timetableOf(`${PLUM}\nPlum | Cut scions | Grafting | -1 | 0 | 0 | | |`);
    expect(onTheDay.timetable.methods[0]?.ahead[0]?.by).toBe(0);
    const behind = `${PLUM}\nPlum | Cut scions | Grafting | -1 | 0 | 2 | | |`;
    expect(faultsOf(behind)).toEqual(["5 from before-parent Cut scions Grafting"]);
    const counted = `${PLUM}\nPlum | Cut scions | Grafting | -1 | 0 | 0 | yes | |`;
    expect(faultsOf(counted)).toEqual(["5 from before-parent Cut scions Grafting"]);
  });
});

describe("a row that is repeated", () => {
  it("goes on from its step every so many days, till a step or a day", () => {
    const { timetable, faults } = timetableOf(`${PLUM}\n${WEEDING}\n${SUCKERS}`);
    expect(faults).toEqual([]);
    const rounds = timetable.methods[0]?.rounds.map(({ name, after, from, by, every, until }) => [
      name,
      after,
      from,
      by,
      every,
      until,
    ]);
    expect(rounds).toEqual([
      ["Weeding", 0, 0, 3660, 14, 2],
      ["Stock shoots", 1, 14, 90, 7, null],
    ]);
  });

  it.each([
    ["Plum | Weeding |        | | | | | 14  |", "5 after care-without-start Weeding"],
    ["Plum | Weeding | Sowing | | | | | 0   |", "5 every days-not-whole Weeding"],
    ["Plum | Weeding | Sowing | | | | | 2.5 |", "5 every days-not-whole Weeding"],
    ["Plum | Weeding | Sowing | | | | | often |", "5 every no-number"],
    ["Plum | Weeding | Sowing | | | | | 14 | Selling", "5 until no-such-step Selling Plum"],
  ])("that can't be used is named and left out, and the rest is used: %s", (row, fault) => {
    const { timetable } = timetableOf(`${PLUM}\n${row}\n${AHEAD}`);
    expect(faultsOf(`${PLUM}\n${row}\n${AHEAD}`)).toEqual([fault]);
    const [method] = timetable.methods;
    expect(method?.rounds).toEqual([]);
    expect(method?.steps).toHaveLength(3);
    expect(method?.ahead).toHaveLength(1);
  });

  it("is no step that another is counted from", () => {
    const row = "Plum | Feeding | Weeding | 3 | 3 | 3 | | |";
    expect(faultsOf(`${PLUM}\n${WEEDING}\n${row}`)).toEqual([
      "6 after counted-from-beside Weeding",
    ]);
  });
});

it("both are written as rows that read back as they were", () => {
  const { timetable } = timetableOf(`${PLUM}\n${AHEAD}\n${WEEDING}\n${SUCKERS}`);
  const fields = Object.keys(TIMETABLE_HEADER) as (keyof typeof TIMETABLE_HEADER)[];
  const rows = timetableRows(timetable, null).map((row) => fields.map((field) => row[field] ?? ""));
  const grid = gridOf([fields.map((field) => TIMETABLE_HEADER[field]), ...rows]);
  expect(readTimetable(grid)).toEqual({ timetable, faults: [] });
});
