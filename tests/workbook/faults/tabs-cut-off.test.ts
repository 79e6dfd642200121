import { describe, expect, it } from "vitest";
import { failInTurn } from "./fail-in-turn";
import { MAKE_CREW, MAKE_ORDERS, MAKE_PLAN, REFRESH } from "./tab-actions";

describe("a service call that throws, and all that follow", () => {
  it.each(Object.entries({ REFRESH, MAKE_CREW, MAKE_ORDERS, MAKE_PLAN }))(
    "in %s leaves our tabs whole, the old ones or the new ones, and the lock free",
    (_name, action) => {
      expect(failInTurn(action, "stopAt")).toEqual({});
    },
  );
});
