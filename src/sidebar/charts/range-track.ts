import { svg } from "./svg";

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
 * the likely value marked. Placed by percentages, so that it fits any width and zoom undistorted.
 */
export function rangeTrack(track: RangeTrack): SVGElement {
  const { from, likely, to, most, mark, expected, label } = track;
  const at = (value: number) => `${percentOf(value, most)}%`;
  return svg(
    "svg",
    { class: "track", role: "img", "aria-label": label },
    svg("line", { class: "ground", x1: "0%", x2: "100%", y1: "50%", y2: "50%" }),
    svg("rect", {
      class: "range",
      x: at(from),
      width: `${percentOf(to - from, most)}%`,
      y: "30%",
      height: "40%",
    }),
    ...[from, to].map((end) =>
      svg("line", { class: "end", x1: at(end), x2: at(end), y1: "22%", y2: "78%" }),
    ),
    ...(expected === undefined
      ? []
      : [
          svg("line", {
            class: "expected",
            x1: at(expected),
            x2: at(expected),
            y1: "0%",
            y2: "100%",
          }),
        ]),
    mark === "dot"
      ? svg("circle", { class: "likely", cx: at(likely), cy: "50%", r: "5" })
      : svg("line", { class: "likely", x1: at(likely), x2: at(likely), y1: "8%", y2: "92%" }),
  );
}

function percentOf(value: number, most: number): number {
  const share = most > 0 ? Math.min(1, Math.max(0, value / most)) : 0;
  return Math.round(share * 1000) / 10;
}
