import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { read } from "@e965/xlsx";
import { afterAll, describe, expect, it } from "vitest";
import { cocoaCleftGraft } from "../../src/core/timetable/methods/cocoa-cleft-graft";
import { csvRows } from "./csv-rows";

const samples = fileURLToPath(new URL("../../sample-sheets", import.meta.url));
const names = ["hillside-nursery", "blank-template"];
const sheets = [
  ...["Records", "Timetable", "Orders", "Crew", "Closed days", "Places", "Prices", "Settings"],
];
const csvName = (sheet: string) => `${sheet.toLowerCase().replaceAll(" ", "-")}.csv`;
const scratch = mkdtempSync(join(tmpdir(), "samples-"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const csvFile = (name: string, sheet: string) => join(samples, name, csvName(sheet));
const csv = (name: string, sheet: string) => csvRows(readFileSync(csvFile(name, sheet), "utf8"));

/** Rows under the header, by header. */
function named(rows: readonly string[][]): Record<string, string>[] {
  const [header = [], ...body] = rows;
  return body.map((row) => Object.fromEntries(header.map((name, at) => [name, row[at] ?? ""])));
}

describe.each(names)("%s", (name) => {
  it("is made again with the same bytes in every csv and the same cells in the workbook", () => {
    const folder = join(scratch, name);
    execFileSync(process.execPath, [join(samples, name, "make.mjs"), folder]);
    const written = readdirSync(folder).filter((file) => file.endsWith(".csv"));
    expect(written.sort()).toEqual(sheets.map(csvName).sort());
    for (const file of written) {
      const kept = readFileSync(join(samples, name, file));
      expect(readFileSync(join(folder, file)).equals(kept), file).toBe(true);
    }
    const cells = (of: string) => read(readFileSync(join(of, `${name}.xlsx`))).Sheets;
    expect(cells(folder)).toEqual(cells(join(samples, name)));
  });

  it("holds days as whole serials with a day format, and no text that looks like a day", () => {
    const book = read(readFileSync(join(samples, name, `${name}.xlsx`)), { cellNF: true });
    expect(book.SheetNames).toEqual(sheets);
    for (const sheet of sheets) {
      const cells = Object.entries(book.Sheets[sheet] ?? {}).filter(([at]) => !at.startsWith("!"));
      for (const [at, cell] of cells) {
        if (cell.t === "s") expect(cell.v, `${sheet} ${at}`).not.toMatch(/^\d{4}-\d\d-\d\d$/);
        if (cell.z === "yyyy-mm-dd") expect(Number.isInteger(cell.v), `${sheet} ${at}`).toBe(true);
      }
      const csvDays = csv(name, sheet)
        .flat()
        .filter((text) => /^\d{4}-\d\d-\d\d$/.test(text));
      expect(
        cells.filter(([, cell]) => cell.z === "yyyy-mm-dd"),
        sheet,
      ).toHaveLength(csvDays.length);
    }
  });

  it("opens in LibreOffice, which reads the first lines of every sheet as our csv has them", (test) => {
    if (!hasLibreOffice() && !process.env.CI) test.skip("LibreOffice (soffice) is not installed");
    const folder = join(scratch, `${name}-opened`);
    execFileSync(
      "soffice",
      [
        `-env:UserInstallation=${pathToFileURL(join(scratch, "office-profile")).href}`,
        "--headless",
        "--convert-to",
        // Token 12, -1, writes every sheet to a file of its own; token 8 asks for cells as shown.
        "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1",
        "--outdir",
        folder,
        join(samples, name, `${name}.xlsx`),
      ],
      { stdio: "ignore" },
    );
    for (const sheet of sheets) {
      const opened = csvRows(readFileSync(join(folder, `${name}-${sheet}.csv`), "utf8"));
      expect(opened.slice(0, 12), sheet).toEqual(csv(name, sheet).slice(0, 12));
    }
  });
});

describe("hillside-nursery records", () => {
  const records = named(csv("hillside-nursery", "Records"));
  const [asOfRow] = csv("hillside-nursery", "Settings");
  const distinct = (column: string) =>
    [...new Set(records.map((record) => record[column]))].filter((value) => value !== "");

  it("has at least 150 batches, each with its own name", () => {
    expect(records.length).toBeGreaterThanOrEqual(150);
    expect(distinct("Batch")).toHaveLength(records.length);
  });

  it.each([
    ["Variety", 5],
    ["Grafter", 4],
    ["Place", 4],
    ["Scion source", 3],
    ["Rootstock", 2],
    ["Method", 1],
  ])("has for %s %i different values", (column, count) => {
    expect(distinct(column)).toHaveLength(count);
  });

  it("leaves 30 to 40 batches unready and open, and some ready ones standing", () => {
    const open = records.filter((record) => record.Closed === "");
    const unready = open.filter((record) => record["Ready on"] === "");
    expect(unready.length).toBeGreaterThanOrEqual(30);
    expect(unready.length).toBeLessThanOrEqual(40);
    expect(open.length).toBeGreaterThan(unready.length);
  });

  it("records no day after the as-of day", () => {
    expect(asOfRow).toEqual(["As-of day", "2026-11-25"]);
    const days = records.flatMap(Object.values).filter((text) => /^\d{4}-\d\d-\d\d$/.test(text));
    expect(days.length).toBeGreaterThan(1000);
    expect(days.sort().at(0)).toBe("2024-05-02");
    expect((days.sort().at(-1) as string) <= "2026-11-25").toBe(true);
  });

  it("never counts more plants at a step than at the step before", () => {
    const steps = [
      "Seeds sown",
      "Germinated",
      "Grafts made",
      "Takes",
      "Ready plants",
      "Dispatched",
    ];
    for (const record of records) {
      const counts = steps.map((step) => record[step] as string).filter((text) => text !== "");
      const falling = [...counts].sort((one, other) => Number(other) - Number(one));
      expect(counts.map(Number), record.Batch).toEqual(falling.map(Number));
    }
  });

  it("never gives more plants from a lot than it had, and takes none before it germinated", () => {
    const lots = distinct("From lot");
    expect(lots.length).toBeGreaterThan(5);
    for (const name of lots) {
      const lot = records.find((record) => record.Batch === name);
      const taken = records.filter((record) => record["From lot"] === name);
      const given = taken.reduce((sum, record) => sum + Number(record["Grafts made"]), 0);
      expect(given, name).toBeLessThanOrEqual(Number(lot?.Germinated || lot?.["Seeds sown"]));
      for (const { "Grafted on": day = "" } of taken) expect(day > (lot?.Sown ?? "9")).toBe(true);
    }
  });

  it("has blank cells where a count or a name was not written, and a zero where all died", () => {
    expect(records.filter((record) => record.Takes === "0")).toHaveLength(1);
    const dayWithoutCount = records.filter(
      (record) => record["Germination day"] !== "" && record.Germinated === "",
    );
    expect(dayWithoutCount.length).toBeGreaterThan(0);
    expect(records.some((r) => r.Grafter === "" && r["Grafted on"] !== "")).toBe(true);
  });
});

describe("blank-template", () => {
  it("has the headers of the filled sheets and nothing under them", () => {
    for (const sheet of ["Records", "Orders", "Crew", "Closed days", "Places", "Prices"]) {
      expect(csv("blank-template", sheet)).toEqual([csv("hillside-nursery", sheet)[0]]);
    }
  });

  it("has the built-in timetable, without any speed of work", () => {
    const rows = named(csv("blank-template", "Timetable"));
    expect(rows.map((row) => row.Step)).toEqual(cocoaCleftGraft.steps.map((step) => step.name));
    expect(rows.map((row) => row.Source)).toEqual(cocoaCleftGraft.steps.map((step) => step.source));
    expect(rows.map((row) => row["Per person-hour"])).toEqual(rows.map(() => ""));
  });
});

function hasLibreOffice(): boolean {
  return (process.env.PATH ?? "").split(":").some((folder) => existsSync(join(folder, "soffice")));
}
