/** Ids: whole numbers from 1 up, each given once in its list. */
import type { Entry } from "./schema.ts";

/** High enough for any life, low enough that one more is always another number. */
const highest = 1e9;

export const isId = (id: number): boolean => Number.isInteger(id) && id >= 1 && id <= highest;

/**
 * Brings a list into the order of its ids. An entry whose id is none, or stands at an earlier entry already, gets a
 * new one above `last` and above all others. `mended` tells whether that was needed.
 */
export function orderById<E extends Entry>(
  list: E[],
  last: number,
): { list: E[]; last: number; mended: boolean } {
  let top = Math.max(isId(last) ? last : 0, ...tops(list));
  let mended = false;
  const taken = new Set<number>();
  const own = list.map((entry) => {
    const fits = isId(entry.id) && !taken.has(entry.id);
    if (!fits) mended = true;
    const id = fits ? entry.id : ++top;
    taken.add(id);
    return fits ? entry : { ...entry, id };
  });
  return { list: own.sort((one, other) => one.id - other.id), last: top, mended };
}

/** The highest id as a list of one. A spread of the whole list would be too many arguments for a long one. */
function tops(list: readonly Entry[]): [number] {
  let top = 0;
  for (const { id } of list) if (isId(id) && id > top) top = id;
  return [top];
}
