import { describe, expect, it } from "vitest";
import { canWait, dayLines } from "../../../src/core/due";
import { day } from "../../support/days";

const task = (name: string, place: string, more: { isLook?: boolean; canWait?: boolean } = {}) => ({
  ...{ name, place, isLook: false, canWait: false },
  ...more,
});
const WAITS = { canWait: true };
const LOOK = { isLook: true };
const lines = (...tasks: ReturnType<typeof task>[]) =>
  dayLines(tasks).map((line) => [line.kind, ...line.tasks.map(({ name }) => name)].join(" "));

// A window of 60 days before its usual one made every batch of mango a line, morning after morning.
describe("the lines of a day", () => {
  it("are one a task that the day asks for, and one a place for what can wait and for looks", () => {
    expect(
      lines(
        task("M1", "Field", WAITS),
        task("C1", "Shed"),
        task("look C1", "Shed", LOOK),
        task("M2", "Field", WAITS),
        task("C2", "Shed"),
        task("C3", "Shed", WAITS),
        task("look C2", "Shed", { ...LOOK, ...WAITS }),
      ),
    ).toEqual(["task C1", "task C2", "waits M1 M2", "waits C3", "looks look C1 look C2"]);
  });

  it("are none where nothing is due", () => {
    expect(lines()).toEqual([]);
  });

  it("wait where the usual day is still to come, and not on it", () => {
    const today = day("2026-11-25");
    expect(canWait({ doOn: day("2026-11-26") }, today)).toBe(true);
    expect(canWait({ doOn: today }, today)).toBe(false);
  });
});
