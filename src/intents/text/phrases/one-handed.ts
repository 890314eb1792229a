/** Typed with one hand: "dk gnache", "heavy crm", "6oz is g?", "feet?none", "for 5 march note : ...". */
import type { Phrase } from "./phrase.ts";

/** Ganache, however it is spelt. */
export const ganache = "g(?:an|na|n|am)[a-z]*c[a-z]*";
/** What a kind of chocolate stands in front of, or behind. */
const chocolate = `(?:ch?oc[a-z]*|couverture|buttons|callets|${ganache})`;
const use = "(?:pip(?:e|ing|ng|png|ping)|firm|loose|drip|runny|soft|stiff|filling|fillng|hard)";
const grams = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?)?";
const month =
  "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)";
const day = `(?:\\d{1,2}(?:st|nd|rd|th)? (?:of )?${month}|${month} (?:the )?\\d{1,2}(?:st|nd|rd|th)?|yesterday|ystrday|yestrday|last (?:sun|mon|tues?|wednes|thurs?|fri|satur)day|(?:the )?day before yesterday)`;
/** Said of what should be there: that there is none. */
const none = "(?:none|zero|zilch|nada|nil|missing|not one|not any|nowhere)";

export const oneHanded = (): readonly Phrase[] => [
  // "dk gnache", "gnache dk 240", "160 dk": dark; "i dk how much" and a bare "dk" stay
  {
    marks: [" dk"],
    from: new RegExp(
      `(?<!\\bi |\\bstill )\\bdk(?! ch?oc(?:olate)?\\b)(?= (?:\\d+ ?g? ?)?(?:${use} )?${chocolate}\\b| ${use}\\b|(?: (?:one|ones|stuff|kind))\\b)|(?<=\\b(?:${chocolate}|with|the|w|or|from|of|same|use|its|it's|for ${grams}|${grams}) )dk\\b(?! (?:how|what|wht|if|why|which|where|when))`,
      "g",
    ),
    to: "dark",
  },
  // "wht gnache": white; "wht ganache do i make" asks
  {
    marks: ["wht "],
    from: new RegExp(
      `\\bwht(?= (?:${use} )?${chocolate}\\b(?! (?:do|does|did|is|are|can|could|should|would|goes|suits|works|ratio|to use|will)\\b))|(?<=\\b(?:the|same w|same with|dark or|dk or|milk or|mlk or) )wht\\b`,
      "g",
    ),
    to: "white",
  },
  // "what gnache 200 choc", "what ganache too stiff": mended so, and no question
  {
    marks: ["what g"],
    from: new RegExp(
      `\\bwhat (?=${ganache} (?:\\d|(?:is |went |gone |came out )?(?:to+ ?|way to+ )(?:stiff|thick|firm|hard|runny|loose|soft|thin)\\b|(?:is |has |went |gone )?(?:split|runny|stiff|loose|thin|thick|soupy)\\b))`,
      "g",
    ),
    to: "white ",
  },
  // "gnache loose. dk 150 choc 150 crm, add what": a fault, where it is to be mended
  {
    marks: [" loose", " stiff", " thin", " thick"],
    from: new RegExp(
      `\\b(${ganache}) (loose|stiff|thin|thick)(?=[.,:;! ].*\\d.*\\b(?:add what|add how much|add wht|what (?:do i |to |should i )?add|fix|mend|save it|rescue|help|hlp)\\b)`,
      "g",
    ),
    to: "$1 too $2",
  },
  // "heavy crm", "whippng crm"
  {
    marks: [" crm"],
    from: /\b(heavy|hvy|whip[a-z]*|whp[a-z]*|double|dbl|single|thick|cold|warm|hot|fresh|sour|coconut|clotted|pouring) crm\b/g,
    to: (_whole, kind = "") =>
      `${kind === "hvy" ? "heavy" : kind === "dbl" ? "double" : /^wh/.test(kind) ? "whipping" : kind} cream`,
  },
  // "gran sug", "powdrd sug"
  {
    marks: [" sug", " sgr"],
    from: /\b(icing|powdered|powdrd|pwdrd|pwdered|powderd|confectioners|gran|granulated|granltd|caster|castor|brown|brwn|white) (?:sugr?|sgr)\b/g,
    to: (_whole, kind = "") =>
      `${/^p(?:o|w)/.test(kind) ? "powdered" : /^gran/.test(kind) ? "granulated" : kind === "brwn" ? "brown" : kind} sugar`,
  },
  // "90 whites 115 af 115 ps 80 gs": granulated sugar, where the others are short too
  {
    marks: ["gs"],
    from: /(?<=\d) ?gs\b(?:(?<=(?:\b|\d)(?:af|ps|ew)\b.*)|(?=.*(?:\b|\d)(?:af|ps)\b))/g,
    to: " granulated sugar",
  },
  // "1/2lb buttr g": into which unit, the thing between
  {
    marks: ["lb", "pound", "kg", "kilo"],
    from: /^((?:(?:and|so|ok|then|now) )*(?:\d+(?:[.,]\d+)?|\d+\/\d+|\d+ \d+\/\d+) ?(?:lbs?|pounds?|kg|kilos?) (?:of )?(?!is\b|are\b|in\b|to\b|into\b|as\b|how\b|what\b|at\b|for\b|costs?\b)[a-z]+(?: (?!is\b|are\b|in\b|to\b|into\b|as\b|how\b|what\b|at\b|for\b|costs?\b)[a-z]+)?)(?: (?:is|are|as|equals)| ?=)? (?:how many |hw many |what )?(g|gr|grams?)(?= ?[?!.]*$)/g,
    to: "$1 in $2",
  },
  // "6oz is g?", "3/4 lb g": into which unit
  {
    marks: ["oz", "lb", "ounce", "pound", "kg", "kilo"],
    from: /^((?:(?:and|so|ok|then|now) )*(?:\d+(?:[.,]\d+)?|\d+\/\d+|\d+ \d+\/\d+) ?(?:oz|ozs|ounces?|lbs?|pounds?|kg|kilos?))(?: (?:is|are|as|equals|makes)| ?=)?(?: (?:what|wht|whats|hw many|how many))?(?: in)? (g|gr|grm|grms|gram|grams)(?= ?[?!.]*$)/g,
    to: "$1 in $2",
  },
  // "feet?none on any", "feet none": what is said of them
  {
    marks: ["feet"],
    from: new RegExp(
      `(?<!\\b(?:no|without|zero|small|tiny|low|uneven|lopsided|any) )\\b(?:my |the )?feet ?(?:[?:,.!-]+ ?|\\b(?:are|theres|there are|there is|is) )? ?${none}\\b(?: (?:on|of|at|in|for|from) (?:any|all|a single one|one|them|em|these|the lot|it|this one)(?: (?:of )?(?:them|em|these|shells|trays?|macs))?)?`,
      "g",
    ),
    to: "no feet",
  },
  // "cracks?on every one": how many of them have it
  {
    marks: ["?on ", "?in ", "?all ", "?every ", "?some ", "?most ", "?half ", "? on ", "? all ", "? every "],
    from: /^((?:(?:ugh|oh|so|hm|why) )*[a-z]+(?: [a-z]+)?) ?\?+ ?(?=(?:on|in|all|every|some|most|half)\b(?! (?:how|what|why)))/g,
    to: "$1 ",
  },
  // "for 5 march note : rhubarb ...", "yesterday log: fig ...": the day before the order
  {
    marks: ["note", "log", "jot"],
    from: new RegExp(
      `^(?:(?:ok|and|so|pls|please),? )*(?:for |on |of )?(${day}),? ?:? (?:note|log|jot|nte)(?: down)?(?!s\\b| (?:of|from|for|say|says|said|read|show)\\b) ?[:,-]? ?(?=[a-z\\d])`,
      "g",
    ),
    to: "note for $1: ",
  },
];
