/**
 * What became of a word: of a column's header, or of a word in a cell.
 *
 * - **right**: read as what it means. A column that is not ours, or for whose meaning the product has
 *   no column, is right when it is left alone and named once.
 * - **asked**: the person is asked which of several it is, or it is named as not known, with what is
 *   left out because of it. A question counts as asked even where the first guess is right. Where the
 *   corpus says that nobody could be sure of a word in a cell (must: ask), asking is right.
 * - **wrong**: read as something else without a word: another column, another method, another step, two
 *   names made one or one name made two. Also a word that nobody can be sure of, decided without a word.
 * - **silent**: left out or left alone, and named nowhere.
 *
 * "Named" is what BATCH_CHECK lists of the whole column or of the cell, or a remark of the answer: what
 * a person meets who presses nothing more. That Set up shows every column with a list beside it, read or
 * not, is not naming.
 */
export const OUTCOMES = ["right", "asked", "wrong", "silent"] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** One line of the corpus with what became of it. */
export interface Scored {
  /** "records", "log", "method", "variety": what sort of line it is. */
  readonly kind: string;
  readonly language: string;
  /** The word as the office writes it. */
  readonly word: string;
  /** What it means, by the corpus. */
  readonly means: string;
  /** As what it was read, for the list; "" where it was left alone. */
  readonly readAs: string;
  readonly outcome: Outcome;
  /** Must never be asked about. */
  readonly common: boolean;
  /** Where it stands in the corpus: its table, or its number. */
  readonly at: string;
}

/** Shares of the lines that may end so, 0 to 1 (our choice). */
export interface Limits {
  readonly asked: number;
}
export const MOST_WRONG = 0.01;
export const LIMITS = { headers: { asked: 0.1 }, values: { asked: 0.15 } } as const;

export type Counts = Readonly<Record<Outcome, number>>;

export function countsOf(lines: readonly Scored[]): Counts {
  const counts = { right: 0, asked: 0, wrong: 0, silent: 0 };
  for (const { outcome } of lines) counts[outcome] += 1;
  return counts;
}

/** The limits that some lines miss, as they are printed; none where all hold. */
export function missed(lines: readonly Scored[], { asked }: Limits): readonly string[] {
  const counts = countsOf(lines);
  const share = (count: number) => (lines.length === 0 ? 0 : count / lines.length);
  const commonAsked = lines.filter(({ common, outcome }) => common && outcome !== "right");
  return [
    ...(share(counts.wrong) > MOST_WRONG ? [`wrong more than ${MOST_WRONG * 100} %`] : []),
    ...(counts.silent > 0 ? ["silent at all"] : []),
    ...(share(counts.asked) > asked ? [`asked more than ${asked * 100} %`] : []),
    ...(commonAsked.length > 0 ? [`${commonAsked.length} common ones not right`] : []),
  ];
}
