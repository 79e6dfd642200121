import { describe, expect, it } from "vitest";
import type { InventedTakes } from "../../src/checks/takes/invented-takes";
import { signalsOn } from "../../src/checks/takes/signals";
import { verdictsOn } from "../../src/checks/takes/verdicts";

/** A part of npm run check:takes, with goals loosened by twice the error of fewer nurseries. */
const NURSERIES = 60;
const loosened = (share: number) => 2 * Math.sqrt((share * (1 - share)) / NURSERIES);

const usual: InventedTakes = {
  ...{ grafters: 8, batchesEach: 12, firstDiffers: 0, varietiesShared: "even" },
  ...{ season: 0.4, days: 730, fall: null },
};

describe("TAKE_COMPARED in invented nurseries", () => {
  it("seldom sets anyone apart where nobody differs", () => {
    const { anyone } = verdictsOn(usual, { evenFor: "Variety", nurseries: NURSERIES });
    expect(anyone).toBeLessThanOrEqual(0.05 + loosened(0.05));
  });

  it("finds one grafter 15 points lower on 12 batches", () => {
    const { firstBelow } = verdictsOn(
      { ...usual, firstDiffers: -0.15 },
      { evenFor: "Variety", nurseries: NURSERIES },
    );
    expect(firstBelow).toBeGreaterThanOrEqual(0.8 - loosened(0.8));
  });

  it("is not fooled by varieties unevenly shared, as the plain rate is", () => {
    const uneven = { ...usual, varietiesShared: "uneven" } as const;
    const plain = verdictsOn(uneven, { evenFor: "nothing", nurseries: NURSERIES }).firstBelow;
    const evened = verdictsOn(uneven, { evenFor: "Variety", nurseries: NURSERIES }).firstBelow;
    expect(evened).toBeLessThanOrEqual(0.05 + loosened(0.05));
    expect(plain).toBeGreaterThan(0.05 + loosened(0.05));
  });
});

describe("the chart of TAKE_TREND in invented nurseries", () => {
  it("shows most falls of 15 points, and seldom something where nothing is", () => {
    const { seen, falseAYear } = signalsOn({ batchesAYear: 150, season: 0 }, "week", 30);
    expect(seen).toBeGreaterThan(0.5);
    expect(falseAYear).toBeLessThan(2);
  });
});
