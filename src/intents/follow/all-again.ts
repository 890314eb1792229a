/**
 * "now both for 240 g chocolate", "both again, doubled", "50 at 3.5 cm, both": every question of the last turn, each
 * with what changes. What one of them took from another's answer is taken from the new one.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { orderBefore } from "./order-said.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";
import { timesOfAll } from "./times-plain.ts";

export interface AllAgain {
  /** In the order in which they were asked. */
  topics: readonly Topic[];
  /** What is said of each of them. */
  rest: string;
  /** The same, where each is to be asked in its own words. */
  restOf?(topic: Topic): string;
}

const noun =
  "(?: (?:numbers|figures|sums|answers|questions|amounts|results|things|weights|conversions|of (?:them|those|these|the (?:sums|numbers|answers))))?";
const allOf = new RegExp(
  `(?:^|,? )(?:and |do |for |give me |tell me |run |now )*(?:the )?(?:same )?(?:both|the two|those two|all (?:two|three|four|of (?:them|those|these))|each of (?:them|those|these)|each one|each|everything)${noun}(?: (?:again|once more|over|too|as well|please|pls|then|now))*(?= ?[,.?!;:]| |$)`,
);

const ofEachKind = /\bof each(?! of)\b/;

/** What the words come back to; undefined where they say nothing of all that was asked. Pure. */
export function allAgain(reading: Reading, state: State): AllAgain | undefined {
  const times = timesOfAll(reading, state);
  if (times) return { ...times, rest: "" };
  const { text, amounts } = reading;
  const { turn } = state;
  const topics = turn?.all ?? [];
  if (topics.length < 2 || amounts.length === 0) return undefined;
  // "20 of each instead", of an order in four colors: of each color, and not of each question
  if (ofEachKind.test(text) && orderBefore(state)?.ways !== undefined) return undefined;
  // bowls of one kind know themselves which of them are meant, and timers run each for itself
  const tools = new Set(topics.map(({ tool }) => tool));
  if (tools.size === 1 && !tools.has("convert")) return undefined;
  const said = spaced(text);
  const whole = timesAll.exec(said)?.[1];
  if (whole) return { topics, rest: `${plainTimes[whole]} that` };
  if (!allOf.test(said)) return undefined;
  const rest = said
    .replace(allOf, " ")
    .replace(/\s*,(?!\d)(?:\s*,(?!\d))*\s*/g, ", ")
    .replace(/^[\s,.;:!?]+|[\s,.;:!]+$/g, "")
    .replace(/\bof$/, "of that")
    .replace(timesAlone, (_, times) => `${plainTimes[times]} that`);
  return /[a-z0-9]/.test(rest) ? { topics, rest } : undefined;
}

const plainTimes: Readonly<Record<string, string>> = {
  doubled: "double",
  double: "double",
  twice: "double",
  halved: "half of",
  halve: "half of",
  half: "half of",
  tripled: "triple",
  triple: "triple",
  quadrupled: "quadruple",
  quadruple: "quadruple",
  "times two": "double",
  "times 2": "double",
  "twice as much": "double",
  "twice as many": "double",
  "half as much": "half of",
  "half as many": "half of",
  "times three": "triple",
  "times 3": "triple",
  "three times": "triple",
  "3 times": "triple",
  "three times as much": "triple",
  "three times as many": "triple",
};
/** "double it all", "halve the lot". */
const timesAll =
  /^(?:(?:and|but|now|then|so|please|ok) )*(double|halve|triple|quadruple) (?:it all|the (?:whole )?lot|all of (?:it|that|them)|them all|everything)(?: (?:please|pls|then|now|this time))*[ .?!]*$/;
const timesAlone = new RegExp(
  `^(?:(?:and|but|now|then|so|please) )*(${Object.keys(plainTimes).join("|")})(?: of)?(?: that)?(?: (?:please|pls|then|now|this time))*$`,
);

/** It stands on its own and isn't taken from another's answer. */
export const isRoot = ({ from }: Topic): boolean => from === undefined;
