/**
 * How a locale writes decimals.
 *
 * @param locale such as "en_GB"; one that Intl does not know gives null
 */
export function decimalMark(locale: string): "." | "," | null {
  try {
    const parts = new Intl.NumberFormat(locale.replace(/_/g, "-")).formatToParts(1.5);
    const mark = parts.find(({ type }) => type === "decimal")?.value;
    return mark === "." || mark === "," ? mark : null;
  } catch {
    return null;
  }
}
