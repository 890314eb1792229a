/** Questions that an answer or a running timer settles: of which day a note is, how long until a step is done. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../contract/index.ts";
import { sign } from "./cue.ts";

/** "and what day was that", behind what was found or noted. */
export const whichDay = `^${opening}(?:(?:what|which) (?:day|date)(?: of the week)? (?:was|were|is) (?:that|it|this|those|these|they)|whats? (?:was |is )?the (?:day|date) (?:of|on|for) (?:that|it|this|those)(?: one| note| batch\\S*)?|when (?:was|were) (?:that|it|this|those|they)|whens that from|(?:what|which) (?:day|date) (?:did|do) (?:i|we) (?:make|bake|do|\\S*<step=bake>) (?:that|it|those|them|these)|how long ago (?:was|were) (?:that|it|those|they)|(?:was|is) (?:that|it) (?:{when}|yesterday|today))(?: (?:one|ones|batch\\S*|again|then|made|baked|from|exactly|\\S*<step=bake>|{count=batches}))*(?: [?])?$`;

// compiled when first asked: hardly a turn gets there
let daySign: RegExp | undefined;
export function isWhichDay(mask: string): boolean {
  daySign ??= sign(whichDay);
  return daySign.test(mask);
}

const asked = "(?:how (?:long|much longer|much time|many \\S+)|when|whens|what time)";
const until = "(?:(?:till|until|til|before|is|it|its|will|are|do|left|to go|left till|again|now) )*";
const them = "(?:they|theyre|theyve|theyll|it|its|itll|those|these|that|thats|(?:the|my) \\S+(?: \\S+)?)";
const verbs = "(?:(?:are|is|have|has|be|will|gonna|going|to|fully|all|properly|finally|do|get|got) )*";
const done = "(?:done|finished|finish|ready|through|over|complete|completely)";

/** Only with the step that is waited for: "ready to eat" is another question. */
export const untilDone: readonly string[] = [
  `^${opening}${asked} ${until}${them} ${verbs}${done} (?:with )?(?:the |their )?(?:{step=(bake|rest|mature|cool|chill)}|\\S*matur\\S*|chilling|setting|proofing)(?: (?:now|then))*(?: [?])?$`,
  `^${opening}${asked} ${until}${them} ${verbs}(?:{step=(bake|rest|mature|cool|chill)}|matured?|rested|chilled)(?: (?:now|then))*(?: [?])?$`,
  `^${opening}${asked} ${until}(?:the |my )?(?:{step=(bake|rest|mature|cool|chill)}|maturing|chilling) ${verbs}${done}(?: (?:now|then))*(?: [?])?$`,
  `^${opening}(?:are|is) ${them} ${done} (?:{step=(bake|rest|mature|cool|chill)}|maturing|chilling)(?: (?:yet|now|already|then))*(?: [?])?$`,
];

let doneSigns: RegExp[] | undefined;

/** Whether it is waited for at all. */
export function asksUntilDone(mask: string): boolean {
  doneSigns ??= untilDone.map(sign);
  return doneSigns.some((each) => each.test(mask));
}

/** Whether the step that is waited for is this one, by a timer's name. */
export const isUntilDone = ({ mask, things }: Reading, name: string): boolean =>
  name !== "" && things.some((each) => each.step === name) && asksUntilDone(mask);
