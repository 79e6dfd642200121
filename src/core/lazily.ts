/**
 * A value that is made when it is first asked for. The spreadsheet loads the whole built file for
 * every formula, and few formulas need all of the words or all of the mathematics.
 */
export function lazily<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
