import type { Plugin } from "esbuild";
import { ICCO_HARVEST_MONTHS } from "../core/orders/icco-harvest-months.table";
import { builtInMethods } from "../core/timetable/built-in-methods";
import { CALENDAR_NAMES } from "../core/words/calendar-names.table";
import { phraseCoded, spelling } from "./phrase-codes";

/** They are spelt out at every load: the rarest phrases spare nothing and take the same time. */
const LEAST_SPARED = 2;
/** Modules that hold one table of data each. */
const TABLES = { builtInMethods, CALENDAR_NAMES, ICCO_HARVEST_MONTHS };
const FILES =
  /[\\/](timetable[\\/]built-in-methods|words[\\/]calendar-names\.table|orders[\\/]icco-harvest-months\.table)\.ts$/;
const NAMES = {
  "built-in-methods": "builtInMethods",
  "calendar-names": "CALENDAR_NAMES",
  "icco-harvest-months": "ICCO_HARVEST_MONTHS",
} as const;

/**
 * Packs the built-in methods and other tables: they are data, in which the same cautions and sources
 * stand again and again. The spreadsheet loads every byte of them for each formula.
 */
export const packMethods: Plugin = {
  name: "pack-methods",
  setup(build) {
    const short = phraseCoded([JSON.stringify(TABLES)], LEAST_SPARED);
    build.onLoad({ filter: FILES }, ({ path: file }) => {
      const [, name] = Object.entries(NAMES).find(([part]) => file.includes(part)) ?? [];
      return {
        contents: `import { packed } from "packed"; export const ${name} = packed.${name};`,
      };
    });
    build.onResolve({ filter: /^packed$/ }, ({ path: name }) => ({
      path: name,
      namespace: "packed",
    }));
    build.onLoad({ filter: /^packed$/, namespace: "packed" }, () => ({
      contents: `
        ${spelling(short)}
        export const packed = JSON.parse(spellOut(${JSON.stringify(short.texts[0])}, phrases));`,
      resolveDir: process.cwd(),
    }));
  },
};
