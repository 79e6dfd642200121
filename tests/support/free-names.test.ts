import { parse } from "acorn";
import { describe, expect, it } from "vitest";
import { freeNames } from "./free-names";

const free = (code: string) =>
  freeNames(parse(code, { ecmaVersion: 2019 })).map(({ name, guarded }) =>
    guarded ? `${name}?` : name,
  );

describe("freeNames", () => {
  it.each([
    ["var a = 1; a", []],
    ["a; var a", []],
    ["f(); function f() { return g() }", ["g"]],
    ["(function () { if (x) { var y = 1 } return y })()", ["x"]],
    ["{ let z = 1 } z", ["z"]],
    ["for (let i = 0; i < n; i++) i; i", ["n", "i"]],
    ["for (const k of list) k", ["list"]],
    ["(a, { b, c: [d = e], ...f }) => a + b + c + d + f", ["e", "c"]],
    ["try { x } catch (y) { y } y", ["x", "y"]],
    [
      "o.window; o['x']; o[window]; ({ window: 1, [fetch]: 2 })",
      ["o", "o", "o", "window", "fetch"],
    ],
    ["({ fetch }); ", ["fetch"]],
    ["lbl: for (;;) { break lbl }", []],
    ["class A extends B { m() { return A } } new A", ["B"]],
    ["function f() { return arguments } () => arguments", ["arguments"]],
    ["(function g() { g() })(); g", ["g"]],
    ["typeof window", []],
    ["typeof window == 'object' ? window : self", ["window?", "self"]],
    ["if (typeof self !== 'undefined') { use(self) } self", ["use", "self?", "self"]],
    ["typeof fetch == 'function' && fetch()", ["fetch?"]],
    ["window && window.x", ["window", "window"]],
    ["switch (q) { case 1: let r = 1; r }", ["q"]],
    ["setTimeout(() => { const setTimeout = 1 })", ["setTimeout"]],
  ])("of %s are %j", (code, names) => {
    expect(free(code)).toEqual(names);
  });
});
