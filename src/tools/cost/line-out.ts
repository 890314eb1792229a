/** "and without the butter", "leave the sugar out", behind what several things cost: the sum without that line. */
import { sameIngredient } from "../lib/lines.ts";
import type { Draft, Turn } from "./draft.ts";

const lead =
  "(?:(?:and|so|ok|but|now|then|or|hm|oh|well|what|whats|it|that|is|if|i|we|how much|how about|what about|would|will|can|could|you|please|just|say|suppose|there|was|were|theres|had|used|put|be|do) )*";
const without =
  "(?:without|minus|less|no|not counting|not including|excluding|except|except for|leaving out|leave out|left out|leave|skip|skipped|drop(?:<\\S+)?|dropped|forget|scrap|ditch|lose|take out|take away|take off|take|took|remove|cut|cut out|omit|bin)";
const thing = "(?:{ingredient}|{chocolate})";
const end =
  "(?: (?:out|off|away|in|from|of|it|that|this|the|sum|bill|list|total|batch|recipe|lot|again|altogether|please|pls|then|though|what|whats|is|now|how much|,))*(?: [?])?$";

/** In the mask's language; behind an answer of this calculator only. */
export const lineOutTurns: readonly string[] = [
  `^${lead}${without} (?:(?:the|any|my|all|out) )*${thing}${end}`,
  `^${lead}(?:with|put|add|bring|include|count|have|keep|take) (?:the |my )?${thing} (?:again|back again|back|back in|back on|in again|after all|put back|back into it|in after all)${end}`,
  // "with it again", of the line that went out last
  `^${lead}(?:with|put|add|bring|include|count) (?:it|that|them|that one) (?:again|back again|back|back in|back on|in again|after all)${end}`,
];

const tagged = (pattern: string) =>
  new RegExp(
    pattern
      .replaceAll("{ingredient}", "\\S*<[^>]*ingredient=[^>]*>")
      .replaceAll("{chocolate}", "\\S*<[^>]*chocolate=[^>]*>"),
  );
const [out, again, itAgain] = lineOutTurns.map(tagged);

export function withoutLine({ reading, memory, before }: Turn): Draft | undefined {
  const { lines = [] } = before;
  if (!memory.follows || memory.slot !== undefined || reading.amounts.length > 0) return undefined;
  const went = before.dropped ?? [];
  const last = went.at(-1);
  if (itAgain?.test(reading.mask) && last) return putBack(last, before);
  const [named, ...others] = reading.things.filter((each) => each.ingredient ?? each.chocolate);
  if (!named || others.length > 0) return undefined;
  const name = named.chocolate ? `${named.chocolate} chocolate` : (named.ingredient ?? "");
  const isIt = (line: { name: string }) =>
    sameIngredient(line.name, name) || (name === "chocolate" && / chocolate$/.test(line.name));
  // "and with the sugar again": as it was before that was left out
  const had = [...((before.was as Draft | undefined)?.lines ?? []), ...went];
  if (again?.test(reading.mask) && !lines.some(isIt)) {
    const line = had.findLast(isIt);
    return line && putBack(line, before);
  }
  if (!out?.test(reading.mask) || lines.length < 2 || !lines.some(isIt)) return undefined;
  const gone = lines.filter(isIt);
  const now = { ...before, lines: lines.filter((line) => !isIt(line)), dropped: [...went, ...gone] };
  return { ...now, was: plain(before) };
}

/** The bill with a line that went out of it. */
function putBack(line: NonNullable<Draft["lines"]>[number], before: Draft): Draft {
  const { dropped = [], lines = [] } = before;
  const left = dropped.filter((each) => each.name !== line.name);
  return { ...before, lines: [...lines, line], dropped: left, was: plain(before) };
}

/** The answer before, for the difference to it: one back, and no further. */
function plain({ was: _older, dropped: _dropped, ...rest }: Draft): Draft {
  return rest;
}
