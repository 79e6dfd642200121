import { scale } from "./scale";
import { drawing, level, svg, upright } from "./svg";

export interface RangeTrack {
  readonly from: number;
  readonly likely: number;
  readonly to: number;
  /** What the full width stands for; above 0. */
  readonly most: number;
  /** How the likely value is marked. */
  readonly mark: "tick" | "dot";
  /** What it is held against, as a dashed line from edge to edge. */
  readonly expected?: number;
  /** The same in words. */
  readonly label: string;
}

/**
 * A range drawn over the width of its place: a bar from end to end, closed by two short lines, with
 * the likely value marked.
 */
export function rangeTrack(track: RangeTrack): SVGElement {
  const { from, likely, to, most, mark, expected, label } = track;
  const { at, between } = scale({ most });
  const width = between(from, to);
  return drawing("track", label, [
    level("ground", "50%"),
    svg("rect", { class: "range", x: at(from), width, y: "30%", height: "40%" }),
    ...[from, to].map((end) => upright("end", at(end), ["22%", "78%"])),
    ...(expected === undefined ? [] : [upright("expected", at(expected), ["0%", "100%"])]),
    mark === "dot"
      ? svg("circle", { class: "likely", cx: at(likely), cy: "50%", r: "5" })
      : upright("likely", at(likely), ["8%", "92%"]),
  ]);
}
