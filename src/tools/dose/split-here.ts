/** "how much gel for one of the four if i split 520 g batter into four": of the part, and not of the whole bowl. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { asksPart } from "./base-part.ts";
import { type BaseWay, taken } from "./base-turn.ts";

/** More bowls than these nobody splits by hand. */
const mostBowls = 12;
const splits =
  /\b(?:split|splits|splitting|divide|divided|dividing|share|shared|sharing|part|parted|portion|portioned|portioning|cut|separate|separated|put|goes|go)\b/;
const into = /\b(?:in|into|between|among|over|across|by) (?:about |exactly )?$/;
const halves = /\bhalv(?:e|ed|es|ing)\b/;
const asksOne =
  /\b(?:for|in|into|to|of) (?:just |only )?one of (?:the |my )?(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)\b|\b(?:for|in|into) each (?:if|when|once|of)\b/;

/** Into how many it is split, in this sentence. */
function partsSaid({ amounts, text }: Reading): number | undefined {
  if (halves.test(text)) return 2;
  if (!splits.test(text)) return undefined;
  return amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      Number.isInteger(each.value) &&
      each.value >= 2 &&
      each.value <= mostBowls &&
      (!each.of || each.of.count === "bowls" || each.of.base !== undefined) &&
      into.test(text.slice(0, each.at[0])),
  )?.value;
}

export const splitHere: BaseWay = (turn) => {
  const { reading, parts } = turn;
  const [whole, ...others] = parts;
  if (!whole?.thing?.base || others.length > 0) return undefined;
  const many = partsSaid(reading);
  if (many === undefined || !says(reading, /(?:^| )how (?:much|many) |<[^>]*dose=/)) return undefined;
  return asksPart.test(reading.text) || asksOne.test(reading.text)
    ? taken(whole.grams / many, turn, whole.thing.base)
    : undefined;
};
