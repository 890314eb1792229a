/** What is told of timers that run: one is over, one began a while ago, the other one is asked for, a heat beside a name. */
import type { Memory } from "../contract/index.ts";
import { type Piece, textOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import { named } from "./put-right.ts";
import { readSet, timeOf } from "./set.ts";

const lead = "(?:(?:ok|okay|and|now|so|right|oh|the|my|that|,) )*";
const over =
  "(?:(?:is|are|was|just|came|come|comes|now|all|already|has|have|been|coming) )*(?:out|done|finished|ready|over|off)(?: (?:now|already|of the oven|of there|too|as well|,|[.!]))*";

/** "bake out", "the ganache is done", where a timer of that name runs: it is over. */
export function overNow(some: readonly Piece[], { names }: Memory): Draft | undefined {
  const text = textOf(some).replace(/\btrays? one\b/, "tray 1");
  const said = new RegExp(`^${lead}(.+?)(?: timer)? ${over}$`).exec(text)?.[1];
  const label =
    said && (names.timers.find((each) => each.toLowerCase() === said) ?? partly(said, names.timers));
  return label ? { do: "stop", name: label } : undefined;
}

/** "pink one out", of the pink tray: the one timer that has all of the words. */
function partly(said: string, timers: readonly string[]): string | undefined {
  const words = said.replace(/ ?\b(?:one|ones|timer)$/, "").split(" ");
  const hits = timers.filter((each) => words.every((word) => each.toLowerCase().split(" ").includes(word)));
  return hits.length === 1 && words[0] !== "" && !/^(?:it|they|that|this|we|i|time)$/.test(words[0] ?? "")
    ? hits[0]
    : undefined;
}

/** "oven?", where a timer of that name runs. */
export function nameAlone(some: readonly Piece[], { names }: Memory): Draft | undefined {
  const said = new RegExp(`^${lead}(.+?)(?: (?:now|still|then))? \\?$`).exec(textOf(some))?.[1];
  const label = said && names.timers.find((each) => each.toLowerCase() === said);
  return label ? { do: "left", name: label } : undefined;
}

/** "and the other one": the same of it as of the one before, or how long it has left. */
export function otherOne(mask: string, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "timer" ? (memory.last.inputs as Draft) : undefined;
  if (
    !before ||
    !/^(?:(?:ok|and|so|what about|how about|hows|now) )*(?:the |my )?other(?: one| timer)?(?: then| now)?(?: \?)?$/.test(
      mask,
    )
  )
    return undefined;
  const other: Draft = { name: "other", ...(memory.table.timer ? { recent: memory.table.timer } : {}) };
  if (before.do === "stop") return { do: "stop", ...other };
  return before.do === "add" && before.more_min !== undefined
    ? { do: "add", more_min: before.more_min, ...other }
    : { do: "left", ...other };
}

/** "rest 30 started 10 min ago": thirty minutes from then. */
export function begunAgo(some: readonly Piece[], memory: Memory): Draft | undefined {
  const at = some.findIndex((each, i) => each.amount?.dim === "time" && some[i + 1]?.text === "ago");
  const ago = some[at]?.amount;
  if (!ago || /(?:^| )(?:how|what|whats|why|which|when|remind|rang|rung)(?: |$)/.test(textOf(some)))
    return undefined;
  let from = at;
  while (
    from > 0 &&
    /^(?:started|begun|began|set|went|gone|put|in|about|around|some|going|that|,|i|it|was|them|they)$/.test(
      some[from - 1]?.text ?? "",
    )
  )
    from -= 1;
  const rest = [...some.slice(0, from), ...some.slice(at + 2)];
  const [draft, ...others] = readSet(rest, memory);
  if (!draft || others.length > 0 || draft.when || draft.kept || draft.unclear) return undefined;
  const last = rest.findLastIndex((each) => each.amount?.dim === "number");
  const time = draft.for_min === undefined ? timeOf(rest, true) : undefined;
  const number = rest[last]?.text;
  // "rest 30": the number is the length, and no part of the name
  const name = time && number ? draft.name?.replace(new RegExp(` ?\\b${number}$`), "") : draft.name;
  const { name: _name, ...order } = { ...draft, ...time };
  if (order.for_min === undefined && order.step === undefined) return undefined;
  return { ...order, ...(name ? { name } : {}), ago_min: inBase(ago.value, ago.unit) };
}

/** "16 min", behind "i baked at 160": told of that bake, or a timer? */
export function ofPast(some: readonly Piece[], { last }: Memory): Draft | undefined {
  const [only, ...others] = some.filter(
    (each) => !/^(?:for|and|about|around|so|like|maybe|,)$/.test(each.text),
  );
  const isPast =
    (last?.tool === "bench" && last.inputs.do === "told") ||
    (last?.tool === "trouble" && last.inputs.oven_c !== undefined);
  if (!isPast || others.length > 0 || only?.amount?.dim !== "time") return undefined;
  return { do: "set", for_min: inBase(only.amount.value, only.amount.unit), told: only.text };
}

const hot = /(?:^| )(?:syrup|sugar|caramel|oven|bake|baking|preheat|heat|water|cream|chocolate)(?: |$)/;
/** °C or °F at which sugar boils and ovens bake; as minutes well over an hour. */
const heats = [100, 450] as const;

/** "syrup 118", with no unit: minutes or a heat. */
export function heatOrMinutes(some: readonly Piece[], { names }: Memory): Draft | undefined {
  const [amount, ...others] = some.flatMap((each) => each.amount ?? []);
  const text = textOf(some);
  if (
    amount?.dim !== "number" ||
    others.length > 0 ||
    amount.value < heats[0] ||
    amount.value > heats[1] ||
    !hot.test(text) ||
    some.length > 4 ||
    /(?:^| )(?:timers?|alarm|set|start|ring|remind|min|minutes)(?: |$)/.test(text)
  )
    return undefined;
  const name = text
    .replace(/ ?\b(?:at|to|is|on|the|my)\b/g, "")
    .replace(/ ?[\d.]+.*$/, "")
    .trim();
  const runs = names.timers.some((each) => each.toLowerCase() === name);
  return { do: runs ? "move" : "set", ...(name ? { name } : {}), heat: amount.value };
}

/** The timer of this name, or the place, that stands in front: "first plus 5", "syrup 2 less", "move bake to 10:20". */
export function inFront(some: readonly Piece[], memory: Memory): Draft {
  const name = named(some, memory);
  if (name) return { name };
  const [first, next] = some;
  const isWord = first && !first.amount && !first.when && /^[a-z]{3,}$/.test(first.text);
  // "syrup 2 less", and none is called so: no other one is meant
  // "tray two needs five more": a tray by its number, and that was read already
  const isCounted = first?.thing?.count !== undefined && next?.amount?.of?.count !== undefined;
  return isWord && next?.amount && !isCounted && !talk.test(first.text) ? { name: first.text } : {};
}

const talk =
  /^(?:and|give|add|put|take|knock|shave|cut|plus|make|another|extra|more|about|just|with|only|for|the|need|needs|extend|stretch|shorten|snooze|reduce|increase|push|move|shift|stick|pop|tack|please|now|then|maybe|actually|sorry|yes|yeah|okay|minus|less|bung|chuck|whack|slap|also|lengthen|drop|lose|lop|trim|chop|shed|dock|strip|pull|throw|get|lets|call|bit)$/;
