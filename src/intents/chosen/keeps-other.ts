/** "how long does victoria sponge keep in the fridge": of what is no macaron, and no mix of one. */
import { keptFoods, otherBakes, otherDishes, otherGoods } from "../../../data/words/other-dishes.ts";
import type { Reading } from "../../tools/contract/index.ts";

const kept = new RegExp(`^(?:${otherDishes}|${otherBakes}|${otherGoods}|${keptFoods})$`);
/** The subject of the question, up to what it does. */
const asked: readonly RegExp[] = [
  /\bhow long (?:does|do|is|are|will|would|can|could|may|should) (?:(?:i|we|you|one) (?:keep|leave|store|have) )?(?:(?:a|an|the|my|our|some|this|that|opened|homemade|fresh|leftover|frozen|thawed|smoked|raw|cooked|tinned) )*([a-z]+(?: [a-z]+){0,2}?) (?:keep|keeps|last|lasts|stay|stays|be|good|sit|stand|live|survive|in|on|out|at|ok|okay|fine|safe|once|after|before|outside|unrefrigerated)\b/,
  /\b(?:can|may|could|should) (?:i|we|you) (?:keep|leave|store) (?:(?:a|an|the|my|our|some|this|that) )*([a-z]+(?: [a-z]+){0,2}?) (?:in|on|out|at|overnight)\b/,
  /\b(?:can|may|could|should) (?:i|we|you) (?:re)?freeze (?:(?:a|an|the|my|our|some|this|that|raw|cooked|fresh|leftover) )*([a-z]+(?: [a-z]+)?)(?= ?(?:[?.,]|$)| for | and | or )/,
  // "shelf life of yoghurt"
  /\b(?:shelf|fridge|freezer|counter|storage|cupboard) (?:life|time) (?:of|for) (?:(?:a|an|the|my|our|some|this|that|opened|homemade|fresh|leftover|frozen|thawed|smoked|raw|cooked|tinned) )*([a-z]+(?: [a-z]+)?)(?= ?(?:[?.,]|$)| in | on | once | after )/,
  // "butter sat on the counter for 3 hours, is it ok"
  /^(?:(?:and|so|ok|oh|but|hm|the|my|our|some|a|an|leave|left|i|we) )*([a-z]+(?: [a-z]+){0,2}?) (?:(?:has|have|had|was|were|is|been|just|all|needs?) )*(?:sat|sitting|stood|left|out|lay|stayed|\d+(?:\.\d+)? ?(?:h|hrs?|hours?|min\w*) (?:out|on|in|at))\b/,
  /\b(?:does|do|will|would|can) (?:(?:a|an|the|my|our|some|this|that|frozen|thawed|smoked|raw|cooked) )*([a-z]+(?: [a-z]+){0,2}?) (?:keep|last|stay)\b/,
];

/** What it is called; undefined where it is a matter of ours. Pure. */
export function keepsOther({ text, things }: Reading): string | undefined {
  if (things.some((each) => each.base ?? each.count)) return undefined;
  const plain = text.replace(/['’]/g, "");
  for (const pattern of asked) {
    const said = pattern.exec(plain)?.[1];
    if (said === undefined) continue;
    const words = said.split(" ");
    const isOther = kept.test(words.at(-1) ?? "") || kept.test(words.slice(-2).join(" "));
    return isOther && !/\bmac/.test(plain) ? said : undefined;
  }
  return undefined;
}
