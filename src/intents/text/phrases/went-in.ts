/** What is in the bowl already, told in passing: "40 g is all the jar had and its in", "shook 5 g in before i asked". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|well|oh|oh no|oops|hm|but|um),? )*)";
const grams = "(\\d+(?:\\.\\d+)? ?(?:grams?|gr|g))";
const verbs =
  "(?:shook|shaken|sprinkled|squirted|tapped|sloshed|glugged|sifted|dusted|spooned|scooped|dolloped|drizzled|dribbled|scraped|emptied|splashed|shovelled|heaped|whisked|sieved|stuck|slung|bunged|lobbed|flung|knocked)";
const jar = "(?:jar|bottle|bag|tub|tube|pot|packet|sachet|vial|box|pouch|tin)";
const had = "(?:had|held|gave|has|holds|had in it|had left|gave up|gave me|would give)";
const all =
  "(?:all|everything|the lot|what)(?: that)? (?:(?:the |my |that )?(?:[a-z]+ )?" +
  `${jar} ${had}|(?:i|we)(?:'?d| had| have|'?ve)(?: got| left)*|there (?:was|is)(?: left)?|(?:was|is) (?:left(?: (?:in|of) (?:it|there|the ${jar}))?|there|in (?:there|it|the ${jar})))`;
const isIn =
  "(?:(?:it'?s|it is|thats|that's|that is|it|they|all of it|all|now|already|just|has|have|is|was|gone|went|i put it|i tipped it|stirred) )*(?:in|in there|in it|in now|inside)(?: (?:now|already|there|too))*";

const measure = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|ml|drops?|tsp|tbsp)";

/** "dropped", "came out" alone is of what is lost as well. */
const moved =
  "(?:fell|slipped|went|landed|ended up|slid|dropped|splashed|got|poured|tipped|tumbled|plopped)(?: (?:right|straight))?";

/** "5 g" and "2 g": both went in. */
function both(one: string, other: string): string | undefined {
  const [, first, unit] = /^(\S+?) ?([a-z]+)$/.exec(one) ?? [];
  const [, second, its] = /^(\S+?) ?([a-z]+)$/.exec(other) ?? [];
  const kind = (said = "") => said.replace(/^(?:gr|grams?)$/, "g").replace(/s$/, "");
  const sum = Number(first?.replace(",", ".")) + Number(second?.replace(",", "."));
  return kind(unit) === kind(its) && Number.isFinite(sum) ? `${Number(sum.toFixed(4))} ${unit}` : undefined;
}

export const wentIn = (): readonly Phrase[] => [
  // "wanted 8 g banana flavor in my 250 g buttercream and 18 g fell in": what is in it, and not what was meant
  {
    marks: [" in", " into"],
    from: new RegExp(
      `^((?:(?:oh|no|oops|so|argh|ugh|sorry|and|well|ok),? )*)(?:i |we )?(?:only )?(?:wanted|meant|was going|intended|aimed|planned)(?: (?:to (?:put|add|use|have|weigh|pour)|for))?(?: (?:in|just|only|about))* ${measure} (?:of )?([a-z][a-z ]{2,30}?) (in|into|for|to) (?:my |the |our |a )?(${measure} (?:of )?[a-z][a-z ]{2,24}?),? (?:and|but|then|only|so|yet)? ?(?:now |then |instead |actually |about |a whole |the |whole )*(${measure}) (?:of (?:it|that) )?(?:just |all |actually )?${moved} (?:in|inside)(?: (?:it|there|to it|the bowl|by accident|by mistake|instead))*(?=$|[,.;!?])`,
      "g",
    ),
    to: "$1i put $5 $2 $3 $4",
  },
  // "i tried 5 g vanilla extract in 200 g buttercream, then 2 g went in": behind what is in it already
  {
    marks: [" in"],
    from: new RegExp(
      `^((?:(?:oh|no|oops|so|argh|ugh|sorry|and|well|ok),? )*)(?:i |we )?(?:tried|used|put|added|had|have|stirred in|did)(?: (?:in|just|only|about))* (${measure}) (?:of )?([a-z][a-z ]{2,30}?) (in|into|for|to) (?:my |the |our |a )?(${measure} (?:of )?[a-z][a-z ]{2,24}?),? (?:and |but )?then (?:about |another |a further )?(${measure})(?: more)? (?:of (?:it|that) )?(?:just |all |actually |also )?${moved} (?:in|inside)(?: (?:it|there|to it|too|as well|by accident|by mistake))*(?=$|[,.;!?])`,
      "g",
    ),
    to: (said, lead = "", first = "", what = "", into = "", bowl = "", more = "") => {
      const all = both(first, more);
      return all ? `${lead}i put ${all} ${what} ${into} ${bowl}` : said;
    },
  },
  // "40 g is all the jar had and its in, ..."
  {
    marks: [" all ", "everything", "the lot", " what "],
    from: new RegExp(
      `^${lead}(?:(?:its|it's|it was|that|those|the|these|about|just|only) )*${grams} (?:(?:is|was|are|were|that|thats|that's|which) )+(?:just |only |about )?${all}(?:,|;|\\.| -)?(?: and| so| but)? ${isIn}(?= ?[,.;?!]|$)`,
      "g",
    ),
    to: "$1$2 went in",
  },
  // "shook 5 g in before i asked"
  {
    marks: [" in", " over it"],
    from: new RegExp(
      `^${lead}(?:(?:i|i've|ive|i have|we|weve|already|just|only|have|must have|might have|may have) )*${verbs} (?:(?:about|around|like|only|just|some|maybe|all) )*${grams}(?: (?:of it|of that))? (?:in|into it|in there|over it)(?= |,|\\.|;|$)`,
      "g",
    ),
    to: "$1i put $2 in",
  },
  // "14 g landed in it"
  {
    marks: [" in"],
    from: new RegExp(
      `^${lead}(?:(?:about|around|like|some|all|the) )*${grams}(?: (?:of it|of that))? (?:landed|plopped|slid|ended up|got|flew|sloshed|splashed|poured|came|slipped|dropped|fell|went) (?:in it|into it|in there|in the bowl|into the bowl|in)(?= ?[,.;?!]|$)`,
      "g",
    ),
    to: "$1$2 went in",
  },
];
