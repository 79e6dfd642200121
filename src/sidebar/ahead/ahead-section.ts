import * as text from "../../sentences/made/ahead-page";
import * as header from "../../sentences/made/batch-columns";
import { allMonths } from "../../sentences/made/batches";
import type { AheadAnswer } from "../../wire/ahead";
import { recordsRemarks } from "../../wording/records";
import { groupText } from "../../wording/takes";
import { drawnList } from "../charts/drawn-list";
import { tableBehind } from "../charts/table-behind";
import { choice } from "../controls/choice";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { notes, paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { shortened } from "../controls/shortened";
import { whileWorking } from "../controls/while-working";
import { facePart } from "../faces/face-part";
import { type Section, type SidebarContext, setUpOf } from "../section";
import { stateOf } from "../state";
import { monthItem, rangeText, whenText } from "./month-item";
import { batchesBehind, monthsOf, togetherOf, type Variety, varietyChoices } from "./month-ranges";

interface AheadState {
  /** As last read; null before. */
  readonly answer: AheadAnswer | null;
  /** The one that is looked at. */
  readonly variety: Variety;
}

/** What will be ready, by month and variety, as ranges drawn and as a table. */
export function aheadSection(context: SidebarContext): Section {
  const { call, status } = context;
  const body = element("div");
  const readAgain = plainButton(text.readAgain(), () => void load());
  const picture = element("div");
  const state = stateOf<AheadState>({ answer: null, variety: null });

  const load = () =>
    whileWorking({
      status,
      doing: text.loading(),
      controls: [readAgain],
      work: async () => {
        const answer = await call("sidebarAhead", null);
        // One that is gone from the records can't be looked at any more.
        const varieties = varietyChoices(answer);
        const { variety } = state.now;
        state.set({ answer, variety: varieties.includes(variety) ? variety : null });
      },
    });
  state.on(["answer"], ({ answer, variety: chosen }) => {
    if (answer === null) return;
    const varieties = varietyChoices(answer);
    const select = choice(
      varieties.map((variety, at) => ({ value: String(at), label: varietyWords(variety) })),
      String(varieties.indexOf(chosen)),
    );
    select.addEventListener("change", () => {
      state.set({ variety: varieties[Number(select.value)] ?? null });
    });
    const level = setUpOf(context)?.level ?? null;
    body.replaceChildren(paragraph(readingHelp(level)), field(text.variety(), select), picture);
    const remark = recordsRemarks(answer.remarks, "page");
    body.append(...notes(remark));
  });
  state.on(["answer", "variety"], ({ answer, variety }) => {
    if (answer !== null) picture.replaceChildren(...drawn(answer, variety));
  });
  const heading = element("h2", {}, text.title());
  const faces = (["lookback", "germination"] as const).map((face) => facePart(context, face));
  return { element: element("section", {}, heading, body, ...faces, readAgain), load };
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
    return [paragraph(text.noneComing({ leftOut: answer.remarks.length === 0 ? "no" : "yes" }))];
  }
  const most = Math.max(1, ...rows.map((row) => row.most));
  const tellVariety = variety === null;
  const name = shortened(varietyWords(variety));
  const all = togetherOf(answer, variety);
  return [
    ...(all === null
      ? []
      : [paragraph(text.together({ numbers: rangeText([all.fewest, all.likely, all.most]) }))]),
    drawnList({
      label: text.readyByMonth({ variety: name }),
      ends: ["0", text.upTo({ most })],
      entries: rows.map((row) =>
        monthItem({ row, most, batches: batchesBehind(answer, row), tellVariety }),
      ),
    }),
    tableBehind({
      summary: text.asTable(),
      title: text.readyOf({ variety: name }),
      headers: [
        header.month(),
        header.batches(),
        header.fewest(),
        header.likely(),
        header.most(),
        header.fewestByEnd(),
        header.likelyByEnd(),
        header.mostByEnd(),
      ],
      rows: () =>
        [...rows, ...(all === null ? [] : [all])].map((row) => [
          row === all ? allMonths() : whenText(row.month),
          ...[row.batches, row.fewest, row.likely, row.most].map(countText),
          ...[row.fewestByEnd, row.likelyByEnd, row.mostByEnd].map((plants) =>
            plants === null ? "" : countText(plants),
          ),
        ]),
    }),
  ];
}
