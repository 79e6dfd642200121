import { describe, expect, it } from "vitest";
import { summaryPlants } from "../../src/sentences/made/due-calendar";
import * as text from "../../src/sentences/made/due-tab";
import { dayWords } from "../../src/wording/days";
import { day } from "../support/days";
import { dueRow, dueRows, enterDue } from "./due-list";
import { type Nursery, openNursery, smallRecords, smallRow, takesOf } from "./nursery";

const LONG = "x".repeat(50_000);
const TEXTS = [
  ...['=IMPORTXML("http://example.org","//a")', "=1+1", "+1", "-1", "@x", "'quoted", "007", "1/2"],
  ...["5%", "TRUE", "2026-03-14", "<img src=x onerror=alert(1)>", "🌱👩🏽‍🌾", "שלום \u202e abc"],
  ...["two\nlines", " spaces "],
];

/** The age of the due list, and the sign of each of its rows: the whole formula, with no text of anybody's. */
const OWN_FORMULA =
  /^=(?:LEFT\(J\d+\)|IFERROR\(IF\(OR\(\$O\$1<TODAY\(\)[^"]*"AGE"[^"]*"AGE",\s*"AGE"\)\),\s*"AGE"\))$/;

/** What such a formula says of the day that the list was made, as it stands in a formula. */
const AGES = [text.ageOtherDay, text.ageChanged, text.age, text.ageUnknown].map((message) => {
  const said = message({ day: dayWords(day("2026-11-25")) });
  return `"${said.replaceAll('"', '""')}"`;
});

function isOwn(formula: string): boolean {
  const bare = AGES.reduce((left, said) => left.replaceAll(said, '"AGE"'), formula);
  return OWN_FORMULA.test(bare);
}

/** Formulas in any tab but those that are live. */
function formulas(nursery: Nursery): string[] {
  return nursery.w
    .sheets()
    .filter(({ name }) => ["Records", "Due list", "Write log"].includes(name))
    .flatMap(({ rows }) => rows.flatMap((row) => row.flatMap((cell) => cell?.formula ?? [])))
    .filter((formula) => !isOwn(formula));
}

const named = (text: string) => ({ v: text, t: 1 });

describe("text that a sheet would take for something else", () => {
  it.each(TEXTS)("%j stays that very text as note, who and batch", (text) => {
    const batch = smallRow({
      Batch: named(text),
      Place: named(text),
      Sown: "2026-07-20",
      "Germination day": "2026-07-30",
      "Grafted on": "2026-10-24",
      "Grafts made": 80,
    });
    const nursery = openNursery([smallRecords(batch)]).ready();
    const task = nursery
      .ask("sidebarToday", { daysAhead: 7 })
      .tasks.find((one) => one.task === "Take count" && !["B1", "B2"].includes(one.batch));
    if (task === undefined) throw new Error("the batch is not listed");
    // Blanks aside, which names are read without.
    expect(task.batch).toBe(text.replace(/\s+/g, " ").trim());
    const answer = nursery.ask("sidebarRecord", takesOf(task.batch, { who: text, note: text }));
    expect(answer.asked).toEqual([]);
    expect(nursery.value("Records", "P4")).toBe(text);
    const [line] = nursery.values("Write log").slice(-1);
    expect([line?.[2], line?.[6], line?.[9]]).toEqual([text, task.batch, text]);
    expect(
      dueRows(nursery, ["Batch", "Place"]).filter(
        ([batchName, place]) => batchName === task.batch && place === task.place,
      ),
    ).not.toEqual([]);
    expect(formulas(nursery)).toEqual([]);
    nursery.ask("sidebarTakeBack", { logId: answer.logId ?? "" });
    expect(nursery.value("Records", "P4")).toBe("");
  });

  it("that is too long for a cell is shortened with a sign once that was said, and can be taken back", () => {
    const nursery = openNursery([smallRecords()]).ready();
    const request = takesOf("B1", { note: LONG, who: LONG });
    const { asked } = nursery.ask("sidebarRecord", request);
    const sure = asked.map(({ id }) => id);
    expect(asked.map(({ ask }) => ask)).toMatchObject(
      ["note", "who"].map((what) => ({ code: "tooLong", what, length: 50_000 })),
    );
    expect(nursery.value("Records", "M2")).toBe("");
    const { logId } = nursery.ask("sidebarRecord", { ...request, sure });
    expect(nursery.value("Records", "P2")).toMatch(/^x{40000,}…$/);
    expect(nursery.ask("sidebarTakeBack", { logId: logId ?? "" }).asked).toEqual([]);
    expect(nursery.value("Records", "P2")).toBe("");
  });

  it("stands whole again after it was written over and taken back, however long", () => {
    const nursery = openNursery([smallRecords()]).ready();
    const standing = "y".repeat(49_999);
    nursery.sheet("Records").getRange("P2").setValue(`'${standing}`);
    const request = takesOf("B1", { note: "dry" });
    const sure = nursery.ask("sidebarRecord", request).asked.map(({ id }) => id);
    const { logId } = nursery.ask("sidebarRecord", { ...request, sure });
    nursery.ask("sidebarTakeBack", { logId: logId ?? "" });
    expect(String(nursery.value("Records", "P2")).length).toBe(standing.length);
  });

  it.each(["007", "1/2", "+1"])(
    "%j typed as a note into the due tab is written as typed",
    async (text) => {
      const nursery = openNursery([smallRecords()]).ready();
      const row = dueRow(nursery, "B1");
      await enterDue(nursery, row, { Note: text, Count: "60", Done: "TRUE" });
      expect(nursery.value("Records", "P2")).toBe(text);
    },
  );

  it("goes into the calendar as text", () => {
    const nasty = "=1+1;a,b\\c\nBEGIN:VEVENT";
    const nursery = openNursery([
      smallRecords(smallRow({ Batch: named(nasty), Sown: "2026-11-17", "Seeds sown": 50 })),
    ]).ready();
    const { text: file } = nursery.ask("sidebarCalendar", { daysAhead: 30 });
    expect(file.match(/^BEGIN:VEVENT\r$/gm)?.length).toBe(file.match(/^END:VEVENT\r$/gm)?.length);
    // Long lines go on after a line end and a blank (RFC 5545, 3.1).
    expect(file.replace(/\r\n /g, "")).toContain(
      summaryPlants({ task: "Germination", batch: "NAME", plants: 50 })
        .replace(/([;,\\])/g, "\\$1")
        .replace("NAME", "=1+1\\;a\\,b\\\\c BEGIN:VEVENT"),
    );
  });
});
