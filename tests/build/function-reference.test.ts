import { describe, expect, it } from "vitest";
import { functionReference } from "../../src/build/function-reference";
import { registry } from "../../src/functions/index";
import { buildAddIn } from "../support/built-add-in";

const built = buildAddIn();
const page = await functionReference(built.read("Code.js"));
built.remove();

describe("the function reference", () => {
  // The first rate of TAKE_RATE stood where people look for what a column holds.
  it.each(registry.map(({ name }) => name))("heads the example of %s with words", (name) => {
    const section = page.split(/^## /m).find((one) => one.startsWith(`${name}\n`)) ?? "";
    const heads = /^\|(.*)\|$/m.exec(section)?.[1]?.split("|") ?? [];
    expect(heads.length).toBeGreaterThan(0);
    for (const head of heads) expect(head).toMatch(/[A-Za-z]{2}/);
  });
});
