/**
 * Enumerations as Apps Script has them, such as SpreadsheetApp.SheetType: an object that bears every
 * one of its values, and so does each value. Written from the public reference of Apps Script, which
 * names ordinal(), name(), toString(), compareTo() and toJSON().
 * https://developers.google.com/apps-script/reference/calendar (any enumeration there is alike)
 */
export function newFakeGasenum(values, first) {
  const texts = Array.isArray(values)
    ? Object.fromEntries(values.map((name) => [name, name]))
    : values;
  const names = Object.keys(texts);
  const enumerated = names.map((name, ordinal) => enumValue(name, ordinal, texts[name]));
  const base = enumValue(
    first ?? names[0],
    Math.max(0, names.indexOf(first)),
    texts[first ?? names[0]],
  );
  for (const holder of [base, ...enumerated]) {
    names.forEach((name, ordinal) => {
      holder[name] = enumerated[ordinal];
    });
  }
  return base;
}

/** The same: the package that this stands in for warns of names that do not exist; we need no warning. */
export const newFakeGasenumSafe = newFakeGasenum;

function enumValue(name, ordinal, text) {
  return {
    name: () => name,
    ordinal: () => ordinal,
    toString: () => String(text),
    toJSON: () => text,
    compareTo: (other) => ordinal - other.ordinal(),
  };
}
