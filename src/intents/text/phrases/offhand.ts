/** Said offhand, at the bench: "what will i get", "teeny ones, 3 cm", "the freezer is empty", "so i can do hands-on work". */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "((?:(?:and|but|oh|no|ok|okay|so|well|or|actually|hm),? )*)";
const sizeWord =
  "(?:teeny|teensy|tiny|dinky|titchy|wee|itty[- ]bitty|bite[- ]?size(?:d)?|small(?:er|ish)?|little|mini|bigger|larger|big|large|huge|fat(?:ter)?|chunk(?:y|ier)|wider|whopping|giant)";
const length =
  "(?:\\d+(?:[.,]\\d+)? ?(?:mm|cm|in|inch(?:es)?)\\b|(?:an? |one |two )(?:and a half )?inch(?:es)?\\b)";
const grams = "\\d+(?:\\.\\d+)? ?(?:g|grams?|kg|kilos?|oz|ounces?|lb|lbs|pounds?)\\b";
const get =
  "(?:what(?:'?ll| will| does| do| would| can| might| am| is|'?s)? (?:i|we|you|it|that|this)?(?: gonna| going to| am i going to)? ?(?:get|end up with|expect|give(?: me| us)?|make|yield)(?: me| us)?(?: (?:out of|from) (?:it|that|this))?|what (?:am|are) (?:i|we) going to (?:get|end up with|make)(?: (?:out of|from) (?:it|that|this))?|what(?:'?s| is) (?:that|it|this) (?:going to|gonna) (?:get|give|make)(?: me| us)?|what (?:comes|will come|would come) out(?: of (?:it|that|this))?)";

/** What there is none of, and what is taken for it: a color or a flavor by its kind. */
const thing = "[a-z]+(?: [a-z]+){0,2}?";
const kind =
  "(?:(?:powder(?:ed)?|gel|paste|liquid|food) )?colou?r(?:ing)?(?: (?:powder|gel|paste))?|(?:[a-z]+ ){0,2}(?:extract|bean paste|paste|powder|oil|essence|concentrate|flavou?r(?:ing)?|puree|zest)";

/** "two", "a pair of": how many of them. */
const numberOf = (said: string): number | undefined =>
  /^a (?:pair|couple)/.test(said) ? 2 : Number(smallNumbers[said] ?? tens[said] ?? said) || undefined;
const written = (value: number): string => String(Number(value.toPrecision(12)));

export const offhand = (): readonly Phrase[] => [
  // "bowl has 620 g batter in it. what will i get": macarons, and no bowls
  {
    marks: [
      "batter in",
      "batter,",
      "batter. ",
      "batter mixed",
      "batter ready",
      "batter here",
      "batter so",
      "batter and",
      "batter what",
      "batter how",
      "batter:",
      "batter;",
    ],
    from: new RegExp(
      `^(?!.*(?:split|divide|colou?r|flavou?r|cost|recipe))(?:${lead}(?:(?:i(?:'?ve| have)?|there(?:'?s| is)|(?:the |my |a )?bowl(?:'?s| has| holds)?|mixed up|we(?:'?ve| have)?)(?: got)? )*)(?:about |around )?(${grams}) (?:of )?(?:the )?(batter)(?: (?:in (?:it|there|the bowl|my bowl|total|all)|in|mixed|ready|here))*[.,;:]? (?:so |and )?${get}(?= ?[?.!]?$)`,
      "g",
    ),
    to: "$1how many macarons from $2 of $3",
  },
  {
    marks: ["of batter"],
    from: new RegExp(
      `^${lead}what (?:will|would|do|can|could|does|might) (?:(?:i|we|you) (?:get|make)(?: (?:out of|from|with))? (${grams} of batter)|(${grams} of batter) (?:give|make|get|yield)(?: me| us)?)(?= ?[?.!]?$)`,
      "g",
    ),
    to: (_said, before = "", one, other) => `${before}how many macarons from ${one ?? other}`,
  },
  // "teeny ones, 3 cm", "piped bigger, 42 mm", "they came out bigger, 42 mm": a size, and its length says which
  {
    marks: [" cm", " mm", "cm", "mm", "inch", " in"],
    from: new RegExp(
      `^${lead}(?:(?:if|say|what if|suppose) )?(?:(?:i|we|they|they're|theyre|it's|its)? ?(?:piped?|pipe|piping|make|made|came out|come out|are|were|turned out) ?(?:them|em|'em|these|it)? ?|(?:they're|theyre|its|it's) )?(?:(?:a (?:bit|touch|tad|little)|slightly|much|rather|really|quite|even) )?(?:${sizeWord}|whoppers|minis|tiddlers)(?: (?:ones|shells|macs|macarons))?(?: (?:though|then|instead|now))?[,:]? (?:(?:at|of|like|say|about) )?(${length})(?: (?:across|wide|each))?(?= ?[?.!]?$)`,
      "g",
    ),
    to: "$1at $2",
  },
  // "my freezer is empty, do filled macarons freeze ...": why it is asked, and no empty shells
  {
    marks: ["empty", "emptied", "room in", "space in"],
    from: /^(?:(?:well|so|right|ok),? )?(?:(?:i|we)(?:'?ve| have)? emptied (?:the|my|our) (?:freezer|fridge)|(?:there's|theres|there is|i've|ive|i have|got|i've got|we've) (?:(?:plenty of |some |got |loads of )*(?:room|space) in (?:the|my|our) (?:freezer|fridge)|an empty (?:freezer|fridge))|(?:the|my|our|one|a)?(?: ?(?:chest|big|small))? ?(?:freezer|fridge)(?: drawer| shelf)?(?:'s| is|s)? empty)(?: (?:now|at the moment|today))?(?:[,.;:]| so| and) (?:so |and )?(?=.*\bfreez|.*\bfrozen\b|.*\bkeep\b)/g,
    to: (said = "") => (/fridge/.test(said) ? "" : "in the freezer, "),
  },
  // "i can do hands-on work from 5am to 9pm", "hands-on work is fine from 5am to 9pm"
  {
    marks: ["5am", "am ", " am", "pm", ":", " to ", "till", "until", "between"],
    from: /^(?:.*\b(?:so|and|because|but),? )??((?:(?:ok|remember|note|please|keep in mind|bear in mind)(?: that)?,? )*)(?:(?:i|we)(?:'?m| am|'?re| are)? (?:(?:can|could|am able to|happy to|free to|only|usually|able to|available to|free for|up for|available for|available|in the kitchen|at the bench|free) ?)*(?:do |have )?(?:(?:my )?hands[- ]?(?:on )?(?:work|stuff|things|jobs|in the (?:batter|bowl))|work|bake|be (?:in the kitchen|at it|hands[- ]on))?|hands[- ]on (?:work|stuff|things|jobs) (?:is|are) (?:fine|ok|okay|possible|all right)|my (?:working|kitchen|baking|bench) hours (?:are|run|go)) (?:(?:anywhere|any time|anytime) )?(?:from |between )?(\d{1,2}(?::\d\d)? ?(?:am|pm)?) (?:to|till|til|until|and|-) (\d{1,2}(?::\d\d)? ?(?:am|pm)?)(?: (?:every day|each day|daily|most days|always|usually))?(?=(?:,? (?:and )?(?:remember|keep|note|bear|save|store)\b.*)? ?[.!]?$)/g,
    to: (_said, _before, from = "", to = "") => `i work from ${from} to ${to}`,
  },
  // "no, i've changed me mind about the size: set it to 4 cm"
  {
    marks: ["the size", "that size", "shell size", "different size", "size at"],
    from: new RegExp(
      `^${lead}(?:(?:i(?:'?ve| have)? )?changed (?:my|me|our) minds? (?:about|on) (?:the|that|my|our) (?:shell )?size|about (?:the|that) (?:shell )?size|(?:a )?different size|new size)[:,.;] ?(?:so |let's |please |can you )*set it to (${length})(?: (?:instead|after all|now|please))*(?= ?[.!]?$)`,
      "g",
    ),
    to: "$1set my shell size to $2",
  },
  {
    marks: ["the size", "that size", "shell size"],
    from: new RegExp(
      `^${lead}(?:set|change|put|switch) (?:the|that) (?:shell )?size (?:back )?to (${length})(?: (?:instead|after all|now|please|for good))*(?= ?[.!]?$)`,
      "g",
    ),
    to: "$1set my shell size to $2",
  },
  {
    marks: ["size"],
    from: new RegExp(
      `^${lead}(?:(?:i(?:'?ve| have)? )?changed (?:my|me) mind (?:about|on) the size[:,.;] (?:make|have|set) it|i(?:'d|d| would) (?:rather|sooner|prefer) (?:to )?(?:have )?the size(?: at| to be| was)?) ?(?:at |to )?(${length}) (?:from now on|for good|always|by default)(?= ?[.!]?$)`,
      "g",
    ),
    to: "$1set my shell size to $2",
  },
  // "2 kg icing sugar come in this morning": it came, and isn't sold so
  {
    marks: [" come in ", " come in,", " come this", " come today", " turned up"],
    from: new RegExp(
      `\\b(${grams}(?: bag| pack| box)?(?: of)? [a-z ]+?) (?:has |have |had )?(?:come(?: in)?|turned up|just got here)(?=(?: (?:this morning|today|just now|earlier|yesterday|this afternoon))?,? (?:so |and |please )*(?:put|pop|stick|add|shelve|stow|chuck|enter|bung)\\b)`,
      "g",
    ),
    to: "$1 came in",
  },
  // "pop it in the pantry", "stick it in the larder", "shelve it"
  {
    marks: ["pantry", "larder", "cupboard", "shelf", "shelve", "store"],
    from: /([,;.]|\band) (?:please |so |just )*(?:(?:pop|stick|bung|chuck|get|stow|put|shove|tuck) (it|that|them|those) (?:away )?(?:in|into|on|onto) (the|my|our) (pantry|larder|cupboard|shelf)|shelve (it|that|them)|(?:in|into) (the|my) (pantry|larder|cupboard) with (?:it|them|that))(?=(?: (?:please|for me|will you|would you|then))* ?[.!]?$)/g,
    to: (_said, sign = ",", what, _the, place, shelved, _my, other) =>
      `${sign} put ${what ?? shelved ?? "it"} ${(place ?? "shelf") === "shelf" && !other ? "on" : "in"} the ${place ?? other ?? "shelf"}`,
  },
  // "two blocks of butter, 250 g each, so 500 g": what they weigh together
  {
    marks: [" each", " apiece", "a piece", "lots of ", " blocks ", " packs ", " x "],
    from: new RegExp(
      `^(?!.*(?:cost|paid|price|quid|[£$€]))(.*?)\\b(a pair|a couple|${count}) (?:(?:blocks?|packs?|packets?|slabs?|bars?|pats?|tubs?|bags?|lumps?|pieces?) of ([a-z]+)|([a-z]+) (?:blocks?|packs?|packets?|slabs?|bars?|pats?|tubs?)|of ([a-z]+) (?:blocks|packs)),? (?:at |of |each |weighing )*(\\d+(?:\\.\\d+)?) ?(g|grams?|kg|oz|lb)(?: (?:each|apiece|a piece|a block|a pack|per block|per pack))?(,? (?:so|that's|thats|that is|makes|making|which makes|=|in all,?|i\\.?e\\.?)? ?(?:that's |it's |its )?((?:\\d+(?:\\.\\d+)? ?(?:g|grams?|kg|oz|lb))|half a kilo|a kilo)(?: (?:in all|altogether|in total|all told|all in))?)?(?=[,.;: ]|$)`,
      "g",
    ),
    to: (said, before = "", many = "", one, two, three, each = "", unit = "") => {
      const number = numberOf(many);
      return number === undefined ||
        !/\b(?:each|apiece|a piece|per|a block|a pack|so|that's|makes|making|in all)\b/.test(said)
        ? said
        : `${before}${written(number * Number(each))} ${unit} ${one ?? two ?? three ?? ""}`;
    },
  },
  // "two 250 g blocks of butter", "two lots of 250 g butter, so 500 g", "2 x 250 g butter, so 500 g"
  {
    marks: [" blocks of", " packs of", " slabs of", " bars of", "lots of", " x "],
    from: new RegExp(
      `\\b(a pair of|a couple of|${count}) (?:(?:lots of|times|x) (\\d+(?:\\.\\d+)?) ?(g|grams?|kg|oz|lb) (?:of )?(butter|sugar|chocolate|cream)|(\\d+(?:\\.\\d+)?) ?(g|grams?|kg|oz|lb) (?:blocks|packs|packets|slabs|bars|tubs) of (butter|sugar|chocolate|cream))(?:,? (?:so|that's|thats|makes|making|=) (?:\\d+(?:\\.\\d+)? ?(?:g|grams?|kg|oz|lb)|half a kilo|a kilo))?(?=[,.;: ]|$)`,
      "g",
    ),
    to: (said, many = "", w, u, name, w2, u2, name2) => {
      const number = numberOf(many);
      return number === undefined
        ? said
        : `${written(number * Number(w ?? w2))} ${u ?? u2 ?? "g"} ${name ?? name2 ?? ""}`;
    },
  },
  // "butter: two blocks of 250 g, makes 500 g"
  {
    marks: ["blocks of", "packs of", "slabs of", "bars of"],
    from: new RegExp(
      `\\b([a-z]+): (a pair of|a couple of|${count}) (?:blocks|packs|packets|slabs|bars) of (\\d+(?:\\.\\d+)?) ?(g|grams?|kg|oz|lb)(?:,? (?:so|that's|thats|makes|making|=) (?:\\d+(?:\\.\\d+)? ?(?:g|grams?|kg|oz|lb)|half a kilo|a kilo))?(?=[,.;: ]|$)`,
      "g",
    ),
    to: (said, name = "", many = "", each = "", unit = "") => {
      const number = numberOf(many);
      return number === undefined ? said : `${written(number * Number(each))} ${unit} ${name}`;
    },
  },
  // "once more, for 54"
  {
    marks: ["once more", "once again"],
    from: /^((?:(?:ok|okay|and|now|so|right),? )*)once (?:more|again),? (?=(?:but |only )*(?:for|with|at) )/g,
    to: "$1again ",
  },
  // "double's enough", "triple will do"
  {
    marks: ["double", "triple", "treble", "twice"],
    from: /^((?:(?:no|nah|ok|and|but|oh|well|actually|no need),? )*)(double|triple|treble|twice)(?:'?s| is| would be| will| would|'?ll)? (?:enough|plenty|do|be fine|be enough|fine)(?: for (?:me|us))?(?= ?[.!]?$)/g,
    to: (_said, before = "", times = "") => `${before}just ${times === "twice" ? "double" : times} it`,
  },
  {
    marks: ["setting?", "setting ?"],
    from: /(?<=\boven\b.*[,.;] ?)(?:(?:and |so )?(?:what |which )?)setting ?\?$/g,
    to: "what temperature?",
  },
  // "... for swiss buttercream. whites and sugar?"
  {
    marks: ["buttercream. ", "buttercream; ", "butter cream. "],
    from: /(?<=\bbutter ?cream)[.;] (?=(?:how much )?(?:the )?(?:whites|egg whites|sugar) and (?:the )?(?:whites|egg whites|sugar) ?\?$)/g,
    to: ", ",
  },
  // "how about trebling it"
  {
    marks: ["bling ", "pling ", "halving "],
    from: /\b(?:how|what) about (doubl|trebl|tripl|quadrupl|halv)ing (it|this|that|them)\b/g,
    to: "what if i $1e $2",
  },
  // "can't find the gel, only powder colour in the drawer": what is taken in its place
  {
    marks: ["only ", "just ", "all i "],
    from: new RegExp(
      `^(?:(?:oh|no|well|ok|but|and|sorry|turns out|damn|actually|,) ?,? ?)*(?:(?:(?:i|we)(?:'?ve|'?m|'?re| have| am| are)? ?)?(?:can'?t find|cannot find|couldn'?t find|can'?t see|haven'?t got|have not got|haven'?t|don'?t have|no|not got|out of|run out of|ran out of|all out of|lost|mislaid) (?:(?:the|my|any|our) )?${thing}(?: (?:left|here|after all|anywhere|at all))?|(?:(?:the|my|our) )?${thing}(?:'?s| is| has)? (?:gone missing|all gone|gone|run out|ran out|finished|empty))[,;.] (?:but |so |and )?(?:(?:i|we|there)(?:'?ve|'?s| have| is)?(?: got)? |all (?:i|we)(?:'?ve)? (?:have|got|can find)(?: left)? (?:is|are) )?(?:only |just )?(?:got )?(?:(?:the|some|my|a bit of|a tub of|a bottle of) )?(${kind})(?: (?:left|here|there|to hand|(?:in|on|at) (?:the|my|this) [a-z]+(?: [a-z]+)?))*(?= ?[.!]?$)`,
      "g",
    ),
    to: "$1 instead",
  },
  // "mum says only double it", "she only wants it doubled": that factor, in the place of the one before
  {
    marks: ["doubl", "tripl", "trebl", "quadrupl", "twice"],
    from: /^((?:(?:no|oh|well|ok|but|and|actually),? )*)(?:(?:my|the|our) )?(?!(?:what|how|if|i|we|you|it|that|this|can|could|should|would|recipe|book|card|formula)\b)[a-z]+(?: (?:just|only|actually|really|now))* (?:says?|said|reckons?|thinks?|wants?|wanted|needs?|suggests?|prefers?)(?: (?:to|that|we|i|should|you|it|them|just|only|make))* (double|triple|treble|quadruple|twice)d?(?: (?:it|that|them))?(?:,? (?:no more|only|at most|is enough|will do))?(?= ?[.!]?$)/g,
    to: (_said, before = "", times = "") => `${before}just ${times === "twice" ? "double" : times} it`,
  },
];
