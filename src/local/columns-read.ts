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
  readonly sure: "told" | "sure" | "likely" | "guessed" | "not used" | "scions";
  /** What else it may be. */
  readonly others: readonly string[];
  /** A few values from below the header; people by their initials. */
  readonly samples: readonly string[];
}

/** A word in cells that may mean more than one thing, or nothing. */
export interface WordAsked {
  readonly tab: string;
  /** The add-in's name for the column. */
  readonly column: string;
  readonly word: string;
  /** How many batches say it. */
  readonly batches: number;
  /** What it may mean, as the add-in calls it. */
  readonly others: readonly string[];
  /** Whether it is a name beside a near-alike one, which may be two. */
  readonly isPair: boolean;
}

export interface ColumnsRead {
  readonly columns: readonly ColumnRead[];
  readonly words: readonly WordAsked[];
  /** Every name that a column may be given. */
  readonly names: readonly string[];
}

/** The part of the built script's answer that is used here. */
interface Answer {
  readonly columns: readonly (Omit<ColumnRead, "tab" | "samples"> & {
    readonly samples: readonly NamedText[];
  })[];
  readonly choices: readonly string[];
  readonly words?: {
    readonly methods: readonly {
      readonly word: string;
      readonly fits: readonly string[];
      readonly batches: number;
    }[];
    readonly pairs: readonly {
      readonly column: string;
      readonly rare: NamedText;
      readonly batches: number;
      readonly common: NamedText;
    }[];
  };
}

interface NamedText {
  readonly text: string;
  /** Of people; null where the text names nobody. */
  readonly initials: string | null;
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
  if (!code.includes(`function ${CALL}(`)) return { columns: [], words: [], names: [] };
  const asked = drafts
    .filter(({ name }) => name === timetable || tabs.includes(name))
    .map(({ name, rows }): SheetDraft => ({ name, rows: rows.slice(0, ROWS_ASKED) }));
  const workbook = openScriptWorkbook(code, workbookData("records", asked), { settings });
  try {
    const columns = told
      .filter(([, , as]) => as === "header")
      .map(([readAs, header]) => ({ header, readAs }));
    const answers = tabs.map((tab) => ({
      tab,
      answer: answerOf(workbook, { tab, timetable, columns }),
    }));
    return {
      columns: answers.flatMap(({ tab, answer }) =>
        (answer?.columns ?? []).map((column): ColumnRead => {
          const samples = column.samples.map(shown);
          return { ...column, ...asTold(column.header, told), tab, samples };
        }),
      ),
      words: answers.flatMap(({ tab, answer }) => wordsAsked(tab, answer, told)),
      names: answers.find(({ answer }) => answer !== null)?.answer?.choices ?? [],
    };
  } finally {
    workbook.close();
  }
}

/** Null where the tab can't be read without what was told of it: then the other answers say why. */
function answerOf(
  workbook: ReturnType<typeof openScriptWorkbook>,
  request: {
    readonly tab: string;
    readonly timetable: string | null;
    readonly columns: readonly { readonly header: string; readonly readAs: string }[];
  },
): Answer | null {
  const { data } = workbook.run(CALL, request) as { readonly data?: Answer };
  return data ?? null;
}

/** What is asked of words in cells, but for what was told of them. */
function wordsAsked(
  tab: string,
  answer: Answer | null,
  told: readonly ToldWord[],
): readonly WordAsked[] {
  const isTold = (one: string, other = "") =>
    told.some(([name, word, as]) =>
      as === "value"
        ? sameText(word, one)
        : as === "not the same" && sameText(name, other) && sameText(word, one),
    );
  const { methods = [], pairs = [] } = answer?.words ?? {};
  return [
    ...methods
      .filter(({ word }) => !isTold(word))
      .map(({ word, fits, batches }): WordAsked => {
        const what = { column: METHOD, word, batches, others: fits };
        return { tab, ...what, isPair: false };
      }),
    ...pairs
      .filter(
        ({ rare, common }) => !isTold(rare.text, common.text) && !isTold(common.text, rare.text),
      )
      .map(({ column, rare, batches, common }): WordAsked => {
        // By their names, people too: initials of two that are alike tell nothing.
        const what = { column, word: rare.text, batches, others: [common.text] };
        return { tab, ...what, isPair: true };
      }),
  ];
}

/** The add-in's name for the column of methods. */
const METHOD = "Method";

function shown({ text, initials }: NamedText): string {
  return initials ?? text;
}

function sameText(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

/** What was told of a header counts before every guess. */
function asTold(header: string, told: readonly ToldWord[]): Partial<ColumnRead> {
  const row = told.filter(([, word, as]) => as === "header" && sameText(word, header)).at(-1);
  return row === undefined ? {} : { readAs: row[0], sure: "told", others: [] };
}
