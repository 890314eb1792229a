/** A bowl spoken of from the side: what is swapped, how much bigger it turned out, how much of it so much flavor is for. */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:oh|no|actually|hm|hmm|so|ok|okay|right|and|well|ugh|sorry|wait),? )*)";
const kind = "(dark|milk|white)(?: choc(?:olate)?)?";
const mix = "(butter ?cream|ganache|filling|batter|smbc)";
const grams = "((?:(?:the|those|that|my) )?\\d+(?:[.,]\\d+)? ?(?:g|grams?)(?: of (?:it|that))?)";

export const bowlsSideways: readonly Phrase[] = [
  // "swap the dark for white"
  {
    marks: ["swap", "swop", "change", "replace", "exchange", "switch", "trade"],
    from: new RegExp(
      `\\b(?:swap|swop|change|replace|exchange|switch|trade)(?:ing)?(?: out)? (?:the |my |that )?${kind} (?:for|to|with|by|into) (?:the |some )?${kind}\\b`,
      "g",
    ),
    to: "use $2 chocolate instead",
  },
  // "bowls bigger actually, 260"
  {
    marks: ["bigger", "smaller", "fuller", "larger", "heavier", "lighter"],
    from: new RegExp(
      `^${lead}(?:(?:the|my|this) )?bowl(?:s|'s| is| was)? (?:(?:a bit|a little|much|rather|quite) )?(?:bigger|smaller|fuller|larger|heavier|lighter)(?: (?:actually|really|now|in fact|after all|than i (?:thought|said)|than that))*,? (?:(?:its|it's|it is|more like|nearer|about|at) )*(?=\\d)`,
      "g",
    ),
    to: "$1the bowl is actually ",
  },
  // "how big a buttercream would 3 g suit", "how much ganache is 3 g enough for"
  {
    marks: ["how big ", "how large ", " for", " suit"],
    from: new RegExp(
      `\\bhow (?:big|large|much) (?:(?:an?|of|the|my|bowl|batch) )*${mix} (?:(?:would|does|do|can|could|will) ${grams} (?:suit|fit|be (?:right|enough|good) for|need|serve|go with)|(?:is|are) ${grams} (?:right|enough|good|sufficient) for)\\b`,
      "g",
    ),
    to: (_said, what = "", one, other) => `how much ${what} does ${one ?? other} do`,
  },
  // "how much water and fat has it got"
  {
    marks: ["has it got", "has that got", "have they got", "has this got"],
    from: /\b(how (?:much|many)\b[^?]*?) (?:has|have) (it|that|this|they) got\b/g,
    to: "$1 does $2 have",
  },
  // "so whats the buttercream i still have to add", "what do i fold in of the plain stuff to get it back"
  {
    marks: ["to add", "the plain"],
    from: /^(?!.*\d)((?:(?:so|ok|and|then|right|now),? )*)(?:what'?s|what is|which is) (?:the )?(?:extra |more |plain |amount of )*(butter ?cream|ganache|filling|batter|smbc)(?: that)? i (?:still |now )?(?:have|need|got|ought|want) to (?:add|fold in|stir in|put in)\b/g,
    to: "$1how much plain $2 do i add",
  },
  {
    marks: ["the plain"],
    from: /^(?!.*\d)((?:(?:so|ok|and|then|right|now),? )*)what (?:do|should|must|can) i (?:still |now )?(?:fold|stir|mix|add|put|work|beat)(?: in| into it| back in)? of the plain(?: stuff| one| mix)?\b/g,
    to: "$1how much plain do i add",
  },
  // "..., and then orange oil, how much in all of that"
  {
    marks: [", how much"],
    from: /,? ?\b(?:and then|and|then|plus|also) ((?:[a-z]+ ){0,3}(?:oil|extract|flavou?r(?:ing)?|essence|paste|powder|zest|salt|rum|vanilla|liqueur)), how much(?: of it)? (?=(?:in|for|into) (?:(?:all|half) of )?(?:that|it|this)\b)/g,
    to: ", and how much $1 ",
  },
  // "doubling it, 370"
  {
    marks: ["doubling ", "halving ", "tripling "],
    from: /^((?:(?:so|ok|and|right|now|im|i'm|i am),? )*)(doubl|halv|tripl)ing (it|that|them|everything)(?=,? (?:to |so )?\d|$)/g,
    to: (_said, before = "", what = "", it = "") => `${before.replace(/i'?m,? |i am,? /, "")}${what}e ${it}`,
  },
  // "wait its white choc ganache my bad"
  {
    marks: [" my bad", " my mistake", " my fault"],
    from: /(?<=[a-z\d%])[,. ]+(?:(?:sorry|oops|thats|that's|that is|its) )?my (?:bad|mistake|fault)(?= ?[.!]*$)/g,
    to: "",
  },
  // "way to strong": too strong
  {
    marks: [" to strong", " to weak", " to sweet"],
    from: /(?<!\bfrom \w+ )\bto (strong|weak|sweet)\b(?= ?(?:[.,;!?]|$)| (?:now|for|again|and|so|what|how|help|i)\b)/g,
    to: "too $1",
  },
  // "waaay too strong. what do i stir in"
  {
    marks: ["strong", "much", "intense", "overpowering"],
    from: /(\btoo? (?:strong|much|intense)\b|\boverpowering\b)( ?[.,;!?]+ ?(?:so )?)what (do|should|must|can) i (?:stir|fold|mix|work|beat) in(?: to (?:it|that))?(?= ?[?.!]*$)/g,
    to: "$1$2what $3 i add",
  },
  // "cream and total?": the total is told with it
  {
    marks: [" and total", " and the total", " & total", " plus total"],
    from: /\b(cream|chocolate),? (?:and|&|plus) (?:the )?total(?: weight)?(?= ?[?.!]*$)/g,
    to: "$1",
  },
  // "matcha powder for the whole amount"
  {
    marks: ["whole amount", "entire amount", "whole weight", "whole quantity"],
    from: /\bfor the (?:whole|entire) (?:amount|weight|quantity)\b(?! of)/g,
    to: "for all of it",
  },
  // "one white went down the sink so its just 85 g of them": the whites
  {
    marks: [" of them", " of it"],
    from: /^((?:(?:so|well|oh|oops),? )*)(?:one|an?|another|the last|half an?) (?:egg )?(?:white|egg) (?:went|fell|dropped|got lost|ended up|is gone|spilt|spilled|splashed|broke)[a-z ]*?,? (?:so|and|which leaves|leaving|leaves me)(?: (?:its|it's|i have|ive|there is|theres|now|just|only|me|with|got))* (\d+(?:[.,]\d+)? ?(?:g|grams?)) (?:of them|of it|of whites?)\b/g,
    to: "$1$2 whites",
  },
  // "id like milk ganache": wished for, and not thin as milk
  {
    marks: ["like milk"],
    from: /\b(?:i'?d|we'?d|i would|we would|would) like (?=milk\b)/g,
    to: "i want ",
  },
  // "same 140 g cream but milk this time"
  {
    marks: ["same "],
    from: /\b(?:the )?same (\d+(?:[.,]\d+)? ?(?:g|grams?) (?:of )?(?:cream|butter)),? but (?:with |in |for )?(dark|milk|white)\b(?! choc)/g,
    to: "$2 chocolate, $1",
  },
];
