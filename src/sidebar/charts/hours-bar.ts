import { scale } from "./scale";
import { drawing, svg } from "./svg";

/**
 * Hours asked as a filled bar in the frame of those that are there. The numbers stand beside it in
 * words, so that it says nothing to those who listen.
 *
 * @param most what the full width stands for, above 0
 */
export function hoursBar(asked: number, there: number, most: number): SVGElement {
  const { at } = scale({ most });
  return drawing("hours-bar", null, [
    svg("rect", { class: "range", x: "0%", y: "25%", width: at(asked), height: "50%" }),
    svg("rect", { class: "frame", x: "0%", y: "10%", width: at(there), height: "80%" }),
  ]);
}
