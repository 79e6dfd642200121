/* Longer than most: a list, one entry a file, each with the bytes that make it harmful. */
import { utils, write } from "@e965/xlsx";
import { strFromU8, strToU8, unzipSync, type Zippable, zipSync } from "fflate";
import * as text from "../../sentences/made/file-faults";
import { zipOf } from "./raw-zip";
import { saidLike } from "./said-like";

/** A file that is damaged or made to do harm, or merely unusual, and what has to come of it. */
export interface HostileFile {
  readonly name: string;
  /** Makes the bytes; some take a moment and much memory. */
  readonly bytes: () => Uint8Array;
  /** What the one sentence says; null when the table is to be read as if nothing were. */
  readonly says: RegExp | null;
  /** Whether making or reading it takes more than a moment. */
  readonly isLarge?: boolean;
}

/** The table in every file that can be read. */
export const TABLE: readonly (readonly (string | number)[])[] = [
  ["Batch", "Variety", "Sown", "Grafted on", "Grafts made", "Takes"],
  ["B1", "Amber", "2026-01-05", "2026-03-30", 90, 80],
  ["B2", "Brindle", "2026-01-12", "2026-04-07", 75, 61],
];

const CSV = TABLE.map((row) => row.join(",")).join("\n");
const TAB = "xl/worksheets/sheet1.xml";
const LAST_ROW = 1_048_576;

const DAMAGED = saidLike(text.badWorkbook, text.tabDamaged, text.tabUnread);
const TOO_LARGE = saidLike(
  text.tooLarge,
  text.tooLong,
  text.tooWide,
  text.tooManyCells,
  text.tooManyCharacters,
  text.tooManyMerges,
  text.tooManyTabs,
  text.tooSlow,
  text.tooHungry,
  text.unpackedTooLarge,
);
const NO_WORKBOOK = saidLike(text.notAWorkbook);

function workbook(): Uint8Array {
  const sheet = utils.aoa_to_sheet(TABLE.map((row) => [...row]));
  const book = utils.book_new(sheet, "Records");
  return new Uint8Array(
    write(book, { type: "array", bookType: "xlsx", compression: true, bookSST: true }),
  );
}

/** The workbook with some parts changed; null takes a part out. */
function changed(change: (parts: Zippable) => Record<string, string | null>): Uint8Array {
  const parts: Zippable = unzipSync(workbook());
  for (const [name, text] of Object.entries(change(parts))) {
    if (text === null) delete parts[name];
    else parts[name] = strToU8(text);
  }
  return zipSync(parts, { level: 1 });
}

/** The workbook with its tab's text changed. */
const tabChanged = (change: (xml: string) => string) =>
  changed((parts) => ({ [TAB]: change(strFromU8(parts[TAB] as Uint8Array)) }));
/** A workbook that lacks one of its parts. */
const lacking = (name: string, says: HostileFile["says"], part: string): HostileFile => ({
  name,
  says,
  bytes: () => changed(() => ({ [part]: null })),
});
const withRow = (row: string) =>
  tabChanged((xml) => xml.replace("</sheetData>", `${row}</sheetData>`));
const below = (element: string) =>
  tabChanged((xml) => xml.replace("</sheetData>", `</sheetData>${element}`));
const flipped = (every: number, bytes = workbook()) =>
  bytes.map((byte, at) => (at % every === every - 1 ? byte ^ 0xff : byte));
const many = (count: number, text: (at: number) => string) =>
  Array.from({ length: count }, (_, at) => text(at)).join("");
const manyTabs = (count: number) => {
  const book = utils.book_new();
  for (let at = 0; at < count; at += 1) {
    utils.book_append_sheet(book, utils.aoa_to_sheet([[at]]), `T${at}`);
  }
  return new Uint8Array(write(book, { type: "array", bookType: "xlsx" }));
};
const rows = (count: number) =>
  strToU8(
    `${CSV.split("\n")[0]}\n${many(count, (at) => `B${at},Amber,2026-01-05,2026-03-30,90,80\n`)}`,
  );
function utf16(text: string, isLittle: boolean): Uint8Array {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < text.length; at += 1) view.setUint16(at * 2, text.charCodeAt(at), isLittle);
  return bytes;
}
/** Parts of the workbook as they are, and one more of so many bytes of one kind. */
const bomb = (size: number, said?: number, copies = 1) =>
  zipOf(
    Object.entries(unzipSync(workbook())).filter(([name]) => name !== TAB),
    { name: TAB, size, copies, ...(said === undefined ? {} : { said }) },
  );

/** A folder of such files; those that take long to make come last. */
export const HOSTILE_FILES: readonly HostileFile[] = [
  // What a table looks like that somebody has formatted down to the end of the sheet.
  {
    name: "last-row-style.xlsx",
    says: null,
    bytes: () => withRow(`<row r="${LAST_ROW}"><c r="A${LAST_ROW}" s="0"/></row>`),
  },
  {
    name: "last-row-space.xlsx",
    says: null,
    bytes: () =>
      withRow(
        `<row r="${LAST_ROW}"><c r="A${LAST_ROW}" t="inlineStr"><is><t xml:space="preserve"> </t></is></c></row>`,
      ),
  },
  {
    name: "last-cell-style.xlsx",
    says: null,
    bytes: () => withRow(`<row r="${LAST_ROW}"><c r="XFD${LAST_ROW}" s="0"/></row>`),
  },
  {
    name: "last-cell-value.xlsx",
    says: saidLike(text.tooLong),
    bytes: () => withRow(`<row r="${LAST_ROW}"><c r="XFD${LAST_ROW}"><v>1</v></c></row>`),
  },
  {
    name: "last-column-value.xlsx",
    says: saidLike(text.tooWide),
    bytes: () => withRow('<row r="9"><c r="XFD9"><v>1</v></c></row>'),
  },
  {
    name: "row-beyond-the-last.xlsx",
    says: TOO_LARGE,
    bytes: () => withRow('<row r="999999999"><c r="A999999999"><v>1</v></c></row>'),
  },
  {
    name: "whole-sheet-merge.xlsx",
    says: null,
    bytes: () => below('<mergeCells count="1"><mergeCell ref="A1:XFD1048576"/></mergeCells>'),
  },
  {
    name: "whole-sheet-link.xlsx",
    says: null,
    bytes: () => below('<hyperlinks><hyperlink ref="A1:XFD1048576" location="A1"/></hyperlinks>'),
  },
  {
    name: "endless-columns.xlsx",
    says: DAMAGED,
    bytes: () =>
      tabChanged((xml) =>
        xml.replace(
          "<sheetData>",
          '<cols><col min="1" max="2000000000" width="9"/></cols><sheetData>',
        ),
      ),
  },
  {
    name: "size-of-the-whole-sheet.xlsx",
    says: null,
    bytes: () =>
      tabChanged((xml) => xml.replace(/<dimension ref="[^"]*"/, '<dimension ref="A1:XFD1048576"')),
  },
  {
    name: "number-without-end.xlsx",
    says: null,
    bytes: () => withRow('<row r="9"><c r="A9"><v>1e999</v></c><c r="B9"><v>x</v></c></row>'),
  },
  {
    name: "day-beyond-the-calendar.xlsx",
    says: null,
    bytes: () =>
      withRow('<row r="9"><c r="H9" t="d"><v>+275760-09-13</v></c><c r="I9"><v>1e15</v></c></row>'),
  },
  {
    name: "formula-of-a-million.xlsx",
    says: null,
    bytes: () => withRow(`<row r="9"><c r="H9"><f>${"a".repeat(1_000_000)}</f><v>1</v></c></row>`),
  },
  { name: "every-997th-byte.xlsx", says: DAMAGED, bytes: () => flipped(997) },
  {
    name: "every-13th-byte.xlsx",
    says: saidLike(text.badWorkbook, text.tabDamaged, text.tabUnread, text.notAWorkbook),
    bytes: () => flipped(13),
  },
  { name: "one-byte-in-a-tab.xlsx", says: DAMAGED, bytes: () => flipped(701) },
  { name: "cut-in-half.xlsx", says: DAMAGED, bytes: () => workbook().slice(0, 3000) },
  { name: "only-the-start.xlsx", says: DAMAGED, bytes: () => workbook().slice(0, 4) },
  {
    name: "nothing.xlsx",
    says: saidLike(text.empty, text.emptyTabs),
    bytes: () => new Uint8Array(),
  },
  lacking("missing-tab.xlsx", DAMAGED, TAB),
  lacking("missing-texts.xlsx", DAMAGED, "xl/sharedStrings.xml"),
  lacking("missing-styles.xlsx", DAMAGED, "xl/styles.xml"),
  lacking("missing-workbook.xlsx", NO_WORKBOOK, "xl/workbook.xml"),
  lacking("missing-list-of-parts.xlsx", NO_WORKBOOK, "[Content_Types].xml"),
  {
    name: "tab-that-breaks-off.xlsx",
    says: DAMAGED,
    bytes: () => tabChanged((xml) => xml.slice(0, xml.indexOf("B2"))),
  },
  {
    name: "tab-of-rubbish.xlsx",
    says: DAMAGED,
    bytes: () => tabChanged(() => "<<<<>>>>"),
  },
  {
    name: "other-texts-than-named.xlsx",
    says: DAMAGED,
    bytes: () => withRow('<row r="9"><c r="A9" t="s"><v>99999</v></c></row>'),
  },
  {
    name: "laughs.xlsx",
    says: null,
    bytes: () =>
      tabChanged((xml) =>
        xml.replace(
          "?>",
          `?><!DOCTYPE x [<!ENTITY a "aaaaaaaaaa">${many(9, (at) => `<!ENTITY a${at} "&a;&a;&a;&a;&a;&a;&a;&a;&a;">`)}]>`,
        ),
      ),
  },
  { name: "password.xlsx", says: saidLike(text.hasPassword), bytes: () => lockedWorkbook() },
  {
    name: "old-or-password.xlsx",
    says: saidLike(text.oldOrLocked),
    bytes: () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
  },
  { name: "bomb-that-lies.xlsx", says: DAMAGED, bytes: () => bomb(2_000_000, 1000) },
  { name: "text-repeated.xlsx", says: saidLike(text.tooManyCharacters), bytes: repeatedText },
  { name: "too-many-tabs.xlsx", says: TOO_LARGE, bytes: () => manyTabs(300) },
  {
    name: "other-zip.xlsx",
    says: NO_WORKBOOK,
    bytes: () => zipSync({ "content.xml": strToU8("<x/>"), mimetype: strToU8("x") }),
  },
  { name: "table-named.xlsx", says: NO_WORKBOOK, bytes: () => strToU8(CSV) },
  { name: "workbook-named.csv", says: null, bytes: workbook },
  {
    name: "old-workbook-named.csv",
    says: saidLike(text.oldOrLocked),
    bytes: () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]),
  },
  {
    name: "picture-named.csv",
    says: saidLike(text.notATable),
    bytes: () => new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d]),
  },
  { name: "utf-16-le-with-mark.csv", says: null, bytes: () => utf16(`\ufeff${CSV}`, true) },
  { name: "utf-16-be-with-mark.csv", says: null, bytes: () => utf16(`\ufeff${CSV}`, false) },
  { name: "utf-16-le.csv", says: null, bytes: () => utf16(CSV, true) },
  { name: "utf-16-be.csv", says: null, bytes: () => utf16(CSV, false) },
  {
    name: "blank-lines.csv",
    says: null,
    bytes: () => strToU8(`${CSV}${"\n,,,,".repeat(200_000)}`),
  },
  { name: "blank-columns.csv", says: null, bytes: () => strToU8(`${CSV}${",".repeat(2_000_000)}`) },
  {
    name: "million-columns.csv",
    says: saidLike(text.tooWide),
    bytes: () => strToU8(`${CSV}\n${"x,".repeat(1_000_000)}`),
  },
  {
    name: "open-quote.csv",
    says: saidLike(text.longText),
    bytes: () => strToU8(`${CSV}\n"${CSV.repeat(1000)}`),
  },
  {
    name: "only-quotes.csv",
    says: saidLike(text.longText, text.empty),
    bytes: () => strToU8('"'.repeat(1_000_001)),
  },
  {
    name: "million-merges.xlsx",
    says: TOO_LARGE,
    isLarge: true,
    bytes: () =>
      below(
        `<mergeCells>${many(1_000_000, (at) => `<mergeCell ref="A${at + 1}:B${at + 1}"/>`)}</mergeCells>`,
      ),
  },
  {
    name: "million-styled-cells.xlsx",
    says: null,
    isLarge: true,
    bytes: () =>
      withRow(many(1_000_000, (at) => `<row r="${at + 10}"><c r="A${at + 10}" s="0"/></row>`)),
  },
  {
    name: "million-values.xlsx",
    says: TOO_LARGE,
    isLarge: true,
    bytes: () =>
      withRow(many(50_000, (at) => `<row r="${at + 10}">${"<c><v>1</v></c>".repeat(25)}</row>`)),
  },
  {
    name: "formulas-over-each-other.xlsx",
    says: null,
    isLarge: true,
    bytes: () => {
      const filling = '<f t="array" ref="H10:ZZ99999">1</f><v>1</v>';
      const more = `<c>${filling}</c>`.repeat(99);
      return withRow(
        many(600, (at) => `<row r="${at + 10}"><c r="H${at + 10}">${filling}</c>${more}</row>`),
      );
    },
  },
  {
    name: "million-rows.csv",
    says: saidLike(text.tooLong),
    isLarge: true,
    bytes: () => rows(1_000_000),
  },
  {
    name: "two-hundred-thousand-rows.csv",
    says: saidLike(text.tooLong),
    isLarge: true,
    bytes: () => rows(200_000),
  },
  {
    name: "open-quote-of-40-MB.csv",
    says: saidLike(text.longText),
    isLarge: true,
    bytes: () => strToU8(`${CSV}\n"${"x".repeat(40_000_000)}`),
  },
  {
    name: "60-MB.csv",
    says: saidLike(text.tooLarge),
    isLarge: true,
    bytes: () => strToU8("x".repeat(60 * 2 ** 20)),
  },
  {
    name: "bomb-of-700-MB.xlsx",
    says: saidLike(text.unpackedTooLarge),
    isLarge: true,
    bytes: () => bomb(700 * 2 ** 20),
  },
  {
    name: "bomb-of-90-MB.xlsx",
    says: DAMAGED,
    isLarge: true,
    bytes: () => bomb(90 * 2 ** 20),
  },
  {
    name: "one-bomb-many-times.xlsx",
    says: TOO_LARGE,
    isLarge: true,
    bytes: () => bomb(50 * 2 ** 20, undefined, 1000),
  },
];

function lockedWorkbook(): Uint8Array {
  const bytes = workbook();
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  for (let at = 0; at + 10 < bytes.length; at += 1) {
    // The flags of every entry of the directory.
    if (view.getUint32(at, true) === 0x02014b50) bytes[at + 8] = (bytes[at + 8] ?? 0) | 1;
  }
  return bytes;
}

/** One long text, named by very many cells: small in the file, endless when written out. */
function repeatedText(): Uint8Array {
  return changed((parts) => ({
    "xl/sharedStrings.xml": `<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>${"x".repeat(32_000)}</t></si></sst>`,
    [TAB]: strFromU8(parts[TAB] as Uint8Array).replace(
      /<sheetData>.*<\/sheetData>/s,
      `<sheetData>${many(2000, (at) => `<row r="${at + 1}"><c r="A${at + 1}" t="s"><v>0</v></c></row>`)}</sheetData>`,
    ),
  }));
}
