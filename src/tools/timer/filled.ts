/** Reads the answer to what a timer asked: how long, what time, which one, what name. */
import type { Memory } from "../contract/index.ts";
import type { Piece } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { matching } from "./find.ts";
import { nameFrom, pointedAt } from "./name.ts";
import { isOrder, stops, stopWords } from "./orders.ts";
import { timeOf } from "./set.ts";

const isYes = /^(?:(?:yes|yeah|yep|ok|okay|sure|please|pls|do|a|set|start|the|it|run|timer) ?)+$/;
const isNo = /^(?:(?:no|nope|nah|not|its|it|a|timer|thanks|been|kept|that|long) ?)+$/;

/** "Which two?" "ganache and rest", "stop ganache and rest". */
function twoOf(some: readonly Piece[], mask: string, memory: Memory): Draft | undefined {
  const before = (memory.last?.inputs ?? {}) as Draft;
  if (!before.both || memory.slot !== "name") return undefined;
  const name = nameFrom(stops.test(mask) ? some.filter((each) => !stopWords.has(each.text)) : some);
  return / and /.test(name) ? { ...before, name } : undefined;
}

/** The answer to what was asked for: how long, what time, which one, what name. */
export function fillOpen(some: readonly Piece[], mask: string, memory: Memory): Draft | undefined {
  const before = (memory.last?.inputs ?? {}) as Draft;
  const two = twoOf(some, mask, memory);
  if (two) return two;
  if (memory.slot === "kept") {
    const { kept: _kept, told: _told, ...order } = before;
    // "yes", "timer": then it runs
    if (isYes.test(mask)) return order;
    if (
      isNo.test(mask) ||
      (before.told && /(?:^| )(?:baked|was|did|they|past|earlier)(?:<\S*)?(?: |$)/.test(mask))
    )
      return { ...before, kept: "no" };
  }
  // "a heat", "118 degrees": then nothing is set
  if (before.heat !== undefined && /heat|temp|degrees|hot|celsius|fahrenheit|°|^(?:no|nope|c|f)\b/.test(mask))
    return before.do === "move" && before.name ? { do: "left", name: before.name } : { do: "list" };
  if (memory.slot === "name" || memory.slot === "to") {
    const name = isOrder.test(mask) ? "" : pointedAt(some) || nameFrom(some);
    const fits =
      memory.slot === "to" ||
      matching(
        name,
        memory.names.timers.map((label) => ({ label })),
      ).length > 0;
    return name && fits ? { ...before, [memory.slot]: name } : undefined;
  }
  const time = timeOf(some, true);
  if (!time || /timers?|alarm|(?:^| )(?:how|what|whats|which|why|who|where)(?: |$)/.test(mask))
    return undefined;
  // "at what time?" "7": the hour
  if (memory.slot === "when" && time.bare && (time.for_min ?? 24) < 24)
    return { ...before, when: { text: "", ...before.when, minute: (time.for_min ?? 0) * 60 } };
  if (before.do === "add")
    return time.for_min === undefined ? undefined : { ...before, more_min: time.for_min };
  const when = time.when && { ...before.when, ...time.when };
  // "25 min, cooling shells"
  const length = some.findIndex((each) => each.amount?.dim === "time");
  const joint = length >= 0 && [",", "for"].includes(some[length + 1]?.text ?? "") ? length + 2 : undefined;
  const behind =
    before.name === undefined && before.step === undefined && joint ? nameFrom(some.slice(joint)) : "";
  // "cooling, 35 min"
  const ahead =
    before.name === undefined && before.step === undefined && some.slice(0, length).some((each) => each.thing)
      ? nameFrom(some.slice(0, length))
      : "";
  const name = behind || ahead;
  return { ...before, ...time, ...(when ? { when } : {}), ...(name ? { name } : {}) };
}
