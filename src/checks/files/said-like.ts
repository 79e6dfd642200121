/** A message of files, whatever facts it is given. */
type Message = (facts: never) => string;

/** Stands for a text, or for a number, that is not known beforehand. */
const ANY_TEXT = "\uFFFF";
const ANY = {
  file: ANY_TEXT,
  tab: ANY_TEXT,
  row: Number.NaN,
  column: Number.NaN,
  tabs: Number.NaN,
};

/** What one of these messages says, of any file and with any numbers. */
export function saidLike(...messages: readonly Message[]): RegExp {
  const said = messages.flatMap((message) =>
    ["tab", "file"].map((where) =>
      (message as (facts: object) => string)({
        ...ANY,
        where,
        size: Number.NaN,
        most: Number.NaN,
      }),
    ),
  );
  const patterns = said.map((text) =>
    text
      .replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
      .replaceAll(ANY_TEXT, ".*")
      .replace(/NaN|null/g, "[\\d,]+"),
  );
  return new RegExp(`^(?:${patterns.join("|")})$`);
}
