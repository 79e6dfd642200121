/** What the compiled messages call where more languages than English are built in: which is spoken, and its rules. */

let spoken = "english";

/** From now on messages are in this language. @param name of its file: "french"; one not built in is English */
export function speak(name: string): void {
  spoken = name;
}

export const isSpoken = (name: string): boolean => spoken === name;

/** How a language writes numbers and lists. Source: Unicode CLDR, asked when the messages are compiled. */
export interface Grammar {
  /** The form for a number, by the names of CLDR. */
  readonly formOf: (value: number) => string;
  /** Between thousands: "." */
  readonly thousands: string;
  /** The least number whose thousands stand apart. */
  readonly apartFrom: number;
  /** Between two, between the earlier ones of several, before the last. */
  readonly between: { readonly two: string; readonly early: string; readonly last: string };
}

/** What runtime.ts is to English, to a further language. */
export function rulesOf({ formOf, thousands, apartFrom, between }: Grammar) {
  return {
    plural: (value: number, forms: Readonly<Record<string, string>>): string =>
      forms[value] ?? forms[formOf(value)] ?? (forms.other as string),
    count: (value: number): string => {
      const digits = String(Math.abs(Math.round(value)));
      const apart =
        Number(digits) < apartFrom ? digits : digits.replace(/\B(?=(\d{3})+$)/g, thousands);
      return (value < 0 ? "−" : "") + apart;
    },
    list: (items: readonly string[]): string => {
      if (items.length < 3) return items.join(between.two);
      return items.slice(0, -1).join(between.early) + between.last + items[items.length - 1];
    },
  };
}
