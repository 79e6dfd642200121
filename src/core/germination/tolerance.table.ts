/**
 * The largest range allowed between samples of 100 seeds, in per cent, by their mean; from 50 % up
 * the mean itself, below it the mean's distance to 100. The table is stored, since no rounding of a
 * formula gives it.
 *
 * Source: US Code of Federal Regulations, 7 CFR 201.55(a). The copy that was read ends at 71 %.
 */
export const ALLOWED_RANGE: readonly (readonly [
  mean: number,
  fourSamples: number,
  twoSamples: number | null,
])[] = [
  [99, 5, null],
  [98, 6, null],
  [97, 7, 6],
  [96, 8, 6],
  [95, 9, 7],
  [94, 10, 8],
  [93, 10, 8],
  [92, 11, 9],
  [91, 11, 9],
  [90, 12, 9],
  [89, 12, 10],
  [88, 13, 10],
  [87, 13, 11],
  [86, 14, 11],
  [85, 14, 11],
  [84, 14, 11],
  [83, 15, 12],
  [82, 15, 12],
  [81, 15, 12],
  [80, 16, 13],
  [79, 16, 13],
  [78, 16, 13],
  [77, 17, 13],
  [76, 17, 13],
  [75, 17, 14],
  [74, 17, 14],
  [73, 17, 14],
  [72, 18, 14],
  [71, 18, 14],
];
