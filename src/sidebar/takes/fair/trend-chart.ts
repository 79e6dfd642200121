import * as text from "../../../sentences/made/takes-page";
import type { TrendRow } from "../../../wire/takes";
import { svg } from "../../controls/svg";
import { isSignal } from "../take-words";

/** Room above and below the lines, in parts of the height. */
const EDGE = 6;

/**
 * Take rates of periods as a course of dots: the band of what is ordinary behind them, the usual
 * rate dashed, a ring around a dot that is not ordinary, a hollow dot where takes are still counted.
 *
 * @param rows the periods to draw, all with a rate
 * @param label the same in words
 */
export function trendChart(rows: readonly TrendRow[], label: string): SVGElement {
  const at = (index: number) => `${round(((index + 0.5) / rows.length) * 100)}%`;
  const up = (share: number) => `${round(EDGE + (1 - share) * (100 - 2 * EDGE))}%`;
  const marks: SVGElement[] = [];
  rows.forEach((row, index) => {
    const { low, high } = row;
    if (low === null || high === null) return;
    marks.push(
      svg("rect", {
        class: "within",
        x: `${round((index / rows.length) * 100)}%`,
        width: `${round(100 / rows.length)}%`,
        y: up(high),
        height: `${round((high - low) * (100 - 2 * EDGE))}%`,
      }),
    );
  });
  const usual = rows[0]?.usual ?? null;
  if (usual !== null) {
    marks.push(svg("line", { class: "usual", x1: "0%", x2: "100%", y1: up(usual), y2: up(usual) }));
  }
  rows.forEach((row, index) => {
    const before = rows[index - 1];
    if (before === undefined) return;
    marks.push(
      svg("line", {
        class: "course",
        x1: at(index - 1),
        x2: at(index),
        y1: up(before.rate ?? 0),
        y2: up(row.rate ?? 0),
      }),
    );
  });
  rows.forEach((row, index) => {
    const centre = { cx: at(index), cy: up(row.rate ?? 0) };
    if (isSignal(row)) marks.push(svg("circle", { class: "signal", ...centre, r: "7" }));
    marks.push(svg("circle", { class: row.isOpen ? "open" : "counted", ...centre, r: "3.5" }));
  });
  if (usual !== null) {
    const words = svg("text", { x: "100%", y: up(usual), dy: "-4", "text-anchor": "end" });
    words.textContent = text.usualRate({ rate: usual });
    marks.push(words);
  }
  return svg("svg", { class: "chart", role: "img", "aria-label": label }, ...marks);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
