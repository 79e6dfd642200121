/**
 * What belongs to a key: made when the key is first met, and kept.
 *
 * @param made what was made so far, to which it is added
 */
export function madeOnce<Key, Value>(made: Map<Key, Value>, key: Key, make: () => Value): Value {
  let value = made.get(key);
  if (value === undefined) {
    value = make();
    made.set(key, value);
  }
  return value;
}
