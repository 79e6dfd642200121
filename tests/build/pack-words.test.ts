import { expect, it } from "vitest";
import { packWords } from "../../src/build/pack-words";
import { allLanguages } from "../../src/core/words/all-languages";
import { packedExports } from "../support/bundled";

it("the words in the built file are those of the files of words, in less room", async () => {
  const built = await packedExports("src/core/words/all-languages.ts", packWords);
  expect(built).toHaveProperty("allLanguages", allLanguages);
});
