/**
 * What was worked out from a list is kept while the list is: the notes of ten years are looked through once for a
 * question, not again each time it is asked. A list that changed is another list.
 */

/** So many answers a list keeps; the one asked for longest ago goes first. */
const most = 60;

/**
 * @param make works it out from the list and what it is asked for; pure, and the list is never changed
 * @returns the same, remembering by the list itself and `key`
 */
export function perList<T extends object, K, R>(
  make: (list: T, asked: K) => R,
  key: (asked: K) => string,
): (list: T, asked: K) => R {
  const kept = new WeakMap<T, Map<string, { value: R }>>();
  return (list, asked) => {
    const own = kept.get(list) ?? new Map<string, { value: R }>();
    kept.set(list, own);
    const name = key(asked);
    const known = own.get(name);
    own.delete(name);
    const value = known ?? { value: make(list, asked) };
    own.set(name, value);
    if (own.size > most) own.delete(own.keys().next().value as string);
    return value.value;
  };
}
