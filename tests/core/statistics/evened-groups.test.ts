import { describe, expect, it } from "vitest";
import { raisedForMany } from "../../../src/core/statistics/benjamini-hochberg";
import { type ComparedBatch, evenedGroups } from "../../../src/core/statistics/evened-groups";
import { fixture } from "../../support/fixtures";

interface Cells {
  readonly cells: readonly {
    readonly stratum: string;
    readonly group: string;
    readonly successes: number;
    readonly trials: number;
  }[];
}
interface Expected {
  readonly overallRate: number;
  readonly groups: readonly {
    readonly group: string;
    readonly trials: number;
    readonly observed: number;
    readonly expected: number;
    readonly variance: number;
    readonly statistic: number;
    readonly evenedRate: number;
  }[];
}

const indexesIn = (names: readonly string[]) => {
  const all = [...new Set(names)];
  return names.map((name) => all.indexOf(name));
};

function batchesOf({ cells }: Cells): readonly ComparedBatch[] {
  const groups = indexesIn(cells.map(({ group }) => group));
  const strata = indexesIn(cells.map(({ stratum }) => stratum));
  return cells.map(({ successes, trials }, index) => ({
    group: groups[index] as number,
    stratum: strata[index] as number,
    grafted: trials,
    taken: successes,
  }));
}

describe("published values: R's mantelhaen.test without continuity correction", () => {
  it.each(["ucb-admissions", "rabbits-penicillin", "titanic"])("%s", (folder) => {
    const { data, expected } = fixture<Cells, Expected>(folder);
    const found = evenedGroups(batchesOf(data), expected.groups.length);
    expect(found.map(({ grafted }) => grafted)).toEqual(expected.groups.map((one) => one.trials));
    found.forEach((group, index) => {
      const theirs = expected.groups[index] as Expected["groups"][number];
      expect(group.taken).toBe(theirs.observed);
      expect(group.expected).toBeCloseTo(theirs.expected, 9);
      expect(group.variance).toBeCloseTo(theirs.variance, 9);
      const statistic = (group.taken - group.expected) ** 2 / group.variance;
      expect(statistic).toBeCloseTo(theirs.statistic, 9);
      const evened = (group.taken / group.expected) * expected.overallRate;
      expect(evened).toBeCloseTo(theirs.evenedRate, 12);
    });
  });

  it("prints O 1198 and 557, E 1213.357 and 541.643 for the admissions (Bickel et al. 1975)", () => {
    const { data } = fixture<Cells, Expected>("ucb-admissions");
    const groups = evenedGroups(batchesOf(data), 2);
    expect(groups.map((one) => [one.taken, one.expected.toFixed(3)])).toEqual([
      [1198, "1213.357"],
      [557, "541.643"],
    ]);
  });

  it("raises chances as R's p.adjust(method = BH) does", () => {
    const { data, expected } = fixture<
      { families: { p: number[] }[] },
      { families: { adjusted: number[] }[] }
    >("benjamini-hochberg");
    data.families.forEach(({ p }, family) => {
      const raised = raisedForMany(p);
      const theirs = expected.families[family]?.adjusted as number[];
      expect(raised).toHaveLength(theirs.length);
      raised.forEach((value, index) => {
        expect(value).toBeCloseTo(theirs[index] as number, 12);
      });
    });
    expect(raisedForMany([])).toEqual([]);
  });
});

describe("evenedGroups", () => {
  const batch = (group: number, stratum: number, taken: number, grafted = 100): ComparedBatch => ({
    group,
    stratum,
    grafted,
    taken,
  });

  it("names the strata in which a group stands alone, and counts them in both takes", () => {
    const [first, second] = evenedGroups([batch(0, 0, 80), batch(0, 1, 50), batch(1, 0, 60)], 2);
    expect(first).toMatchObject({ alone: [1], batches: 2, comparable: 1, others: 1 });
    expect(first).toMatchObject({ taken: 130, expected: 70 + 50 });
    expect(second).toMatchObject({ alone: [], expected: 70 });
  });

  it("widens by each batch's own spread: one factor for all widens by that factor", () => {
    const batches = [batch(0, 0, 80), batch(0, 0, 70, 90), batch(1, 0, 60), batch(1, 0, 9, 30)];
    const plain = evenedGroups(batches, 2);
    const wide = evenedGroups(batches, 2, () => 4);
    expect((wide[0]?.variance as number) / (plain[0]?.variance as number)).toBeCloseTo(4, 12);
    const large = evenedGroups(batches, 2, (grafted) => (grafted === 30 ? 1 : 4));
    expect(large[1]?.variance).toBeLessThan(wide[1]?.variance as number);
  });

  it("sums what is taken and expected over groups to the same", () => {
    const batches = [batch(0, 0, 80), batch(1, 0, 60), batch(2, 1, 30), batch(0, 1, 50)];
    const sum = (what: "taken" | "expected") =>
      evenedGroups(batches, 3).reduce((all, group) => all + group[what], 0);
    expect(sum("expected")).toBeCloseTo(sum("taken"), 10);
  });
});
