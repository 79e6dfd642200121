/*
 * Longer than most: the program run as a person runs it, with the small add-in that it runs above
 * the cases.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openWorkbook } from "../../src/local/engine";
import { runReport } from "../../src/local/report-run";
import { numberCell, type SheetDraft, textCell, workbookData } from "../../src/local/workbook-data";
import { readXlsx } from "../../src/local/xlsx-in";
import { writeXlsx } from "../../src/local/xlsx-out";
import { english } from "../../src/sentences/english";
import * as batch from "../../src/sentences/made/batch-columns";
import * as check from "../../src/sentences/made/check-columns";
import * as cost from "../../src/sentences/made/cost-columns";
import * as costs from "../../src/sentences/made/costs";
import * as files from "../../src/sentences/made/file-faults";
import * as place from "../../src/sentences/made/place-columns";
import * as programs from "../../src/sentences/made/program-faults";
import { report as reportHelp } from "../../src/sentences/made/program-help";
import * as said from "../../src/sentences/made/report";
import * as take from "../../src/sentences/made/take-columns";
import { fakeBundle } from "./fake-bundle";

/** The rows that sum up a method. */
const SUMS = [costs.allOf({ method: "Plain" }), costs.startedPlant({ method: "Plain" })];
/** What the first lines are told of the workbook and of a table alone. */
const ofBook = { tabs: 1, names: ["Batches"], records: "Batches", own: "yes" } as const;
const ofTable = { tabs: 1, own: "no", timetable: "" } as const;
/** Headers of an answer, as a script holds them. */
const heads = (...messages: readonly (() => string)[]) =>
  JSON.stringify(messages.map((message) => message()));

/** Stands for the built add-in: each answer shows which arguments arrived. */
const CODE = `
function shape(table) { return Array.isArray(table) ? table.length + ' x ' + table[0].length : table === '' ? 'none' : String(table); }
function day(value) { return Object.prototype.toString.call(value) === '[object Date]' ? value : 'no day: ' + value; }
/** @customfunction */
function BATCH_DUE(records, timetable, asOf, daysAhead) {
  if (records[0].indexOf('Batch') < 0) throw new Error('BATCH_DUE: no header in records');
  return [${heads(batch.doOn, batch.task, batch.batch, batch.place, batch.status, batch.caution)},
    [day(asOf), 'Grafting', '=' + records[1][records[0].indexOf('Batch')], shape(records), daysAhead + ' ahead', 'Blades cut: wear gloves']];
}
/** @customfunction */
function BATCH_STAGES(records, timetable, asOf, level) {
  if (records[0].indexOf('Batch') < 0) throw new Error('BATCH_STAGES: no header in records');
  return [${heads(batch.batch, batch.variety, batch.lastStep, batch.remark)}, [shape(timetable), 'level ' + level, '', 'Planned']];
}
/** @customfunction */
function TAKE_SUMMARY(records, by, level, columns) {
  if (columns) return [['told ' + columns.map(function (pair) { return pair.join('='); }).join(';')]];
  if (records[0].indexOf(by) < 0) throw new Error('TAKE_SUMMARY: no column ' + by);
  return [[by, 'Grafted', 'Taken', ${JSON.stringify(take.takeRate())}, 'Batch spread'], ['Amber', 100, 81, 0.8125, 15.26881], ['2 rows left out: see BATCH_CHECK', '', '', '', '']];
}
/** @customfunction */
function BATCH_BALANCE(records) {
  var at = records[0].indexOf('Batch');
  if (at < 0) throw new Error('BATCH_BALANCE: no header in records');
  return [['Batch', 'Started with']].concat(records.slice(1).filter(function (row) { return row[at]; }).map(function (row) { return [row[at], 1]; }));
}
function wordsAsked(values) {
  if (values[0].indexOf('Method') < 0) return { methods: [], pairs: [] };
  return {
    methods: [{ word: 'Cleft', fits: ['Cocoa cleft graft', 'Mango cleft graft'], batches: 2 }],
    pairs: [{ column: 'Variety', rare: { text: 'Amle 3', initials: null }, batches: 1, common: { text: 'Amel 3', initials: null } }],
  };
}
function sidebarColumns(request) {
  var values = SpreadsheetApp.getActiveSpreadsheet().getSheetByName(request.tab).getDataRange().getValues();
  var open = { Up: { readAs: null, sure: 'likely', others: ['Germinated', 'Takes'] }, 'Kind of tree': { readAs: null, sure: 'not used', others: [] } };
  var columns = values[0].map(function (header, at) {
    var read = open[header] || { readAs: header, sure: 'sure', others: ['never shown'] };
    var sample = { text: String(values[1] ? values[1][at] : ''), initials: header === 'Kind of tree' ? 'A. B.' : null };
    return { column: at, header: header, readAs: read.readAs, sure: read.sure, others: read.others, samples: [sample] };
  });
  return { ok: true, data: { columns: columns, choices: ['Batch', 'Germinated', 'Takes'], words: wordsAsked(values) } };
}
/** @customfunction */
function PLACE_LOAD() {
  var rows = [${heads(place.place, place.week, place.plants, place.holds, place.overBy)}];
  for (var i = 1; i <= 90; i++) rows.push(['Bay ' + i, 'W1', 10, i === 80 ? 7 : 20, i === 80 ? 3 : 0]);
  return rows.concat([['not in it: B9', '', '', '', '']]);
}
/** @customfunction */
function BATCH_COST() {
  var rows = [${heads(cost.batch, cost.cost)}];
  for (var i = 1; i <= 90; i++) rows.push(['B' + i, i]);
  return rows.concat([[${JSON.stringify(SUMS[0])}, 4095], [${JSON.stringify(SUMS[1])}, 0.5]]);
}
/** @customfunction */
function BATCH_CHECK(records, timetable, asOf) {
  if (records[0].indexOf('Batch') < 0) throw new Error('BATCH_CHECK: no header in records');
  var head = [${heads(check.row, check.column, check.found, check.trouble, check.whatHappens, check.whatToDo)}];
  if (records.length < 2000) return head.concat([['', '', '', records.length + ' rows in the range', '1 used, 0 left out', '']]);
  return head.concat(records.slice(1).map(function (row, i) { return [i + 2, 'Batch', row[0], '', '', '']; }));
}
`;
const TABLE = "Batch,Variety,Sown,Grafted on,Takes\nB1,Amber,2026-01-05,2026-03-30,80\n";

let root: string;
let printed: string;
const at = (name: string) => path.join(root, name);
async function report(...words: string[]): Promise<string> {
  printed = "";
  await runReport(words, {
    root,
    folders: [root],
    today: "2026-03-14",
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    print: (text) => {
      printed += `${text}\n`;
    },
    progress: () => {},
  });
  return printed;
}

async function saveWorkbook(name: string, ...more: readonly SheetDraft[]): Promise<void> {
  const workbook = openWorkbook(
    workbookData("t", [
      { name: said.dueList(), rows: [[textCell("my own due list")]] },
      { name: "Batches", rows: TABLE.split("\n").map((line) => line.split(",").map(textCell)) },
      {
        name: "Timetable",
        rows: [[textCell("Method"), textCell("Step"), textCell("After")], [textCell("x")]],
      },
      {
        name: "Settings",
        rows: [
          [textCell("As-of day"), numberCell(46000, "d mmm yyyy")],
          [textCell("Days ahead"), numberCell(21)],
          [textCell("Level"), numberCell(0.9)],
        ],
      },
      ...more,
    ]),
    fakeBundle(),
  );
  await workbook.settled();
  writeFileSync(at(name), writeXlsx(workbook.sheets(), new Set()));
  workbook.close();
}

beforeAll(async () => {
  root = mkdtempSync(path.join(tmpdir(), "report-"));
  mkdirSync(at("dist"));
  writeFileSync(at("dist/Code.js"), CODE);
  writeFileSync(at("mine.csv"), TABLE);
  writeFileSync(at("empty.csv"), "\n\n");
  writeFileSync(at("notes.txt"), "Batch");
  writeFileSync(at("fake.xlsx"), "Batch,Sown");
  writeFileSync(at("orders.csv"), "Order,Customer\n1,x\n");
  await saveWorkbook("book.xlsx");
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

describe("report", () => {
  it("prints every answer of a csv table, as of today", async () => {
    const text = await report("mine.csv", "--people");
    const asOf = said.asOf({
      ...ofTable,
      file: "mine.csv",
      day: "2026-03-14",
      names: ["mine"],
      records: "mine",
    });
    expect(text).toContain(asOf);
    expect(text).toMatch(/2026-03-14 +Grafting +=B1 +1000 x 5 +7 ahead/);
    expect(text).toContain(`${said.cautions()}\nGrafting: Blades cut: wear gloves`);
    expect(text).toMatch(/none +level undefined/);
    expect(text).toMatch(/Amber +100 +81 +81.3% +15.269\n2 rows left out: see BATCH_CHECK/);
    expect(text).toContain(`${said.takesByGrafterHeading()}\n═════`);
    expect(text).toContain("═\nTAKE_SUMMARY: no column Grafter");
    // People read "1000 rows in the range" of a table of two, and not what became of them.
    expect(text).toContain(`─\n${said.none()}\n2 rows in the range: 1 used, 0 left out\n`);
    // Why a batch has no dates stood in the tab only.
    expect(text).toMatch(/none +level undefined\n\n/);
    expect(text).toContain(`\n${said.remarks()}\nnone: Planned\n`);
    for (const line of text.replace(asOf, "").split("\n"))
      expect(line.length).toBeLessThanOrEqual(120);
  });

  it("has room for an answer with more rows than a new sheet", async () => {
    const rows = Array.from({ length: 3000 }, (_, index) => `B${index},Amber,2026-01-05,,`);
    writeFileSync(at("long.csv"), `${TABLE}${rows.join("\n")}\n`);
    const text = await report("long.csv", "--people");
    expect(text).toContain(
      said.asOf({
        ...ofTable,
        file: "long.csv",
        day: "2026-03-14",
        names: ["long"],
        records: "long",
      }),
    );
    const copy = readXlsx(readFileSync(at("out/long-calculated.xlsx")), "copy", new Set());
    expect(copy[4]?.rows).toHaveLength(4 + 3001);
  });

  it("takes day, level and days ahead from the workbook's Settings, and its timetable", async () => {
    const text = await report("book.xlsx");
    expect(text).toContain(
      said.asOf({ ...ofBook, file: "book.xlsx", day: "2025-12-09", timetable: "Timetable" }),
    );
    expect(text).toMatch(/2025-12-09 .* 21 ahead/);
    expect(text).toMatch(/1000 x 3 +level 0.9/);
  });

  // Of ninety rows forty are printed, and the only full place was not among them.
  it("prints first what is too full, and what all batches cost together", async () => {
    await saveWorkbook(
      "places.xlsx",
      { name: "Places", rows: [[textCell("Place"), textCell("Holds")], [textCell("Bay 1")]] },
      { name: "Prices", rows: [[textCell("Item"), textCell("Price")], [textCell("Bag")]] },
    );
    const text = await report("places.xlsx");
    const [places = "", cost = ""] = [said.placeLoadHeading(), said.costHeading()].map(
      (heading) => text.split(`${heading}\n`)[1],
    );
    const [, , , first, second] = places.split("\n");
    expect(first).toMatch(/^Bay 80 +W1 +10 +7 +3$/);
    expect(second).toMatch(/^Bay 1 /);
    expect(places).toContain("not in it: B9");
    const lines = cost.split("\n").slice(3, 6);
    expect(lines.map((line) => line.split(/ {2,}/)[0])).toEqual([...[...SUMS, "B1"]]);
  });

  it("reads columns as told, in every answer that reads records", async () => {
    writeFileSync(at("own.csv"), "Batch,Kind of tree,Sown\nB1,Amber,2026-01-05\n");
    const text = await report(
      ...[
        "own.csv",
        "--people",
        "--column",
        "Variety=Kind of tree",
        "--column",
        'Note = the "other" one',
        "--word",
        "Amber=A",
      ],
    );
    const told =
      '{"Variety","Kind of tree","header";"Note","the ""other"" one","header";"Amber","A","value"}';
    const copy = readXlsx(readFileSync(at("out/own-calculated.xlsx")), "copy", new Set());
    const made = copy.slice(0, 5).map(({ rows }) => rows[1]?.[0]?.v);
    const end = said.madeBy({ formula: `…,${told})` }).split("…")[1] as string;
    expect(made.map((text) => String(text).endsWith(end))).toEqual(Array(5).fill(true));
    expect(text).toContain(
      'told Variety=Kind of tree=header;Note=the "other" one=header;Amber=A=value',
    );
  });

  it("shows how the columns of the records were read, and what to write to correct it", async () => {
    writeFileSync(at("up.csv"), "Batch,Up,Kind of tree\nB1,391,Amber\n");
    const text = await report("up.csv", "--column", "Variety=kind of tree");
    const section = text.split(said.columnsHeading())[1] ?? "";
    const line = (header: string) =>
      section
        .split("\n")
        .find((one) => one.startsWith(header))
        ?.split(/ {2,}/);
    expect(line("Batch")).toEqual(["Batch", "Batch", said.columnSure(), "B1"]);
    expect(line("Up")).toEqual(["Up", said.columnLeft(), "Germinated, Takes", "391"]);
    expect(line("Kind of tree")).toEqual(["Kind of tree", "Variety", said.columnTold(), "A. B."]);
    const lines = section.replaceAll("\n", " ");
    expect(lines).toContain(said.correctColumns({ name: "Germinated", header: "Up" }));
    expect(lines).toContain(said.columnNames({ names: "Batch, Germinated, Takes" }));
  });

  it("asks for no correction where every column is sure", async () => {
    const section = (await report("mine.csv")).split(said.columnsHeading())[1] ?? "";
    expect(section).toContain("Grafted on");
    expect(section).not.toContain("--column");
  });

  it("asks what words in cells mean, until it is told", async () => {
    writeFileSync(at("words.csv"), "Batch,Method,Variety\nB1,Cleft,Amel 3\n");
    const asked = async (...told: string[]) => {
      const text = await report("words.csv", ...told);
      return text.split(said.wordsHeading())[1]?.replaceAll("\n", " ") ?? "";
    };
    const all = await asked();
    expect(all).toMatch(/Method +Cleft +2 +Cocoa cleft graft, Mango cleft graft/);
    expect(all).toMatch(/Variety +Amle 3 +1 +Amel 3/);
    expect(all).toContain(said.correctWords({ name: "Cocoa cleft graft", word: "Cleft" }));
    expect(all).toContain(said.tellApart({ name: "Amel 3", other: "Amle 3" }));
    const method = ["--word", "Cocoa cleft graft=Cleft"];
    expect(await asked(...method)).not.toContain("Cleft");
    expect(await asked(...method, "--apart", "Amle 3=Amel 3")).toBe("");
    expect(await asked(...method, "--word", "Amel 3=Amle 3")).toBe("");
  });

  it("says that a template has no batches yet", async () => {
    writeFileSync(at("blank.csv"), "Batch,Variety,Sown\n");
    expect(await report("blank.csv")).toContain(said.noBatchesYet());
    expect(await report("mine.csv")).not.toContain(said.noBatchesYet());
  });

  it("lets options win over the workbook", async () => {
    const text = await report("book.xlsx", "--as-of", "2026-05-01", "--days-ahead", "3");
    expect(text).toContain(
      said.asOf({ ...ofBook, file: "book.xlsx", day: "2026-05-01", timetable: "Timetable" }),
    );
    expect(text).toMatch(/2026-05-01 .* 3 ahead/);
  });

  it("writes a calculated copy with the answers in tabs of their own, and not the file", async () => {
    // The file has a tab of the due list's name.
    const dueList = `${said.dueList()} 2`;
    const before = readFileSync(at("book.xlsx"));
    expect(await report("book.xlsx", "--people", "--out", "here")).toContain(
      "here/book-calculated.xlsx",
    );
    expect(readFileSync(at("book.xlsx"))).toEqual(before);
    const copy = readXlsx(readFileSync(at("here/book-calculated.xlsx")), "copy", new Set());
    expect(copy.map(({ name }) => name)).toEqual([
      dueList,
      said.stages(),
      said.takesByVariety(),
      said.takesByGrafter(),
      said.check(),
      said.dueList(),
      "Batches",
      "Timetable",
      "Settings",
    ]);
    expect(copy[5]?.rows).toEqual([[textCell("my own due list")]]);
    expect(copy[0]?.rows[1]?.[0]).toEqual(
      textCell(
        said.madeBy({
          formula: "BATCH_DUE(Batches!A:E,Timetable!A:C,Settings!$B$1,Settings!$B$2)",
        }),
      ),
    );
    expect(copy[0]?.rows[4]?.slice(0, 3)).toEqual([
      numberCell(46000, "yyyy-mm-dd"),
      textCell("Grafting"),
      textCell("=B1"),
    ]);
    expect(copy[2]?.rows[4]?.[3]).toEqual(numberCell(0.8125, "0.0%"));
    expect(copy[2]?.rows[4]?.[4]).toEqual(numberCell(15.26881, "0.00"));
    expect(copy[3]?.rows[3]?.[0]).toEqual(textCell("#ERROR! TAKE_SUMMARY: no column Grafter"));
  });

  it("prints how it is used", async () => {
    expect(await report("--help")).toBe(`${reportHelp()}\n`);
    for (const option of ["--as-of", "--sheet", "--days-ahead", "--column", "--out", "--help"]) {
      expect(english.programHelp.report).toContain(option);
    }
  });

  it.each([
    [["nowhere.xlsx"], files.noFile({ file: "nowhere.xlsx" })],
    [["notes.txt"], files.otherKind({ file: "notes.txt" })],
    [["fake.xlsx"], files.notAWorkbook({ file: "fake.xlsx" })],
    [["empty.csv"], files.empty({ file: "empty.csv" })],
    [["dist"], files.notAFile({ file: "DIST" })],
    [["mine.csv", "--sheet", "Other"], said.noTab({ tab: "Other", tabs: ["mine"] })],
    [["mine.csv", "--as-of", "soon"], programs.needsDay({ found: "soon" })],
    [["orders.csv"], said.noRecords({ tabs: ["orders"] })],
    [["book.xlsx", "--sheet", "Settings"], "BATCH_DUE: no header in records"],
    [
      ["mine.csv", "--out", "notes.txt"],
      programs.cantWriteCopy({ name: "notes.txt/mine-calculated.xlsx", why: "EEXIST" }),
    ],
  ])("refuses %j in one sentence", async (words, sentence) => {
    const error = await report(...words).then(
      () => null,
      (reason: Error) => reason,
    );
    expect(error?.name).toBe("PersonError");
    expect(error?.message).toBe(sentence.replace("DIST", at("dist")));
    expect(error?.message).not.toContain("\n");
  });

  it("says that the add-in is not built", async () => {
    const bare = mkdtempSync(path.join(tmpdir(), "bare-"));
    writeFileSync(path.join(bare, "a.csv"), TABLE);
    await expect(
      runReport(["a.csv"], {
        root: bare,
        folders: [bare],
        today: "2026-03-14",
        zone: "UTC",
        print: () => {},
        progress: () => {},
      }),
    ).rejects.toThrow(programs.notBuilt({ file: "dist/Code.js" }));
    rmSync(bare, { recursive: true });
  });
});

describe("the program", () => {
  const run = (...words: string[]) =>
    spawnSync("node", ["src/build/run.mjs", "src/local/report.ts", ...words], { encoding: "utf8" });

  it("ends with 1 and one sentence on stderr when the person can mend it", () => {
    const { status, stdout, stderr } = run("nowhere.xlsx");
    expect([status, stdout, stderr]).toEqual([
      1,
      "",
      `${files.noFile({ file: "nowhere.xlsx" })}\n`,
    ]);
  });

  it("ends with 0 and nothing on stderr for --help", () => {
    const { status, stdout, stderr } = run("--help");
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toBe(`${reportHelp()}\n`);
  });
});
