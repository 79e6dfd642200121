import * as text from "../../sentences/made/set-up-page";
import type { ColumnGuess } from "../../wire/columns";
import type { EssentialColumn } from "../../wire/set-up";
import { choice } from "../controls/choice";
import { columnLetter } from "../controls/column-letter";
import { element } from "../controls/element";
import { paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { isolated, shortened } from "../controls/shortened";
import { stateOf } from "../state";

/** How a column is read by now. */
export interface Reading {
  readonly column: number;
  readonly header: string;
  readonly readAs: string | null;
  /** Whether it is a guess that nobody has said yes to. */
  readonly isGuess: boolean;
}

export interface Essentials {
  readonly element: HTMLElement;
  /** Shows what is known and what is missing by how the columns are read now. @returns our names of what is missing */
  show(readings: readonly Reading[]): readonly string[];
}

/**
 * Whether the columns are known without which most answers are blank, what each missing one costs, and which
 * column it may be: above all else, since tabs made without them mislead.
 *
 * @param onChoose reads a column as something; null for what it was before
 */
export function essentials(
  {
    columns,
    needed,
  }: { readonly columns: readonly ColumnGuess[]; readonly needed: readonly EssentialColumn[] },
  onChoose: (column: number, readAs: string | null) => void,
): Essentials {
  const head = element("div", { "aria-live": "polite" });
  const parts = needed.map((one) => {
    const [name = ""] = one.readAs;
    const likely = likeliest(columns, one);
    const select = choice(optionsFor(columns, likely), "");
    select.setAttribute("aria-label", text.whichIs({ name }));
    const state = stateOf({ chosen: "" });
    select.addEventListener("change", () => {
      const before = state.now.chosen;
      if (before !== "") onChoose(Number(before), null);
      state.set({ chosen: select.value });
      if (select.value !== "") onChoose(Number(select.value), name);
    });
    const item = element(
      "div",
      { class: "column" },
      paragraph(element("strong", {}, text.whichIs({ name }))),
      paragraph(text.costOfNone({ what: one.what })),
      select,
    );
    const use =
      likely === undefined
        ? null
        : plainButton(text.itIs({ header: isolated(likely.header, 30) }), () => {
            select.value = String(likely.column);
            select.dispatchEvent(new Event("change"));
            select.focus();
          });
    if (use !== null) item.append(use);
    const show = (readings: readonly Reading[]) => {
      // A column that was given to another question is offered no more.
      if (use !== null) {
        use.hidden = readings.some((one) => one.column === likely?.column && one.readAs !== null);
      }
      const read = readings.find(({ readAs }) => readAs !== null && one.readAs.includes(readAs));
      state.set({ chosen: read === undefined ? "" : String(read.column) });
      select.value = state.now.chosen;
      return read;
    };
    return { name, item, show };
  });
  // One that was missing stays in its place once it is chosen.
  const asked = new Set<HTMLElement>();
  const list = element("div");
  const title = paragraph(element("strong", {}, text.essentials()));
  const box = element("div", { class: "note", hidden: parts.length === 0 }, title, head, list);
  return {
    element: box,
    show: (readings) => {
      const found = parts.map((part) => ({ ...part, read: part.show(readings) }));
      const lacking = found.filter(({ read }) => read === undefined);
      const missing = lacking.map(({ name }) => name);
      for (const { item } of lacking) {
        if (asked.has(item)) continue;
        asked.add(item);
        list.append(item);
      }
      head.replaceChildren(...stateWords(found, missing));
      return missing;
    },
  };
}

interface Found {
  readonly name: string;
  readonly read: Reading | undefined;
}

/** What is found and where, what is a guess, and what is missing; a guess is nothing found yet. */
function stateWords(parts: readonly Found[], missing: readonly string[]): HTMLElement[] {
  const named = (isGuess: boolean) =>
    parts.flatMap(({ name, read }) =>
      read?.isGuess === isGuess ? text.inColumn({ name, letter: columnLetter(read.column) }) : [],
    );
  const say = (names: readonly string[], sentence: typeof text.essentialsFound) =>
    names.length === 0 ? [] : [paragraph(sentence({ names }))];
  return [
    ...say(named(false), text.essentialsFound),
    ...say(named(true), text.essentialsGuessed),
    ...say(missing, text.essentialsMissing),
  ];
}

/** The column left alone that may be it: by its first suggestion before a later one. */
function likeliest(
  columns: readonly ColumnGuess[],
  { readAs }: EssentialColumn,
): ColumnGuess | undefined {
  const left = columns.filter((one) => one.readAs === null);
  return (
    left.find(({ others: [first] }) => first !== undefined && readAs.includes(first)) ??
    left.find(({ others }) => others.some((other) => readAs.includes(other)))
  );
}

/** The likeliest first, then the columns that are left alone, then the others. */
function optionsFor(columns: readonly ColumnGuess[], likely: ColumnGuess | undefined) {
  const named = columns.filter(({ header }) => header !== "" && header !== likely?.header);
  const left = named.filter(({ readAs }) => readAs === null);
  const option = ({ column, header }: ColumnGuess) => ({
    value: String(column),
    label: shortened(header),
  });
  return [
    { value: "", label: text.noSuchColumn() },
    ...(likely === undefined
      ? []
      : [
          {
            value: String(likely.column),
            label: text.likelyColumn({ header: isolated(likely.header) }),
          },
        ]),
    ...left.map(option),
    ...named.filter(({ readAs }) => readAs !== null).map(option),
  ];
}
