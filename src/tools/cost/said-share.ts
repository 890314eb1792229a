/** "40 margin", "margin 40": a bare number that is the margin, and neither a sum of money nor a count. */
import type { Amount, Reading } from "../contract/index.ts";

const share = "(?:margins?|mark ?-?up|food cost|profit margin)";
const isBefore = new RegExp(`^ (?:percent |per cent |% )?(?:(?:for|as) (?:the|my|a|our) )?${share}\\b`);
/** "with a smaller margin, 45", "a better margin, say 70": the one that is meant stands behind it. */
const isOther = new RegExp(
  `\\b(?:smaller|lower|higher|bigger|larger|better|fatter|thinner|tighter|leaner|slimmer|different|another|other|new|kinder|fairer) ${share}(?:,| ,|:)? (?:(?:say|like|maybe|perhaps|only|just|about|around|of|at|more like|try|then|so) )*$|\\b${share},? (?:say|maybe|perhaps|more like) $`,
);
const isBehind = new RegExp(`\\b${share}(?: (?:is|of|at|to|was|now|then|instead|should be|:|=))* $`);
/** Words that lead up to a share; "sell at 20 margin" is a price and the question for its margin. */
const leads =
  /(?:^|[,;:?!.] ?|\b(?:wants?|wanted|with|need|needs|like|get|keep|make|it|to|at|for|no|not|nope|try|and|then|so|ok|say|about|an?|of|if|but|now|my|the|on|instead|rather|actually|sorry|aim|target|only|just|hit|reach|have|take) )$/;
const isPriced =
  /\b(?:sells?|selling|sold|goes|go|going|asks?|asking|priced?|prices)(?: (?:it|them|that|one|each|a box|boxes))*(?: (?:at|for|to|is))? $|\bcharg(?:e|es|ing)(?: (?:it|them|that|a box))*(?: at)? $|\bcosts?(?: (?:me|is|it|them))* $/;
/** "what should i sell it for 60 margin": a price is asked for, so that none was said. */
const asksPrice =
  /^(?:(?:so|and|ok|now|then|but) )*(?:what|how much|which price|whats the price|(?:the |a |my |give me a |selling )*price for \d)/;

/** The bare number that stands beside "margin", "markup" or "food cost"; undefined where there is none. Pure. */
export function shareSaid({ amounts, text }: Reading): Amount | undefined {
  return amounts.find((each) => {
    if (each.dim !== "number" || each.unit !== "" || each.fraction) return false;
    // "a box of 6 margin?": what it holds
    if (each.of?.count === "boxes" || /\bbox(?:es)? of $/.test(text.slice(0, each.at[0]))) return false;
    const [before, behind] = [text.slice(0, each.at[0]), text.slice(each.at[1])];
    if (isBehind.test(before) || isOther.test(before))
      return !/^ (?:each|apiece|a piece|a box|per box)\b/.test(behind);
    if (!isBefore.test(behind) || !leads.test(before)) return false;
    if (!isPriced.test(before)) return true;
    // "cost 9 sell at 20 margin?" asks for the margin; "sell at 60 margin" aims at one
    if (/ (?:at|to) $/.test(before)) return !/^ (?:margin|mark ?-?up) ?[?]$/.test(behind);
    return / for $/.test(before) && asksPrice.test(text);
  });
}
