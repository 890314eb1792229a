/** Two fillings of one order: how many get each, or what there is of each and whether it is enough. One question. */
import { leadingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${leadingText("hi", "hey")})`;
const mix = "((?:[a-z]+ ){0,2}?(?:butter ?cream|smbc|ganache|curd|jam|filling))";
const need = "(?: (?:do|will|should|would) i (?:need|make|have to make)(?: to make)?| to make| needed)?";
const some = "(\\d+) ?(macarons?|macs)?(?: of (?:them|those))?";
const weight = "(\\d+(?:\\.\\d+)?) ?(?:g|gr|grams?)?";
const both = "(?:,? and|,| plus| &| \\+)";

/** Nobody tells an order at more length, and each look for its parts begins at every word. */
const short = "^(?=.{0,400}$)";
const name = "([a-z]+(?: [a-z]+)??)";
const links = "(?:(?:are|is|be|to be|in|as|with|should be|to have|of them|of it|of those|goes|gets?) )*";
const has = "(?:ones? )?(?:with|in|gets?|takes?|has|have|is|are|filled with|being|as|goes with)";
const mixes =
  "((?:(?:dark|milk|white|chocolate|choc|plain|swiss|italian) ){0,2}(?:butter ?cream|smbc|ganache|curd|jam|caramel))";
const and = "(?:,? and|,| \\+| &|;|\\.)";

/** Who they are for, and that they are to be made: nothing of it is a figure, an order or a question. */
const isTalk =
  /^(?:(?:ok|okay|and|so|now|please|pls|hi|hey|hello|well|right|i|ive|i've|im|i'm|we|were|we're|have|got|need|want|like|would|id|i'd|about|around|to|make|making|bake|baking|do|doing|for|a|an|my|our|the|her|his|their|on|this|next|friend|friends|neighbou?r|sister|brother|mum|mom|dad|mother|father|aunt|uncle|cousin|boss|colleague|teacher|daughter|son|girl|boy|kids|wife|husband|she|he|they|wants?|asked|ordered|likes?|with|all|of|them|those|party|birthday|wedding|shower|tea|(?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend|tomorrow|today|tonight)(?: ?, ?| |$))*$/;
/** Only how much of each filling, and of its flavor. */
const isAskedOnly =
  /^(?:(?:so|and|then|please|pls|how|much|many|grams?|g|what|whats|what's|is|the|amounts?|weights?|of|do|does|should|would|will|i|we|need|want|have|to|make|get|for|my|each|both|either|one|ones|in|into|it|them|filling|fillings|buttercream|butter|cream|smbc|ganache|curd|jam|caramel|white|dark|milk|chocolate|choc|plain|flavou?r|flavou?rs|flavou?ring|go|goes|per)(?: ?[,.?!;:]+ ?| |$))*$/;

/** Jam that fills beside another mix, and what stands around it; "jam in the ganache" flavors it. */
const jam =
  /(\d+(?:\.\d+)? ?(?:g|grams?)) (?:of )?(?:(?!in\b|of\b)[a-z]+ ){0,2}?(?:jam|curd|jelly|compote|marmalade)\b(?: (?:for|in) the)?(?: (?:centers?|centres?|middles?|cores?))?(?! (?:in|into)\b)/g;
const ring = /\b(butter ?cream|smbc|ganache)(?: for the)? (?:rings?|borders?|rims?)\b/g;

export const fillingsCounted = (): readonly Phrase[] => [
  // "150 g buttercream ring and 90 g raspberry jam center, enough for 30?": both of them fill
  {
    marks: [" jam", " curd", " jelly", " compote", " marmalade"],
    from: /^(?=.{0,200}$)(?=.*(?:\benough\b|\bhow many (?:macarons?|macs)\b|\b(?:fill|cover|suffice)\b))(?=.*\d ?(?:g|grams?) (?:of )?(?:[a-z]+ ){0,2}?(?:butter ?cream|smbc|ganache)\b).*$/g,
    to: (said) => {
      const put = said.replace(jam, "$1 filling");
      return put === said ? said : put.replace(ring, "$1");
    },
  },
  // "how much buttercream for 15 and how much ganache for 15": the two are of one order
  {
    marks: ["how much", "what"],
    from: new RegExp(
      `${short}${lead}(?:how much|what) ${mix}${need} for ${some}${both} (?:how much|what) ${mix}${need} for ${some}( .*|[ ?.!]*)$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", one = "", first = "", macs = "", other = "", second = "", too = "", rest = ""] =
        found;
      const isPlain = !/ (?:for|in|into|of) /.test(` ${one} ${other} `);
      return isPlain
        ? `${before}how much ${one} for ${first} ${macs || too} and ${other} for ${second}${rest}`.replace(
            / {2,}/g,
            " ",
          )
        : said;
    },
  },
  // "is 140 g buttercream and 90 g ganache enough for 40": what there is, and then what is asked
  {
    marks: ["is ", "are ", "will ", "would ", "do ", "does ", "can "],
    from: new RegExp(
      `${short}${lead}(?:is|are|will|would|do|does|can) (?:my |the )?${weight} (?:of )?(?:the |my )?${mix}${both} (?:the |my )?${weight} (?:of )?(?:the |my )?${mix} (?:together )?(?:be )?(?:enough|plenty|do|cover|fill|stretch|suffice)(?: (?:for|to fill|to do|to))? (\\d+)(?: of (?:them|those))?( .*|[ ?.!]*)$`,
      "g",
    ),
    to: "$1i have $2 g $3 and $4 g $5, enough for $6$7",
  },
  // "30 macarons, she wants half raspberry and the other half pistachio, the raspberry with buttercream and the
  // pistachio with ganache": each taste has its mix, told behind it
  {
    marks: ["half"],
    from: new RegExp(
      `${short}([^\\d]*)\\b(\\d+) (?:macarons?|macs)\\b,?([^\\d]*?)\\bhalf ${links}${name}${and} (?:the )?(?:other half|half|rest) ${links}${name}(?:${and} |: )(?:and )?(?:the )?\\4 ${has} ${mixes}${and} (?:the )?\\5 ${has} ${mixes}(.*)$`,
      "g",
    ),
    to: (said, ...found) => {
      const [ahead = "", all = "", between = "", one = "", other = "", first = "", second = "", asked = ""] =
        found;
      const each = Number(all) / 2;
      if (!Number.isInteger(each) || !/how much|what|amount|weigh/.test(asked)) return said;
      // a size, a timer, a note, batter asked for in the same turn is another's
      const isWhole = [ahead, between].every((part) => isTalk.test(part.trim()));
      if (!isWhole || !isAskedOnly.test(asked.replace(/^[ ,.;:-]+/, ""))) return said;
      const flavor = /\bflavou?r/.test(asked) ? ". how much flavor in each" : "";
      return `${each} macarons with ${one} ${first} and ${each} with ${other} ${second}, how much filling each${flavor}`;
    },
  },
  // "how many macarons can i fill with 250 g buttercream and 150 g ganache": what there is, and then what is asked
  {
    marks: ["how many "],
    from: new RegExp(
      `${short}${lead}how many (macarons?|macs)(?: (?:can|could|will|would|do|does|should) (?:i|we|it|that|these))? (?:fill|make|get|do)(?: (?:with|from|out of|of))? (?:my |the )?${weight} (?:of )?(?:the |my )?${mix}${both} (?:the |my )?${weight} (?:of )?(?:the |my )?${mix} ?[?.!]*$`,
      "g",
    ),
    to: "$1$3 g $4 and $5 g $6, how many $2 does that fill",
  },
  // "two flavors raspberry and pistachio": a list stands behind it
  {
    marks: [" flavo", " tastes"],
    from: /(?<=(?:^| )(?:[2-9]|two|three|four|five|six) (?:flavou?rs|tastes)),? (?!(?:for|in|into|from|and|out|of|each|how|per|please|with|to|is|are|what|on|at|i|we|so) )(?=[a-z]+(?: [a-z]+)?(?:(?:,? and|,| &| \+| n) [a-z]+(?: [a-z]+)?)+ ?[.?!]*$)/g,
    to: ": ",
  },
];
