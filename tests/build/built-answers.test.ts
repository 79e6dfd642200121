import vm from "node:vm";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import * as menuText from "../../src/sentences/made/menu";
import { capital } from "../../src/wording/capital";
import { unreadWords } from "../../src/wording/unread";
import { ask } from "../support/ask";
import { type BuiltAddIn, buildAddIn } from "../support/built-add-in";
import { day } from "../support/days";
import { dateCell, hostIn, wallTime } from "../support/host";
import { refusal } from "../support/refusal";

let built: BuiltAddIn;
let script: vm.Script;
beforeAll(() => {
  built = buildAddIn();
  script = new vm.Script(built.read("Code.js"));
});

const zoneBefore = process.env.TZ;
afterEach(() => {
  if (zoneBefore === undefined) delete process.env.TZ;
  else process.env.TZ = zoneBefore;
});

interface Sheet {
  readonly zone: string;
  readonly locale?: string | null;
}

/** The built file in a context of its own, with the few services that a spreadsheet gives it. */
function load({ zone, locale = "en_GB" }: Sheet) {
  const asked: string[] = [];
  const sheet = {
    getSpreadsheetTimeZone: () => zone,
    getSpreadsheetLocale: () => {
      asked.push("locale");
      return locale;
    },
  };
  const context = vm.createContext({
    SpreadsheetApp: { getActiveSpreadsheet: () => sheet },
    Utilities: {
      formatDate: (date: Date, inZone: string, pattern: string) => {
        asked.push(`${inZone} ${pattern}`);
        return wallTime("Etc/UTC", date.getTime());
      },
    },
  });
  script.runInContext(context);
  const toRealm = vm.runInContext(
    "(function give(value) { return Array.isArray(value) ? Array.from(value, give) : value && value.getTime ? new Date(value.getTime()) : value; })",
    context,
  );
  return {
    asked,
    call: (name: string, ...args: unknown[]) => context[name](...args.map(toRealm)) as unknown,
    context,
  };
}

/** A result as plain data: dates of either realm by their instants. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return Array.from(value, plain);
  const instant = (value as Date | null)?.getTime?.();
  return instant === undefined ? value : `instant ${instant}`;
}

const records = (zone: string) => [
  ["Batch", "Variety", "Grafted on", "Grafts made", "Takes"],
  ["B1", "Alba", dateCell(zone, "2026-03-08"), 100, 80],
  ["B2", "Nera", dateCell(zone, "2026-03-29"), 60, ""],
  ["B3", "Nera", "3/4/2026", 60, ""],
];

describe("the built file", () => {
  it.each([
    ["Etc/UTC", "Etc/UTC"],
    ["Pacific/Auckland", "America/New_York"],
    ["America/New_York", "Pacific/Auckland"],
    ["Asia/Kolkata", "Pacific/Apia"],
    ["Pacific/Apia", "Etc/UTC"],
  ])("answers as the sources do for a sheet in %s, the script in %s", (zone, scriptZone) => {
    process.env.TZ = scriptZone;
    const { call } = load({ zone });
    const questions: [string, unknown[]][] = [
      ["TIMETABLE", []],
      ["BATCH_STAGES", [records(zone), "", dateCell(zone, "2026-04-05")]],
      ["BATCH_STEPS", [records(zone), undefined, dateCell(zone, "2026-04-05")]],
      ["BATCH_DUE", [records(zone), "", dateCell(zone, "2026-04-05"), 30]],
      ["BATCH_CHECK", [records(zone)]],
      [
        "TAKE_RATE",
        [
          [[80], [""]],
          [[100], [60]],
        ],
      ],
      ["TAKE_RANGE", [80, 100]],
      ["TAKE_SUMMARY", [records(zone), "Variety"]],
    ];
    for (const [name, args] of questions) {
      expect([name, plain(call(name, ...args))]).toEqual([
        ...[name, plain(ask(name, args, hostIn(zone)))],
      ]);
    }
  });

  it("hands out dates and arrays of its own context", () => {
    const { call, context } = load({ zone: "Asia/Kolkata" });
    context.rows = call("BATCH_STEPS", records("Asia/Kolkata"), "", "2026-04-05");
    expect(
      vm.runInContext(
        "rows instanceof Array && rows.every((row) => row instanceof Array) && rows[3][2] instanceof Date",
        context,
      ),
    ).toBe(true);
  });

  it.each([
    ["en_US", "2026-03-04"],
    ["en_GB", "2026-04-03"],
  ])("reads 3/4/2026 by the sheet's locale: %s", (locale, expected) => {
    const { call } = load({ zone: "Etc/UTC", locale });
    const table = [
      ["Batch", "Grafted on"],
      ["B3", "3/4/2026"],
    ];
    const rows = call("BATCH_STEPS", table, "", "2026-05-05") as unknown[][];
    expect(plain(rows[3]?.[2])).toBe(`instant ${Date.parse(expected)}`);
  });

  it("leaves 3/4/2026 unread where the sheet tells no locale", () => {
    const { call } = load({ zone: "Etc/UTC", locale: null });
    const table = [
      ["Batch", "Grafted on"],
      ["B3", "3/4/2026"],
    ];
    const rows = call("BATCH_CHECK", table) as unknown[][];
    expect(rows[1]?.[3]).toBe(
      capital(unreadWords({ code: "either-day", days: [day("2026-04-03"), day("2026-03-04")] })),
    );
  });

  it("asks the spreadsheet's own clock where the language does not know the zone", () => {
    const { call, asked } = load({ zone: "Mars/Olympus" });
    const rows = call("BATCH_STEPS", records("Etc/UTC"), "", "2026-04-05") as unknown[][];
    expect(plain(rows[3]?.[2])).toBe(`instant ${Date.parse("2026-03-08")}`);
    expect(asked).toContain("Mars/Olympus yyyy-MM-dd HH:mm:ss");
  });

  it("throws one sentence that starts with the function's name", () => {
    const { call } = load({ zone: "Etc/UTC" });
    expect(() => call("BATCH_STAGES", "#REF!", "", "2026-04-05")).toThrow(
      refusal("BATCH_STAGES", {
        code: "not-ready-yet",
        argument: "records",
        row: 1,
        column: "1",
        shown: "#REF!",
      }).message,
    );
  });

  it("makes its menu when the sheet opens, does nothing else then, and opens its page", () => {
    const done: string[] = [];
    const menu = {
      addItem: (label: string, name: string) => {
        done.push(`item ${label}: ${name}`);
        return menu;
      },
      addToUi: () => done.push("added"),
    };
    const page = { setTitle: (title: string) => `page ${title}` };
    const context = vm.createContext({
      SpreadsheetApp: {
        getUi: () => ({
          createMenu: (name: string) => {
            done.push(`menu ${name}`);
            return menu;
          },
          showSidebar: (shown: string) => done.push(shown),
        }),
      },
      HtmlService: {
        createHtmlOutputFromFile: (name: string) => {
          done.push(`file ${name}`);
          return page;
        },
      },
    });
    script.runInContext(context);
    context.onOpen();
    expect(done).toEqual([
      ...[`menu ${menuText.menu()}`, `item ${menuText.open()}: showSidebar`],
      ...[
        `item ${menuText.refresh()}: refreshDueList`,
        `item ${menuText.writeTicked()}: writeTicked`,
      ],
      "added",
    ]);
    // Every item must name a function that is there.
    const named = done
      .filter((one) => one.startsWith("item"))
      .map((one) => one.split(": ")[1] as string);
    expect(named.map((name) => typeof context[name])).toEqual(named.map(() => "function"));
    done.length = 0;
    context.showSidebar();
    expect(done).toEqual(["file Sidebar", `page ${menuText.title()}`]);
  });
});
