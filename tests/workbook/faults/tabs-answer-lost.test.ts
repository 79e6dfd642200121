import { describe, expect, it } from "vitest";
import { failInTurn } from "./fail-in-turn";
import { MAKE_CREW, MAKE_ORDERS, MAKE_PLAN, REFRESH, SET_UP_AGAIN } from "./tab-actions";

describe("a service call that does its work and throws", () => {
  it.each(Object.entries({ REFRESH, SET_UP_AGAIN, MAKE_CREW, MAKE_ORDERS, MAKE_PLAN }))(
    "in %s leaves our tabs whole, the old ones or the new ones, and the lock free",
    (_name, action) => {
      expect(failInTurn(action, "failAfter")).toEqual({});
    },
  );
});
