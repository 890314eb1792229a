/**
 * One pair of hands, worked backward: the order of the hands steps that starts latest.
 *
 * The shells are a chain (weigh, macaronage, then the trays): trays are alike, so piping them in the order of
 * their deadlines is never worse. Only the fillings can go in anywhere. What has been placed so far, counting
 * from the end of the day, is therefore told by how far up the chain it is and by which fillings are in it,
 * and all that matters of it is the moment until which the hands are free: the later that is, the later
 * anything before it can be. So the best of each such state, built up from the smaller ones, is exact over
 * all orders, in (links + 1) x 2^fillings states.
 */

import { latestHandsStart, type Window } from "./waking.ts";

/** Seconds of work, and the moment by which it must have ended. */
export interface HandsJob {
  readonly id: string;
  readonly length: number;
  readonly deadline: number;
}

export interface HandsStart {
  readonly job: HandsJob;
  readonly start: number;
}

/** A state as a number: links placed x 2^fillings + a bit for each filling placed. */
type State = number;

interface Path {
  readonly state: State;
  readonly step?: HandsStart;
  readonly before?: Path;
}

/**
 * The starts, first to last, that compare greatest from the first on: the latest first start, with it the
 * latest second one, and so on. Of equals, fillings come before shells, so that batter does not stand.
 * @param chain in order of time, each ending before the next starts
 * @param loose in any order; at most 10
 * @returns undefined when some job is longer than a waking window
 */
export function latestHands(
  chain: readonly HandsJob[],
  loose: readonly HandsJob[],
  window: Window,
): HandsStart[] | undefined {
  const masks = 2 ** loose.length;
  // The latest moment until which the hands can be free, by state; with nothing placed, for good.
  const free = new Float64Array((chain.length + 1) * masks).fill(-Infinity);
  free[0] = Infinity;
  const startOf = (job: HandsJob, placed: State): number =>
    latestHandsStart(window, Math.min(free[placed] as number, job.deadline), job.length);

  /** Every job that can come first in a state, with the state that is left. */
  const each = (state: State, visit: (job: HandsJob, placed: State) => void): void => {
    for (let i = 0; i < loose.length; i++) {
      if (state & (1 << i)) visit(loose[i] as HandsJob, state - (1 << i));
    }
    const link = chain[chain.length - Math.floor(state / masks)];
    if (link) visit(link, state - masks);
  };

  for (let state = 1; state < free.length; state++) {
    let latest = -Infinity;
    each(state, (job, placed) => {
      latest = Math.max(latest, startOf(job, placed));
    });
    free[state] = latest;
  }
  if (free.at(-1) === -Infinity) return undefined;

  // Forward again through the states of the best start, keeping all that tie until a later step tells them
  // apart.
  let paths: Path[] = [{ state: free.length - 1 }];
  while (paths.some(({ state }) => state > 0)) {
    const reached = new Map<State, Path>();
    for (const before of paths) {
      const start = free[before.state] as number;
      each(before.state, (job, state) => {
        // A state that is reached twice is kept by the path that comes first.
        if (startOf(job, state) === start && !reached.has(state)) {
          reached.set(state, { state, step: { job, start }, before });
        }
      });
    }
    const next = Math.max(...[...reached.keys()].map((state) => free[state] as number));
    paths = [...reached.values()].filter(({ state }) => free[state] === next);
  }
  return stepsOf(paths[0]);
}

function stepsOf(path: Path | undefined): HandsStart[] {
  const backward: HandsStart[] = [];
  for (let at = path; at?.step; at = at.before) backward.push(at.step);
  return backward.reverse();
}
