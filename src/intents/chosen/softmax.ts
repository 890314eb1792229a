/**
 * Softmax regression by stochastic descent, the same every time: examples are drawn in an order of their own, no clock
 * and no randomness. Weights come out as small whole numbers with the step between them.
 */
export interface Example {
  /** Positions of the features that the example has. */
  features: number[];
  label: number;
}

const rounds = 40;
const batch = 64;
const pace = 0.03;
const shrink = 2e-5;

/** A fixed order that differs from round to round. */
function order(count: number, round: number): number[] {
  let seed = 12345 + round * 7919;
  const next = () => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return seed / 0x7fffffff;
  };
  const all = Array.from({ length: count }, (_, at) => at);
  for (let at = count - 1; at > 0; at--) {
    const other = Math.floor(next() * (at + 1));
    [all[at], all[other]] = [all[other] as number, all[at] as number];
  }
  return all;
}

/**
 * @param width how many features there are @param kinds how many labels
 * @returns weights by feature and label, the bias last, each times `step`
 */
export function softmax(
  examples: readonly Example[],
  width: number,
  kinds: number,
): { weights: Int8Array; step: number } {
  const size = (width + 1) * kinds;
  const [weights, gradient, mean, square] = [0, 0, 0, 0].map(() => new Float64Array(size)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const chances = new Float64Array(kinds);
  let step = 0;
  const value = (list: Float64Array, at: number) => list[at] as number;
  const learn = ({ features, label }: Example, share: number) => {
    const rows = [
      ...features.map((row) => [row, 1 / Math.sqrt(features.length) ** 0.5] as const),
      [width, 1] as const,
    ];
    chances.fill(0);
    for (const [row, by] of rows)
      for (let kind = 0; kind < kinds; kind++)
        chances[kind] = value(chances, kind) + value(weights, row * kinds + kind) * by;
    const top = Math.max(...chances);
    let all = 0;
    for (let kind = 0; kind < kinds; kind++) {
      chances[kind] = Math.exp(value(chances, kind) - top);
      all += value(chances, kind);
    }
    for (const [row, by] of rows)
      for (let kind = 0; kind < kinds; kind++) {
        const miss = value(chances, kind) / all - (kind === label ? 1 : 0);
        gradient[row * kinds + kind] = value(gradient, row * kinds + kind) + miss * by * share;
      }
  };
  const move = () => {
    step += 1;
    for (let at = 0; at < size; at++) {
      const slope = value(gradient, at) + shrink * value(weights, at);
      mean[at] = 0.9 * value(mean, at) + 0.1 * slope;
      square[at] = 0.999 * value(square, at) + 0.001 * slope * slope;
      const pull = value(mean, at) / (1 - 0.9 ** step);
      const size = Math.sqrt(value(square, at) / (1 - 0.999 ** step)) + 1e-8;
      weights[at] = value(weights, at) - (pace * pull) / size;
    }
    gradient.fill(0);
  };
  for (let round = 0; round < rounds; round++) {
    const sequence = order(examples.length, round);
    for (let from = 0; from < sequence.length; from += batch) {
      const drawn = sequence.slice(from, from + batch);
      for (const at of drawn) learn(examples[at] as Example, 1 / drawn.length);
      move();
    }
  }
  const widest = weights.reduce((most, each) => Math.max(most, Math.abs(each)), 1e-9);
  return {
    weights: Int8Array.from(weights, (each) => Math.round((each / widest) * 127)),
    step: widest / 127,
  };
}
