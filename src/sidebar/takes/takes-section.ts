import * as header from "../../sentences/made/take-columns";
import * as text from "../../sentences/made/takes-page";
import type { TakesAnswer, TakesRow } from "../../wire/takes";
import { drawnList } from "../charts/drawn-list";
import { tableBehind } from "../charts/table-behind";
import { choice } from "../controls/choice";
import { countText, percentText, shareText } from "../controls/count-words";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { longList } from "../controls/long-list";
import { paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { shortened } from "../controls/shortened";
import { whileWorking } from "../controls/while-working";
import { facePart } from "../faces/face-part";
import { initialsTick } from "../people/initials-tick";
import type { Called } from "../people/people-shown";
import type { Section, SidebarContext } from "../section";
import { stateOf } from "../state";
import { fairTakes } from "./fair/fair-takes";
import { groupItem } from "./group-item";
import { lossesPart } from "./losses-part";

/** Asked for before the script has said what it offers: it knows which columns the table has. */
const FIRST = "";

interface TakesState {
  /** The column that takes are counted by. */
  readonly by: string;
  /** As last read; null before. */
  readonly answer: TakesAnswer | null;
}

/** Take rates by any column, as a dot on its range, with counts. */
export function takesSection(context: SidebarContext): Section {
  const { call, status, people } = context;
  const fair = fairTakes(context);
  const fields = element("fieldset", { class: "bare" });
  const body = element("div");
  const state = stateOf<TakesState>({ by: FIRST, answer: null });

  const load = () =>
    whileWorking({
      status,
      doing: text.counting(),
      controls: [fields],
      work: async () => {
        const answer = await call("sidebarTakes", { by: state.now.by });
        state.set({ by: answer.by, answer });
      },
    });
  state.on(["answer"], ({ by, answer }) => {
    if (answer === null) return;
    const columns = answer.columns.includes(by) ? answer.columns : [by, ...answer.columns];
    const select = choice(
      columns.map((column) => ({ value: column, label: column })),
      by,
    );
    select.addEventListener("change", () => {
      state.set({ by: select.value });
      void load().then(() => fields.querySelector("select")?.focus());
    });
    fields.replaceChildren(field(text.by(), select), again);
  });
  const draw = () => {
    const { answer } = state.now;
    if (answer !== null) body.replaceChildren(...drawn(answer, people.called));
  };
  state.on(["answer"], draw);
  people.onChange(draw);
  const again = plainButton(text.readAgain(), () => void load());
  fields.append(again);
  const heading = element("h2", {}, text.title());
  const tick = initialsTick(people);
  return {
    element: element(
      "section",
      {},
      heading,
      fields,
      tick,
      body,
      fair.element,
      lossesPart(context),
      facePart(context, "balance"),
    ),
    load: async () => {
      await Promise.all([load(), fair.load()]);
    },
  };
}

function drawn({ rows, by }: TakesAnswer, called: Called): Node[] {
  if (rows.length === 0) {
    return [paragraph(text.noBatch())];
  }
  const spread = rows.map((row) => row.spread).find((one) => one !== null) ?? null;
  return [
    paragraph(spreadWords(spread)),
    drawnList({
      label: text.takeRatesBy({ by: shortened(by) }),
      ends: [percentText(0), percentText(1)],
      entries: [longList(rows, (row) => groupItem(row, called))],
    }),
    takesTable(rows, by, called),
  ];
}

/** Of the spread only where batches differ more than by chance, which is when the ranges were widened. */
function spreadWords(spread: number | null): string {
  if (spread === null || spread <= 1) return text.dotAndBar();
  const tenths = String(Math.round(spread * 10) / 10);
  return `${text.dotAndBar()} ${text.spread({ spread: tenths })}`;
}

function takesTable(rows: readonly TakesRow[], by: string, called: Called): HTMLElement {
  return tableBehind({
    summary: text.asTable(),
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
    rows: () =>
      rows.map(({ group, batches, grafted, taken, rate, from, to }) => [
        called(group),
        ...[batches, grafted, taken].map(countText),
        ...[rate, from, to].map(shareText),
      ]),
  });
}
