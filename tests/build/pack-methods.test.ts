import { expect, it } from "vitest";
import { packMethods } from "../../src/build/pack-methods";
import { packedExports } from "../support/bundled";
import * as tables from "./packed-tables";

// All that is packed together is compared with all of it unpacked.
it("the methods and tables in the built file are those of their files, in less room", async () => {
  const built = await packedExports("tests/build/packed-tables.ts", packMethods);
  for (const [name, table] of Object.entries(tables)) expect(built).toHaveProperty(name, table);
});
