import { describe, expect, it } from "vitest";
import { entry, inverseOf, type Matrix, rowOf, trace } from "../../../src/core/mathematics/matrix";

const square = (size: number, ...values: number[]): Matrix => ({
  size,
  values: Float64Array.from(values),
});

describe("the inverse of a matrix", () => {
  it("times the matrix is one on the diagonal and nothing beside it", () => {
    const matrix = square(3, 4, 1, 0.5, 1, 3, -0.7, 0.5, -0.7, 2);
    const inverse = inverseOf(matrix) as Matrix;
    for (let row = 0; row < 3; row += 1) {
      for (let column = 0; column < 3; column += 1) {
        let sum = 0;
        for (let k = 0; k < 3; k += 1) sum += entry(matrix, row, k) * entry(inverse, k, column);
        expect(sum).toBeCloseTo(row === column ? 1 : 0, 12);
      }
    }
  });

  it("is none where rows make one another up, or the matrix is not positive definite", () => {
    expect(inverseOf(square(2, 1, 1, 1, 1))).toBeNull();
    expect(inverseOf(square(2, 1, 2, 2, 1))).toBeNull();
  });

  it("leaves the matrix as it was, and needs no more than its lower half", () => {
    const half = square(2, 4, 99, 2, 3);
    // By the formula for two rows: 1 / (4 * 3 - 2 * 2) times the diagonal turned about.
    expect([...(inverseOf(half) as Matrix).values].map((one) => one * 8)).toEqual(
      [3, -2, -2, 4].map((one) => expect.closeTo(one, 12)),
    );
    expect([...half.values]).toEqual([4, 99, 2, 3]);
  });
});

describe("a matrix", () => {
  it("lies by rows", () => {
    const matrix = square(2, 1, 2, 3, 4);
    expect([...rowOf(matrix, 1)]).toEqual([3, 4]);
    expect(entry(matrix, 0, 1)).toBe(2);
    expect(trace(matrix)).toBe(5);
  });
});
