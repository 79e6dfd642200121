/** What stands at the two ends of a drawing's width or height. */
export interface Ends {
  /** The value at the beginning; 0 where it is left out. */
  readonly least?: number;
  /** The value at the end; above `least`. */
  readonly most: number;
  /** Where the two stand, 0 to 100 % of the width or height; edge to edge where left out. */
  readonly from?: number;
  readonly to?: number;
}

/** Places in a drawing, as percentages: it then fits any width and zoom undistorted. */
export interface Scale {
  /** Where a value stands; one beyond an end stands at that end. */
  at(value: number): string;
  /** How long it is from one value to another, whichever is the larger; 0 % or more. */
  between(one: number, other: number): string;
}

/** @example scale({ most: 8 }).at(2) // "25%" */
export function scale({ least = 0, most, from = 0, to = 100 }: Ends): Scale {
  const place = (value: number) => {
    const share = Math.min(1, Math.max(0, (value - least) / (most - least)));
    return from + share * (to - from);
  };
  return {
    at: (value) => percent(place(value)),
    between: (one, other) => percent(Math.abs(place(other) - place(one))),
  };
}

/** To a hundredth of a percent: less than a tenth of a pixel in a page of 300 pixels. */
function percent(value: number): string {
  return `${Math.round(value * 100) / 100}%`;
}
