import { describe, expect, it } from "vitest";
import { fuzz } from "../../src/checks/records/fuzz";

describe("random grids", () => {
  const result = fuzz({ from: 1, grids: 1000 });

  it("are read, or refused in a sentence, with every row accounted for", () => {
    expect(result.faults).toEqual([]);
  });

  it("are mostly read, so that there is something to break", () => {
    expect(result.read).toBeGreaterThan(500);
    expect(result.batches).toBeGreaterThan(1000);
  });
});
