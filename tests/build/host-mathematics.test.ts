import { readFileSync } from "node:fs";
import vm from "node:vm";
import { build } from "esbuild";
import { beforeAll, describe, expect, it } from "vitest";
import { FACTORIALS, hostMathematics } from "../../src/build/host-mathematics";

interface Library {
  readonly betainc: (x: number, a: number, b: number) => number;
  readonly gammaln: (x: number) => number;
  readonly normalQuantile: (p: number, mean: number, spread: number) => number;
}

async function bundled(
  plugins: Parameters<typeof build>[0]["plugins"],
): Promise<[Library, number]> {
  const { outputFiles } = await build({
    stdin: {
      contents: `
        export { default as betainc } from "@stdlib/math-base-special-betainc";
        export { default as gammaln } from "@stdlib/math-base-special-gammaln";
        export { default as normalQuantile } from "@stdlib/stats-base-dists-normal-quantile";`,
      resolveDir: process.cwd(),
    },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "library",
    minify: true,
    plugins: plugins ?? [],
  });
  const text = outputFiles[0]?.text ?? "";
  return [vm.runInNewContext(`${text};library`) as Library, text.length];
}

/**
 * The library with the language's own functions against the library with its own copies, which is
 * the one that the fixtures made in R are held against. Both sides may differ by the last bits of a
 * power or a logarithm, which a long product carries along: some hundred of them.
 */
describe("the library on the language's own functions", () => {
  let ours: Library;
  let theirs: Library;
  let sizes: readonly [number, number];
  beforeAll(async () => {
    const [a, smaller] = await bundled([hostMathematics]);
    const [b, whole] = await bundled([]);
    [ours, theirs, sizes] = [a, b, [smaller, whole]];
  });

  const counts = [0.05, 0.5, 1, 2.5, 7, 30, 250, 4_000, 60_000];
  const relative = (one: number, other: number) =>
    one === other ? 0 : Math.abs(one - other) / Math.abs(other);

  it("takes a quarter away at least", () => {
    expect(sizes[0]).toBeLessThan(0.75 * sizes[1]);
  });

  it.each(counts)("gives the same beta probability with a first count of %d", (a) => {
    for (const b of counts) {
      for (const at of [1e-9, 0.01, 0.2, a / (a + b), 0.5, 0.8, 0.999]) {
        const known = theirs.betainc(at, a, b);
        // Below this the answer is nothing to any batch, and digits are lost to underflow.
        if (known < 1e-200) continue;
        expect(relative(ours.betainc(at, a, b), known), `${at} of ${a} and ${b}`).toBeLessThan(
          1e-11,
        );
      }
    }
  });

  it("multiplies out the very factorials of the library's table", () => {
    const table = "node_modules/@stdlib/math-base-special-factorial/lib/factorials.json";
    const made = vm.runInNewContext(`const module = {}; ${FACTORIALS} module.exports`) as number[];
    expect([...made]).toEqual(JSON.parse(readFileSync(table, "utf8")));
  });

  it("gives the same logarithm of a factorial and the same normal quantile", () => {
    for (let at = 0.003; at < 1e6; at *= 1.7) {
      expect(Math.abs(ours.gammaln(at) - theirs.gammaln(at))).toBeLessThan(
        1e-13 * Math.max(1, Math.abs(theirs.gammaln(at))),
      );
    }
    for (let at = 0.0005; at < 1; at += 0.0005) {
      expect(
        Math.abs(ours.normalQuantile(at, 0, 1) - theirs.normalQuantile(at, 0, 1)),
      ).toBeLessThan(1e-13);
    }
  });
});
