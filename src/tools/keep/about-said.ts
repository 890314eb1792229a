/** What a question about keeping is about, each subject by the words that name it, the narrower before the wider. */
import type { Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { ofPlace, room_c } from "./about-place.ts";
import { activitySaid } from "./activity-said.ts";
import { dayLong, filledThen, outWords } from "./days-said.ts";
import type { KeepInputs } from "./keep.ts";
import { fridgeForUnfrozen } from "./unfrozen.ts";
import { warmthSaid } from "./warmth-said.ts";

export type About = NonNullable<KeepInputs["about"]>;

export interface Said {
  reading: Reading;
  words: string;
  /** Eggs are spoken of: whites, yolks, or both. */
  eggs: boolean;
  warm_c: number | undefined;
  /** A day on which they were made. */
  dated: boolean;
}

/** What it may be about, and the words that say so. */
export type Subject = readonly [About, (said: Said) => boolean];

export const isEgg = (reading: Reading): boolean =>
  reading.things.some((each) => ["whites", "egg", "egg yolk"].includes(each.ingredient ?? ""));

const made = /\b(?:filled|macarons?|macs|buttercream|meringue)\b/;

/** "filled at 3 pm, when are they ready", "when will they be ready if i fill at 5": matured, and no day of keeping. */
const readyOf =
  /\b(?:fill|filled|filling)\b.* (?<!until |till )(?:when|what time) (?:are|will|would|do|is|can|should) (?:they|these|those|it|the \w+|macarons|macs|i)(?: all| be| get| have them| become)* (?:ready|done|best|edible|matured?|at their best)\b|\bwhen (?:are|will|would|do) (?:they|these|those|macarons|macs)(?: all| be| get| become)* (?:ready|done|best|matured?) (?:if|when|,)? ?(?:(?:i|we|ill|im|they|are|were|it|them|was) )*(?:fill|filled|filling)\b/;

/** Steps of the day and questions of its own, before fridge and freezer. */
const first: readonly Subject[] = [
  // "filled at noon, when is maturing done", "is 28 h enough maturing", "filled at 6 pm, when can i eat them"
  [
    "matured",
    ({ words }) =>
      /\b(?:enough|long enough|done|over|ready|finished)\b.*\bmatur\w*|\bmatur\w*\b.*\b(?:enough|done|over|ready|finished)\b|\bfilled\b.*\b(?<!until |till |up to )when (?:can|could|may|should) (?:i|we|they) (?:eat|serve|try|have|sell)\b/.test(
        words,
      ) || readyOf.test(words),
  ],
  // "how long before serving do they come out": a step of the day, and no question of safety
  [
    "serve",
    ({ words }) =>
      /\b(?:when|how long before|how soon|how far ahead)\b.*\b(?:take|get|bring|come)\b.*\bout\b(?!.*\b(?:oven|mat|freezer|paper)\b)|\bbefore (?:eating|serving|we eat|i serve|they eat|they are eaten)\b|\btemp\w* .*\b(?:serve|served|eaten|eat)\b/.test(
        words,
      ),
  ],
  [
    "post",
    ({ words }) =>
      /\b(?:ship|shipping|shipped|mail|mailing|courier|parcel)\b|\b(?:can|could|to|i|we|them|by|in the|through the) (?:post|posting|posted)\b/.test(
        words,
      ),
  ],
  ["activity", ({ reading }) => activitySaid(reading) !== undefined],
  // what no date can clear
  [
    "spoiled",
    ({ words }) =>
      /\b(?:mou?ldy?|slimy|fuzzy|rancid)\b|\b(?:smell\w*|tastes?|tasting)\b(?: \w+){0,3} (?:sour|off|funny|bad|rancid|weird|like (?:alcohol|yeast))\b/.test(
        words,
      ),
  ],
  // "do i need to refrigerate the ganache overnight": whether it has to be cold, not whether it was left out
  [
    "cold",
    ({ words }) =>
      /\b(?:need|have|has|needs|must|should|do|does)\b.*\b(?:be refrigerated|refrigerate|be kept cold|be in the fridge|go in(?:to)? the fridge|be chilled|chill)\b/.test(
        words,
      ) && !/\b(?:left|forgot|sat|stood|was|were|been)\b/.test(words),
  ],
  // a fridge that wasn't one: its time counts as out of the fridge
  [
    "outside",
    ({ words }) =>
      /\b(?:power|electricity)\b(?: \w+){0,3} (?:cut|outage|out|off|failed|failure|went)\b|\b(?:fridge|refrigerator)\b(?: \w+){0,3} (?:broke\w*|off|died|failed|open|warm)\b|\b(?:outage|blackout)\b/.test(
        words,
      ),
  ],
  [
    "shelf stable",
    ({ words }) => /shelf[ -]?stable|water activity\b.* (?:under|below|safe|line|limit)/.test(words),
  ],
];

const ofEggs: readonly Subject[] = [
  // "are they ok for a pregnant friend": raw egg is what matters to her
  [
    "frail",
    ({ reading, words }) =>
      /\b(?:pregnan\w*|bab(?:y|ies)(?! (?:shower|macarons?|macs|pink|blue|shells|ones|sized?|boy|girl))|toddlers?|infants?|immun\w+|chemo\w*|elderly)\b/.test(
        words,
      ) &&
      /\b(?:ok|okay|safe|fine|eat|give|allowed|alright|can|may|should|risky|risk)\b/.test(words) &&
      reading.amounts.length === 0 &&
      reading.whens.length === 0,
  ],
  // "my whites sat out overnight": no heat makes good what stood warm too long
  [
    "outside",
    ({ reading, words, eggs }) =>
      eggs &&
      outWords.test(words) &&
      !made.test(words) &&
      (dayLong.test(words) || reading.amounts.some((each) => each.dim === "time")),
  ],
  // how long whites keep, not what is made with them
  [
    "whites",
    ({ words, eggs }) =>
      eggs &&
      !made.test(words) &&
      !/\b(?:heat\w*|sell)\b/.test(words) &&
      (!/\braw\b/.test(words) || /\bhow (?:long|many days)\b|\bfridge\b|\bfreez/.test(words)) &&
      /\b(?:keep|last|store|stay|go off|age|aged|aging|ageing|old|freez\w*|frozen|fridge)\b/.test(words),
  ],
  [
    "eggs",
    ({ words, eggs }) =>
      eggs &&
      (!/fridge|freez|out of the fridge|counter/.test(words) ||
        /\b(?:never|not|arent|dont|doesnt|isnt|without) (?:get |got |been |being |be )?(?:heat|cook)/.test(
          words,
        )),
  ],
  [
    "eggs",
    ({ words }) =>
      /\b(?:raw|uncooked|unheated) (?:egg )?(?:white|egg|batter|meringue|shell|mix)|pasteuri[sz]/.test(words),
  ],
];

const ofCold: readonly Subject[] = [
  [
    "freezer",
    ({ words }) =>
      /freezer/.test(words) && /how cold|what (?:temp|degree)|which temp|cold enough/.test(words),
  ],
  ["again", ({ words }) => /\b(?:refr[eo]+z\w*|freeze (?:\w+ )?(?:again|twice)|froze\w* again)/.test(words)],
  [
    "cold",
    ({ words }) =>
      /(?:fridge|refrigerator) temp|temp\w* (?:of|for|in) (?:the |my |a )?(?:fridge|refrigerator)/.test(
        words,
      ),
  ],
  [
    "eggs",
    ({ words }) =>
      /\bheat (?:it|them|those|the)\b|\bto heat\b/.test(words) &&
      /what (?:temp|heat|degree)|which temp|how (?:hot|warm)/.test(words),
  ],
  // "how many days in the fridge and at what temperature": the days, which say the cold too
  [
    "cold",
    ({ words }) =>
      /how (?:cold|warm)|what (?:temp|heat|degree)|which temp|cold enough/.test(words) &&
      !/\bhow (?:long|many days)\b|\b(?:till|until) when\b/.test(words),
  ],
  [
    "cold",
    ({ words, warm_c }) => /fridge|refrigerator/.test(words) && warm_c !== undefined && warm_c < room_c,
  ],
  [
    "thaw",
    ({ words, dated }) =>
      /\b(?:thaw|defrost)\w*/.test(words) && !/\b(?:thawed|defrosted)\b/.test(words) && !dated,
  ],
];

const subjects = [...first, ...ofEggs, ...ofCold, ...ofPlace];

const madeThen = new RegExp(`\\b(?:made|${filledThen}|baked)\\b`);

/** Undefined where nothing is said of keeping. */
export function aboutSaid(reading: Reading): About | undefined {
  const words = fridgeForUnfrozen(wordsOf(reading));
  const said: Said = {
    reading,
    words,
    eggs: isEgg(reading) || reading.things.some((each) => each.ingredient === "pasteurised whites"),
    warm_c: warmthSaid(reading).air_c,
    dated: reading.whens.length > 0 && madeThen.test(words),
  };
  return subjects.find(([, isMeant]) => isMeant(said))?.[0];
}
