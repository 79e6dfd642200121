import { showMore as moreWords } from "../../sentences/made/controls";
import { element } from "./element";

/** As many at a time as can be drawn without a pause and read without losing the place. */
const AT_ONCE = 40;

/** A list that shows its first entries and more on demand. @param atOnce how many at a time, 1 or more */
export function longList<Item>(
  items: readonly Item[],
  entry: (item: Item) => Node,
  atOnce: number = AT_ONCE,
): HTMLElement {
  const list = element("ul", { class: "list" });
  const more = element("button", { type: "button", class: "plain" });
  let shown = 0;
  const showMore = () => {
    const next = items.slice(shown, shown + atOnce).map((item) => element("li", {}, entry(item)));
    list.append(...next);
    shown += next.length;
    const left = items.length - shown;
    more.hidden = left === 0;
    more.textContent = moreWords({ next: Math.min(left, atOnce), left });
    return next[0];
  };
  more.addEventListener("click", () => {
    const first = showMore();
    // The button moved down or went away: go on reading where the new ones begin.
    first?.setAttribute("tabindex", "-1");
    first?.focus();
  });
  showMore();
  return element("div", {}, list, more);
}
