/** "another pot of plain ganache, 200 g, what does that one get": a bowl that nothing is in, and no plain mix to add. */
import { vessel } from "../../../data/words/vessels.ts";
import type { Reading } from "../contract/index.ts";

const other = "(?:another|(?:a|the|my) (?:second|third|other|further)|second|one more|separate|different)";
const bowl = `(?:${vessel}|batch|lot|load|mixture|pan|tin)`;

const named = new RegExp(
  `\\b${other} (?:\\S+ ){0,2}?${bowl}\\b|\\bnothing in (?:it|that|that one|there|this one) yet\\b`,
);
const startsOver = /\b(?:start(?:ing|ed)?|beg[iau]n(?:ning)?) (?:all )?(?:over|again|afresh|anew)\b/;

const asks =
  /\b(?:how (?:much|many)|what (?:does|do|would|will|should|goes|weight|amount|range)|whats|and for|what for|dose|which amount)\b|\?$/;

/** What goes into the bowl before instead: that is mended with it. */
const goesIn = new RegExp(
  `\\b(?:add|mix|stir|fold|blend|combin|beat|tip|join|dilut|pour|scrap|fix|rescu|mend|calm|tone|weaken)(?:e|ed|ing|ped|ping|red|ring|s)?\\b|\\b(?:put|use|bring|take|get) (?:in |it |this |that )*(?:${other}|down|back)\\b|\\bto (?:the|it|that|this) (?:first|old)\\b|\\b(?:together|ok|okay|fine|alright|right|save)\\b`,
);

export const asksOtherBowl = ({ text }: Reading): boolean =>
  (named.test(text) || startsOver.test(text)) && asks.test(text) && !goesIn.test(text);
