import { describe, expect, it } from "vitest";
import { coming, late } from "../../src/sentences/made/batches";
import * as setUp from "../../src/sentences/made/set-up-page";
import { tally } from "../../src/sentences/made/today-page";
import { batchesBehind, monthsOf, varietyChoices } from "../../src/sidebar/ahead/month-ranges";
import { nextIndex } from "../../src/sidebar/controls/tab-list";
import { columnGroups, isOpen, readTwice } from "../../src/sidebar/set-up/column-groups";
import { byPlace, statusTally } from "../../src/sidebar/today/places";
import { ahead, columns, takeCount } from "./fixed-answers";

describe("byPlace", () => {
  const at = (place: string, status: "late" | "due" | "coming" = "due", batch = "") => ({
    ...takeCount,
    ...{ place, status, batch },
  });

  it("goes in the order in which names are counted, no place last", () => {
    const places = byPlace(["Bay 10", "", "Bay 2", "bay 1"].map((place) => at(place)));
    expect(places.map(({ place }) => place)).toEqual(["bay 1", "Bay 2", "Bay 10", ""]);
  });

  it("puts late before due before coming, and else keeps the order", () => {
    const tasks = [
      at("", "coming", "a"),
      at("", "due", "b"),
      at("", "late", "c"),
      at("", "due", "d"),
    ];
    expect(byPlace(tasks)[0]?.tasks.map(({ batch }) => batch)).toEqual(["c", "b", "d", "a"]);
  });

  it("loses no task and makes none up", () => {
    expect(byPlace([])).toEqual([]);
    const tasks = ["x", "y", "x", "toString", "__proto__"].map((place) => at(place));
    expect(byPlace(tasks).flatMap((group) => group.tasks)).toHaveLength(tasks.length);
  });

  it("is counted in words, with no word for what is not there", () => {
    expect(statusTally([at("", "coming"), at("", "late"), at("", "late")])).toBe(
      `${tally({ tasks: 2, status: late() })}, ${tally({ tasks: 1, status: coming() })}`,
    );
    expect(statusTally([])).toBe("");
  });
});

describe("months ahead", () => {
  it("offers all varieties first", () => {
    expect(varietyChoices(ahead)).toEqual([null, "Amberlow", "Brindlecap"]);
  });

  it("come soonest first", () => {
    const turned = { ...ahead, rows: [...ahead.rows].reverse() };
    expect(monthsOf(turned, null).map(({ month }) => month)).toEqual(["now", "2026-11", "2026-12"]);
  });

  it("have the batches of their variety behind them, or all", () => {
    const behind = (variety: string | null) => {
      const row = monthsOf(ahead, variety).find(({ month }) => month === "2026-12");
      return row === undefined ? [] : batchesBehind(ahead, row).map(({ batch }) => batch);
    };
    expect([behind(null), behind("Brindlecap")]).toEqual([["A-02", "B-01"], ["B-01"]]);
  });

  it("find batches without a variety in a row of their own", () => {
    const [first] = ahead.rows;
    const [batch] = ahead.batches;
    if (first === undefined || batch === undefined) throw new Error("a row and a batch are needed");
    const answer = { ...ahead, batches: [{ ...batch, variety: "" }] };
    const row = { ...first, month: batch.month };
    expect(batchesBehind(answer, { ...row, variety: "" })).toHaveLength(1);
    expect(batchesBehind(answer, { ...row, variety: "(blank)" })).toEqual([]);
  });
});

describe("columns", () => {
  it("are asked about or stand in a group, and no column is lost", () => {
    const groups = columnGroups(columns.columns);
    expect(groups.map(({ title }) => title)).toEqual([...[setUp.groupLeft(), setUp.groupSure()]]);
    const all = [...columns.columns.filter(isOpen), ...groups.flatMap((group) => group.columns)];
    expect(new Set(all)).toEqual(new Set(columns.columns));
    expect(all).toHaveLength(columns.columns.length);
  });

  it("that mean the same are told, those left alone are not", () => {
    const readings = ["Takes", null, "Takes", null, "Batch"].map((readAs, index) => ({
      header: `H${index}`,
      readAs,
    }));
    expect(readTwice(readings)).toEqual([{ readAs: "Takes", headers: ["H0", "H2"] }]);
  });
});

describe("nextIndex", () => {
  it.each([
    ["ArrowRight", 0, 1],
    ["ArrowRight", 5, 0],
    ["ArrowLeft", 0, 5],
    ["Home", 3, 0],
    ["End", 3, 5],
    ["a", 3, null],
    ["ArrowDown", 3, null],
  ])("%s from %d of 6 leads to %s", (key, from, to) => expect(nextIndex(key, from, 6)).toBe(to));
});
