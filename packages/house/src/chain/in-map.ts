/** What a map holds for a key; made and kept where it holds nothing yet. */
export function inMap<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  let found = map.get(key);
  if (found === undefined) {
    found = make();
    map.set(key, found);
  }
  return found;
}
