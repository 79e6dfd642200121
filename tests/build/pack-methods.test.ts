import { expect, it } from "vitest";
import { packMethods } from "../../src/build/pack-methods";
import { builtInMethods } from "../../src/core/timetable/built-in-methods";
import { packedExports } from "../support/bundled";

it("the methods in the built file are those of the methods' files, in less room", async () => {
  const built = await packedExports("src/core/timetable/built-in-methods.ts", packMethods);
  expect(built).toHaveProperty("builtInMethods", builtInMethods);
});
