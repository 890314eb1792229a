/** "muggy in here, make it 50", behind a timer: why, and how long the one that runs is to be. */
import { opening } from "../../../data/words/openers.ts";
import type { Memory } from "../contract/index.ts";
import type { Piece } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { remembered } from "./rename.ts";
import { timeOf } from "./set.ts";

const order = new RegExp(
  `^(.*?) (?:, )?(?:so |, )${opening}(?:(?:so|then|better|lets|please|just|i|we|you|can|could|should|might as well|id) )*(?:make|set|change|turn|call|put|take) (?:it|that|them|this) (?:(?:to|up|down|at|for|about|a) )*\\S*<(?:number|time)>(?: (?:min|mins|minutes|instead|then|please|pls|today|rather|not \\S+))*$`,
);

/** Something was put somewhere or taken up: another thing to be timed. */
const anotherOne =
  /(?:^| )(?:on|out|off|oven|fridge|freezer|timer|piped|next|now|started|starting|going|done|finished|ready|(?!today<)\S*<(?:[^>]*base|step|count=(?:trays|batches|bowls)|number|time|weight|when|temperature)[^>]*>)(?: |$)|(?:^| )in(?: (?!here|this|the (?:kitchen|air|room|house))|$)/;

/** The air, the shells or the hour: what a step of the bake takes longer or shorter for. */
const why =
  /(?:^| )(?:humid\S*|muggy|damp|moist|wet|rain\S*|drizzl\S*|storm\S*|steam\S*|dry|hot|warm|cold|chilly|cool|freezing|draughty|drafty|sticky|tacky|skin|soft|runny|thick|thin|late|behind|ahead|hurry|rush|rushed|slow|slower|quick|quicker|fast|faster|kitchen|weather|air|oven|longer|shorter|big|bigger|small|smaller|pale|brown|time|impatient)(?: |$|<)/;

/** Longer than this tells of more than why. */
const mostWords = 8;

export function whyAnew(some: readonly Piece[], mask: string, memory: Memory): Draft | undefined {
  if (memory.last?.tool !== "timer" || memory.names.timers.length === 0) return undefined;
  const told = order.exec(mask)?.[1];
  if (told === undefined || told.split(" ").length > mostWords || anotherOne.test(told)) return undefined;
  if (!why.test(told)) return undefined;
  const for_min = timeOf(
    some.filter((each) => !each.when),
    true,
  )?.for_min;
  return for_min === undefined ? undefined : { do: "move", for_min, ...remembered(memory) };
}
