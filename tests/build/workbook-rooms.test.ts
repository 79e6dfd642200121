import { readdirSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, targetOf } from "../../src/build/imports-of";

/** The rooms of src/workbook, from the ground up: each stands on those before it, not on those after. */
const ROOMS = [
  "host",
  "tabs",
  "settings",
  "reading",
  "writing",
  "tables",
  "tasks",
  "due",
  "orders",
  "takes",
  "work",
  "set-up",
  "answers",
] as const;

const FOLDER = "src/workbook";
const FILES = readdirSync(FOLDER, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts"))
  .map((name) => join(FOLDER, name).split(sep).join("/"));

/** The files of the workbook that each of them imports, of values and of types. */
const IMPORTED = new Map(
  FILES.map((file) => [
    file,
    importsOf(file).flatMap((one) => {
      const target = `${targetOf(one)}.ts`;
      return target.startsWith(`${FOLDER}/`) ? [target] : [];
    }),
  ]),
);

function roomOf(file: string): string {
  return file.split("/").slice(2, -1).join("/");
}

describe("the rooms of src/workbook", () => {
  it("are those that are listed; the menu alone stands outside them", () => {
    expect([...IMPORTED.values()].flat().length).toBeGreaterThan(100);
    expect(new Set(FILES.map(roomOf))).toEqual(new Set(["", ...ROOMS]));
    expect(FILES.filter((file) => roomOf(file) === "")).toEqual([`${FOLDER}/menu.ts`]);
  });

  it.each(ROOMS.map((room, index) => [room, ROOMS.slice(0, index + 1)] as const))(
    "%s stands on the rooms below it alone",
    (room, allowed) => {
      const below: ReadonlySet<string> = new Set(allowed);
      const wrong = FILES.filter((file) => roomOf(file) === room).flatMap((file) =>
        (IMPORTED.get(file) ?? [])
          .filter((target) => !below.has(roomOf(target)))
          .map((target) => `${file} imports ${target}`),
      );
      expect(wrong).toEqual([]);
    },
  );
});
