/** Everyday American talk: "y'all", "what i've got is 290 g", "what'd i say", "the lime that'd flavor all of it". */
import type { Phrase } from "./phrase.ts";
import { count, spelt } from "./spelt.ts";

export const drawl = (): readonly Phrase[] => [
  {
    marks: ["y'all", "yall", "ya'll"],
    from: /\b(?:y'?all|ya'll)('s)?\b/g,
    to: (_whole, owner) => (owner ? "your" : "you"),
  },
  // "50 minutes, an another one": the joint, and no article
  {
    marks: [
      " an another",
      " an the ",
      " an then",
      " an also",
      " an put",
      " an set",
      " an gimme",
      " an add",
      " an tell",
    ],
    from: /(?<=[a-z\d],? )an (?=(?:another|the|then|also|put|set|gimme|add|tell)\b)/g,
    to: "and ",
  },
  // "what i've got is 291 g", "all we got left is half a pound": what there is, and no question
  {
    marks: ["got", "what i have", "all i have", "what we have", "all we have"],
    from: new RegExp(
      `\\b(?:what|all) (?:(?:i|we)(?:'?ve)? got|(?:i|we) have(?: got)?)((?: (?:here|left|right now|on hand|to work with|in (?:the|my) (?:bowl|mixer|fridge)))*) (?:is|are|comes to) (?=(?:about |only |just |around |exactly |roughly )*(?:an? |half |the |\\d|(?:${spelt})\\b))`,
      "g",
    ),
    to: "i have ",
  },
  // "the vanilla bean paste that'd flavor all of it", "rum to flavor the whole thing"
  {
    marks: ["all of ", "it all", "the whole ", "the lot"],
    from: /(?<=[a-z] )(?:that(?:'?d|'?ll| would| will| can|'?s gonna| is going to)?|to) (?:flavou?rs?|season|go in(?:to)?) (?:all of (?:it|that|this)|it all|the whole (?:thing|lot|batch|bowl)|the lot)\b/g,
    to: "for all of it",
  },
  // "what'd i say about banana", "what're you good for"
  {
    marks: ["'d "],
    from: /\b(what|how|when|where|why)'d (?=(?:i|we|you|they|the|my|it) )(?!it (?:cost|be|take))/g,
    to: "$1 did ",
  },
  { marks: ["'re "], from: /\b(what|how|where|who)'re\b/g, to: "$1 are" },
  // "220 g of buttercream, which is what's in my mixer, takes ...": where it is, and nothing asked
  {
    marks: [" is what", " is all"],
    from: /,? (?:which|that) is (?:what|all)(?:'?s| is| (?:i|we)(?:'?ve)?(?: got| have)| (?:i|we)'?ve)(?: (?:left|here|on hand|in (?:the|my) [a-z]+|on (?:the|my) [a-z]+))*(?:,|(?=$|[.?!]))/g,
    to: "",
  },
  // "how much buttercream'll that do", "these shells've been out": a verb behind a noun
  {
    marks: ["'ll "],
    from: /\b(?!(?:they|that|this|there|what|when|where|these|those)')([a-z]{4,})'ll (?=[a-z\d])/g,
    to: "$1 will ",
  },
  {
    marks: ["'ve "],
    from: /\b(?!(?:they|that|this|there|what|would|could|should|might|must|these|those)')([a-z]{4,})'ve (?=[a-z\d])/g,
    to: "$1 have ",
  },
  // "i got in a kilo of sugar": bought
  {
    marks: ["got in a", "got in an", "got in some", "got in "],
    from: new RegExp(`^((?:i|we)(?: just)?) got in (?=(?:an?|half|some|another|${count})\\b)`, "g"),
    to: "$1 bought ",
  },
  // "the vanilla that i use is 30 bucks"
  {
    marks: ["i use", "i buy", "i get"],
    from: /\b(the|my) ([a-z]+(?: [a-z]+)?) (?:that |which )?i (?:always |usually )?(?:use|buy|get) (?=(?:is|are|runs?|costs?|goes for)\b)/g,
    to: "$1 $2 ",
  },
  // "put my tray down as 24 shells"
  {
    marks: [" down as", " down for", " down at"],
    from: /\b(?:put|mark) (my [a-z]+(?: [a-z]+)?) down (?:as|for|at) (?=\d)/g,
    to: "set $1 to ",
  },
  // "how long you give the ones i froze": before they are eaten
  {
    marks: ["you give"],
    from: /\bhow long (?:do |would |will )?you give (?=(?:the|my|these|those) (?:[a-z]+ )?(?:frozen|filled|ones? (?:that )?i (?:froze|filled)))([^?.!]*)/g,
    to: "how long do $1 keep",
  },
  // "save this one, call it lemon shells, 100 g whites, ..."
  {
    marks: ["call it ", "name it "],
    from: /^((?:(?:ok|okay|and|now|please|so),? )*)(?:save|keep|store) (?:this|that)(?: (?:one|here))?,? (?:and )?(?:call|name) it (?=[^,:]+[,:] ?(?:\d|[a-z ]+\d))/g,
    to: "$1save this recipe, call it ",
  },
  // "my raspberry drops say 2 percent": what stands on their bottle
  {
    marks: ["drops say", "drops read"],
    from: /\b(my|the|this|our) ([a-z]+(?: [a-z]+)?) drops (?:says?|reads?) (?=[^,.?]*(?:percent|%))/g,
    to: "$1 $2 bottle says ",
  },
  // "the egg count for 250 g of whites"
  {
    marks: ["egg count"],
    from: /\b(?:the |an |my )?egg count (?=(?:for|of|in|on)\b)/g,
    to: "how many eggs ",
  },
  // "freshly ground cardamom"
  {
    marks: ["fresh ", "freshly ", "finely "],
    from: /\b(?:fresh|freshly|finely) (?=(?:ground|grated)\b)/g,
    to: "",
  },
];
