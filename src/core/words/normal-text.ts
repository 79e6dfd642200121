const MARKS = /[\u0300-\u036f]/g;
const NOT_WORD = /[^\p{L}\p{N}]+/gu;
/** Nothing but what a keyboard in English writes, without "#": most names and headers. */
const PLAIN = /^[ -"$-~]*$/;
const NOT_PLAIN_WORD = /[^a-z0-9]+/g;

/** Text without its accents, all else as it is. @example withoutAccents("20 baquées à 54") // "20 baquees a 54" */
export function withoutAccents(text: string): string {
  return text.normalize("NFD").replace(MARKS, "");
}

/**
 * Text made comparable: small letters, no accents, punctuation and line breaks as single
 * spaces, "#" and "n°" as "no".
 *
 * @example normalText("Qté. greffée\n(n°)") // "qte greffee no"
 */
export function normalText(text: string): string {
  if (PLAIN.test(text)) return text.toLowerCase().replace(NOT_PLAIN_WORD, " ").trim();
  return text
    .replace(/n\.?\s?[°º]|№|#/giu, " no ")
    .normalize("NFKD")
    .replace(MARKS, "")
    .toLowerCase()
    .replace(NOT_WORD, " ")
    .trim();
}
