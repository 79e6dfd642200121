import * as text from "../../sentences/made/ahead-page";
import * as header from "../../sentences/made/batch-columns";
import type { AheadAnswer } from "../../wire/ahead";
import { recordsRemarks } from "../../wording/records";
import { groupText } from "../../wording/takes";
import { choice } from "../controls/choice";
import { countText } from "../controls/count-words";
import { monthText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { numberTable } from "../controls/number-table";
import { scaleLine } from "../controls/scale-line";
import { shortened } from "../controls/shortened";
import { wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import { type Section, type SidebarContext, setUpOf } from "../section";
import { monthItem } from "./month-item";
import { batchesBehind, monthsOf, type Variety, varietyChoices } from "./month-ranges";

/** What will be ready, by month and variety, as ranges drawn and as a table. */
export function aheadSection(context: SidebarContext): Section {
  const { call, status } = context;
  const body = element("div");
  const readAgain = element("button", { type: "button", class: "plain" }, text.readAgain());
  let chosen: Variety = null;

  const load = () =>
    whileWorking({
      status,
      doing: text.loading(),
      controls: [readAgain],
      work: async () => show(await call("sidebarAhead", null)),
    });
  const show = (answer: AheadAnswer) => {
    const varieties = varietyChoices(answer);
    if (!varieties.includes(chosen)) chosen = null;
    const select = choice(
      varieties.map((variety, at) => ({ value: String(at), label: varietyWords(variety) })),
      String(varieties.indexOf(chosen)),
    );
    const picture = element("div");
    const draw = () => {
      chosen = varieties[Number(select.value)] ?? null;
      picture.replaceChildren(...drawn(answer, chosen));
    };
    select.addEventListener("change", draw);
    draw();
    const level = setUpOf(context)?.level ?? null;
    body.replaceChildren(
      element("p", {}, readingHelp(level)),
      field(text.variety(), select),
      picture,
    );
    const remark = recordsRemarks(answer.remarks, "page");
    if (remark !== null) body.append(element("div", { class: "note" }, wholeText(remark)));
  };
  readAgain.addEventListener("click", () => void load());
  const heading = element("h2", {}, text.title());
  return { element: element("section", {}, heading, body, readAgain), load };
}

function readingHelp(level: number | null): string {
  return [
    text.reading(),
    ...(level === null ? [] : [text.holds({ level })]),
    text.showBatches(),
  ].join(" ");
}

function varietyWords(variety: Variety): string {
  return variety === null ? text.all() : groupText(variety);
}

function drawn(answer: AheadAnswer, variety: Variety): Node[] {
  const rows = monthsOf(answer, variety);
  if (rows.length === 0) {
    return [element("p", {}, text.noneComing())];
  }
  const most = Math.max(1, ...rows.map((row) => row.most));
  const tellVariety = variety === null;
  const name = shortened(varietyWords(variety));
  return [
    element(
      "div",
      { role: "group", "aria-label": text.readyByMonth({ variety: name }) },
      scaleLine("0", text.upTo({ most })),
      ...rows.map((row) =>
        monthItem({ row, most, batches: batchesBehind(answer, row), tellVariety }),
      ),
    ),
    disclosure({
      summary: text.asTable(),
      content: () =>
        numberTable({
          title: text.readyOf({ variety: name }),
          headers: [
            header.month(),
            header.batches(),
            header.fewest(),
            header.likely(),
            header.most(),
          ],
          rows: rows.map((row) => [
            monthText(row.month),
            ...[row.batches, row.fewest, row.likely, row.most].map(countText),
          ]),
        }),
    }),
  ];
}
