/**
 * Turns of phrase that are read as others, once a text is in lower case and plain signs. Each is looked for only where
 * one of its marks is there: compiling a regular expression costs more than looking for a few letters.
 */
import { smallNumbers } from "../../data/words/numbers.ts";

interface Phrase {
  marks: readonly string[];
  from: RegExp;
  to: string | ((...found: string[]) => string);
}

/** An hour of the afternoon, or one that "at" or "by" says is none of the clock's lengths; others stay lengths. */
const clockOf = (whole = "", lead = "", hour = "", minute: string | undefined = undefined): string =>
  Number(hour) < 24 && ((Number(hour) > 12 && minute) || /^(?:at|by|until|till)/.test(lead))
    ? `${lead}${hour}:${minute ?? "00"}`
    : whole;

const parts: Readonly<Record<string, number>> = { quarters: 4, thirds: 3, eighths: 8 };

const besideButter =
  "ch?oc|\\bcr[ea]*m\\b|sugar|sgr|whites|stick|flour|[£$€]|smbc|\\bbc\\b|buttercr|ganache|pantry|shelf|stock|cup|used|bought|salted|soft";
const besideBatter = "gel|colou?r|clr|shell|trays?|pip(?:e|ing)|macs|macaron|whites into";

/** "14h", "8 h". */
const hours = [..."0123456789"].flatMap((digit) => [`${digit}h`, `${digit} h`]);

const phrases: readonly Phrase[] = [
  {
    marks: ["2 much", "2 little", "2 strong"],
    from: /(?<=^|[ ,])2 (?=(?:much|little|strong|weak)\b)/g,
    to: "too ",
  },
  // "three quarters of cup of honey"
  {
    marks: [" of cup", " of a cup", " of teaspoon", " of tablespoon", " of tsp", " of tbsp"],
    from: /\b(half|quarters?|thirds?) of (?=(?:cup|teaspoon|tablespoon|tsp|tbsp)\b)/g,
    to: "$1 ",
  },
  // "one of those american sticks of butter"
  {
    marks: ["sticks of"],
    from: /\bone of (?:those|the|these|your|them) (?:american |us )?(?=sticks of\b)/g,
    to: "1 ",
  },
  {
    marks: ["lol", "haha", "hehe", "lmao", "omg", "hihi"],
    from: /\b(?:lol|haha+|hehe+|lmao|omg|hihi)\b/g,
    to: " ",
  },
  // ", an how many": the joint, and no article
  {
    marks: [" an h", " an w"],
    from: /(?<=^|[ ,])an (?=(?:how|hw|what|wht|when|where|which|why|hows|whats)\b)/g,
    to: "and ",
  },
  { marks: [" nd "], from: /(?<=^| )nd (?=[a-z])/g, to: "and " },
  // butter or batter, by what stands beside it; else nobody knows
  { marks: ["btr"], from: /\bbtr\b/g, to: "bttr" },
  {
    marks: ["bttr"],
    from: new RegExp(`\\bbttr\\b(?=.*(?:${besideButter}))|(?<=(?:${besideButter}).*)\\bbttr\\b`, "g"),
    to: "butter",
  },
  {
    marks: ["bttr"],
    from: new RegExp(`\\bbttr\\b(?=.*(?:${besideBatter}))|(?<=(?:${besideBatter}).*)\\bbttr\\b`, "g"),
    to: "batter",
  },
  { marks: [" th "], from: /(?<=[a-z]) th (?=[a-z])/g, to: " the " },
  // "wht choc" is white, "wht else" is what
  { marks: ["wht choc"], from: /\bwht(?= choc)/g, to: "white" },
  { marks: ["wht"], from: /\bwht\b/g, to: "what" },
  // "usd 350 g icing sugar": nobody is paid in grams
  { marks: ["usd "], from: /^usd (?=\d+ ?(?:g|grams)\b)/g, to: "used " },
  // "R96": the sign of the rand stands before its number
  { marks: ["r1", "r2", "r3", "r4", "r5", "r6", "r7", "r8", "r9"], from: /(?<=^|[ (])r(?=\d)/g, to: "zar " },
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
  // "same cups of almond flour": as many of them
  {
    marks: ["same "],
    from: /\bsame (?:number of )?(?:cups|spoons|tablespoons|teaspoons|ounces) of /g,
    to: "same amount of ",
  },
  {
    marks: ["a week on "],
    from: /\ba week on (monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/g,
    to: "$1 week",
  },
  // Scots
  {
    marks: [" naw", " nae", " aye"],
    from: /^(naw|nae|aye)(?=[ ,]|$)/g,
    to: (_whole, word) => (word === "aye" ? "yes" : "no"),
  },
  { marks: ["over night"], from: /\bover night\b/g, to: "overnight" },
  { marks: ["all told", "all up"], from: /\ball (?:told|up)\b/g, to: "in total" },
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
  // "14h30", "at 9h": the clock as it is written in French
  {
    marks: hours,
    from: /\b((?:at|by|until|till|for) )?(\d{1,2}) ?h ?([0-5]\d)?\b(?! ?(?:\d|min))/g,
    to: clockOf,
  },
  // "this morning 11h", "8h30 this morning"
  {
    marks: hours,
    from: /\b((?:this |tomorrow |today )(?:morning |afternoon |evening |noon )?)(\d{1,2})h([0-5]\d)?\b/g,
    to: (_whole, lead = "", hour = "", minute) => `${lead}at ${hour}:${minute ?? "00"}`,
  },
  {
    marks: hours,
    from: /\bfor (\d{1,2})h([0-5]\d)?(?= this (?:morning|afternoon|evening)\b)/g,
    to: (_whole, hour = "", minute) => `at ${hour}:${minute ?? "00"}`,
  },
  // "36 macarons for 14h tomorrow": an hour, where no step takes so long
  {
    marks: hours,
    from: /^((?:(?!timer|alarm|rest|matur|chill|set|bake|cool|fridge|leave|wait)[^.])*\bmac(?:aron|s)[^.]*)\bfor (\d|1\d|2[0-3])h([0-5]\d)?(?= (?:this (?:morning|afternoon|evening)|today|tonight|tomorrow)\b)/g,
    to: (_whole, before = "", hour = "", minute) => `${before}at ${hour}:${minute ?? "00"}`,
  },
  // "what if its the powdered stuff": no sugar
  {
    marks: ["powdered "],
    from: /\bpowdered (?=(?:stuff|kind|one|sort|type|version)\b(?! (?:of )?sugar))/g,
    to: "powder ",
  },
  // dictated: "and with for egg whites", "an our and a quarter"
  {
    marks: ["with", "of", "from", "crack", "use", "used", "have", "got", "only"].map(
      (word) => `${word} for `,
    ),
    from: /\b(with|from|crack|only) for (?=(?:egg whites|whites|eggs|macarons|shells|trays|bowls)\b)/g,
    to: "$1 4 ",
  },
  {
    marks: [" our"],
    from: /\b(an|half an|quarter of an|\d+|one|two|three|four) our(s?)\b/g,
    to: "$1 hour$2",
  },
  { marks: ["from here on"], from: /\bfrom here on(?: out| in)?\b/g, to: "from now on" },
  { marks: ["a mil"], from: /\b(thanks|thank you|cheers|ta) a mil(?:l|lion)?\b/g, to: "$1" },
  // "forget the gray. split it in four"
  {
    marks: ["forget the", "scrap the", "forget about"],
    from: /^(?:forget|scrap) (?:the |about the )\w+[.,;] (?=(?:split|divide)\b)/g,
    to: "",
  },
  // "y tho": only in front, as "y" is also Spanish for "and"
  {
    marks: [" y "],
    from: /^(?:(but|ok|and) )?y (?=(?:tho|though|not|that|so|is|are|r|do|does|did|dont|was|were|my|the)\b)/g,
    to: (_whole, lead) => `${lead ? `${lead} ` : ""}why `,
  },
  // "no for piping" corrects
  { marks: ["no "], from: /^no (?=(?:for|with|in|at|the|to) )/g, to: "no, " },
  { marks: ["from now"], from: /\b(hours?|h|hrs?|min|mins|minutes|days?) from now\b(?! on)/g, to: "$1" },
  // two shells are a macaron
  { marks: ["pairs"], from: /\b(\d+) (?:good |matched |matching |even )?pairs\b/g, to: "$1 macarons" },
  // "two cracked so 31": what is left counts
  {
    marks: [" so "],
    from: /^(?:(?:oh|no|ok|and) )*(?:a |\w+ )?\w+ (?:cracked|broke|burnt|burned|failed|stuck|got eaten),? so (?:its |just |only )?(\d+)(?: now| left)?$/g,
    to: "$1",
  },
  {
    marks: ["without counting"],
    from: /,? without counting (?:the )?(?:flavou?r\w*|colou?r\w*)/g,
    to: "",
  },
  // "EW 95 AF 125 PS 120 GS 90": grams are said nowhere else before a number
  {
    marks: [" gs "],
    from: /(\b(?:ew|af|ps)\b.*) gs (?=\d)/g,
    to: "$1 granulated sugar ",
  },
  // "400 g buttercream, no wait 350"
  {
    marks: ["no wait", "wait no", "no sorry", "scratch that", "sorry no"],
    from: /^(.*)\b(\d+(?:\.\d+)?)( ?(?:g|grams?)\b)?([^\d]*),? (?:no,? wait|wait,? no|no,? sorry|sorry,? no|scratch that)[,.]? (?:its |make it |i mean )?(\d+(?:\.\d+)?)( ?(?:g|grams?))?$/g,
    to: (whole = "", before = "", _old, unit = "", between = "", now = "", nowUnit = "") =>
      /\d/.test(before) ? whole : `${before}${now}${unit || nowUnit}${between}`,
  },
  // "575 was wrong, should be 805", "not 138, 128": the number that counts
  {
    marks: ["was wrong", "is wrong"],
    from: /\b\d+(?:\.\d+)?(?: ?g| grams?)? (?:was|is) wrong,? (?:it )?(?:should|shoud|must) (?:be|have been) (?=\d)/g,
    to: "",
  },
  { marks: ["not "], from: /^((?:sorry|no|oops|oh),? )not (\d+),? (?:but )?(?=\d+$)/g, to: "$1" },
  { marks: ["chocolat"], from: /\bchocolat\b(?! (?:blanc|noir|au lait|lait))/g, to: "chocolate" },
  { marks: ["tees"], from: /\bteesp?oo?n?spoo?n?(s?)\b|\bteespoon(s?)\b/g, to: "teaspoons" },
  // "6 eggs in grams, whites only"
  {
    marks: ["whites only", "just the whites", "only the whites", "just whites", "only whites"],
    from: /\b(\d+) (?:large )?eggs\b(.*?),? (?:whites only|(?:just|only) (?:the )?whites)\b/g,
    to: "$1 egg whites$2",
  },
  { marks: ["freez"], from: /\bfree?ze?[ -]dr(?:y|i)e?d\b/g, to: "freeze dried" },
  {
    marks: ["eg w", "egs", "whits"],
    from: /\beg(s?)\b(?=,? (?:whi|how|what|for|sug|but)|$| \d)|\b(\d+) eg(s?)\b/g,
    to: (_w, a, n) => (n ? `${n} egg` : `egg${a ?? ""}`),
  },
  {
    marks: ["something percent", "something %", "odd percent", "ish percent"],
    from: /(\d)[ -]?(?:something|odd|ish) (percent|%)/g,
    to: "$1 $2",
  },
  // "stick n a half", "n in oz", "n 400g"
  { marks: [" n "], from: /(^| )n (?=a half|in |for |how |hw |if |with |at |\d)/g, to: "$1and " },
  // dictation writes "to" for "two"
  {
    marks: ["to hundred", "too hundred"],
    from: /(^|\b(?!(?:one|two|three|four|five|six|seven|eight|nine|ten|twenty|thirty|forty|fifty|hundred|\d+) )\S+ )(?:to|too) hundred\b/g,
    to: "$1two hundred",
  },
  {
    marks: ["to ta", "to te", "to cups", "to eggs", "to whites", "too ta", "too te"],
    from: /^(?:to|too) (tablespoons|teaspoons|cups|eggs|egg whites|whites)\b/g,
    to: "two $1",
  },
  { marks: ["whits"], from: /\bwhits\b/g, to: "whites" },
  {
    marks: ["nte ", "outta"],
    from: /^nte(?= )|\boutta\b/g,
    to: (whole = "") => (whole === "nte" ? "note" : "out of"),
  },
  {
    marks: ["sift it", "sift them", "sift that"],
    from: /\bif i sift (?:it|them|that)(?: first)?\b/g,
    to: "if its sifted",
  },
  {
    marks: ["raspb", " qty"],
    from: /\braspb\b|\bqty\b/g,
    to: (whole = "") => (whole === "raspb" ? "raspberry" : "how much"),
  },
  { marks: ["seperat"], from: /seperat/g, to: "separat" },
  { marks: ["will not"], from: /\bwill not\b/g, to: "wont" },
  { marks: ["does not", "did not"], from: /\b(does|did) not\b/g, to: "$1nt" },
  { marks: ["w/"], from: /\bw\/ ?(?=[a-z\d])/g, to: "with " },
  // "60 40": shares of a whole
  {
    marks: ["0 1", "0 2", "0 3", "0 4", "0 5", "0 6", "0 7", "0 8", "0 9"],
    from: /\b([1-9]0) ([1-9]0)\b(?! ?(?:g|%|min|c|f|mm|ml))/g,
    to: (whole = "", a, b) => (Number(a) + Number(b) === 100 ? `${a}/${b}` : whole),
  },
  // "3 quarters of a cup"
  {
    marks: Object.keys(parts),
    from: /\b(\d) (quarters|thirds|eighths)\b/g,
    to: (_whole, number, part = "") => `${number}/${parts[part]}`,
  },
  // "already got 10 in" is no length
  {
    marks: [" in"],
    from: /\b(got|put|have|added|dropped|tipped) (\d+(?:\.\d+)?) in(?= ?[?.!]*$)/g,
    to: "$1 $2 inside",
  },
  {
    marks: ["in to "],
    from: /\bin to (?=(?:\d|two|three|four|five|six|equal|halves|thirds|bowls)\b|\d)/g,
    to: "into ",
  },
  // "3 eggs whites", "the whites of 4 eggs": whites, and no whole eggs
  { marks: ["eggs w", "eggs y"], from: /\beggs (?=(?:whites?|yolks?)\b)/g, to: "egg " },
  {
    marks: ["whites of", "yolks of", "whites from", "yolks from"],
    from: new RegExp(
      `\\b(?:the )?(?:egg )?(whites|yolks) (?:of|from) (\\d+|${Object.keys(smallNumbers).join("|")}) (?:large )?eggs\\b`,
      "g",
    ),
    to: "$2 egg $1",
  },
  // a slip that is a word of its own
  { marks: ["spilt "], from: /\bspilt (?=.*\b(?:into|between|equally|evenly)\b)/g, to: "split " },
  { marks: ["a whole one"], from: /\ba whole one\b/g, to: "1" },
  // "94 g whites / 122 g almond flour"
  { marks: [" / "], from: /(?<=[a-z]) \/ (?=\d)/g, to: ", " },
  // "ring at 11 love"
  {
    marks: [" love", " dear", " darling", " mate", " pet", " hun"],
    from: /(?<=\d) (?:love|dear|darling|mate|pet|hun)\b/g,
    to: "",
  },
  // "nut-free" names what isn't there: one word, so that no nut is read in it
  { marks: ["-free"], from: /\b([a-z]+)-free\b/g, to: " $1free " },
  // "freeze-dried", "cream-cheese"
  { marks: ["-"], from: /(?<=[a-z])-(?=[a-z])/g, to: " " },
  // "12/15 min" is from twelve to fifteen
  {
    marks: ["/"],
    from: /\b(\d{1,2})\/(\d{2}) ?(?=(?:min|mins|minutes?)\b)/g,
    to: (whole = "", from, to) => (Number(from) >= 5 && Number(from) < Number(to) ? `${from}-${to} ` : whole),
  },
  // "10ish min"
  { marks: ["ish"], from: /(?<=\d) ?-?ish\b/g, to: "" },
];

/** The text with its turns of phrase put plainly. */
export function plainly(text: string): string {
  let now = text;
  // the space in front stands for the start of a word
  for (const { marks, from, to } of phrases)
    if (marks.some((mark) => ` ${now}`.includes(mark)))
      now = typeof to === "string" ? now.replace(from, to) : now.replace(from, (...found) => to(...found));
  return now;
}
