import { existsSync, readdirSync, readFileSync } from "node:fs";
import { importsOf, targetOf } from "./imports-of";

/**
 * Which tests can come out otherwise in another time zone, by a rule:
 *
 * 1. all tests of the rooms where days meet a clock or a zone, since these start other programs
 *    (browsers, the built files), of which imports tell nothing;
 * 2. any other test that reaches, through what it imports, code that asks this process for its
 *    zone or reads a Date by the process's own calendar.
 *
 * The tests of the workbook reach such code only where their nursery is opened, with the process's
 * zone for the script's. What a zone can change there are days read and written: of them, three files
 * are enough. Those of the page reach it only in the answers of the sample nursery, all of which
 * sections.test.ts sees. And whatever asks for the stubs or the table of answers wants the names of the
 * calls: they run in the built script.
 */
const ROOMS = ["tests/door/", "tests/local/", "tests/samples/"];
const ENOUGH = [
  ...["set-up", "recording", "due-tab"].map((name) => `tests/workbook/${name}.test.ts`),
  "tests/sidebar/sections.test.ts",
];
const NO_FURTHER: ReadonlySet<string> = new Set([
  "tests/workbook/nursery.ts",
  "tests/sidebar/sample-answers.ts",
  "src/build/stubs.ts",
  "src/workbook/answers/sidebar-answers.table.ts",
]);

/**
 * What makes code depend on the zone of its process. Date-only ISO text is not among it: it is read
 * in UTC (ECMA-262, 21.4.1.32, Date Time String Format).
 */
const ASKS_FOR_THE_ZONE: readonly RegExp[] = [
  /\.[gs]et(?:FullYear|Year|Month|Date|Day|Hours|Minutes|Seconds|TimezoneOffset)\(/,
  // A day by its parts; UTC's are given to Date.UTC.
  /new \w*Date\((?!Date\.UTC)[^()"'`]*,/,
  /\.to(?:Locale)?(?:Date|Time)String\(/,
  /resolvedOptions\(\)\.timeZone/,
  /DateTimeFormat\((?![\s\S]{0,160}timeZone)/,
  /\d\d\d\d-\d\d-\d\dT\d\d:\d\d[:.\d]*["'`]/,
  /env\.TZ\b|\bTZ:/,
  /from "date-fns"/,
];

/** Whether a program's text asks for the zone of its process. */
export function asksForZone(text: string): boolean {
  return ASKS_FOR_THE_ZONE.some((mark) => mark.test(text));
}

/** The tests to repeat in other zones, as paths from the project's folder. */
export function zoneTests(): string[] {
  const reach = new Map<string, boolean>();
  const dependsOnZone = (file: string): boolean => {
    const known = reach.get(file);
    if (known !== undefined) return known;
    // Set first, so that a circle of imports ends.
    reach.set(file, false);
    const depends =
      !NO_FURTHER.has(file) &&
      (asksForZone(readFileSync(file, "utf8")) || imported(file).some(dependsOnZone));
    reach.set(file, depends);
    return depends;
  };
  return allTests().filter(
    (file) =>
      ROOMS.some((room) => file.startsWith(room)) || ENOUGH.includes(file) || dependsOnZone(file),
  );
}

function imported(file: string): string[] {
  return importsOf(file).flatMap((one) => {
    const target = one.typeOnly ? null : targetOf(one);
    if (target === null) return [];
    const found = [target, `${target}.ts`, `${target}/index.ts`].find(
      (path) => /\.(ts|mjs|js)$/.test(path) && existsSync(path),
    );
    return found ? [found] : [];
  });
}

/** Every test of the project. */
export function allTests(): string[] {
  return readdirSync("tests", { recursive: true, encoding: "utf8" })
    .map((name) => `tests/${name.replaceAll("\\", "/")}`)
    .filter((name) => name.endsWith(".test.ts"))
    .sort();
}
