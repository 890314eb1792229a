/** A bowl told in parts: "a quarter of my 540 g buttercream goes salted caramel, whats left stays vanilla, weigh it up". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|hi|hey|also|please|of),? )*)";
const share =
  "((?:a|one|two|three|four|five|\\d) (?:half|halves|thirds?|quarters?|fifths?|sixths?|eighths?)|half|\\d{1,2}(?:\\.\\d+)? ?(?:%|percent|per cent))";
const bowl =
  "((?:my |the |this |our |a )?\\d+(?:\\.\\d+)? ?(?:grams?|gr|g) (?:of )?(?:the |my )?(?:(?:dark|milk|white|plain|swiss|italian|french|chocolate|choc) ){0,2}(?:butter ?cream|smbc|bc|ganache|filling|batter))";
const goes =
  "(?:goes?|gets?|turns?|becomes?|will be|is (?:going|turning|getting|becoming|to go|to be|to get)|is for|is|should (?:be|go|get)|to go|for)";
const left =
  "(?:what'?s left(?: over)?|what is left(?: over)?|whatever'?s left|what remains|what'?s over|the remainder|the others?|the other (?:half|part|bit|bits|parts)|the rest)";
/** The other share by its own name: the rest only where both make one. */
const fraction = "(?:one|two|three|four) (?:thirds?|quarters?|fifths?|sixths?|eighths?)";
const stays = "(?:stays?|is(?: for)?|goes?|gets?|keeps?|remains?|are|will be|for|to stay|to be)";
/** Words for a color or a taste, as they come; a flavor that is to be weighed is another question. */
const name =
  "((?!.{0,30}\\b(?:flavou?r|flavou?ring|extract|paste|powder|oil|drops|essence)\\b)[a-z]+(?: [a-z]+){0,2})";
const weigh =
  "(?:weigh (?:it|that|this|them|both|each|all)(?: all)?(?: up| out)?|(?:what (?:are|is)|whats|what's|give me|and)? ?(?:the |both )?weights?(?: of (?:each|both)| each)?|split it|divide it|part it|(?:how many )?grams (?:of |for |in )?each(?: bowl| part| one)?|how much (?:is )?(?:each|in each)(?: bowl| part| one)?|what does each (?:bowl |part )?(?:weigh|come to|get))";
const polite = "(?:,? (?:for me|please|pls|then|out|up|thanks))*";

const counts = ["a", "one", "two", "three", "four", "five"];
const pieces = ["half", "third", "quarter", "fifth", "sixth"];
/** "three quarters" as a number; undefined for what is no fraction in words. */
function sizeOf(said: string): number | undefined {
  const [count = "", piece = ""] = said === "half" ? ["a", "half"] : said.split(" ");
  const size = piece.startsWith("eighth") ? 8 : pieces.indexOf(piece.replace(/s$/, "")) + 2;
  const many = Math.max(1, counts.indexOf(count));
  return size < 2 || !counts.includes(count) ? undefined : many / size;
}
const isRest = (part: string, rest: string): boolean => {
  const other = sizeOf(rest);
  return other === undefined || Math.abs((sizeOf(part) ?? 0) + other - 1) < 1e-6;
};

export const partsTold = (): readonly Phrase[] => [
  {
    marks: ["weigh", "split it", "divide it", "part it", "grams ", "how much "],
    from: new RegExp(
      `^${lead}${share} (?:of )?${bowl} ${goes} ${name}(?:,|;|\\.| and|, and) (${left}|${fraction}) ${stays} (?:as )?${name}(?:,|;|\\.| -|, and| and)? ${weigh}${polite} ?[?.!]*$`,
      "g",
    ),
    to: (said = "", before = "", part = "", mix = "", one = "", rest = "", other = "") =>
      !isRest(part, rest)
        ? said
        : `${before}${part} of ${mix} goes ${one}, the rest stays ${/^(?:it is|is|it|it's)$/.test(other) ? "plain" : other}, how much is each`,
  },
  // "a quarter of my 540 g buttercream goes caramel, a third goes mint, whats left stays vanilla": three parts and more
  {
    marks: ["weigh", "split it", "divide it", "part it", "grams ", "how much "],
    from: new RegExp(
      `^${lead}${share} (?:of )?${bowl} ${goes} ${name}((?:(?:,|;| and|, and) ${share.replace("(", "(?:")}(?: of it)? ${goes} ${name.replace("(", "(?:")}){1,4})(?:,|;|\\.| and|, and) ${left} ${stays} (?:as )?${name}(?:,|;|\\.| -|, and| and)? ${weigh}${polite} ?[?.!]*$`,
      "g",
    ),
    to: (_said, before = "", part = "", mix = "", one = "", others = "", last = "") =>
      `${before}split ${mix}: ${part} ${one}${others.replace(new RegExp(`(?:,|;|,? and) (${share.replace("(", "(?:")})(?: of it)? ${goes} `, "g"), ", $1 ")}, the rest ${last}`,
  },
  // "of my 540 g buttercream a quarter goes caramel, ..."
  {
    marks: ["weigh", "split it", "divide it", "part it", "grams ", "how much "],
    from: new RegExp(
      `^(?:(?:ok|okay|and|now|so|please),? )*of ${bowl},? ${share} ${goes} ${name}(?:,|;|\\.| and|, and) ${left} ${stays} (?:as )?${name}(?:,|;|\\.| -|, and| and)? ${weigh}${polite} ?[?.!]*$`,
      "g",
    ),
    to: "$2 of $1 goes $3, the rest stays $4, how much is each",
  },
  // "make a quarter of my 540 g buttercream salted caramel and keep the rest vanilla, how many grams each"
  {
    marks: ["weigh", "split it", "divide it", "part it", "grams ", "how much "],
    from: new RegExp(
      `^${lead}(?:make|turn|do|i want|flavou?r|have) ${share} (?:of )?${bowl} (?:into |as )?${name}(?:,|;|\\.| and|, and) (?:(?:keep|leave|make|do|turn|have) )?${left} (?:${stays} )?(?:as )?${name}(?:,|;|\\.| -|, and| and)? ${weigh}${polite} ?[?.!]*$`,
      "g",
    ),
    to: "$1$2 of $3 goes $4, the rest stays $5, how much is each",
  },
];
