import * as text from "../../sentences/made/check-page";
import type { CheckAnswer, CheckRow } from "../../wire/check";
import { disclosure } from "../controls/disclosure";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Section, SidebarContext } from "../section";
import { askedInSetUp } from "./asked-in-set-up";
import { rowLinks } from "./row-links";
import { troubleItem } from "./trouble-item";

/** With more troubles than this, what is read as said is folded. */
const TROUBLES_UNFOLDED = 20;
/** Of such a row nothing is used. */
const LEFT_OUT = new Set<CheckRow["code"]>(["line-without-batch", "line-without-step"]);

/** What could not be read or is hardly meant so; each leads to its cell, and to the question that mends it. */
export function checkSection(context: SidebarContext): Section {
  const { call, status } = context;
  const body = element("div");
  /** Those that Set up asks about, by its question. */
  const asked = new Map<string, HTMLElement>();
  const readAgain = plainButton(text.readAgain(), () => void load());
  const load = () =>
    whileWorking({
      status,
      doing: text.checking(),
      controls: [readAgain],
      work: async () => show(await call("sidebarCheck", null)),
    });
  const item = (row: CheckRow) => {
    const made = troubleItem(context, row);
    const part = askedInSetUp(row);
    if (part !== null) asked.set(part, made);
    return made;
  };
  const show = ({ rows, tally }: CheckAnswer) => {
    asked.clear();
    const groups = [false, true].flatMap((isReading) => {
      const some = rows.filter((row) => row.isReading === isReading);
      if (some.length === 0) return [];
      const facts = { number: some.length };
      return group({
        title: isReading ? text.readAsSaid(facts) : text.pleaseCheck(facts),
        tally: "",
        open: !isReading || rows.length <= TROUBLES_UNFOLDED,
        content: () => longList(some, item),
      });
    });
    body.replaceChildren(
      element("div", {}, wholeText(text.tally({ tally }))),
      ...leftOut(context, rows),
      ...(rows.length === 0 ? [paragraph(text.noTrouble())] : []),
      ...groups,
    );
  };
  const heading = element("h2", {}, text.title());
  return {
    element: element("section", {}, heading, paragraph(text.howTo(), " ", readAgain), body),
    load,
    lead: async (part) => asked.get(part) ?? null,
  };
}

/** The way to the rows that the tally counts as left out. */
function leftOut(context: SidebarContext, rows: readonly CheckRow[]): HTMLElement[] {
  const places = rows
    .filter(({ code }) => LEFT_OUT.has(code))
    .flatMap(({ rows: all }) => all.map((row) => ({ row, column: "" })))
    .sort((a, b) => a.row - b.row);
  return places.length === 0
    ? []
    : [
        disclosure({
          summary: text.leftOutRows({ rows: places.length }),
          content: () => rowLinks(context, places),
        }),
      ];
}
