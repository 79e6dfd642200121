import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stagesOf } from "../../../src/core/projection/batch-stages";
import { stepsOf } from "../../../src/core/projection/batch-steps";
import { lookback } from "../../../src/core/projection/lookback";
import type { ProjectionQuestion } from "../../../src/core/projection/project";
import { readyPlants } from "../../../src/core/projection/ready-plants";
import { AS_OF, type Facts, later, questionOf } from "./nursery";

const VARIETIES = ["Alba", "Nera", "Rossa", ""];
/** A nursery of finished batches and of some on their way, of every age. */
const NURSERY: readonly Facts[] = Array.from({ length: 40 }, (_, at) => {
  const sown = later(AS_OF, -10 - 11 * at);
  const age = 10 + 11 * at;
  const reached = (days: number) => age > days + (at % 7);
  return {
    ...{ Batch: `B-${at}`, Variety: VARIETIES[at % 4] as string, Place: "Bay 1", Sown: sown },
    "Seeds sown": 150 + at,
    ...(reached(95)
      ? { "Grafted on": later(sown, 88 + (at % 9)), "Grafts made": 100 + (at % 13) }
      : {}),
    ...(reached(130)
      ? { "Take count day": later(sown, 122 + (at % 9)), Takes: 60 + (at % 21) }
      : {}),
    ...(reached(215)
      ? { "Ready on": later(sown, 200 + (at % 11)), "Ready plants": 50 + (at % 9), Closed: "yes" }
      : {}),
  };
});

interface Found {
  readonly rows: readonly unknown[];
}

const CAPABILITIES: readonly (readonly [string, (question: ProjectionQuestion) => Found])[] = [
  ["BATCH_STAGES", stagesOf],
  ["BATCH_STEPS", stepsOf],
  ["BATCH_READY", readyPlants],
  ["BATCH_LOOKBACK", (question) => lookback({ ...question, daysBefore: 90 })],
];

const lines = (answer: Found) => answer.rows.map((row) => JSON.stringify(row));

describe.each(CAPABILITIES)("%s with its rows in another order", (name, ask) => {
  const plain = lines(ask(questionOf(NURSERY)));

  it("has something to say", () => {
    expect(plain.length).toBeGreaterThan(4);
  });

  it("says the same twice", () => {
    expect(lines(ask(questionOf(NURSERY)))).toEqual(plain);
  });

  it("says the same of every batch, in the order of the rows; of months just the same", () => {
    const orders = fc.shuffledSubarray([...NURSERY], {
      minLength: NURSERY.length,
      maxLength: NURSERY.length,
    });
    fc.assert(
      fc.property(orders, (turned) => {
        const found = lines(ask(questionOf(turned)));
        if (name === "BATCH_READY") expect(found).toEqual(plain);
        else expect([...found].sort()).toEqual([...plain].sort());
      }),
      { numRuns: 12 },
    );
  });
});
