import { PersonError } from "./person-error";
import type { SheetDraft } from "./workbook-data";

/** The records may have title lines above their header, but not more than this many rows down. */
const HEADER_WITHIN = 10;

/** Words that the header of a records table is made of, one pattern a kind of column. */
const HEADER_WORDS: readonly RegExp[] = [
  /\bbatch/,
  /\bvariet/,
  /\brootstock/,
  /\bmethod\b/,
  /\bgrafter\b/,
  /\bsown\b|\bsowing\b/,
  /\bgerminat/,
  /\bgrafted\b|\bgrafts made\b/,
  /\btakes?\b/,
  /\bready\b/,
  /\bdispatched\b/,
  /\bculled\b/,
  /\bstep\b/,
  /\bcount\b/,
];
/** Batch and two more: fewer could be any table of a nursery. */
const FEWEST_WORDS = 3;

/**
 * The tab that holds the records of the batches.
 * @param sheetName the tab that the person named, if they did
 * @returns the tab named, or else the one whose header has most of a records table's words
 * @throws PersonError when there is no such tab
 */
export function recordsSheet(drafts: readonly SheetDraft[], sheetName?: string): SheetDraft {
  const names = drafts.map(({ name }) => name).join(", ");
  if (sheetName !== undefined) {
    const wanted = sheetName.trim().toLowerCase();
    const named = drafts.find(({ name }) => name.trim().toLowerCase() === wanted);
    if (named) return named;
    throw new PersonError(`There is no tab named "${sheetName}"; the tabs are: ${names}`);
  }
  const scored = drafts.map((draft) => ({ draft, score: headerScore(draft) }));
  const best = scored.reduce((a, b) => (b.score > a.score ? b : a));
  if (best.score >= FEWEST_WORDS) return best.draft;
  throw new PersonError(
    `No tab looks like the records of batches (a header with Batch, Variety, Sown, Grafted on ...); say which one with --sheet NAME: ${names}`,
  );
}

/** How many kinds of records columns the best of the first rows names; 0 without a batch column. */
function headerScore({ rows }: SheetDraft): number {
  const scores = rows.slice(0, HEADER_WITHIN).map((row) => {
    const cells = row.map((cell) => String(cell?.v ?? "").toLowerCase());
    const found = HEADER_WORDS.filter((word) => cells.some((text) => word.test(text)));
    return found.includes(HEADER_WORDS[0] as RegExp) ? found.length : 0;
  });
  return Math.max(0, ...scores);
}

/**
 * The tab that holds the nursery's own timetable: one named Timetable whose header has Method
 * and Step.
 * @returns null when there is none, and the built-in timetable counts
 */
export function timetableSheet(drafts: readonly SheetDraft[]): SheetDraft | null {
  const hasHeader = ({ rows }: SheetDraft) =>
    rows.slice(0, HEADER_WITHIN).some((row) => {
      const cells = row.map((cell) =>
        String(cell?.v ?? "")
          .trim()
          .toLowerCase(),
      );
      return cells.includes("method") && cells.includes("step");
    });
  return (
    drafts.find((draft) => draft.name.trim().toLowerCase() === "timetable" && hasHeader(draft)) ??
    null
  );
}
