/** Shorthand, slips and what dictation makes of words. */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const besideButter =
  "ch?oc|\\bcr[ea]*m\\b|sugar|sgr|whites|stick|flour|[£$€]|smbc|\\bbc\\b|buttercr|ganache|pantry|shelf|stock|cup|used|bought|salted|soft";
const besideBatter = "gel|colou?r|clr|shell|trays?|pip(?:e|ing)|macs|macaron|whites into";

/** "gran", where other parts of a recipe stand beside it: no grandmother, and no age of one. */
const besideGran =
  /\b(?:af|ps|ew|almonds?|almond flour|icing|whites?|powdered|butter)\b[^a-z]{1,4}\d|\d ?(?:g|gr|grams)? ?(?:of )?(?:af|ps|ew|almonds?|icing|whites?|powdered|butter)\b/;

export const typed = (): readonly Phrase[] => [
  // "af 150, ps 150, ew 115, gran 100", "100 g gran": the sugar of a list
  {
    marks: ["gran ", "gran,", "gran.", "gran:", "gran="],
    only: (text) => besideGran.test(text),
    from: /(?:(?<=^|[,;:.+&/\n] ?|\band )gran(?:\.? sug)?(?= ?[:=.-]? ?\d)|(?<=\d ?(?:g|gr|grams|oz)? )gran(?=[,;.+&/]|$| and | for | \d))/g,
    to: "granulated sugar",
  },
  // "shells form three whites": "from", where no form of a flavor is named before it
  {
    marks: ["form "],
    from: new RegExp(
      `(?<!\\b(?:in|gel|paste|powder|powdered|liquid|oil|dry|dried|which|what|this|that|extract) )\\bform (?=(?:a |the |my |that |those |these )?${count}\\b)`,
      "g",
    ),
    to: "from ",
  },
  // "dark choc, 200 g. cream?": the dot ends a sentence, where nothing but a thing is asked for behind it
  {
    marks: ["g. ", "gr. ", "oz. "],
    from: /(\d ?(?:g|gr|oz))\. (?=(?:the |and )?(?:cream|choc|chocolate|butter|sugar|whites|almonds?|almond flour|icing sugar|powdered sugar|flavou?r|batter|filling)\?)/g,
    to: "$1, how much ",
  },
  // "k cancel it", "kk, and the rest": a nod, and no degree; "k 300" stays
  {
    marks: [" k ", " kk ", " k,", " kk,", " kay ", " mkay ", " okie ", " okey "],
    from: /^(?:kk?|m?kay|oki[ei]|okey)(?=,? [a-z])/g,
    to: "ok",
  },
  // "whites ganache": of white chocolate
  { marks: [" whites "], from: /\bwhites (?=(?:choc\w* )?ganache\b|choc\w*\b)/g, to: "white " },
  // "5 eggs cracked, 168g white": of eggs, and no color
  {
    marks: ["g white", "grams white", " white,", " white.", " white in"],
    from: /^(?!.*\b(?:split|divid|pink|green|blue|yellow|red|purple|black|colou?r|choc|ganache|bowls?|parts?|bottle)\w*)(?=.*\b(?:eggs?|crack(?:ed)?|separated|meringue|recipe|shells?|almonds?|what do i weigh|weights)\b)(.*?\d ?(?:g|gr|grams?) (?:of )?(?:egg )?)white\b(?! (?:sugar|batter|flour|bread|rum|wine|macs|macarons|shells|one|powder\w*|albumen|dried|colou?r))/g,
    to: "$1whites",
  },
  // "84 shells batter in ounces": batter for so many
  {
    marks: ["shells batter", "macarons batter", "macs batter"],
    from: /\b(\d+) (shells|macarons|macs) batter\b/g,
    to: "batter for $1 $2",
  },
  // "what can u help w"
  {
    marks: [" w"],
    from: /\b(help|helps|helping)((?: (?:me|us|out))*) w(?:it|ith|iv)?(?=[ ?!.]|$)/g,
    to: "$1$2 with",
  },
  // "700g smbc whats it made of + how much mango": two questions, and no sum
  {
    marks: ["+"],
    from: /(?<=[a-z?]) ?\+ ?(?=(?:(?:also|then|so) )?(?:how|hw|what|whats|wht|wat|which|when|can|could|do|does|is|are|should|will)\b|(?:[a-z]+ ){1,2}(?:for|in|into) (?:it|that|them|the lot|all)\b)/g,
    to: " and ",
  },
  // ":(" ends what is said, as a comma would
  {
    marks: [":(", ":)", ":-(", ":-)", ";)", ";-)", ":'("],
    from: /\s*[:;](?:'|-)?[()]+(?=\s|$)\s*(.)?/g,
    to: (_whole, next = "") => (next === "" ? " " : /[a-z\d]/.test(next) ? `, ${next}` : ` ${next}`),
  },
  // "lemon zest for 1 bowl": one of those there are
  {
    marks: [" 1 bowl", " 1 part", " 1 of "],
    from: /\b(for|in|into|per) 1 (?=(?:bowl|part)\b(?! (?:of|to)\b)|of (?:them|those|these)\b)/g,
    to: "$1 one ",
  },
  // "gel color for one of the four": of those that were just counted
  {
    marks: [" of the "],
    from: /\b(for|in|into|per|to) (one|each|all|every one|any) of the (?:two|three|four|five|six|seven|eight|[2-8])(?=(?: (?:please|pls|then|too|now))*(?:[?.,;!]| and |$))/g,
    to: "$1 $2 of them",
  },
  // "pln 60 macarons for saturday": a plan without its vowel, and no money
  {
    marks: ["pln ", "paln ", "plna "],
    from: /^((?:(?:ok|hi|hey|pls|please|and|so|now|can (?:you|u)),? )*)(?:pln|paln|plna) (?=(?:me |out |for )*(?:\d+|[a-z]+) ?(?:macs?|macarons?|macaroons|mcarons|pieces|pcs|shells|filled|of them)\b)/g,
    to: "$1plan ",
  },
  // "if id used four", "if we had only cracked 3": supposed, and nothing that was used up
  {
    marks: ["if id ", "if i'd ", "if i had ", "if wed ", "if we'd ", "if we had "],
    from: /\bif (i|we)(?:'?d| had) (?=(?:(?:only|just) )?(?:used|taken|cracked)\b)/g,
    to: "if $1 ",
  },
  {
    marks: ["2 much", "2 little", "2 strong"],
    from: /(?<=^|[ ,])2 (?=(?:much|little|strong|weak)\b)/g,
    to: "too ",
  },
  {
    marks: ["lol", "haha", "hehe", "lmao", "omg", "hihi", "btw", "tbh"],
    from: /\b(?:lol|haha+|hehe+|lmao|omg|hihi|btw|tbh)\b/g,
    to: " ",
  },
  { marks: ["how mush"], from: /\bhow mush\b/g, to: "how much" },
  // "knock ten mins of it": off it
  {
    marks: ["knock ", "shave ", "take ", "lop "],
    from: /\b((?:knock|shave|take|lop) (?:[a-z]+|\d+)(?: (?:minutes?|mins?|seconds?|secs?|hours?))?) of (?=it\b|that\b|the timer|the first|the second|tray)/g,
    to: "$1 off ",
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
  // "b'cream", "b/cream"
  { marks: ["b'c", "b/c", "b.c"], from: /\bb['/.]cr(?:ea)?m\b/g, to: "buttercream" },
  { marks: [" th "], from: /(?<=[a-z]) th (?=[a-z])/g, to: " the " },
  // "wht choc" is white, "wht else" is what
  { marks: ["wht choc"], from: /\bwht(?= choc)/g, to: "white" },
  { marks: ["wht"], from: /\bwht\b/g, to: "what" },
  // "usd 350 g icing sugar": nobody is paid in grams
  { marks: ["usd "], from: /^usd (?=\d+ ?(?:g|grams)\b)/g, to: "used " },
  // "usd up 350 g", "ive usd half a kilo": no price, and no dollars before an amount of something
  {
    marks: ["usd up", "usd all", "usd half", "usd about", "usd abt", "usd some", "usd most", "usd another"],
    from: /(?<!\b(?:in|to|from|into|of|as|is|are) )(?<!\d )\busd (?=(?:up|all|half|about|abt|some|most|another)\b)/g,
    to: "used ",
  },
  {
    marks: ["usd "],
    from: /(?<=^|\b(?:i|ive|weve|we|just|already|yesterday|today|only|so|ok|oh|and) )usd (?=\d+(?:[.,]\d+)? ?(?:kg|kilos?|g|gr|grams?|oz|ounces|lb|lbs|ml|eggs?|whites|sticks?)\b(?! (?:bag|box|pack)))/g,
    to: "used ",
  },
  // Scots
  {
    marks: [" naw", " nae", " aye"],
    from: /^(naw|nae|aye)(?=[ ,]|$)/g,
    to: (_whole, word) => (word === "aye" ? "yes" : "no"),
  },
  { marks: ["over night"], from: /\bover night\b/g, to: "overnight" },
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
  { marks: ["a mil"], from: /\b(thanks|thank you|cheers|ta) a mil(?:l|lion)?\b/g, to: "$1" },
  // "y tho": only in front, as "y" is also Spanish for "and"
  {
    marks: [" y "],
    from: /^(?:(but|ok|and) )?y (?=(?:tho|though|not|that|so|is|are|r|do|does|did|dont|was|were|my|the)\b)/g,
    to: (_whole, lead) => `${lead ? `${lead} ` : ""}why `,
  },
  { marks: ["chocolat"], from: /\bchocolat\b(?! (?:blanc|noir|au lait|lait))/g, to: "chocolate" },
  { marks: ["tees"], from: /\bteesp?oo?n?spoo?n?(s?)\b|\bteespoon(s?)\b/g, to: "teaspoons" },
  { marks: ["freez"], from: /\bfree?ze?[ -]dr(?:y|i)e?d\b/g, to: "freeze dried" },
  {
    marks: ["eg w", "egs", "whits"],
    from: /\beg(s?)\b(?=,? (?:whi|how|what|for|sug|but)|$| \d)|\b(\d+) eg(s?)\b/g,
    to: (_w, a, n) => (n ? `${n} egg` : `egg${a ?? ""}`),
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
    marks: ["raspb", " qty"],
    from: /\braspb\b|\bqty\b/g,
    to: (whole = "") => (whole === "raspb" ? "raspberry" : "how much"),
  },
  { marks: ["seperat"], from: /seperat/g, to: "separat" },
  { marks: ["will not"], from: /\bwill not\b/g, to: "wont" },
  { marks: ["does not", "did not"], from: /\b(does|did) not\b/g, to: "$1nt" },
  { marks: ["w/"], from: /\bw\/ ?(?=[a-z\d])/g, to: "with " },
  // a slip that is a word of its own
  { marks: ["spilt "], from: /\bspilt (?=.*\b(?:into|between|equally|evenly)\b)/g, to: "split " },
  // "nut-free" names what isn't there: one word, so that no nut is read in it
  { marks: ["-free"], from: /\b([a-z]+)-free\b/g, to: " $1free " },
  // "freeze-dried", "cream-cheese"
  { marks: ["-"], from: /(?<=[a-z])-(?=[a-z])/g, to: " " },
  // "zest and acid again": the one acid that goes into a filling
  { marks: ["acid"], from: /\b(zest|salt|juice)(,| and|,? &|,? plus) acid\b/g, to: "$1$2 citric acid" },
];
