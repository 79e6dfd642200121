import { existsSync, readdirSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { importsOf, targetOf } from "../../src/build/imports-of";

/** What each imports, by name. */
type Arrows = ReadonlyMap<string, readonly string[]>;

const FILES = readdirSync("src", { recursive: true, encoding: "utf8" })
  .filter((name) => /\.(ts|mts|mjs)$/.test(name))
  .map((name) => join("src", name).split(sep).join("/"));

/** Imports of values and of types alike: who reads a file of a circle has to read them all. */
const BETWEEN_FILES: Arrows = new Map(
  FILES.map((file) => [
    file,
    importsOf(file).flatMap((one) => {
      const target = targetOf(one);
      if (target === null) return [];
      const paths = [target, `${target}.ts`, `${target}/index.ts`];
      return paths.filter((path) => /\.\w+$/.test(path) && existsSync(path)).slice(0, 1);
    }),
  ]),
);

/** The first circle that is met, as a text; null for none. */
function circleIn(arrows: Arrows): string | null {
  const done = new Set<string>();
  const walk = (from: string, way: readonly string[]): string | null => {
    if (way.includes(from)) return [...way.slice(way.indexOf(from)), from].join(" -> ");
    if (done.has(from)) return null;
    for (const to of arrows.get(from) ?? []) {
      const circle = walk(to, [...way, from]);
      if (circle !== null) return circle;
    }
    done.add(from);
    return null;
  };
  for (const from of arrows.keys()) {
    const circle = walk(from, []);
    if (circle !== null) return circle;
  }
  return null;
}

/** The folder of core that a file stands in; a file that stands in none goes by itself. */
function roomOf(file: string): string {
  return file.split("/").slice(0, 3).join("/");
}

/** The same between the folders of core. */
function betweenRooms(arrows: Arrows): Arrows {
  const rooms = new Map<string, string[]>();
  for (const [file, targets] of arrows) {
    if (!file.startsWith("src/core/")) continue;
    const room = roomOf(file);
    const others = targets.map(roomOf).filter((other) => other !== room);
    rooms.set(room, [...(rooms.get(room) ?? []), ...others]);
  }
  return rooms;
}

describe("imports run in no circle", () => {
  it("between files", () => {
    expect(FILES.length).toBeGreaterThan(500);
    expect([...BETWEEN_FILES.values()].flat().length).toBeGreaterThan(FILES.length);
    expect(circleIn(BETWEEN_FILES)).toBeNull();
  });

  it("between the folders of core", () => {
    const rooms = betweenRooms(BETWEEN_FILES);
    expect([...rooms.keys()]).toContain("src/core/records");
    expect(rooms.get("src/core/takes")).toContain("src/core/records");
    expect(circleIn(rooms)).toBeNull();
  });

  it("or the circle would be told", () => {
    const arrows = new Map([
      ["src/core/due/a.ts", ["src/core/dates/b.ts", "src/core/due/c.ts"]],
      ["src/core/due/c.ts", []],
      ["src/core/dates/b.ts", []],
      ["src/core/dates/d.ts", ["src/core/due/c.ts"]],
    ]);
    expect(circleIn(arrows)).toBeNull();
    expect(circleIn(betweenRooms(arrows))).toBe("src/core/due -> src/core/dates -> src/core/due");
    arrows.set("src/core/due/c.ts", ["src/core/dates/d.ts"]);
    expect(circleIn(arrows)).toBe("src/core/due/c.ts -> src/core/dates/d.ts -> src/core/due/c.ts");
  });
});
