import type { ToldWord } from "./report-options";
import type { ScriptSettings } from "./script-services";
import { openScriptWorkbook } from "./script-workbook";
import { type SheetDraft, workbookData } from "./workbook-data";

/** How a column of the records was read, as the sidebar's Set up shows it. */
export interface ColumnRead {
  readonly tab: string;
  readonly header: string;
  /** One of the add-in's names; null where the column is left alone. */
  readonly readAs: string | null;
  readonly sure: "told" | "sure" | "likely" | "guessed" | "not used";
  /** What else it may be. */
  readonly others: readonly string[];
  /** A few values from below the header; people by their initials. */
  readonly samples: readonly string[];
}

export interface ColumnsRead {
  readonly columns: readonly ColumnRead[];
  /** Every name that a column may be given. */
  readonly names: readonly string[];
}

/** The part of the built script's answer that is used here. */
interface Answer {
  readonly columns: readonly (Omit<ColumnRead, "tab" | "samples"> & {
    readonly samples: readonly { readonly text: string; readonly initials: string | null }[];
  })[];
  readonly choices: readonly string[];
}

export interface ColumnsQuestion {
  readonly drafts: readonly SheetDraft[];
  /** The tabs with the records. */
  readonly tabs: readonly string[];
  /** The tab with the nursery's own timetable; null for the built-in one. */
  readonly timetable: string | null;
  readonly told: readonly ToldWord[];
  readonly settings: ScriptSettings;
}

const CALL = "sidebarColumns";
/** As much of a table tells what its columns hold. */
const ROWS_ASKED = 1000;

/**
 * Asks the built script how it reads the columns of the records, as the sidebar does.
 *
 * @param code the text of the built script; one without that call tells nothing
 */
export function columnsRead(code: string, question: ColumnsQuestion): ColumnsRead {
  const { drafts, tabs, timetable, told, settings } = question;
  if (!code.includes(`function ${CALL}(`)) return { columns: [], names: [] };
  const asked = drafts
    .filter(({ name }) => name === timetable || tabs.includes(name))
    .map(({ name, rows }): SheetDraft => ({ name, rows: rows.slice(0, ROWS_ASKED) }));
  const workbook = openScriptWorkbook(code, workbookData("records", asked), { settings });
  try {
    const answers = tabs.map((tab) => ({ tab, answer: answerOf(workbook, { tab, timetable }) }));
    return {
      columns: answers.flatMap(({ tab, answer }) =>
        (answer?.columns ?? []).map((column): ColumnRead => {
          const samples = column.samples.map(({ text, initials }) => initials ?? text);
          return { ...column, ...asTold(column.header, told), tab, samples };
        }),
      ),
      names: answers.find(({ answer }) => answer !== null)?.answer?.choices ?? [],
    };
  } finally {
    workbook.close();
  }
}

/** Null where the tab can't be read without what was told of it: then the other answers say why. */
function answerOf(
  workbook: ReturnType<typeof openScriptWorkbook>,
  request: { readonly tab: string; readonly timetable: string | null },
): Answer | null {
  const { data } = workbook.run(CALL, request) as { readonly data?: Answer };
  return data ?? null;
}

/** What was told of a header counts before every guess. */
function asTold(header: string, told: readonly ToldWord[]): Partial<ColumnRead> {
  const same = (one: string) => one.trim().toLowerCase() === header.trim().toLowerCase();
  const row = told.filter(([, word, as]) => as === "header" && same(word)).at(-1);
  return row === undefined ? {} : { readAs: row[0], sure: "told", others: [] };
}
