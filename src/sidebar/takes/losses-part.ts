import * as header from "../../sentences/made/loss-columns";
import * as text from "../../sentences/made/losses-page";
import type { LossesAnswer } from "../../wire/losses";
import { fateWords, lossesRemarks, reasonWords } from "../../wording/losses";
import { drawnItem, drawnList } from "../charts/drawn-list";
import { rangeTrack } from "../charts/range-track";
import { tableBehind } from "../charts/table-behind";
import { choice } from "../controls/choice";
import { amountText, countText, shareText } from "../controls/count-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { field } from "../controls/field";
import { longList } from "../controls/long-list";
import { notes, paragraph, quiet } from "../controls/paragraph";
import { userText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Called } from "../people/people-shown";
import type { SidebarContext } from "../section";
import { stateOf } from "../state";

type LostRow = LossesAnswer["rows"][number];

/** Where plants are lost, as bars that fall from what was started; asked for when it is opened. */
export function lossesPart({ call, status, people }: SidebarContext): HTMLElement {
  const fields = element("fieldset", { class: "bare" });
  const picture = element("div");
  const state = stateOf<{ answer: LossesAnswer | null }>({ answer: null });
  const draw = () => {
    const { answer } = state.now;
    if (answer === null) return;
    const select = choice(
      ["", ...answer.columns].map((value) => ({ value, label: value || text.all() })),
      answer.by,
    );
    select.addEventListener("change", () => {
      void load(select.value).then(() => fields.querySelector("select")?.focus());
    });
    fields.replaceChildren(field(text.by(), select));
    picture.replaceChildren(...drawn(answer, people.called));
  };
  const load = (by: string) =>
    whileWorking({
      status,
      doing: text.counting(),
      controls: [fields],
      work: async () => {
        state.set({ answer: await call("sidebarLosses", { by }) });
      },
    });
  state.on(["answer"], draw);
  people.onChange(draw);
  const part = disclosure({
    summary: text.title(),
    content: () => {
      void load("");
      return element("div", {}, fields, picture);
    },
  });
  part.dataset.part = "losses";
  return part;
}

function drawn(answer: LossesAnswer, called: Called): Node[] {
  const { isByReason, hasCosts } = answer;
  const rows = isByReason ? answer.rows : withoutBlankReasons(answer.rows);
  if (rows.length === 0) return [paragraph(text.none())];
  const groups = new Map<string, LostRow[]>();
  for (const row of rows) {
    const name = isByReason ? reasonWords(row.reason) || text.noReason() : called(row.group);
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  return [
    paragraph(isByReason ? text.readingReasons() : text.reading()),
    longList([...groups], ([name, own]) => group(name, own, answer)),
    tableBehind({
      summary: text.asTable(),
      title: text.title(),
      headers: [
        text.group(),
        header.stage(),
        header.plants(),
        header.ofStarted(),
        ...(hasCosts ? [header.cost()] : []),
      ],
      rows: () =>
        [...groups].flatMap(([name, own]) =>
          own.map((row) => [
            name || text.all(),
            isByReason ? fateWords(row) : rowWords(row),
            countText(row.plants),
            shareText(row.ofStarted),
            ...(hasCosts ? [row.cost === null ? "" : amountText(row.cost)] : []),
          ]),
        ),
    }),
    ...notes(lossesRemarks(answer, "page")),
    ...notes(answer.costRemark),
  ];
}

/** Culled plants of which nobody wrote why, put to those of their stage that nobody wrote down at all. */
function withoutBlankReasons(rows: readonly LostRow[]): readonly LostRow[] {
  const merged: LostRow[] = [];
  for (const row of rows) {
    const last = merged[merged.length - 1];
    const isLike =
      last !== undefined &&
      [last.stage, last.step, ...last.group.map(({ text: one }) => one)].join("\n") ===
        [row.stage, row.step, ...row.group.map(({ text: one }) => one)].join("\n") &&
      !last.reason &&
      !row.reason;
    if (!isLike) {
      merged.push(row.reason === "" ? { ...row, reason: null } : row);
      continue;
    }
    const ofStarted = last.ofStarted === null ? null : last.ofStarted + (row.ofStarted ?? 0);
    const cost = last.cost === null || row.cost === null ? null : last.cost + row.cost;
    merged[merged.length - 1] = { ...last, plants: last.plants + row.plants, ofStarted, cost };
  }
  return merged;
}

/** One group's bars: each begins where the one above it ended. */
function group(
  name: string,
  rows: readonly LostRow[],
  { isByReason, hasCosts }: LossesAnswer,
): HTMLElement {
  const most = Math.max(1, ...rows.map(({ plants }) => plants));
  const started = rows.find(({ stage }) => stage === "started")?.plants ?? most;
  const isWhole = ({ stage }: LostRow) => isByReason || stage === "started";
  const entries = rows.map((row, at) => {
    const above = rows.slice(0, at).filter((one) => !isWhole(one));
    const left = above.reduce((rest, { plants }) => rest - plants, started);
    const to = isWhole(row) ? row.plants : left;
    const from = isWhole(row) ? 0 : left - row.plants;
    const words = isByReason ? fateWords(row) : rowWords(row);
    const value =
      row.ofStarted === null || row.stage === "started"
        ? countText(row.plants)
        : text.plantsAndShare({ plants: row.plants, share: row.ofStarted });
    return drawnItem({
      name: userText(words),
      value,
      drawing: rangeTrack({ from, likely: from, to, most, mark: "tick", label: value }),
      below: hasCosts && row.cost ? [quiet(text.cost({ cost: amountText(row.cost) }))] : [],
    });
  });
  return element(
    "div",
    {},
    name === "" ? null : paragraph(element("strong", {}, userText(name))),
    drawnList({ label: name || text.title(), ends: ["0", countText(most)], entries }),
  );
}

/** What became of the plants, and why they were culled. */
function rowWords(row: LostRow): string {
  const { reason } = row;
  const fate = fateWords(row);
  return reason === null ? fate : text.culledAt({ stage: fate, reason: reasonWords(reason) });
}
