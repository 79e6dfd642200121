import * as header from "../../sentences/made/take-columns";
import * as text from "../../sentences/made/takes-page";
import type { TakesAnswer, TakesRow } from "../../wire/takes";
import { choice } from "../controls/choice";
import { countText, percentText } from "../controls/count-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { longList } from "../controls/long-list";
import { numberTable } from "../controls/number-table";
import { scaleLine } from "../controls/scale-line";
import { shortened } from "../controls/shortened";
import { whileWorking } from "../controls/while-working";
import { initialsTick } from "../people/initials-tick";
import type { Called } from "../people/people-shown";
import type { Section, SidebarContext } from "../section";
import { fairTakes } from "./fair/fair-takes";
import { groupItem } from "./group-item";

/** Asked for before the script has said what it offers: it knows which columns the table has. */
const FIRST = "";

/** Take rates by any column, as a dot on its range, with counts. */
export function takesSection(context: SidebarContext): Section {
  const { call, status, people } = context;
  const fair = fairTakes(context);
  const fields = element("fieldset", { class: "bare" });
  const body = element("div");
  let by = FIRST;
  let answered: TakesAnswer | null = null;

  const load = () =>
    whileWorking({
      status,
      doing: text.counting(),
      controls: [fields],
      work: async () => show(await call("sidebarTakes", { by })),
    });
  const show = (answer: TakesAnswer) => {
    by = answer.by;
    const columns = answer.columns.includes(by) ? answer.columns : [by, ...answer.columns];
    const select = choice(
      columns.map((column) => ({ value: column, label: column })),
      by,
    );
    select.addEventListener("change", () => {
      by = select.value;
      void load().then(() => fields.querySelector("select")?.focus());
    });
    fields.replaceChildren(field(text.by(), select), again);
    answered = answer;
    draw();
  };
  const draw = () => {
    if (answered !== null) body.replaceChildren(...drawn(answered, people.called));
  };
  people.onChange(draw);
  const again = element("button", { type: "button", class: "plain" }, text.readAgain());
  again.addEventListener("click", () => void load());
  fields.append(again);
  const heading = element("h2", {}, text.title());
  const tick = initialsTick(people);
  return {
    element: element("section", {}, heading, fields, tick, body, fair.element),
    load: async () => {
      await Promise.all([load(), fair.load()]);
    },
  };
}

function drawn({ rows, by }: TakesAnswer, called: Called): Node[] {
  if (rows.length === 0) {
    return [element("p", {}, text.noBatch())];
  }
  const spread = rows.map((row) => row.spread).find((one) => one !== null) ?? null;
  return [
    element("p", {}, spreadWords(spread)),
    element(
      "div",
      { role: "group", "aria-label": text.takeRatesBy({ by: shortened(by) }) },
      scaleLine(percentText(0), percentText(1)),
      longList(rows, (row) => groupItem(row, called)),
    ),
    disclosure({ summary: text.asTable(), content: () => takesTable(rows, by, called) }),
  ];
}

/** Of the spread only where batches differ more than by chance, which is when the ranges were widened. */
function spreadWords(spread: number | null): string {
  if (spread === null || spread <= 1) return text.dotAndBar();
  const tenths = String(Math.round(spread * 10) / 10);
  return `${text.dotAndBar()} ${text.spread({ spread: tenths })}`;
}

function takesTable(rows: readonly TakesRow[], by: string, called: Called): HTMLElement {
  const share = (value: number | null) => (value === null ? "" : percentText(value));
  return numberTable({
    title: text.takeRatesBy({ by: shortened(by) }),
    headers: [
      shortened(by, 40),
      header.batches(),
      header.grafted(),
      header.taken(),
      text.columnRate(),
      header.from(),
      header.to(),
    ],
    rows: rows.map(({ group, batches, grafted, taken, rate, from, to }) => [
      called(group),
      ...[batches, grafted, taken].map(countText),
      ...[rate, from, to].map(share),
    ]),
  });
}
