import { lazily } from "../lazily";
import { normalText, withoutAccents, wordPattern, wordSet } from "../words";
import type { Unread } from "./unread";

/** What a text says when a number of plants is due in it. */
export type CountTextReading =
  | { readonly kind: "nothing" }
  | { readonly kind: "number"; readonly value: number; readonly isPlain: boolean }
  /** A share of what was there before, 0 to 1. */
  | { readonly kind: "share"; readonly share: number }
  | { readonly kind: "unread"; readonly why: Unread };

export type DecimalMark = "." | ",";

const ABOUT = wordSet((words) => words.about);
const DOZEN = wordSet((words) => words.dozen);
const COUNT_WORDS = wordSet((words) => words.countWords);
const NOTHING = wordSet((words) => words.nothing);
const TRAYS = wordSet((words) => words.trays);
const share = lazily(
  () => new RegExp(`^(\\d+(?:[.,]\\d+)?) ?(?:%|${wordPattern((words) => words.percent)})$`, "i"),
);

const product = lazily(
  () =>
    new RegExp(
      `^([1-9]\\d*) ?(?:(\\p{L}+) ?)?([x×*@]|${wordPattern((words) => words.of)}) ?([1-9]\\d*)(?: ?\\p{L}+)?$`,
      "iu",
    ),
);

const NUMBER = "\\d+(?:[.,]\\d+)?";
const NOT_PLAIN: CountTextReading = { kind: "unread", why: { code: "not-a-count" } };

/**
 * Reads a number as people write it in a shared table: "1,200", "1 200", "~300", "about 300",
 * "300+", "3 doz", "312 (12 weak)", "20 trays x 54", "80 %". Full-width digits count as digits.
 *
 * @param text        without spaces at its ends
 * @param decimalMark how the workbook's locale writes decimals; null when not known
 * @returns `isPlain` is false where the text was more than a plain number
 */
export function readCountText(text: string, decimalMark: DecimalMark | null): CountTextReading {
  const plain = text.normalize("NFKC").replace(/\s+/g, " ").trim();
  // A phone makes a long dash of a short one; "??" asks no more than "?".
  const mark = plain.replace(/[\u2010-\u2015\u2212]/g, "-").replace(/^([-?])\1+$/, "$1");
  if (NOTHING.has(mark.toLowerCase()) || NOTHING.has(normalText(plain))) return { kind: "nothing" };
  return (
    readDigits(plain, decimalMark) ??
    readShare(plain) ??
    readGuess(plain, decimalMark) ??
    readProduct(plain) ??
    readWithWord(plain, decimalMark) ??
    readLetterO(plain) ??
    (/^\D*\d*\s?[¼½¾⅓⅔]|\d⁄\d/u.test(text.trim()) || /\d\/\d/.test(plain)
      ? { kind: "unread", why: { code: "part-of-a-plant" } }
      : NOT_PLAIN)
  );
}

/** Digits alone, with or without a mark at the thousands. */
function readDigits(text: string, decimalMark: DecimalMark | null): CountTextReading | null {
  if (/^[+-]?\d+(?:\.\d*)?$/.test(text) && !/^[1-9]\d{0,2}\.\d{3}$/.test(text)) {
    return { kind: "number", value: Number(text), isPlain: true };
  }
  const grouped = /^[1-9]\d{0,2}(?:([ .,'’])\d{3})(?:\1\d{3})*$/.exec(text);
  if (grouped) {
    const value = Number(text.replace(/\D/g, ""));
    return { kind: "number", value, isPlain: grouped[1] !== decimalMark };
  }
  if (/^[+-]?\d+,\d+$/.test(text)) {
    return { kind: "number", value: Number(text.replace(",", ".")), isPlain: true };
  }
  return null;
}

function readShare(text: string): CountTextReading | null {
  const match = share().exec(text);
  if (!match) return null;
  const value = Number((match[1] as string).replace(",", ".")) / 100;
  return value <= 1
    ? { kind: "share", share: value }
    : { kind: "unread", why: { code: "over-100-percent" } };
}

/** "~300", "about 300", "> 300", "300+", "312 (12 weak)", "300?". */
function readGuess(text: string, decimalMark: DecimalMark | null): CountTextReading | null {
  const signed = /^[~≈±><≥≤]\s*(.+)$/.exec(text) ?? /^(.+?)\s*(?:\+|\?|\+\/-)$/.exec(text);
  const bracketed = /^([\d .,'’]+?) ?[([].*[)\]]$/.exec(text);
  const worded = /^(\p{L}[\p{L}. ]*?)\s*(\d.*)$/u.exec(text);
  const inner =
    signed?.[1] ??
    bracketed?.[1] ??
    (worded && ABOUT.has(normalText(worded[1] as string)) ? worded[2] : undefined);
  if (inner === undefined) return null;
  return readAsNumber(
    readDigits(inner.trim(), decimalMark) ?? readWithWord(inner.trim(), decimalMark),
  );
}

/** "20 trays x 54", "20 x 54", "20 trays of 54"; "20 dead of 54" is no product. */
function readProduct(text: string): CountTextReading | null {
  const match = product().exec(withoutAccents(text));
  if (!match) return null;
  const [, times, container, sign, each] = match;
  const isTimes = /^[x×*@]$/i.test(sign as string);
  if (!isTimes && !TRAYS.has(normalText(container ?? ""))) return null;
  return readAsNumber(number(Number(times) * Number(each)));
}

/** "3 doz", "312 plants". */
function readWithWord(text: string, decimalMark: DecimalMark | null): CountTextReading | null {
  const match = new RegExp(`^(${NUMBER}|[\\d .,]+?) ?(\\p{L}+)\\.?$`, "u").exec(text);
  if (!match) return null;
  const word = normalText(match[2] as string);
  const read = readDigits((match[1] as string).trim(), decimalMark);
  if (read?.kind !== "number") return null;
  if (DOZEN.has(word)) return readAsNumber(number(read.value * 12));
  return COUNT_WORDS.has(word) ? read : null;
}

/** A letter O among digits is a zero typed wrong, or read wrong by a scanner. */
function readLetterO(text: string): CountTextReading | null {
  if (!/^[\dOo]*\d[\dOo]*$/.test(text)) return null;
  return readAsNumber(number(Number(text.replace(/o/gi, "0"))));
}

function number(value: number): CountTextReading {
  return { kind: "number", value, isPlain: true };
}

function readAsNumber(reading: CountTextReading | null): CountTextReading | null {
  return reading?.kind === "number" ? { ...reading, isPlain: false } : reading;
}
