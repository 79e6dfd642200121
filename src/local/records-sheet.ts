import type { ICellData } from "@univerjs/core";
import * as text from "../sentences/made/report";
import { freeName } from "./as-of-cell";
import type { Bundle } from "./bundle";
import { PersonError } from "./person-error";
import type { ReportOptions } from "./report-options";
import type { SheetDraft } from "./workbook-data";

/** The tabs that hold the records, and the one that the formulas point at. */
export interface RecordsTabs {
  /** The tabs of the file with the one pointed at among them. */
  readonly drafts: readonly SheetDraft[];
  readonly records: SheetDraft;
  /** Names of the file's tabs that it is made of. */
  readonly from: readonly string[];
  /** Whether the header of batches has none below it: a template that is not filled in yet. */
  readonly isBlank: boolean;
}

/** A title line or two and blank rows may stand above a header, no more is looked at. */
const HEADER_WITHIN = 10;
/** Lines of text that a blank template may have above its header. */
const TITLE_LINES = 2;
/** Of two tabs that share more batch names than this, one is a copy or an older state of the other. */
const MOST_SHARED = 0.3;

/**
 * The records of the batches. The add-in itself is asked of each tab whether it reads batches there,
 * so whatever it can read is found. Several such tabs (a log and a table of batches, lots and
 * grafts, a tab a season) are put under one another in a tab of their own.
 *
 * @param asked the tab that the person named, if they did, and what they told of columns
 * @throws PersonError when there is no such tab, or none can be read
 */
export function recordsTabs(
  drafts: readonly SheetDraft[],
  bundle: Bundle,
  { sheet, columns }: Pick<ReportOptions, "sheet" | "columns"> = { columns: [] },
): RecordsTabs {
  const tabs = drafts.map(({ name }) => name);
  if (sheet !== undefined) {
    const wanted = sheet.trim().toLowerCase();
    const named = drafts.find(({ name }) => name.trim().toLowerCase() === wanted);
    if (named) return { drafts, records: named, from: [named.name], isBlank: false };
    throw new PersonError(text.noTab({ tab: sheet, tabs }));
  }
  const asked = drafts
    .filter((draft) => !isTimetable(draft))
    .map((draft) => ({ draft, ...batchesIn(draft, bundle, columns) }));
  const filled = withoutCopies(asked.filter(({ names: batches }) => batches.length > 0));
  const readable = filled.length > 0 ? filled : blankTemplate(asked);
  const [first, ...more] = readable.map(({ draft }) => draft);
  if (!first) {
    throw new PersonError(text.noRecords({ tabs }));
  }
  if (more.length === 0) {
    return { drafts, records: first, from: [first.name], isBlank: filled.length === 0 };
  }
  const together: SheetDraft = {
    name: freeName(text.allRecords(), drafts),
    rows: [first, ...more].flatMap(({ rows }) => rows),
  };
  return {
    drafts: [...drafts, together],
    records: together,
    from: [first, ...more].map(({ name }) => name),
    isBlank: false,
  };
}

/**
 * The tab that holds the nursery's own timetable: one named Timetable whose header has Method
 * and Step.
 * @returns null when there is none, and the built-in timetable counts
 */
export function timetableSheet(drafts: readonly SheetDraft[]): SheetDraft | null {
  return (
    drafts.find((draft) => draft.name.trim().toLowerCase() === "timetable" && isTimetable(draft)) ??
    null
  );
}

function isTimetable({ rows }: SheetDraft): boolean {
  return rows.slice(0, HEADER_WITHIN).some((row) => {
    const cells = row.map((cell) =>
      String(cell?.v ?? "")
        .trim()
        .toLowerCase(),
    );
    return cells.includes("method") && cells.includes("step");
  });
}

/** Of tabs with nothing below their header the first that is one of batches; none where none is. */
function blankTemplate(tabs: readonly Readable[]): readonly Readable[] {
  const isBlank = ({ isHeaded, draft }: Readable) =>
    isHeaded && filledRows(draft) <= 1 + TITLE_LINES;
  return tabs.filter(isBlank).slice(0, 1);
}

function filledRows({ rows }: SheetDraft): number {
  return rows.filter((row) => row.some((cell) => String(cell?.v ?? "").trim() !== "")).length;
}

interface Readable {
  readonly draft: SheetDraft;
  /** Whether the add-in finds a header of batches. */
  readonly isHeaded: boolean;
  /** Names of the batches that the add-in reads. */
  readonly names: readonly string[];
  /** Whether any of them has plants counted. */
  readonly counted: boolean;
}

function batchesIn(
  draft: SheetDraft,
  bundle: Bundle,
  columns: ReportOptions["columns"],
): Omit<Readable, "draft"> {
  const balance = bundle.functions.find(({ name }) => name === "BATCH_BALANCE");
  if (!balance) return { isHeaded: false, names: [], counted: false };
  const values = draft.rows.map((row) => Array.from(row, plainValue));
  let isHeaded = false;
  const batchesTold = (told: ReportOptions["columns"]): unknown[][] => {
    try {
      const answer = balance.call(values, told.length === 0 ? "" : told) as unknown[][];
      isHeaded = true;
      // A closing remark stands alone in its row.
      return answer.slice(1).filter((row) => row.slice(1).some((cell) => cell !== ""));
    } catch {
      // No header of batches: another kind of tab.
      return [];
    }
  };
  const batches = batchesTold(columns);
  return {
    isHeaded,
    names: batches.map((row) => String(row[0])),
    counted: batches.some((row) => typeof row[1] === "number"),
  };
}

function plainValue(cell: ICellData | undefined): unknown {
  return cell?.v ?? "";
}

/** Leaves the longest of tabs that tell of the same batches, each with counts of its own. */
function withoutCopies(tabs: readonly Readable[]): readonly Readable[] {
  return tabs.filter((tab) =>
    tabs.every((other) => {
      if (other === tab || !tab.counted || !other.counted) return true;
      const names = new Set(other.names);
      const shared = tab.names.filter((name) => names.has(name)).length;
      if (shared <= tab.names.length * MOST_SHARED) return true;
      return (
        tab.names.length > other.names.length ||
        (tab.names.length === other.names.length && tabs.indexOf(tab) < tabs.indexOf(other))
      );
    }),
  );
}
