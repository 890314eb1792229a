/** Numbers and weights of nothing named: they take the place of what was said before. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says } from "../lib/find.ts";
import { type Draft, ganacheBefore } from "./turn.ts";

/** The weight is of chocolate and cream together. */
export const inAll =
  /(?:^| )(?:total|altogether|in all|all in|all told|all together|overall|all up|finished|in the end)(?: |$)/;

const parts = ["chocolate_g", "cream_g", "total_g"] as const;

export type Part = (typeof parts)[number];

/** A weight of nothing named takes the place of the one said before; at first it is the total. */
export function loosePart(memory: Memory): Part {
  const before = (memory.follows && ganacheBefore(memory)) || {};
  const [only, ...more] = parts.filter((part) => before[part] !== undefined);
  if (only && more.length === 0) return only;
  return memory.slot === "chocolate_g" || memory.slot === "cream_g" ? memory.slot : "total_g";
}

const isOnly =
  /<number> (?:g )?(?:is|was|are) (?:only |just )?(?:the |of )?\S*<ingredient=(cream|(?:\w+_)?chocolate)/;

/** "and for 300?": the number takes the place of the weight that was said before. */
export function fromBareNumber(reading: Reading, memory: Memory): Draft {
  // "and 400 white": the kind, beside what there is of it
  const ofKind = reading.amounts.find((each) => each.dim === "number" && each.of?.color === "white");
  const [bare = ofKind, second] = bareNumbers(reading);
  const before = ganacheBefore(memory);
  if (!bare) return {};
  // "dark, firm for rolling, 480 altogether"
  if (!memory.follows || !before) return !second && says(reading, inAll) ? { total_g: bare.value } : {};
  // "sorry, 500 is only the chocolate"
  const named = isOnly.exec(reading.mask)?.[1];
  if (named) return { [named === "cream" ? "cream_g" : "chocolate_g"]: bare.value };
  // "and 300 to 200?", behind a ratio of two weights: two weights again
  if (second && before.chocolate_g !== undefined && before.cream_g !== undefined)
    return { chocolate_g: bare.value, cream_g: second.value };
  const { chocolate_g, cream_g } = before;
  // "what if id only put 120 in", of two weights: of which isn't said
  if (chocolate_g !== undefined && cream_g !== undefined)
    return { chocolate_g, cream_g, unsure_g: bare.value };
  const part = parts.find((each) => before[each] !== undefined);
  if (part) return { [part]: bare.value };
  if (!memory.slot?.endsWith("_g")) return {};
  // "370 altogether", where grams of chocolate, of cream or of all of it were asked for
  return memory.slot === "chocolate_g" && says(reading, inAll)
    ? { total_g: bare.value }
    : { [memory.slot]: bare.value };
}
