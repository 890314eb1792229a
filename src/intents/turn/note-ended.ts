/**
 * "note plum batch spread flat, and give me a 20 min timer": an order, or a question of another calculator, behind a
 * note. What is told there, or meant for another time ("rest them longer next time"), is part of the note.
 */
import { carriesAmount, type Ear, opens, type Part } from "./part.ts";
import { lead, timerWanted, told } from "./timer-ordered.ts";

/** What is asked, not "what i did" or "how long they rested". */
const question = new RegExp(
  `^${lead}(?:(?:i|we) (?:also )?(?:want|need|would like|d like) to know |can you tell me |could you tell me |tell me |(?:(?:one|next|another|other|different|quick|my|a) )*question(?: is| though)? )?(?:[,:] )?(?:whats|what (?:is|are|do|does|should|would|can|could|makes?|causes?|temp\\S*|weights?|amounts?)|how (?:much|many|hot|cold|do|does|can|should|about)|how long (?:do|does|should|can|will|would|is|are|for)|why (?:is|are|do|does)|which) `,
);
const orders = new RegExp(
  `^${lead}(?:(?:can|could|will|would) (?:you|i|we) )?(?:scale|convert|split|divide|share|halve|double|work out|calculate|weigh out|turn) `,
);
/** "what price at 60 % margin", with the sums that it goes by. */
const asksOfMoney =
  /^(?=.*<money>).*(?:^| )(?:what|whats|how much|price|charge) .*(?:<percent>|margin|price|charge)/;
/** "next: 3 cups sugar in g": an amount and its unit, and nothing that a note would say. */
const inUnit = new RegExp(
  `^${lead}(?:next )?(?:[:,] )?\\S*<(?:weight|volume|temperature|length)[^ ]*(?: (?:of )?\\S+)? (?:in|to|into|as) (?:\\S*<unit=[^>]*>|[cfg]|oz|ml)(?: (?:please|pls|[?]))*$`,
);
/** "what else did i bake this week": of other notes. */
const ofOthers = new RegExp(
  `^${lead}(?:what else|(?:what|which|how (?:often|many times)|when) (?:did|have) i|show me|list) `,
);
/** "split one tray by mistake": what became of it, and no bowl that is to be split. */
const mishap =
  /^(?:split|share|turn) (?!.*<(?:weight|volume|time)|.*(?:base|ingredient)=).*<count=(?:trays|shells|macarons|batches)>/;
/** Whether a note ends before it. Pure. */
export function orderedBehindNote(rest: Part, ear: Ear): boolean {
  const mask = ear.mask(rest);
  if (told(mask) || mishap.test(mask)) return false;
  if (timerWanted(mask)) return true;
  const tool = ear.claimed(rest)?.name;
  if (tool === "cost" && asksOfMoney.test(mask) && !/ sold | sells? /.test(` ${mask} `)) return true;
  if (tool === "convert" && inUnit.test(mask)) return true;
  if (tool === "recall" && ofOthers.test(mask)) return true;
  if (!question.test(mask) && !(orders.test(mask) && carriesAmount(rest) && opens(rest, ear))) return false;
  return ![undefined, "note", "recall", "help", "undo"].includes(tool);
}
