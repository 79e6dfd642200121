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

/** What stands in a circle of imports, in the order in which it was met. */
function circles(imported: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]) => {
    const before = path.indexOf(file);
    if (before !== -1) found.push([...path.slice(before), file]);
    if (before !== -1 || done.has(file)) return;
    for (const next of imported.get(file) ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of imported.keys()) visit(file, []);
  return found;
}

describe("the rooms of src/workbook", () => {
  it("are those that are listed; the menu alone stands outside them", () => {
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

  it("hold no circle of imports, of types either", () => {
    expect([...IMPORTED.values()].flat().length).toBeGreaterThan(100);
    expect(circles(IMPORTED)).toEqual([]);
  });

  it("would have a circle named", () => {
    const imported = new Map([
      ["a", ["b"]],
      ["b", ["c"]],
      ["c", ["b"]],
    ]);
    expect(circles(imported)).toEqual([["b", "c", "b"]]);
  });
});
