import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { languageLists } from "../../src/build/language-lists";

describe("the lists of languages", () => {
  it.each([...languageLists()])(
    "%s is as its folder says: run the command it names",
    (path, text) => {
      expect(readFileSync(path, "utf8")).toBe(text);
    },
  );

  it("name every file of one word, English first, and nothing that languages have in common", () => {
    const lists = languageLists((folder) => [
      ...[
        "dutch.ts",
        "english.ts",
        "all-languages.ts",
        "index.ts",
        "README.md",
        "tsconfig.json",
        "made",
      ],
      ...(folder === "src/sentences" ? ["runtime.ts"] : []),
    ]);
    for (const text of lists.values()) {
      expect(text).toContain('import { dutch } from "./dutch";');
      expect(text).toContain("{\n  english,\n  dutch,\n}");
      expect(text).not.toMatch(/runtime|all-languages|index|readme|made"/i);
    }
  });
});
