import * as text from "../../sentences/made/faces-page";
import type { FaceAnswer } from "../../wire/faces";
import { capital } from "../../wording/capital";
import { drawnItem } from "../charts/drawn-list";
import { hoursBar } from "../charts/hours-bar";
import { countText } from "../controls/count-words";
import { periodText } from "../controls/day-words";
import { element } from "../controls/element";
import { group } from "../controls/group";
import { longList } from "../controls/long-list";
import { userText } from "../controls/user-text";

/** A place's week, as the columns of the answer stand: place, week, plants, holds, over by. */
type Week = FaceAnswer["rows"][number];

const plantsIn = ([, , plants]: Week) => Number(plants);

/** Each place with its fullest week, and its weeks as bars in the frame of what it holds. */
export function placesList(weeks: readonly Week[]): HTMLElement {
  const places = new Map<string, Week[]>();
  for (const week of weeks) {
    const name = String(week[0]);
    places.set(name, [...(places.get(name) ?? []), week]);
  }
  return longList([...places], ([name, own]) => {
    const fullest = own.reduce((one, other) => (plantsIn(other) > plantsIn(one) ? other : one));
    const isOver = own.some(([, , , , over]) => Number(over) > 0);
    const most = Math.max(1, ...own.map((week) => Math.max(plantsIn(week), Number(week[3]))));
    return group({
      title: userText(name),
      tally:
        `${isOver ? text.tooFull() : ""} ${text.fullest({ plants: weekWords(fullest), week: periodText(String(fullest[1])) })}`.trim(),
      open: isOver,
      content: () =>
        element(
          "div",
          {},
          longList(own, (week) =>
            drawnItem({
              name: capital(periodText(String(week[1]))),
              value: weekWords(week),
              drawing: hoursBar(plantsIn(week), Number(week[3] ?? 0), most),
              below: [],
            }),
          ),
        ),
    });
  });
}

/** Its plants, of how many the place holds, and by how many it is too full. */
function weekWords([, , plants, holds, over]: Week): string {
  if (holds === null) return countText(Number(plants));
  const overBy = Number(over);
  return overBy > 0
    ? text.overBy({ plants: Number(plants), holds: Number(holds), over: overBy })
    : text.ofHolds({ plants: Number(plants), holds: Number(holds) });
}
