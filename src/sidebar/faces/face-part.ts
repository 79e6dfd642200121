import * as text from "../../sentences/made/faces-page";
import type { FaceAnswer, FaceName } from "../../wire/faces";
import { drawnWords } from "../charts/drawn-list";
import { amountText, countText, percentText } from "../controls/count-words";
import { dayText } from "../controls/day-words";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { longList } from "../controls/long-list";
import { notes, paragraph } from "../controls/paragraph";
import { userText, wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { SidebarContext } from "../section";
import { stateOf } from "../state";
import { placesList } from "./places-list";

export type FaceRow = FaceAnswer["rows"][number];

/**
 * Which columns of a row, from 0, stand out beside its name: they and the name are the line that is read first, and
 * the others follow below it.
 */
const FIRST: Readonly<Record<Exclude<FaceName, "places">, readonly number[]>> = {
  needs: [1, 2],
  costs: [3],
  balance: [5],
  lookback: [7, 8],
  germination: [4, 9],
};

/** An answer that is a table, a few lines a row; asked for when it is opened. */
export function facePart({ call, status }: SidebarContext, face: FaceName): HTMLElement {
  const body = element("fieldset", { class: "bare" });
  const state = stateOf<{ answer: FaceAnswer | null }>({ answer: null });
  state.on(["answer"], ({ answer }) => {
    if (answer === null) return;
    const { rows, remark } = answer;
    const list =
      rows.length === 0
        ? paragraph(text.nothing())
        : face === "places"
          ? placesList(rows)
          : longList(inTurn(face, rows), (row) => faceItem(answer, row, face));
    body.replaceChildren(paragraph(text.reading({ face })), list, ...notes(remark));
  });
  const part = disclosure({
    summary: text.title({ face }),
    content: () => {
      void whileWorking({
        status,
        doing: text.loading(),
        controls: [body],
        work: async () => state.set({ answer: await call("sidebarFace", { face }) }),
      });
      return body;
    },
  });
  part.dataset.part = face;
  return part;
}

/** Needs as they come; else the newest batch first, and before it what sums all up: of a look back, rows without a day. */
function inTurn(face: FaceName, rows: FaceAnswer["rows"]): FaceAnswer["rows"] {
  if (face === "needs") return rows;
  const newestFirst = [...rows].reverse();
  if (face !== "lookback") return newestFirst;
  const isSum = (row: FaceRow) => row[1] === null;
  return [...rows.filter(isSum), ...newestFirst.filter((row) => !isSum(row))];
}

/** A row: its name with what counts most, and below it all else that is known and not 0. */
function faceItem({ columns }: FaceAnswer, row: FaceRow, face: keyof typeof FIRST): HTMLElement {
  const first = FIRST[face];
  const shown = (at: number) =>
    valueText(row[at] ?? null, columns[at]?.kind ?? "text", face === "germination");
  const named = (at: number) => text.fact({ name: columns[at]?.name ?? "", value: shown(at) });
  // An amount and its unit belong together; others are told apart by their names.
  const isAmount =
    columns[first[1] ?? 0]?.kind === "text" && columns[first[0] ?? 0]?.kind === "number";
  const known = first.filter((at) => shown(at) !== "");
  const main = isAmount ? known.map(shown).join(" ") : known.map(named).join(" · ");
  const others = columns.map((_, at) => at).filter((at) => at > 0 && !first.includes(at));
  const facts = others.filter((at) => row[at] !== 0 && shown(at) !== "").map(named);
  return element(
    "div",
    { class: "batch" },
    drawnWords("p", userText(shown(0)), main),
    facts.length === 0 ? null : element("div", { class: "quiet" }, wholeText(facts.join(" · "))),
  );
}

function valueText(
  value: FaceRow[number],
  kind: FaceAnswer["columns"][number]["kind"],
  isDays: boolean,
): string {
  if (value === null) return "";
  if (typeof value === "string") return kind === "day" ? dayText(value) : value;
  if (kind === "share") return percentText(value);
  if (kind === "count") return countText(value);
  // Of days that are reckoned nobody wants more than halves.
  return isDays ? String(Math.round(value * 2) / 2) : amountText(value);
}
