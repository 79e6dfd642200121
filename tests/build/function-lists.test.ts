import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionLists } from "../../src/build/function-lists";
import { runs } from "../../src/functions/index";

describe("the lists of functions", () => {
  it.each([...functionLists()])("%s is as its folder says: run npm run sentences", (path, text) => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  it("name a file by its export, of more words too, and pass over what is no function", () => {
    const lists = functionLists(
      new Map([
        ["plant-count.ts", "export const plantCountHelp: HelpOf<typeof plantCount> = {"],
        ["usual.ts", "export const DAYS = 7;"],
      ]),
    );
    const [runsList, helpsList] = [...lists.values()];
    expect(runsList).toContain('import { plantCount } from "./plant-count";');
    expect(runsList).toContain("{\n  PLANT_COUNT: plantCount,\n}");
    expect(helpsList).toContain("  PLANT_COUNT: plantCountHelp,");
    expect(runsList).not.toContain("usual");
  });

  it("lack no file that makes a function", () => {
    const makers = readdirSync("src/functions").filter((file) =>
      / = functionOf\(/.test(readFileSync(`src/functions/${file}`, "utf8")),
    );
    expect(Object.keys(runs)).toHaveLength(makers.length);
  });
});
