import vm from "node:vm";
import { beforeAll, describe, expect, it } from "vitest";
import { noWorkbook } from "../../src/sentences/made/writing-faults";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";

let built: BuiltAddIn;
beforeAll(() => {
  built = buildAddIn();
});

describe("a script outside a workbook, which is given no lock", () => {
  it("writes nothing and says from where to", () => {
    const context = vm.createContext({ LockService: { getDocumentLock: () => null } });
    vm.runInContext(built.read("Code.js"), context);
    expect(() => context.refreshDueList()).toThrow(noWorkbook());
  });
});
