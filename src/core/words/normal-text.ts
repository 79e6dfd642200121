const MARKS = /[\u0300-\u036f]/g;
const NOT_WORD = /[^\p{L}\p{N}]+/gu;

/**
 * Text made comparable: small letters, no accents, punctuation and line breaks as single
 * spaces, "#" and "n°" as "no".
 *
 * @example normalText("Qté. greffée\n(n°)") // "qte greffee no"
 */
export function normalText(text: string): string {
  return text
    .replace(/n\.?\s?[°º]|№|#/giu, " no ")
    .normalize("NFKD")
    .replace(MARKS, "")
    .toLowerCase()
    .replace(NOT_WORD, " ")
    .trim();
}
