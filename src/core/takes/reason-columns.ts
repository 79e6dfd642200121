import { FACT_NAMES, type Records } from "../records";
import { numberBands } from "../statistics";
import type { TakenBatch } from "./counted-batches";
import type { GroupColumn } from "./group-column";
import { groupColumns } from "./grouping";
import { madeColumn } from "./made-columns";

/** A recorded column, with what each counted batch has in it; numbers as bands, blank as empty text. */
export interface RecordedColumn {
  readonly name: string;
  /** Whether it names people. */
  readonly people: boolean;
  readonly texts: readonly string[];
}

const FACTS = ["variety", "rootstock", "method", "place", "grafter", "scionSource"] as const;
const MOST_BANDS = 4;
/** Batches a month from which months are looked at, and below which seasons are (our choice). */
const BATCHES_A_MONTH = 4;

/** The columns that may go with takes: the facts that the records have, and what is made from days. */
export function recordedColumns(
  records: Records,
  counted: readonly TakenBatch[],
): readonly RecordedColumn[] {
  const facts = FACTS.filter((fact) =>
    records.columns.some(({ target }) => target?.kind === "fact" && target.fact === fact),
  ).flatMap((fact) => groupColumns(FACT_NAMES[fact], records));
  const textsOf = (column: GroupColumn) => counted.map(({ batch }) => column.valueOf(batch));
  const columns = facts.map(
    (column): RecordedColumn => ({ ...asRecorded(column), texts: textsOf(column) }),
  );
  for (const name of ["Rootstock age in weeks", "Scion days stored"]) {
    const column = givenOrMade(name, records);
    if (column !== null) columns.push({ name, people: false, texts: banded(textsOf(column)) });
  }
  const month = givenOrMade("Month", records);
  if (month !== null) {
    const texts = textsOf(month);
    const months = new Set(texts).size;
    const season = givenOrMade("Season", records);
    if (counted.length >= BATCHES_A_MONTH * months || season === null) {
      columns.push({ ...asRecorded(month), texts });
    } else columns.push({ ...asRecorded(season), texts: textsOf(season) });
  }
  // What is made from days that nobody wrote is no recorded column.
  return columns.filter(
    ({ texts }, index) => index < facts.length || texts.some((text) => text !== ""),
  );
}

function asRecorded({ name, people }: GroupColumn): Omit<RecordedColumn, "texts"> {
  return { name, people };
}

function givenOrMade(name: string, records: Records): GroupColumn | null {
  const given = records.columns.some(({ header }) => header.toLowerCase() === name.toLowerCase());
  return given ? (groupColumns(name, records)[0] ?? null) : madeColumn(name, records);
}

/** Numbers as bands; other text stays. */
function banded(texts: readonly string[]): readonly string[] {
  const numbers = texts.map((text) => (text === "" ? Number.NaN : Number(text)));
  const known = numbers.filter(Number.isFinite);
  const bands = numberBands(known, MOST_BANDS);
  let next = 0;
  return texts.map((text, index) => {
    if (!Number.isFinite(numbers[index])) return text;
    next += 1;
    return bands[next - 1] as string;
  });
}
