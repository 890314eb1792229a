/** A change that is of more than the last question: all of the last turn, or both of the last two. */
import type { Reading } from "../../tools/contract/index.ts";
import { isBare } from "../chosen/slots.ts";
import type { Inputs, State, Topic } from "./state.ts";

/** "and at 4 percent for both": of the last two that were asked about. */
const forBoth = /(?:^| )(?:both|each of (?:them|those|these)|(?:the )?two\S* of (?:them|those|these))(?: |$)/;

/** "now the same for salt", behind two bowls of one turn. */
const theSame = /^(?:(?:and|now|ok|so) )*(?:the )?same (?:again |two\S* |both )?(?:for|with|in|of) /;

/** "same again but for 54", "do that again for 54": all that the last turn asked. */
const allAgain =
  /^(?:(?:and|now|ok|okay|so|then|right|please|but|no|,) )*(?:(?:do|make|try|run|give me|work out|can you do) )?(?:(?:exactly )?(?:the )?same(?: (?:again|thing|things|two\S*|questions?|sums?|both|as before))*|(?:do )?(?:that|it|those|them|this)(?: all)? (?:again|over|once more)|once more|once again|again)(?: ,)? (?:(?:but|only|for|with|at|make it|now|this time|,) )*\S*<(?:number|length)[^ ]*(?: (?:\S*<count=macarons>|of them|this time|now|please|pls|then|instead|macs|across|wide))*(?: [?.])?$|^(?:(?:and|now|ok|okay|so|then|,) )*(?:for |with )?\S*<number[^ ]*(?: \S*<count=macarons>)? this time(?: [?.])?$/;

const ofAll = /(?:^| )(?:both|each|all|(?:two|three|four)\S* of (?:them|those|these))(?: |$)/;
/** What says nothing but another bowl. */
const ofBowl = new Set(["base_g", "base", "base_unit", "parts"]);

/**
 * "and for 300", behind lemon, rum and salt for one bowl: of all of them. Two bowls of one turn stay two, unless all is
 * said to be meant.
 */
function flavorsOfTurn(reading: Reading, keys: readonly string[], { last, past, turn }: State): Topic[] {
  const all = turn && turn.times > 1 && last?.tool === "dose" ? (past?.slice(-turn.times) ?? []) : [];
  const isOtherBowl = keys.includes("base_g") && keys.every((key) => ofBowl.has(key));
  if (!isOtherBowl || all.some(({ tool }) => tool !== "dose")) return [];
  const isOneBowl = all.every(
    ({ inputs }) => inputs.base_g === last?.inputs.base_g && inputs.base === last?.inputs.base,
  );
  const asked = all.every(({ inputs }) => inputs.flavor_g === undefined);
  return asked && (ofAll.test(reading.mask) || (isOneBowl && !namesOne.test(reading.mask))) ? all : [];
}

/** One of them is picked. */
const namesOne = /<[^>]*(?:dose|taste)=|(?:^| )(?:only|just) (?:that|the last|the first|the other)(?: |$)/;

/**
 * "for 40 now", behind "batter for 32 macarons and the filling for them": what the last turn asked of several
 * calculators is asked of all of them again, where each was given what changes.
 */
export function ofWholeTurn(reading: Reading, draft: Inputs, state: State): Topic[] {
  const { turn } = state;
  const keys = Object.keys(draft);
  const alike = flavorsOfTurn(reading, keys, state);
  if (alike.length > 1) return alike;
  // a size nobody has said is the usual one wherever macarons are counted
  const takes = (inputs: Inputs, key: string) =>
    key in inputs || (key === "diameter_mm" && "macarons" in inputs);
  // "powder color", behind a timer called "bake" and a gel color: what one is called is no name of the other
  const shared = (tool: string, key: string) => key !== "name" || tool === state.last?.tool;
  const every =
    turn &&
    keys.length > 0 &&
    turn.topics.every(({ tool, inputs }) => keys.some((key) => shared(tool, key) && takes(inputs, key)));
  // "so what's the filling for 42", behind batter and filling: of the one that is named
  const picks =
    reading.things.some((each) => each.base !== undefined) &&
    // "filling for 45 of those"
    /(?:^| )(?:what|whats|how much)(?: |$)|^(?:(?:and|so|now|the|ok) )*\S*base=\S* for \S*<number\S* of /.test(
      reading.mask,
    ) &&
    new Set(turn?.topics.map(({ tool }) => tool)).size > 1;
  const open =
    (isBare(reading) && !picks) ||
    allAgain.test(reading.mask) ||
    forBoth.test(reading.mask) ||
    /(?:^| )all(?: |$)/.test(reading.mask);
  return every && open ? turn.topics : [];
}

/**
 * The last two that one calculator was asked in a row, where a turn is of both; else none. Timers know themselves which
 * of them run.
 */
export const ofBoth = (reading: Reading, tool: string, { last, row, turn }: State): Inputs[] =>
  tool === last?.tool &&
  tool !== "timer" &&
  (forBoth.test(reading.mask) || (turn?.times === 2 && theSame.test(reading.mask)))
    ? (row?.slice(-2) ?? [])
    : [];
