/** A recipe told in a list, and what it is to be brought to in the next sentence: one order, the list is its recipe. */
import { carriesAmount, type Ear, type Part } from "./part.ts";

const lineOf = /<weight> (?:of )?\S*<ingredient=|<ingredient=\S* \S*<weight>/g;

/** "scale up to whites 154 g", "i'd like it on 154 g whites": no list of its own, it leans on one. */
const broughtTo =
  /^(?:(?:and|so|now|ok|please|pls|can|could|would|you|i|id|we|lets|want|need|like|wish|have|to) )*(?:(?:scale|bring|take|cut|make|get|do|work|want|need|like|have|resize|adapt|stretch|shrink|redo) )?(?:(?:it|that|this|the|my|our|all|of|list|recipe|lot|formula|everything|them) )*(?:(?:up|down|out|come|over) )*(?:to|for|on|with|from|at|using) (?:(?:only|just|about|the) )*(?:\S*<weight> (?:of )?(?:the |my )?\S*<ingredient=\S*|\S*<ingredient=\S* (?:of )?\S*<weight>)(?: (?:please|pls|now|then|today|instead|this time))*(?: \?)?$/;

/** "i want 400 g of that altogether, what goes on the scale": all of the list together. */
const broughtToAll =
  /^(?:(?:and|so|now|ok|please|pls|can|could|would|you|i|id|we|lets|want|need|like|have|to|make|get|bring|scale|take|give|me) )*(?:(?:it|that|this|them|all|everything) )*(?:(?:up|down|out|come|comes|add|weigh|to|at|be) )*(?:(?:just|about|exactly) )*\S*<weight> (?:of (?:it|that|this|them|the lot)(?: (?:altogether|all together|in all|in total|all told|total))?|altogether|all together|in all|in total|all told|total)(?: (?:please|pls|now|then))*(?: , (?:so |and )?(?:what|whats|how much)(?: [a-z]+){0,6})?(?: \?)?$/;

/** "today its the whites of 3 eggs, so?": the eggs that there are. */
const broughtToEggs =
  /^(?:(?:and|but|so|now|\S*<when>|this|time|ok|i|we|ive|have|got|theres|there|are|is|its|it|only|just|using|with|from|for|the|my|make|do|out|of|going|to|be|use) )*(?:\S*<ingredient=whites> (?:of|from) )?\S*<number> (?:\S+ )?\S*<[^>]*ingredient=(?:whites|egg)[^>]*>(?: (?:\S*<when>|now|left|here|only|please|then|this time))*(?: ,)?(?: (?:so|what|then|how much)(?: [a-z]+){0,6})?(?: \?)?$/;

/** "one batch takes", "this is what i make:", "my mix is": a recipe is told, and no stock. */
const tellsRecipe =
  /^(?:(?:so|ok|and|hi|hello|well|now|right|,) )*(?:(?:my|our|the|this|one\S*|a|an|each|every) (?:(?!have|got|what)\S+ ){0,4}?(?:is|are|takes?|uses?|goes|go|wants?|calls for|asks for|says|needs?)|(?:i|we) (?:(?:always|usually|normally) )?(?:use|take|make)|this is (?:what|how) (?:i|we) (?:(?:always|usually) )?make(?: it| them)?|(?:(?:my|our|the|own|old|usual) )*(?:\S*<count=shells>|recipe|formula|card|list|mix)(?: (?:is|says|goes))?)(?: :)? \S*<(?:weight|number|ingredient)/;
/** What a size is said with; anything else asks something of its own. */
const asksOther =
  /(?:^| )(?:cost\S*|price\S*|sell|charge|label\S*|allerg\S*|note|timer\S*|save|keep|keeps|call|freez\S*|bake|baking|oven|long|when|why|rest|cupboard|pantry|fridge|shelf|(?:i|we|ive|weve) (?:also )?(?:have|got) .*<weight.*<weight)(?: |$)|<(?:dose|taste|color|time|temperature|money|length|percent|symptom|when|note)|<base=(?!batter|filling)/;

/** "...; i want a third", "... what would it be for 89 g of whites", "... what do i weigh for 28 macarons". */
const sizesTold = (list: string, part: string): boolean =>
  tellsRecipe.test(list) && !list.includes(" ?") && !asksOther.test(part) && part.split(" ").length <= 14;

export const bringsList = (list: Part, part: Part, ear: Ear): boolean =>
  carriesAmount(part) &&
  part.filter((item) => item.is === "amount").length === 1 &&
  (ear.mask(list).match(lineOf) ?? []).length >= 3 &&
  ([broughtTo, broughtToAll, broughtToEggs].some((each) => each.test(ear.mask(part))) ||
    sizesTold(ear.mask(list), ear.mask(part)));
