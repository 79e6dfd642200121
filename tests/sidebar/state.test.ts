import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { stateOf } from "../../src/sidebar/state";

const FILES = readdirSync("src/sidebar", { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".ts"),
);

describe("what a section knows", () => {
  const drawing = () => {
    const state = stateOf({ answer: "", by: "Variety" });
    const drawn: string[] = [];
    state.on(["answer"], ({ answer, by }) => drawn.push(`${answer} by ${by}`));
    state.on(["answer", "by"], ({ by }) => drawn.push(by));
    return { state, drawn };
  };

  it("is taken in whole before it is drawn, once and in order", () => {
    const { state, drawn } = drawing();
    state.set({ answer: "72 %", by: "Grafter" });
    expect(drawn).toEqual(["72 % by Grafter", "Grafter"]);
  });

  it("is drawn where it rests on what changed, and not where nothing did", () => {
    const { state, drawn } = drawing();
    state.set({ by: "Place" });
    state.set({ by: "Place", answer: "" });
    expect(drawn).toEqual(["Place"]);
  });

  it("starts from a copy", () => {
    const start = { count: 1 };
    stateOf(start).set({ count: 2 });
    expect(start).toEqual({ count: 1 });
  });
});

describe("src/sidebar", () => {
  it("keeps what changes in a state; a control alone may count for itself", () => {
    const loose = FILES.filter(
      (name) =>
        !/^controls[\\/]/.test(name) &&
        /^\s*(export )?(let|var)\s/m.test(readFileSync(`src/sidebar/${name}`, "utf8")),
    );
    expect(FILES.length).toBeGreaterThan(80);
    expect(loose).toEqual([]);
  });
});
