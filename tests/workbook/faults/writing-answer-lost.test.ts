import { describe, expect, it } from "vitest";
import { failInTurn } from "./fail-in-turn";
import { WRITING_ACTIONS } from "./writing-actions";

describe("a service call that does its work and throws", () => {
  it.each(Object.entries(WRITING_ACTIONS))(
    "in %s leaves the records unchanged or fully written, the log true and the lock free",
    (_name, action) => {
      expect(failInTurn(action, "failAfter")).toEqual({});
    },
  );
});
