import * as text from "../../sentences/made/check-page";
import type { CheckAnswer } from "../../wire/check";
import { countText } from "../controls/count-words";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { paragraph } from "../controls/paragraph";
import { plainButton } from "../controls/plain-button";
import { wholeText } from "../controls/user-text";
import { whileWorking } from "../controls/while-working";
import type { Section, SidebarContext } from "../section";
import { troubleItem } from "./trouble-item";

/** With more troubles than this, what is read as said is folded. */
const TROUBLES_UNFOLDED = 20;

/** What could not be read or is hardly meant so; each leads to its cell. */
export function checkSection(context: SidebarContext): Section {
  const { call, status } = context;
  const body = element("div");
  const readAgain = plainButton(text.readAgain(), () => void load());
  const load = () =>
    whileWorking({
      status,
      doing: text.checking(),
      controls: [readAgain],
      work: async () => show(await call("sidebarCheck", null)),
    });
  const show = ({ rows, tally }: CheckAnswer) => {
    const groups = [false, true].flatMap((isReading) => {
      const some = rows.filter((row) => row.isReading === isReading);
      if (some.length === 0) return [];
      return group({
        title: isReading ? text.readAsSaid() : text.pleaseCheck(),
        tally: countText(some.length),
        open: !isReading || rows.length <= TROUBLES_UNFOLDED,
        content: () => longList(some, (row) => troubleItem(context, row)),
      });
    });
    body.replaceChildren(
      element("div", {}, wholeText(tally)),
      rows.length === 0 ? paragraph(text.noTrouble()) : paragraph(text.press()),
      ...groups,
    );
  };
  const heading = element("h2", {}, text.title());
  return { element: element("section", {}, heading, body, readAgain), load };
}
