import { InputError } from "../faults";
import { madeOnce } from "../made-once";
import { commonestSpellings } from "../names";
import { namesPeople } from "../people";
import { type Batch, factNamed, type Records, TEXT_FACTS } from "../records";
import { normalText } from "../words";
import type { GroupColumn } from "./group-column";
import { madeColumn } from "./made-columns";

/**
 * The columns named in `by`: one, or several joined with "+". A name is one of ours ("Variety"),
 * or a header as it stands in the sheet, capitals and accents aside, or a column that is made from
 * the records (see made-columns.ts).
 *
 * @param argument what the caller calls `by`
 * @throws InputError "no-such-column"
 */
export function groupColumns(
  by: string,
  records: Records,
  argument = "by",
): readonly GroupColumn[] {
  // A header may hold a "+" itself.
  const whole = records.columns.some(({ header }) => header !== "" && header === by.trim());
  const names = whole ? [by.trim()] : by.split("+").map((name) => name.trim());
  return names.map((name) => groupColumn(name, records, argument));
}

function groupColumn(name: string, records: Records, argument: string): GroupColumn {
  const fact = factNamed(name);
  const wanted = normalText(name);
  const matches = records.columns.filter(
    ({ target }) => target?.kind === "fact" && target.fact === fact,
  );
  if (fact !== null && matches.length > 0) return ofFact(matches[0]?.header ?? name, fact);
  const named = records.columns.filter(
    ({ header }) => wanted !== "" && normalText(header) === wanted,
  );
  const first = named[0];
  if (first === undefined) {
    const made = madeColumn(name, records);
    if (made !== null) return made;
    // A log has no column for it, but its lines may have told it: who grafted, which bench.
    const told = TEXT_FACTS.find((one) => one === fact);
    if (told !== undefined && records.batches.some((batch) => batch[told] !== "")) {
      return ofFact(name, told);
    }
    const known = new Set(records.columns.map(({ header }) => header));
    known.delete("");
    throw new InputError({ code: "no-such-column", argument, name, known: [...known] });
  }
  if (first.target?.kind === "fact") return ofFact(first.header, first.target.fact);
  const columnIn = new Map(named.map(({ table, column }) => [table, column]));
  const written = (batch: Batch) => {
    const column = columnIn.get(batch.table);
    return column === undefined ? "" : records.textIn(batch, column);
  };
  // "Blue tape" and "blue  tape" are one name, as under the columns that we know.
  const spelling = commonestSpellings(records.batches.map(written).filter(isName));
  const textOf = (batch: Batch) => {
    const text = written(batch);
    return spelling.get(text) ?? text;
  };
  return {
    name: first.header,
    people: namesPeople(records, first.header, textOf),
    valueOf: textOf,
  };
}

/** "A-" and "-5" are marks and numbers, which signs tell apart. */
function isName(text: string): boolean {
  return /\p{L}/u.test(text) && !/^[-+<>=]|[-+]$/.test(text);
}

/** A fact is taken from the batch, where it is filled down and gathered from logs. */
function ofFact(name: string, fact: string): GroupColumn {
  const textFact = TEXT_FACTS.find((one) => one === fact);
  return {
    name,
    people: fact === "grafter",
    valueOf: (batch) => {
      if (textFact !== undefined) return batch[textFact];
      if (fact === "batch") return batch.name;
      return fact === "closed" && batch.closed ? "yes" : "";
    },
  };
}

/** Batches that share the same texts in the group columns, in order of those texts. */
export interface BatchGroup {
  readonly values: readonly string[];
  readonly batches: readonly Batch[];
}

export function groupBatches(
  batches: readonly Batch[],
  by: readonly GroupColumn[],
): readonly BatchGroup[] {
  const groups = new Map<string, { values: string[]; batches: Batch[] }>();
  for (const batch of batches) {
    const values = by.map((column) => column.valueOf(batch));
    // Capitals alone don't make another group.
    const key = values.join("\n").toLowerCase();
    madeOnce(groups, key, () => ({ values, batches: [] })).batches.push(batch);
  }
  return [...groups.entries()].sort(([a], [b]) => inOrder(a, b)).map(([, group]) => group);
}

/** Numbers by size, so that week 9 stands before week 13; else by letters. */
function inOrder(a: string, b: string): number {
  const [one, other] = [Number(a), Number(b)];
  if (a !== "" && b !== "" && Number.isFinite(one) && Number.isFinite(other) && one !== other) {
    return one - other;
  }
  return a < b ? -1 : 1;
}
