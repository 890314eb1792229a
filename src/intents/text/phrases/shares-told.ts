/**
 * "a quarter of my 380 g buttercream gets raspberry, the remainder stays vanilla": a bowl told in two shares, each with
 * what it becomes, and nothing asked: what each of them weighs is meant, and no flavor for it.
 */
import type { Phrase } from "./phrase.ts";

const lead =
  "((?:(?:ok|okay|and|now|so|right|hi|hey|also|please|well|today|tonight|im thinking|i think|thinking),? )*)";
const share =
  "((?:an?|one|two|three|four|five|\\d) (?:half|halves|thirds?|quarters?|fourths?|fifths?|sixths?|eighths?|tenths?)|half|(?:1[5-9]|[2-9]\\d)(?:\\.\\d+)? ?(?:%|percent|per cent))";
const bowl =
  "((?:my |the |this |our |that |a )?\\d+(?:\\.\\d+)? ?(?:grams?|gr|g) (?:of )?(?:the |my )?(?:(?:dark|milk|white|plain|swiss|italian|french|chocolate|choc) ){0,2}(?:butter ?cream|smbc|bc|ganache|filling))";
const goes =
  "(?:(?:should|shall|will|is|are|wants?|needs?|has|have|gets?|goes?|going|gonna|turns?|turned|turning|becomes?|becoming|made|be|to|for|into|with|as|just|supposed|meant|stays?|remains?|kept|left|dyed|flavou?red) )+";
const left =
  "(?:what'?s left(?: over)?|what is left(?: over)?|whatever'?s left|what (?:then )?remains|what'?s over|the (?:remainder|remaining(?: part| bit| third| quarter| half| two thirds| three quarters)?|balance)|(?:the )?remainder|the others?|the other (?:half|part|bit|bits|parts|third|quarter|two thirds|three quarters)|(?:the )?rest(?: of it| of that)?)";
/** A color or a taste, as it comes; a flavor that is to be weighed is another question. */
const name =
  "((?!(?:how|what|it|that|this|as|only|and|the|a|an|i|to)\\b)(?!.{0,30}\\b(?:flavou?rs?|flavou?ring|extract|paste|powder|oil|drops|essence|gel|zest|salt|alcohol|grams|percent)\\b)[a-z]+(?: (?!(?:and|with|the|what|rest|how)\\b)[a-z]+)?)";
const asIs =
  "((?:as (?:it|is)(?: is)?|alone|untouched|uncolou?red|(?!(?:how|what|it|that|this|as|only|and|the|a|an|i|to)\\b)[a-z]+(?: (?!(?:and|with|the|what|rest|how)\\b)[a-z]+)?))";
const joint = "(?:,| ?[;.:-]| and| with|, and|, with| while|, while| but|, but| then|, then)";
const end =
  "(?:[,;.]? (?:please|pls|thanks|then|how much (?:is )?(?:of )?(?:each|both|in each)|how (?:do|should) i (?:split|divide) (?:it|that)|what (?:are|is) (?:the )?(?:weights?|each)|whats each))* ?[?.!]*$";
const marks = [" rest", "remain", " left", " other", "balance"];
const plainly = (before: string, part: string, mix: string, one: string, other: string): string =>
  `${before}${part.replace("fourth", "quarter")} of ${mix} goes ${one}, the rest stays ${/^(?:as |alone|untouched|uncol)/.test(other) ? "plain" : other}, how much is each`;

export const sharesTold = (): readonly Phrase[] => [
  {
    marks,
    from: new RegExp(
      `^${lead}(?:of |from |out of )?${share} (?:of )?${bowl}(?: ?[,:-])? ${goes}${name}${joint} ${left} (?:${goes})?${asIs}${end}`,
      "g",
    ),
    to: (_said, before = "", part = "", mix = "", one = "", other = "") =>
      plainly(before, part, mix, one, other),
  },
  // "a third of my 420 g buttercream will be coffee, hazelnut for the rest"
  {
    marks,
    from: new RegExp(
      `^${lead}(?:of |from |out of )?${share} (?:of )?${bowl}(?: ?[,:-])? ${goes}${name}${joint} ${asIs} (?:for|in|as|into|gets) ${left}${end}`,
      "g",
    ),
    to: (_said, before = "", part = "", mix = "", one = "", other = "") =>
      plainly(before, part, mix, one, other),
  },
  // "from 380 g buttercream a quarter goes raspberry and the remainder vanilla", "my 380 g buttercream: a quarter mint, ..."
  {
    marks,
    from: new RegExp(
      `^${lead}(?:of |from |out of |with )?${bowl}(?: ?[,:;.-])? ${share} (?:of it )?(?:${goes})?${name}${joint} ${left} (?:${goes})?${asIs}${end}`,
      "g",
    ),
    to: (_said, before = "", mix = "", part = "", one = "", other = "") =>
      plainly(before, part, mix, one, other),
  },
  // "raspberry gets a quarter of my 380 g buttercream, vanilla the rest"
  {
    marks,
    from: new RegExp(
      `^${lead}${name} (?:gets|takes|is|has|wants|for|goes in|goes into) ${share} (?:of )?${bowl}${joint} (?:${asIs} (?:${goes})?(?:in |into )?${left}|${left} (?:${goes})?${asIs})${end}`,
      "g",
    ),
    to: (_said, before = "", one = "", part = "", mix = "", other = "", also = "") =>
      plainly(before, part, mix, one, other || also),
  },
  // "i put raspberry in a quarter of my 380 g buttercream and leave the rest vanilla", "make a quarter of it mint and ..."
  {
    marks,
    from: new RegExp(
      `^${lead}(?:(?:i|we|ill|id like to|i want to|lets|let me|can i) )*(?:put|putting|stir|mix|fold|work) ${name} (?:in|into|through|to) ${share} (?:of )?${bowl}${joint} (?:(?:i|we|ill|leave|keep|leaving|keeping|make|turn|do|want) )*${left} (?:${goes})?${asIs}${end}`,
      "g",
    ),
    to: (_said, before = "", one = "", part = "", mix = "", other = "") =>
      plainly(before, part, mix, one, other),
  },
  {
    marks,
    from: new RegExp(
      `^${lead}(?:(?:i|we|ill|id like to|i want to|lets|let me|can i) )*(?:make|turn|do|flavou?r|have|want) ${share} (?:of )?${bowl} (?:${goes})?${name}${joint} (?:(?:i|we|ill|leave|keep|leaving|keeping|make|turn|do|want) )*${left} (?:${goes})?${asIs}${end}`,
      "g",
    ),
    to: (_said, before = "", part = "", mix = "", one = "", other = "") =>
      plainly(before, part, mix, one, other),
  },
  // "vanilla gets 150 and cocoa whatever remains"
  {
    marks: ["whatever", "what is left", "whats left", "what's left", "what remains"],
    from: /\b(?:the )?([a-z]+(?: [a-z]+)?) (?:gets|takes|has) (\d+(?:[.,]\d+)?) ?(?:g|grams?)?(?:,| and|, and| -) (?:the )?([a-z]+(?: [a-z]+)?) (?:gets |takes |is |has )?what(?:ever)?(?:'s| is| s|s)? (?:remains|remaining|left(?: over)?)\b/g,
    to: "$2 g $1 and the rest $3",
  },
];
