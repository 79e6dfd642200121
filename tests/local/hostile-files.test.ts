import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { HOSTILE_FILES, TABLE } from "../../src/checks/files/hostile-files";
import { saidLike } from "../../src/checks/files/said-like";
import { fileDrafts } from "../../src/local/file-drafts";
import { LONGEST_READING_MS, MOST_MEMORY_BYTES } from "../../src/local/file-limits";
import { PersonError } from "../../src/local/person-error";
import { readApart } from "../../src/local/read-apart";
import type { SheetDraft } from "../../src/local/workbook-data";
import { workbookData } from "../../src/local/workbook-data";
import * as text from "../../src/sentences/made/file-faults";

/** A sentence for the person: one line, about this file, without the words of a program. */
function expectSentence(error: unknown, name: string, says: RegExp): void {
  expect(error).toBeInstanceOf(PersonError);
  const { message } = error as PersonError;
  expect(message).toMatch(says);
  expect(message).toContain(name);
  expect(message).not.toMatch(/\n|undefined|TypeError|Cannot|offset/);
  expect(message.length).toBeLessThan(160);
}

/** The table that is in every file, however it is written. */
function expectTable(drafts: readonly SheetDraft[]): void {
  const values = drafts[0]?.rows.slice(0, 3).map((row) => row.slice(0, 6).map((cell) => cell?.v));
  // Days of a csv are days; those of the workbook are the texts that they were made of.
  const days = {
    "2026-01-05": 46027,
    "2026-03-30": 46111,
    "2026-01-12": 46034,
    "2026-04-07": 46119,
  };
  const asDays = TABLE.map((row) => row.map((one) => days[one as keyof typeof days] ?? one));
  expect([TABLE, asDays]).toContainEqual(values);
}

describe("files that are damaged, or made to do harm", () => {
  it.each(HOSTILE_FILES.filter(({ isLarge }) => !isLarge))(
    "$name is read rightly, or refused in one sentence",
    ({ name, bytes, says }) => {
      if (says === null) {
        const drafts = fileDrafts(bytes(), name, new Set());
        expectTable(drafts);
        // Nothing far outside the table is left that the engine would have to hold or draw.
        expect(drafts[0]?.rows.length).toBeLessThan(20);
        const { cellData, rowCount, columnCount } =
          Object.values(workbookData(name, drafts).sheets)[0] ?? {};
        expect([Object.keys(cellData ?? {}).length < 20, rowCount, columnCount]).toEqual([
          true,
          1000,
          26,
        ]);
        return;
      }
      let error: unknown;
      try {
        fileDrafts(bytes(), name, new Set());
      } catch (caught) {
        error = caught;
      }
      expectSentence(error, name, says);
    },
  );
});

it("a number that is none is an error, and not a blank", () => {
  const file = HOSTILE_FILES.find(({ name }) => name === "number-without-end.xlsx");
  const [draft] = fileDrafts(file?.bytes() ?? new Uint8Array(), "number.xlsx", new Set());
  expect(draft?.rows[8]?.slice(0, 2).map((cell) => cell?.v)).toEqual(["#NUM!", "#NUM!"]);
});

describe("reading in a process of its own", () => {
  let folder: string;
  const file = (name: string) => path.join(folder, name);
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), "hostile-"));
    const wanted = ["workbook-named.csv", "missing-tab.xlsx", "blank-lines.csv"];
    for (const { name, bytes } of HOSTILE_FILES) {
      if (wanted.includes(name)) writeFileSync(file(name), bytes());
    }
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const refusal = (name: string, limits?: { cpuMs: number; bytes: number }) =>
    readApart(file(name), new Set(), limits).then(
      () => expect.fail(`${name} was read`),
      (error: unknown) => error,
    );

  it("gives the same tabs as reading here", async () => {
    const drafts = await readApart(file("workbook-named.csv"), new Set(["DOUBLED"]));
    expectTable(drafts);
    const here = HOSTILE_FILES.find(({ name }) => name === "workbook-named.csv")?.bytes();
    expect(drafts).toEqual(fileDrafts(here ?? new Uint8Array(), "workbook-named.csv", new Set()));
  });

  it("hands on what is wrong with the file", async () => {
    expectSentence(
      await refusal("missing-tab.xlsx"),
      "missing-tab.xlsx",
      saidLike(text.tabUnread, text.badWorkbook, text.tabDamaged),
    );
    expectSentence(
      await refusal("blank-lines.csv", { cpuMs: 1, bytes: MOST_MEMORY_BYTES }),
      "blank-lines.csv",
      saidLike(text.tooSlow),
    );
    expectSentence(
      await refusal("blank-lines.csv", { cpuMs: LONGEST_READING_MS, bytes: 60 * 2 ** 20 }),
      "blank-lines.csv",
      saidLike(text.tooHungry),
    );
    expect(await refusal("none.csv")).toMatchObject({
      message: text.noFile({ file: file("none.csv") }),
    });
  });
});
