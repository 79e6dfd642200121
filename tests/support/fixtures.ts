import { readFileSync } from "node:fs";

const FIXTURES = new URL("../fixtures/", import.meta.url);

/** What goes in and what must come out, from one folder of tests/fixtures. */
export function fixture<Data, Expected>(folder: string): { data: Data; expected: Expected } {
  const read = (file: string) =>
    JSON.parse(readFileSync(new URL(`${folder}/${file}.json`, FIXTURES), "utf8"));
  return { data: read("data"), expected: read("expected") };
}
