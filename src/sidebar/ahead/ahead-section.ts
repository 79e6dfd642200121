import { recordsRemarks } from "../../wording/records";
import { groupText } from "../../wording/takes";
import type { AheadAnswer } from "../../workbook/sidebar-calls";
import { choice } from "../controls/choice";
import { countText, percentText } from "../controls/count-words";
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
  const readAgain = element("button", { type: "button", class: "plain" }, "Read again");
  let chosen: Variety = null;

  const load = () =>
    whileWorking({
      status,
      doing: "Working out what will be ready",
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
    body.replaceChildren(element("p", {}, readingHelp(level)), field("Variety", select), picture);
    const remark = recordsRemarks(answer.remarks, "page");
    if (remark !== null) body.append(element("div", { class: "note" }, wholeText(remark)));
  };
  readAgain.addEventListener("click", () => void load());
  const heading = element("h2", {}, "Plants ready, by month");
  return { element: element("section", {}, heading, body, readAgain), load };
}

function readingHelp(level: number | null): string {
  const holds = level === null ? "" : ` ${percentText(level)} of such ranges should hold.`;
  return `The bar runs from fewest to most, the tick is the likely number.${holds} Press a month to see its batches.`;
}

function varietyWords(variety: Variety): string {
  return variety === null ? "All varieties" : groupText(variety);
}

function drawn(answer: AheadAnswer, variety: Variety): Node[] {
  const rows = monthsOf(answer, variety);
  if (rows.length === 0) {
    return [element("p", {}, "No open batch with counted plants is on its way to ready.")];
  }
  const most = Math.max(1, ...rows.map((row) => row.most));
  const tellVariety = variety === null;
  const name = shortened(varietyWords(variety));
  return [
    element(
      "div",
      { role: "group", "aria-label": `Plants ready by month: ${name}` },
      scaleLine("0", `${countText(most)} plants`),
      ...rows.map((row) =>
        monthItem({ row, most, batches: batchesBehind(answer, row), tellVariety }),
      ),
    ),
    disclosure({
      summary: "The same as a table",
      content: () =>
        numberTable({
          title: `Plants ready: ${name}`,
          headers: ["Month", "Batches", "Fewest", "Likely", "Most"],
          rows: rows.map((row) => [
            monthText(row.month),
            ...[row.batches, row.fewest, row.likely, row.most].map(countText),
          ]),
        }),
    }),
  ];
}
