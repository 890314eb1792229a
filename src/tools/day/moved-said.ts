/**
 * "start at 2 pm instead", "can i start at 3 today", "push everything back an hour": a plan moved by its start or as a
 * whole. A start said behind a plan is no hour of being ready.
 */
import type { Memory, Reading, When } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import { begunSaid, stepMoved } from "./asked-of-plan.ts";
import type { Draft } from "./draft.ts";

const lead =
  "(?:(?:and|so|ok|okay|no|but|now|then|actually|sorry|oh|well|wait|lets|please|can|could|you|we|i|ill|id|would|will|rather|like|want|prefer|to|going|im|maybe|say|make|it|that|them|they|what|if|theyd|theyll|its|hang|on|hold|moved|need) (?:, )?)*";
const begin = "(?:start|starting|started|begin|beginning|began|kick off)";
const work = "(?: (?:it|them|that|this|baking|work|weighing|off|the (?:bake|day|baking|work|plan)))?";
const moment = "\\S*<when>";
const length = "\\S*<time[^>]*>";
const move =
  "(?:move|push|shift|put|bring|pull|delay|postpone|bump|slide|set|change|make|moved|pushed|shifted)";
const tail =
  "(?: (?:that|the|this|same|day|before|instead|then|now|please|pls|rather|sharp|ok|okay|thanks|after all|for me))*(?: [?.!])?$";

/** What is asked of a start: whether it would do, and what it would come to. */
const asks = new RegExp(
  `^(?:(?:and|so|ok|but|hmm?|then) )*(?:can|could|may|should|shall|would it (?:work|be ok|be okay|be fine|do) (?:if|to)|is it (?:ok|okay|fine|possible|alright|enough|early enough|soon enough|too late) (?:if|to)|will it (?:work|do|be enough|be ok) if|is there (?:still )?time (?:if|to)) (?:(?:i|we) )?(?:still |just |also |even )?${begin}${work}(?: (?:at|from|by|on|around|about|after))? ${moment}`,
);
const isEnough = new RegExp(
  `^(?:(?:and|so|ok|but) )*is (?:${begin}${work} )?(?:(?:at|on|from) )?(?:a )?${moment}(?: ${begin})? (?:too late|early enough|soon enough|ok|okay|fine|enough|possible|in time)(?: to ${begin})?`,
);
const readyIf = new RegExp(
  `(?:when|will|would|what time) .*(?:ready|done|finished|in time|make it).* if (?:i|we) (?:only |just )?${begin}${work}(?: (?:at|from|by|on))? ${moment}|(?:what|how) (?:happens|would happen|does it look|about) if (?:i|we) (?:only |just )?${begin}${work}(?: (?:at|from|by|on))? ${moment}|^(?:(?:and|so|ok|but) )*if (?:i|we) (?:only |just )?${begin}${work}(?: (?:at|from|by|on))? ${moment}(?: ,)? .*(?:ready|done|finished|in time|make it)`,
);
/** No sooner than that: on one day, where a day is named. */
const noSooner = new RegExp(
  `(?:^| )(?:cant|can not|cannot|wont) (?:be able to )?${begin}${work} (?:before|until|till|earlier than) ${moment}|(?:^| )(?:i|we) can (?:only )?${begin}${work}(?: (?:at|after|from))? ${moment}|(?:^| )only ${begin}${work} (?:at|after|from) ${moment}|earliest (?:i|we) can ${begin}${work} is ${moment}`,
);
/** "i wont be home till 3 pm", "im free from 2": of the day that the plan starts on. */
const away = new RegExp(
  `^(?:(?:and|but|so|oh|sorry|ok|no|actually) )*(?:i|im|ill|ive|we|were) (?:\\S+ ){0,3}?(?:home|back|free|busy|away|out|work|working|at work|there|in|kitchen)(?: (?:at|in|the|home|kitchen|work))*(?: (?:before|till|until|from|by|at|after))? ${moment}${tail}`,
);
const startsAt = new RegExp(
  `^${lead}(?:the |my )?${begin}(?: (?:late|later|early|earlier))?${work}(?: time)?(?: (?:at|from|by|on|around|about|to|is|should be|to be|will be|be|moves to|moved to))* ${moment}${tail}`,
);
const startMoved = new RegExp(
  `^${lead}${move} (?:the |my |our )?(?:start(?:ing)?|beginning)(?: time)?(?: (?:to|at|for|back|up|out|forward|until|till|be|on))* ${moment}${tail}`,
);
const way = "(?: (back|forwards?|up|out|on|off|down|along))?(?: by)?(?: (?:another|about|around))?";
const behindWay = "(?: (earlier|sooner|later|back|forwards?|up|out|ahead))?";
const startShifted = new RegExp(
  `^${lead}(?:${begin}${work}|(${move}) (?:the |my |our )?(?:start(?:ing)?|beginning)(?: time)?)${way} ${length}${behindWay}${tail}`,
);
const what =
  "(?:it|that|this|them|these|everything|it all|all(?: of it)?|the (?:whole (?:thing|day|plan|lot)|plan|day|order|bake|schedule|deadline|due time|hand ?over|handover|pickup|pick up|collection|delivery|party|time)|my (?:plan|day|order|schedule))";
const allShifted = new RegExp(
  `^${lead}(push|move|shift|put|bring|pull|delay|postpone|bump|slide|pushed|moved|shifted)(?: ${what})?${way} ${length}${behindWay}${tail}`,
);
const shiftAlone = new RegExp(
  `^${lead}(?:want (?:it|them) )?(?:about )?${length} (earlier|sooner|later)(?: than (?:that|planned))?${tail}`,
);

/** "the party is an hour later", "pickup moved 30 min earlier": what the bake is for moves its end, and nothing else does. */
const shiftOfAny = new RegExp(
  `^(?!.*(?:^| )(?:i|my|sleep|wake|timer|alarm|remind|note)(?: |$))(?=.*(?:^| )(?:party|pickup|pick up|picks?|picking|collection|collects?|collecting|delivery|guests?|wedding|dinner|lunch|customers?|client|order|event|birthday|market|stall|shower|fair|hand ?over|they|she|he|everything|it|that|all)(?: |$))(?:[a-z]+ ){1,7}${length} (earlier|sooner|later)${tail}`,
);

const isDay = ({ days, weekday, day }: Partial<When>): boolean =>
  days !== undefined || weekday !== undefined || day !== undefined;

/** Later is 1, earlier is −1; undefined where a word like "forward" can be either. */
function wayOf(verb = "", particle = "", behind = ""): 1 | -1 | undefined {
  if (/earlier|sooner|ahead/.test(behind)) return -1;
  if (behind === "later") return 1;
  const said = particle || behind;
  const isDrawn = /^(?:bring|pull)$/.test(verb);
  if (/^forward/.test(said)) return isDrawn ? -1 : undefined;
  if (said === "up") return -1;
  if (said === "back") return isDrawn ? undefined : 1;
  if (said) return 1;
  return /^(?:push|pushed|delay|postpone)$/.test(verb) ? 1 : undefined;
}

const shiftOf = (minutes: number, sign: 1 | -1 | undefined): number | undefined => sign && sign * minutes;

/** A start that was said or asked about; nothing where the sentence holds none. */
function startSaid({ mask, whens, amounts }: Reading): Draft | undefined {
  const said = whens.at(-1);
  if (said) {
    const { at: _at, ...start } = said;
    if (asks.test(mask) || isEnough.test(mask) || readyIf.test(mask))
      return { start, start_as: /(?:^| )too late(?: |$)/.test(mask) ? "too late" : "asked" };
    const isOneDay = isDay(start) || /(?:^| )that day(?: |$)/.test(mask);
    if (away.test(mask)) return { start, start_as: "from" };
    // without a day it is when her days begin
    if (noSooner.test(mask)) return isOneDay ? { start, start_as: "from" } : undefined;
    return startsAt.test(mask) || startMoved.test(mask) ? { start, start_as: "at" } : undefined;
  }
  const [time, ...others] = amounts;
  const hit = startShifted.exec(mask);
  if (time?.dim !== "time" || others.length > 0 || !hit) return undefined;
  const [, verb, particle, behind] = hit;
  const shift = shiftOf(inBase(time.value, time.unit), wayOf(verb, particle, behind));
  return shift === undefined
    ? { unclear_min: inBase(time.value, time.unit), unclear_of: "start" }
    : { start_min: shift };
}

/** "an hour later", "push everything back 30 min": the hour of being ready goes with it. */
function shiftSaid({ mask, amounts, things }: Reading): Draft | undefined {
  const [time, ...others] = amounts;
  if (time?.dim !== "time" || others.length > 0) return undefined;
  const minutes = inBase(time.value, time.unit);
  const alone = shiftAlone.exec(mask) ?? (things.length === 0 ? shiftOfAny.exec(mask) : undefined);
  const hit = alone ?? allShifted.exec(mask);
  if (!hit) return undefined;
  const shift = alone
    ? shiftOf(minutes, wayOf("", "", alone[1]))
    : shiftOf(minutes, wayOf(hit[1], hit[2], hit[3]));
  return shift === undefined ? { unclear_min: minutes, unclear_of: "all" } : { shift_min: shift };
}

/** "later", where it was asked which way. */
function answered({ text }: Reading, { slot, last }: Memory): Draft | undefined {
  const before = (last?.inputs ?? {}) as Draft;
  if (slot !== "unclear_min" || before.unclear_min === undefined) return undefined;
  const sign = /\b(?:later|back|after)\b/.test(text)
    ? 1
    : /\b(?:earlier|sooner|before|up)\b/.test(text)
      ? -1
      : undefined;
  if (sign === undefined) return undefined;
  return { [before.unclear_of === "start" ? "start_min" : "shift_min"]: sign * before.unclear_min };
}

const counted =
  /(?:^| )(?:(?:but|and|make it|its|it is|only|just|still|with|for|need|want|do|the|i|we|,) )*\S*<number>(?: (more|extra|fewer|less))?(?: \S*<[^>]*count=macarons[^>]*>)?(?: (more|extra|fewer|less))?(?: (?:please|then|now|instead|though|of them))*(?= |$)/;

/** "make it 24, an hour later": another number of macarons in the same breath, and the plan is moved with it. */
function movedAndCounted(reading: Reading, before: Draft): Draft | undefined {
  const [many, ...others] = reading.amounts.filter(
    ({ dim, unit, fraction }) => dim === "number" && !unit && !fraction,
  );
  if (!many || others.length > 0 || (many.of && many.of.count !== "macarons")) return undefined;
  const mask = reading.mask
    .replace(counted, "")
    .replace(/^(?: ?,)+ ?|(?: ?,)+ ?$/g, "")
    .trim();
  const said = shiftSaid({
    ...reading,
    mask,
    amounts: reading.amounts.filter((each) => each !== many),
    things: reading.things.filter(({ count }) => count !== "macarons"),
  });
  const [, ahead, behind] = counted.exec(reading.mask) ?? [];
  const way = ahead ?? behind;
  if (way === undefined) return said && { ...said, macarons: many.value };
  // "10 more, and an hour later": than there were
  const changed = (before.macarons ?? Number.NaN) + (/more|extra/.test(way) ? many.value : -many.value);
  return said && changed > 0 ? { ...said, macarons: changed } : undefined;
}

/** How the plan is to be moved. */
export function movedSaid(reading: Reading, memory: Memory): Draft | undefined {
  const way = answered(reading, memory);
  if (way) return way;
  if (memory.follows && reading.amounts.length === 2)
    return movedAndCounted(reading, memory.last?.inputs ?? {});
  // a new number of macarons alone is another order
  if (reading.amounts.some((each) => each.of?.count === "macarons")) return undefined;
  return begunSaid(reading) ?? stepMoved(reading) ?? startSaid(reading) ?? shiftSaid(reading);
}

/** The turn before moved the plan: what it stands at now is on the table, and not in what was said. */
export const hasMoved = ({ start, start_min, shift_min }: Draft): boolean =>
  start !== undefined || start_min !== undefined || shift_min !== undefined;
