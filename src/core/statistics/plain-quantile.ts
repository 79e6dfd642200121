/**
 * The value below which a share of some values lies, as spreadsheets' QUANTILE and PERCENTILE have it.
 *
 * @param values one or more
 * @param share  0 to 1
 *
 * Method: linear between order statistics.
 * Source: Hyndman, R. J., Fan, Y. (1996). Sample quantiles in statistical packages. Amer. Statist.
 *   50, 361-365, definition 7 (from memory).
 */
export function plainQuantile(values: readonly number[], share: number): number {
  const rising = [...values].sort((one, other) => one - other);
  const at = (rising.length - 1) * share;
  const below = rising[Math.floor(at)] as number;
  const above = rising[Math.ceil(at)] as number;
  return below + (above - below) * (at - Math.floor(at));
}
