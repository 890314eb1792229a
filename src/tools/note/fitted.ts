/** Where some words stand in a longer row of words: most alike, in their order, with as few left out as can be. */

/** A word alike is worth two that are left out. */
const [alike, leftOut] = [2, 1];

/** From the first word of the row that belongs to `own` up to behind the last. Costs the product of both lengths. */
export function fitted(own: readonly string[], row: readonly string[]): { from: number; to: number } {
  const length = row.length + 1;
  // at each place of the row: the best points of the words of `own` so far that end there, and where they began
  let [points, from] = [new Int32Array(length), Int32Array.from({ length }, (_, at) => at)];
  let [nextPoints, nextFrom] = [new Int32Array(length), new Int32Array(length)];
  for (const each of own) {
    nextPoints[0] = at(points, 0) - leftOut;
    nextFrom[0] = at(from, 0);
    for (let place = 1; place < length; place++) {
      const paired = at(points, place - 1) + (row[place - 1] === each ? alike : 0);
      const lost = at(points, place) - leftOut;
      const skipped = at(nextPoints, place - 1) - leftOut;
      const best = Math.max(paired, lost, skipped);
      nextPoints[place] = best;
      nextFrom[place] =
        best === paired ? at(from, place - 1) : best === lost ? at(from, place) : at(nextFrom, place - 1);
    }
    [points, nextPoints] = [nextPoints, points];
    [from, nextFrom] = [nextFrom, from];
  }
  const to = points.indexOf(points.reduce((one, other) => Math.max(one, other)));
  return { from: at(from, to), to };
}

const at = (list: Int32Array, place: number): number => list[place] ?? 0;
