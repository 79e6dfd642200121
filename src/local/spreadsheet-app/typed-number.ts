import type { LocaleMarks } from "./locale-marks";

/** A number as it was typed, and the number format that this way of typing gives a plain cell. */
export interface TypedNumber {
  readonly value: number;
  /** '' when the cell stays without a format. */
  readonly pattern: string;
}

const CURRENCY = "[$€£¥₹]";

const shapes = new WeakMap<LocaleMarks, RegExp>();

/**
 * The number that a person means who types this text, or null.
 *
 * @param text without blanks around it
 * @example typedNumber("1,234.5", localeMarks("en_GB")) // { value: 1234.5, pattern: "#,##0.00" }
 * @example typedNumber("5%", localeMarks("en_GB")) // { value: 0.05, pattern: "0%" }
 */
export function typedNumber(text: string, marks: LocaleMarks): TypedNumber | null {
  // Most texts are words: one look at them is enough.
  if (!/\d/.test(text)) return null;
  const inBrackets = /^\((.+)\)$/.exec(text);
  const plain = inBrackets ? (inBrackets[1] as string) : text;
  const parts = shapeOf(marks).exec(plain);
  if (!parts) return null;
  const [, sign = "", before = "", innerSign = "", body = "", exponent, after = ""] = parts;
  if (sign && innerSign) return null;
  if (inBrackets && (sign || innerSign)) return null;
  if (before && after) return null;
  const [whole = "", fraction = ""] = body.split(marks.decimal);
  const size = Number(`${whole.replace(/\D/g, "") || "0"}.${fraction || "0"}e${exponent ?? "0"}`);
  if (!Number.isFinite(size)) return null;
  const negative = inBrackets !== null || sign === "-" || innerSign === "-";
  const scaled = after === "%" ? Number((size / 100).toPrecision(15)) : size;
  return {
    value: negative && scaled !== 0 ? -scaled : scaled,
    pattern: patternOf({
      currency: before || (after === "%" ? "" : after),
      percent: after === "%",
      grouped: /\D/.test(whole),
      fraction: fraction !== "",
      exponent: exponent !== undefined,
    }),
  };
}

function shapeOf(marks: LocaleMarks): RegExp {
  const found = shapes.get(marks);
  if (found) return found;
  const decimal = marks.decimal === "." ? "\\." : ",";
  const whole = `\\d{1,3}(?:${marks.group}\\d{3})+|\\d+`;
  const digits = `(?:${whole})(?:${decimal}\\d*)?|${decimal}\\d+`;
  const shape = new RegExp(
    `^([+-]?) ?(${CURRENCY})? ?([+-]?)(${digits})(?:[eE]([+-]?\\d{1,3}))? ?(%|${CURRENCY})?$`,
  );
  shapes.set(marks, shape);
  return shape;
}

interface Look {
  readonly currency: string;
  readonly percent: boolean;
  readonly grouped: boolean;
  readonly fraction: boolean;
  readonly exponent: boolean;
}

function patternOf({ currency, percent, grouped, fraction, exponent }: Look): string {
  if (exponent) return "0.00E+00";
  if (percent) return fraction ? "0.00%" : "0%";
  const decimals = fraction ? ".00" : "";
  if (currency) return `"${currency}"#,##0${decimals}`;
  return grouped ? `#,##0${decimals}` : "";
}
