/** The mix that is flavored: weighed, summed from its parts, or the one that the turns before left on the table. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import { firstOf } from "../lib/ways.ts";
import { beforeWays } from "./base-before.ts";
import { partWays } from "./base-part.ts";
import { tableWays } from "./base-table.ts";
import { type BaseWay, baseTurn, named } from "./base-turn.ts";
import { weighedWays } from "./base-weighed.ts";
import type { Draft } from "./draft.ts";
import { readBowls } from "./several-bowls.ts";
import { soManyOf } from "./so-many-of.ts";
import { splitHere } from "./split-here.ts";

const ways: readonly BaseWay[] = [
  soManyOf,
  splitHere,
  ({ reading, memory, weights }) => readBowls(reading, memory, weights),
  ...beforeWays,
  ...weighedWays,
  ...partWays,
  ...tableWays,
  ({ base }) => named({}, base),
];

/**
 * The base's inputs as far as this sentence and what lies on the table settle them.
 * @param weights every weight of the sentence, in g
 * @param targets the flavors that are asked for: their weights are no part of the base
 */
export const readBase = (
  reading: Reading,
  memory: Memory,
  weights: readonly Weighed[],
  targets: readonly Thing[],
): Draft => firstOf(ways, baseTurn(reading, memory, weights, targets)) ?? {};
