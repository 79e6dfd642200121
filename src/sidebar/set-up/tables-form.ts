import * as text from "../../sentences/made/tables-page";
import type { BesideGuess, TablesAnswer, TableTold } from "../../wire/beside";
import { choice } from "../controls/choice";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { group } from "../controls/group";
import { notes, paragraph, quiet } from "../controls/paragraph";
import { isolated, shortened } from "../controls/shortened";
import type { PeopleShown } from "../people/people-shown";
import { columnItem } from "./column-item";

export interface TablesForm {
  readonly element: HTMLElement;
  /** What the person changed, and nothing else. */
  changes(): readonly TableTold[];
}

interface Options {
  readonly people: PeopleShown;
  /** Asks where the tables stand by what was changed, and waits for the answer. */
  readonly ask: (told: readonly TableTold[], show: (answer: TablesAnswer) => void) => void;
}

/**
 * The tables that a nursery may keep beside its records: in which tab each stands, and how its columns are read.
 * They are looked for once this is opened.
 */
export function tablesForm({ people, ask }: Options): TablesForm {
  const told = new Map<string, TableTold>();
  const all = element("div");
  const changes = () => [...told.values()];
  const change = (guess: BesideGuess, more: Partial<TableTold>) => {
    const { table } = guess;
    told.set(table, { table, columns: [], ...told.get(table), ...more });
  };
  const item = (guess: BesideGuess, tabs: readonly string[], open: boolean) => {
    const { table, name, tab, choices, columns } = guess;
    const select = choice(
      [
        { value: "", label: text.noTab() },
        ...inOrder(tabs, guess.likely).map((one) => {
          const named = shortened(one, 40);
          const label = one === guess.likely ? text.likelyTab({ tab: named }) : named;
          return { value: one, label };
        }),
      ],
      tab ?? "",
    );
    select.setAttribute("aria-label", text.tabOf({ name }));
    select.addEventListener("change", () => {
      // Columns of another tab are others.
      change(guess, { tab: select.value, columns: [] });
      ask(changes(), (answer) => draw(answer, table));
    });
    const chosen = new Map(told.get(table)?.columns.map((one) => [one.header, one.readAs]));
    const items = columns.map((one) =>
      columnItem({
        guess: one,
        said: chosen.get(one.header),
        choices,
        people,
        onSay: (said) => {
          if (said === undefined) chosen.delete(one.header);
          else chosen.set(one.header, said);
          change(guess, {
            columns: [...chosen].map(([header, now]) => ({ header, readAs: now })),
          });
        },
      }),
    );
    const lost = guess.lostTab === null ? null : text.lostTab({ tab: isolated(guess.lostTab) });
    return group({
      title: name,
      tally: tab === null ? text.noTab() : shortened(tab, 40),
      open,
      content: () =>
        element(
          "div",
          {},
          paragraph(text.whatFor({ table: table === "closed-days" ? "closed" : table })),
          ...notes(lost),
          field(text.tab(), select),
          ...notes(guess.isRead ? null : text.notReadYet({ name })),
          ...items.map((one) => one.element),
        ),
    });
  };
  const draw = ({ tabs, tables }: TablesAnswer, open = "") =>
    all.replaceChildren(...tables.map((one) => item(one, tabs, one.table === open)));
  return {
    element: group({
      title: text.title(),
      tally: "",
      open: false,
      content: () => {
        ask([], (answer) => draw(answer));
        return element("div", {}, quiet(text.youMay()), all);
      },
    }),
    changes,
  };
}

/** The likeliest first, then the others as they come. */
function inOrder(tabs: readonly string[], likely: string | null): readonly string[] {
  return likely === null ? tabs : [likely, ...tabs.filter((one) => one !== likely)];
}
