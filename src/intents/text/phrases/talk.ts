/** Talk around a question: second thoughts, politeness, what is put right. */
import type { Phrase } from "./phrase.ts";

export const talk = (): readonly Phrase[] => [
  // "lets say 600, to be on the safe side", "make it 50 just in case": why it is more, and nothing about safety
  {
    marks: ["safe", "in case", "to be sure"],
    from: /^((?=[^?]*(?:\bsay\b|\bmake\b|\bcall it\b|\b(?:let'?s|lets|better|rather|i'll|ill|i'd|id|we'll|well) |\bround |\bbump |\bup to\b|\bgo (?:for|with|to)\b|^\d))[^?]*?\b(?:\d[\d.,]*|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|dozen|double|more|extra)(?: ?[a-z]+){0,2}?),? (?:just |only |you know,? )*(?:to (?:be|stay|play it|keep) (?:on the )?safe(?: side)?|on the safe side|(?:just )?in case|to be (?:quite )?sure)(?=\.?$)/g,
    to: "$1",
  },
  // "..., and 300 f in celsius while youre at it": a request like any other
  {
    marks: ["at it", "there", "on it"],
    from: /,? ?\b(?:while|whilst|as long as|since) (?:you'?re|ur|u r|you are|we'?re|we are|im|i'?m|your) (?:at it|there|on it|about it)(?=[,.?!]|$)/g,
    to: "",
  },
  // "im 1.80 m tall, no joke": nothing refused and nothing funny asked
  {
    marks: ["joke", "joking", "kidding", "kid you not", "no lie"],
    from: /(?:^|[,.;]? )(?:no joke|no kidding|no lie|(?:i'?m |i am )?not (?:joking|kidding|even joking)|i kid you not|not a joke)(?=[,.;!?]|$)/g,
    to: "",
  },
  // "call it 550": a number, and no timer's name
  {
    marks: ["call it "],
    from: /^((?:(?:ok|okay|well|oh|so|hm|right|no|actually|let'?s|lets|just),? )*)call it (?=\d{2,4}(?: ?(?:g|grams?|kg|oz|ml|macarons?|macs|shells|pieces))?\.?$)/g,
    to: "$1make it ",
  },
  // "going forward i pipe 4.5 cm", "as of today my oven runs hot", "from here on out we rest them 40 min"
  {
    marks: [
      "forward",
      "for now on",
      "future",
      "from here",
      "from today",
      "as of ",
      "henceforth",
      "hereafter",
      "this day",
      "this point",
    ],
    from: /\b(?:(?:going|moving) forwards?|from (?:here|this (?:day|point)|today|now) (?:on )?forwards?|from (?:here|this (?:day|point|moment)|today) on(?:wards?| out| in)?|from today(?= i | we | my )|as (?:of|from) (?:now|today|tomorrow|this (?:week|month))(?: on)?(?=,? (?:i|we|ill|im|my|our|all|every|the|use|pipe|bake|rest)\b)|henceforth|hereafter|for now on|in (?:the )?future(?=,? (?:i|we|ill|im|my|our|all|use)\b))(?!.*\b(?:timer|alarm|remind)\b)/g,
    to: "from now on",
  },
  // "starting today i bake at 145", "these days i pipe 45 mm": so it is done from here on
  {
    marks: ["starting ", "beginning ", "these days", "nowadays"],
    from: /^((?:(?:ok|so|right|and|also|well),? )*)(?:(?:starting|beginning) (?:now|today|this week|with (?:this|the next) batch)|these days|nowadays),? (?=(?:i|we|(?:all (?:of )?|every one of )?(?:my|our)) (?:\w+ )?(?!had\b|did\b))(?!.*\b(?:timer|alarm|remind|how|what|whats|when|which|why)\b)/g,
    to: "$1from now on ",
  },
  // "i pipe 4.5 cm these days"
  {
    marks: [" these days", " nowadays"],
    from: /^(?!.*\b(?:how|what|whats|which|why|when|timer|had|did|was|were)\b)((?:i|we|im|my|our) .*\d.*?),? (?:these days|nowadays)(?= ?[.!]?$)/g,
    to: "$1 from now on",
  },
  // "all my shells get piped at 40 mm from today", "from tomorrow on we pipe 42 mm"
  {
    marks: [" from today", " as of today", " from tomorrow", " starting today"],
    from: /^(?!.*\b(?:how|what|whats|which|why|when|timer|alarm|order)\b)((?:i|we|im|(?:all )?(?:of )?(?:my|our)|every|the) .*\d.*?),? (?:(?:from|as of|starting) (?:today|tomorrow|now))(?: on(?:wards?)?)?(?= ?[.!]?$)/g,
    to: "$1 from now on",
  },
  {
    marks: ["from tomorrow"],
    from: /^from tomorrow(?: on(?:wards?)?)?,? (?=(?:i|we|(?:all )?(?:my|our)|every) (?:.*)\d)(?!.*\b(?:timer|alarm|how|what|when|order)\b)/g,
    to: "from now on ",
  },
  // "forgot to say, sifted"
  {
    marks: ["forgot to", "meant to say", "should have said", "should've said", "shouldve said"],
    from: /\b(?:i )?(?:forgot to (?:say|mention|add|tell you)|meant to say|should(?:'ve|ve| have) said)\b(?: that)?[,:]?(?= \S)/g,
    to: "i mean",
  },
  {
    marks: ["second thought", "to think of it"],
    from: /\b(?:on second thoughts?|(?:now i |now that i )?come to think of it)\b/g,
    to: "actually",
  },
  // "my ganache split 240 g": what befell it, and no order
  {
    marks: ["ganache split"],
    from: /\b(my|the|this) ganache (?:has |just )?split,? (?=\d+(?:\.\d+)? ?(?:g|grams)\b)(?!.*\b(?:into|between|in (?:two|three|four|half|\d))\b)/g,
    to: "$1 ganache has split, ",
  },
  // "nothing? ok log it": what was answered, in wonder
  { marks: ["? "], from: /^(?:nothing|really|none|oh|huh|no)\? (?=\S)/g, to: "" },
  // "right, log it then: note for 10 march"
  {
    marks: ["then: note", "then, note", "it: note"],
    from: /^(?:(?:right|ok|well|fine|so),? )*(?:log|note|write|save|jot) (?:it|that) (?:down )?(?:then)?[:,] (?=note\b)/g,
    to: "",
  },
  // "stick on 18 mins": a timer, and no butter
  {
    marks: [" on "],
    from: /\b(?:stick|pop|bung|whack|put|chuck|stick me|put me) on (?=(?:\d+|[a-z]+(?:[ -][a-z]+)?) ?(?:mins?|minutes?|hours?|hrs?)\b(?! (?:more|extra|longer|on top)\b))/g,
    to: "set a timer for ",
  },
  // "5 off the first", "and 10 on to the other", of timers
  {
    marks: [" off the ", " onto the ", " on to the "],
    from: /^((?:and|ok|now|then|also),? )?(\d+)( ?min(?:s|utes)?)? (off(?= the (?:first|second|third|last|oven|rest|bake)\b)|onto(?= the )|on to(?= the )) (?=the (?:first|second|third|last|other|oven|rest|bake)\b)/g,
    to: (_whole, lead = "", number = "", _unit, way = "") =>
      way === "off" ? `${lead}take ${number} min off ` : `${lead}add ${number} min to `,
  },
  {
    marks: ["too much trouble", "too much bother", "so kind", "don't mind", "dont mind", "n't mind"],
    from: /,? ?\bif (?:it is|its|it's|that is|that's) not too much (?:trouble|bother),?|,? ?\bif you (?:would be so kind|don'?t mind|wouldn'?t mind),?/g,
    to: " ",
  },
  {
    marks: ["thank you"],
    from: /\bthank you (?:kindly|very much|so much|ever so much)\b/g,
    to: "thank you",
  },
  // "right, forget money. 2 oz in grams": nothing that is kept is to be forgotten
  {
    marks: [
      "forget money",
      "forget the money",
      "forget about money",
      "forget cost",
      "forget the cost",
      "forget price",
    ],
    from: /^(?:(?:right|ok|okay|well|so|no|anyway),? )*forget (?:about )?(?:the )?(?:money|costs?|prices?)[.,;!] (?=\S)/g,
    to: "",
  },
  // "theyve got a skin, bake timer": the rest is over, and no timer for it is asked
  {
    marks: ["skin"],
    from: /^(?:(?:ok|right|so|and|good),? )*(?:(?:the )?skins? (?:has |have |is |are |just )?(?:formed|set|dry|there)|(?:they'?ve|they have|they|(?:the )?shells(?: have)?|both trays(?: have)?)(?: all| now| finally)? (?:got|formed|have|has|grown) (?:a |their )?skins?(?: now| on)?)(?:,| and| so) (?=.*timer)/g,
    to: "",
  },
  // "oops tare was on, 160": an excuse for the number before
  {
    marks: ["tare", "bowl was"],
    from: /\b(?:the )?(?:tare|bowl) was (?:still )?on(?: (?:it|the scales?))?\b|\bi (?:had )?forg[eo]t(?:ten)? (?:to |the )*tare(?: it)?\b/g,
    to: "sorry",
  },
  // "forget the gray. split it in four"
  {
    marks: ["forget the", "scrap the", "forget about"],
    from: /^(?:forget|scrap) (?:the |about the )\w+[.,;] (?=(?:split|divide)\b)/g,
    to: "",
  },
  // "no for piping" corrects
  { marks: ["no "], from: /^no (?=(?:for|with|in|at|the|to) )/g, to: "no, " },
  // "two cracked so 31": what is left counts
  {
    marks: [" so "],
    from: /^(?:(?:oh|no|ok|and) )*(?:a |\w+ )?\w+ (?:cracked|broke|burnt|burned|failed|stuck|got eaten),? so (?:its |just |only )?(\d+)(?: now| left)?$/g,
    to: "$1",
  },
  // "575 was wrong, should be 805", "not 138, 128": the number that counts
  {
    marks: ["was wrong", "is wrong"],
    from: /\b\d+(?:\.\d+)?(?: ?g| grams?)? (?:was|is) wrong,? (?:it )?(?:should|shoud|must) (?:be|have been) (?=\d)/g,
    to: "",
  },
  { marks: ["not "], from: /^((?:sorry|no|oops|oh),? )not (\d+),? (?:but )?(?=\d+$)/g, to: "$1" },
  // "what with one thing and another i'm running late": nothing asked
  {
    marks: ["what with "],
    from: /(?:^|(?<=[.,;!] ))what with (?:one thing and another|(?:(?:the|my|our|all|everything|everyone|his|her) ?[^\d?.!;:]{0,50}?(?=,))),? ?/g,
    to: "",
  },
  {
    marks: [" what with "],
    from: /,? what with one thing and another(?=[.,;!]|$)/g,
    to: "",
  },
  // "not a third, half please"
  {
    marks: ["not "],
    from: /^(?:(?:and|sorry|no|oops|oh|well|actually),? )*not (?:a |an |the )?(?:thirds?|quarters?|half|fifth|sixth|eighth|double|triple|two thirds|three quarters)[,;.-] ?(?:but |make it |just )?(?=(?:an? |the |one )?(?:third|quarter|half|fifth|sixth|eighth|double|triple|two thirds|three quarters)\b)/g,
    to: "make it ",
  },
  // "ring at 11 love"
  {
    marks: [" love", " dear", " darling", " mate", " pet", " hun"],
    from: /(?<=\d) (?:love|dear|darling|mate|pet|hun)\b/g,
    to: "",
  },
  // "every last one has a peak": all of them, and none that was the last
  {
    marks: ["every last", "every single"],
    from: /\bevery (?:last|single) (one|shell|macaron|batch|tray)\b/g,
    to: "every $1",
  },
  // "45 mm macarons, i should have said": why it comes late, and nothing else
  {
    marks: ["should have said", "should've said", "forgot to", "should have mentioned", "ought to have said"],
    from: /(?<=\S),? (?:as )?i (?:should(?: have|'ve)|ought to have|forgot to) (?:said|say|mentioned?|added|told you|tell you)(?: (?:so|that|it|this|before|earlier|first|at first))*(?= ?[.!]*$)/g,
    to: "",
  },
];
