import type { Plugin } from "esbuild";

/**
 * What the language has itself by now, under the library's names. The library carries its own copy
 * of each, in JavaScript, for hosts of the last century; the spreadsheet loads every byte of them
 * for each formula.
 */
const OF_THE_LANGUAGE: Readonly<Record<string, string>> = {
  "math-base-special-abs": "Math.abs",
  "math-base-special-asin": "Math.asin",
  "math-base-special-ceil": "Math.ceil",
  "math-base-special-cos": "Math.cos",
  "math-base-special-exp": "Math.exp",
  "math-base-special-expm1": "Math.expm1",
  "math-base-special-floor": "Math.floor",
  "math-base-special-ln": "Math.log",
  "math-base-special-log1p": "Math.log1p",
  "math-base-special-max": "Math.max",
  "math-base-special-min": "Math.min",
  "math-base-special-pow": "Math.pow",
  "math-base-special-sin": "Math.sin",
  "math-base-special-sqrt": "Math.sqrt",
  "math-base-special-trunc": "Math.trunc",
  "array-float64": "Float64Array",
  "array-uint32": "Uint32Array",
  "array-uint16": "Uint16Array",
  "array-uint8": "Uint8Array",
  "math-base-assert-is-nan": "Number.isNaN",
  "number-ctor": "Number",
  "utils-define-property": "Object.defineProperty",
  "assert-has-generator-support": "() => true",
  // Messages of errors: ours never reach a caller's mistake in the library.
  "string-format": "(message) => message",
};

/** The library's table of 0! to 170!, the largest that a number holds: multiplied out, not carried along. */
export const FACTORIALS =
  "let f = 1n; module.exports = Array.from({ length: 171 }, (_, n) => Number((f *= BigInt(n || 1))));";

/** Puts the language's own functions where the library would bring its copies. */
export const hostMathematics: Plugin = {
  name: "host-mathematics",
  setup(build) {
    build.onResolve({ filter: /^@stdlib\/[\w-]+$/ }, ({ path }) => {
      const name = path.slice("@stdlib/".length);
      return name in OF_THE_LANGUAGE ? { path: name, namespace: "language" } : undefined;
    });
    build.onLoad({ filter: /.*/, namespace: "language" }, ({ path }) => ({
      contents: `module.exports = ${OF_THE_LANGUAGE[path]};`,
    }));
    build.onLoad({ filter: /special-factorial[\\/]lib[\\/]factorials\.json$/ }, () => ({
      contents: FACTORIALS,
      loader: "js",
    }));
  },
};
