/**
 * "flavor for 200 g buttercream, and keep it in the notes": a question, and the order to write its answer down. What was
 * done and is told ("used 8 g in 220 g, note that") is a note from end to end.
 */
import { noteClosers } from "../../../data/words/note-talk.ts";
import { jointAt } from "./joints.ts";
import { carriesAmount, type Ear, longest, type Part } from "./part.ts";

let order: RegExp | undefined;
/** Nothing but where it is to stand. */
const isOrder = (mask: string): boolean => {
  order ??= new RegExp(
    `^(?:(?:and|then|also|please|pls|can you|could you|,) )*(?:${noteClosers}|(?:note|log|jot|write|record) (?:it|that|this)(?: down)?)(?: (?:please|pls|for me|too|as well|then))*(?: [.!?])*$`,
  );
  return order.test(mask);
};
const orderWords = /(?:^| )(?:notes?|log|book|notebook|diary|journal|records?|down|write|jot)(?: |$)/;

const calculators: ReadonlySet<string> = new Set(
  "dose scale shells fill ganache buttercream split".split(" "),
);

/** "how much rum for 250 g", "flavor for 200 g", "batter for 40": what is named is asked for, and not weighed. */
const asksSize =
  /^(?:(?:and|so|ok|please|also) )*(?:(?:how much|how many|what|whats) |(?:the |some )?(?:[a-z]+ )?\S*<[^>]*(?:dose|taste|base|ingredient|count)=[^>]*>(?: flavou?r\S*| extract| weight)? (?:for|from|into|to go with) (?:the |my |a )?\S*<(?:weight|number)>)/;
const isTold =
  /(?:^| )(?:used|put|made|baked|rested|added|tasted|was|were|did|came|turned|got|rated|rating|tried|went)(?:<\S*)?(?: |$)/;

/** The question and the order; undefined for any other turn. */
export function askedThenNoted(items: Part, ear: Ear): { asked: Part; order: Part } | undefined {
  if (items.length > longest) return undefined;
  if (!orderWords.test(ear.mask(items))) return undefined;
  for (let at = items.length - 2; at > 1; at--) {
    const item = items[at];
    const stop = item?.is === "sign" && /^[.;?!]$/.test(item.text) ? 1 : 0;
    const joint = stop || jointAt(items, at);
    if (!joint) continue;
    const right = items.slice(at + joint);
    if (!isOrder(ear.mask(right))) continue;
    const left = items.slice(0, at);
    const asks = asksSize.test(ear.mask(left)) && carriesAmount(left) && !isTold.test(ear.mask(left));
    // the joint of the first half is still to come: ", and"
    if (jointAt(items, at - 1) > 0 && !stop) continue;
    return asks && calculators.has(ear.claimed(left)?.name ?? "") ? { asked: left, order: right } : undefined;
  }
  return undefined;
}
