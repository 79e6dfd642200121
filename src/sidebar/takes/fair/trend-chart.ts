import * as text from "../../../sentences/made/takes-page";
import type { TrendRow } from "../../../wire/takes";
import { scale } from "../../charts/scale";
import { drawing, level, svg } from "../../charts/svg";
import { isSignal } from "../take-words";
import { clearCorner } from "./clear-corner";

/** All of 100 stands a little below the top, none a little above the foot: rings have room there. */
const UP = scale({ most: 1, from: 94, to: 6 });

/**
 * Take rates of periods as a course of dots: the band of what is ordinary behind them, the usual
 * rate dashed, a ring around a dot that is not ordinary, a hollow dot where takes are still counted.
 *
 * @param rows the periods to draw, all with a rate
 * @param label the same in words
 */
export function trendChart(rows: readonly TrendRow[], label: string): SVGElement {
  const along = scale({ most: rows.length });
  const usual = rows[0]?.usual ?? null;
  const points = rows.map((row, index) => ({
    row,
    cx: along.at(index + 0.5),
    cy: UP.at(row.rate ?? 0),
  }));
  return drawing("chart", label, [
    ...rows.flatMap(({ low, high }, index) =>
      low === null || high === null
        ? []
        : [
            svg("rect", {
              class: "within",
              x: along.at(index),
              width: along.between(index, index + 1),
              y: UP.at(high),
              height: UP.between(low, high),
            }),
          ],
    ),
    ...(usual === null ? [] : [level("usual", UP.at(usual))]),
    ...points.flatMap(({ cx, cy }, index) => {
      const before = points[index - 1];
      if (before === undefined) return [];
      return [svg("line", { class: "course", x1: before.cx, x2: cx, y1: before.cy, y2: cy })];
    }),
    ...points.flatMap(({ row, cx, cy }) => [
      ...(isSignal(row) ? [svg("circle", { class: "signal", cx, cy, r: "7" })] : []),
      svg("circle", { class: row.isOpen ? "open" : "counted", cx, cy, r: "3.5" }),
    ]),
    ...(usual === null ? [] : [usualKey(usual, rows)]),
  ]);
}

/** What the dashes mean. Beside their line the words would stand on the course, which keeps near it. */
function usualKey(usual: number, rows: readonly TrendRow[]): SVGElement {
  const { end, side } = clearCorner(rows.map(({ rate }) => rate ?? 0));
  const words = svg("text", {
    x: end === "left" ? "0%" : "100%",
    y: UP.at(side === "foot" ? 0 : 1),
    dy: side === "foot" ? "0" : "9",
    "text-anchor": end === "left" ? "start" : "end",
  });
  words.textContent = `– – ${text.usualRate({ rate: usual })}`;
  return words;
}
