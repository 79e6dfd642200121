import { lazily } from "../lazily";
import { madeOnce } from "../made-once";
import {
  everyLanguage,
  type LanguageWords,
  longestBeginning,
  normalText,
  type TablePart,
  withoutAccents,
  wordSet,
} from "../words";
import type { Holds } from "./column-holds";

/** Tables that a nursery keeps beside its records. */
export type BesideTable = "orders" | "crew" | "closed-days" | "places" | "prices" | "germination";

const NAMES: Readonly<Record<string, string>> = {
  hours: "Hours a day",
  offFrom: "Off from",
  offTo: "Off to",
  soFar: "Up so far",
  sown: "Seeds sown",
  sownOn: "Sown on",
  up: "Came up",
};

/** What we call a column in its table: a format, in no language. */
export function besideName(field: string): string {
  return NAMES[field] ?? `${field.charAt(0).toUpperCase()}${field.slice(1)}`;
}

/** By what its header says, and by what stands below it, a column is taken for a field. */
export interface FieldRule<Field extends string = string> {
  readonly field: Field;
  /** Of these the header says one or more. */
  readonly any: readonly TablePart[];
  /** None of these. */
  readonly none: readonly TablePart[];
  /** What its cells may hold; a blank column may be any. */
  readonly holds: readonly Holds[];
}

/**
 * Which column is meant by which words: the field, words of which the header says one, after a bar words of
 * which it says none (`aside` goes without saying), and what the column holds. The first that fits a free
 * field counts. Written so because the spreadsheet loads every byte.
 */
const RULES: Readonly<Record<BesideTable, string>> = {
  orders:
    "delivered:hand|owed,price:count;" +
    "by:hand|ended,price:day;" +
    "by:due,want|ended,price,order:day;" +
    "wanted:plants|owed,hand,price:count;" +
    "variety:sort|price:text,count,serial;" +
    "customer:buyer|price,hand:text;" +
    "wanted:want|owed,hand,price:count;" +
    "order:order|owed,hand,price:text,count,serial;" +
    "closed:ended|owed,price,due:text,day",
  crew:
    "hours:hour|:count,serial,text;" +
    "offTo:last|first:day;" +
    "offFrom:first|last:day;" +
    "off:away|:day,text;" +
    "days:worked|task:text;" +
    "tasks:task|:text;" +
    "person:person|:text",
  "closed-days": "to:last|:day;" + "day:away,first,due|:day",
  prices: "price:price|order:count;" + "item:item|price:text;" + "per:unit|item,price:text,count",
  places: "holds:hold,plants|:count;" + "place:place|hold,plants:text,count,serial",
  germination: "sownOn:first|:day;" + "day:due|:day,count,serial;" + "up:plants|:count",
};

/** @throws never: tests hold every word of the lines to one that is known */
export function fieldRules<Field extends string>(table: BesideTable): readonly FieldRule<Field>[] {
  const words = (text: string) => (text === "" ? [] : text.split(","));
  return RULES[table].split(";").map((line) => {
    const [field, says, holds] = line.split(":") as [Field, string, string];
    const [any, none] = says.split("|").map(words) as [TablePart[], TablePart[]];
    // What is paid is no number of plants; in a list of prices it is what is asked for.
    const not: TablePart[] = table === "prices" ? none : ["aside", ...none];
    return { field, any, none: not, holds: words(holds) as Holds[] };
  });
}

/** Words known elsewhere that say the same in a header of these tables. */
function knownWords({
  tables,
  parts,
  facts,
  name,
  from,
  dayWords,
}: LanguageWords): Readonly<Partial<Record<TablePart, readonly string[]>>> {
  const { orders, crew, prices } = tables;
  return {
    order: orders.order,
    buyer: [...orders.customer, ...parts.customer],
    sort: [...orders.variety, ...parts.variety],
    want: orders.wanted,
    due: [...orders.by, ...dayWords],
    hand: [...orders.delivered, ...parts.gone],
    ended: [...orders.closed, ...parts.closed],
    owed: parts.rest,
    person: [...crew.person, ...facts.eventPerson, ...parts.person, ...parts.grafter, ...name],
    task: crew.tasks,
    hour: crew.hours,
    worked: crew.days,
    away: crew.off,
    first: from,
    last: tables.closedDays.to,
    item: prices.item,
    price: prices.price,
    unit: prices.per,
    hold: tables.places.holds,
    place: [...facts.place, ...parts.place],
  };
}

const partsOfWord = lazily(() => {
  const parts = new Map<string, Set<TablePart>>();
  const add = (part: TablePart, words: readonly string[]) => {
    for (const word of words)
      if (!word.includes(" ")) madeOnce(parts, word, () => new Set()).add(part);
  };
  for (const language of everyLanguage()) {
    for (const [part, words] of Object.entries(language.tableParts)) add(part as TablePart, words);
    for (const [part, words] of Object.entries(knownWords(language))) add(part as TablePart, words);
  }
  // "Hours", too, are a measure of something else in the records.
  for (const { parts: said } of everyLanguage()) {
    add(
      "aside",
      [...said.measure, ...said.stock].filter((word) => !parts.has(word)),
    );
  }
  return parts;
});

const SHORTEST_BEGINNING = 4;

const FILLERS = wordSet((words) => [
  ...words.dayWords,
  ...words.countWords,
  ...words.headerFillers,
]);

/** Whether a header has a word that says nothing known. */
export function hasUnknownWord(header: string): boolean {
  const words = normalText(header).split(" ");
  return words.some((word) => !FILLERS.has(word) && headerSays(word).size === 0);
}

const SHORTEST_CUT = 3;

/** More meanings than these are no evidence (our choice). */
const MOST_MEANT = 2;

/** "Cap.": what a word with a point behind it may be the beginning of; none where that is too much. */
function cutShort(word: string, header: string): ReadonlySet<TablePart> | undefined {
  if (word.length < SHORTEST_CUT) return undefined;
  if (!withoutAccents(header).toLowerCase().includes(`${word}.`)) return undefined;
  const whole = [...partsOfWord()].filter(([known]) => known.startsWith(word));
  const said = new Set(whole.flatMap(([, parts]) => [...parts]));
  return said.size > MOST_MEANT ? undefined : said;
}

/** What the words of a header say: each by itself, else by the longest beginning of it that is known. */
export function headerSays(header: string): ReadonlySet<TablePart> {
  const says = new Set<TablePart>(/[%$€£]/.test(header) ? ["aside"] : []);
  for (const word of normalText(header).split(" ")) {
    const parts =
      partsOfWord().get(word) ??
      longestBeginning(partsOfWord(), word, SHORTEST_BEGINNING) ??
      cutShort(word, header);
    for (const part of parts ?? []) says.add(part);
  }
  return says;
}
