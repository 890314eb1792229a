/** Numbers that look like chance and come again in the same order, for laws, fuzzing and benchmarks. */
export type Chance = () => number;

/** Numbers from 0 up to 1, the same ones for the same seed (the mulberry32 generator). */
export function chance(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
