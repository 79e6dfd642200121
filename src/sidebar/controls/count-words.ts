import * as text from "../../sentences/made/controls";

/** A whole number with its thousands apart. @example countText(50000) // "50,000" */
export const countText = (number: number): string => text.number({ number });

/** A share as a percentage without decimals. @param part 0 to 1 */
export const percentText = (part: number): string => text.percent({ part });

/** The same; empty where there is none, which is not 0. */
export const shareText = (part: number | null): string => (part === null ? "" : percentText(part));

/** An amount of money or goods, to hundredths where it is not whole. @example amountText(1234.5) // "1,234.50" */
export function amountText(amount: number): string {
  const fixed = amount.toFixed(2);
  const whole = Math.trunc(Number(fixed));
  return Number(fixed) === whole ? countText(whole) : `${countText(whole)}${fixed.slice(-3)}`;
}
