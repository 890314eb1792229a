/** "20 g fell on the floor", behind the flavor for a bowl: what is left of it, and no 20 g of flavor. */
import { leadingIn, takingBack } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const lead = `(?:(?:${leadingIn}|${takingBack}|damn|just|about|around|some|maybe|roughly|,) )*`;
const who =
  "(?:(?:i|we|ive|weve|he|she|they|somebody|someone|(?:(?:the|my|our) )?(?:dog|cat|kids?|son|daughter|husband|wife|toddler|child|children)) )?(?:(?:have|has|had|just|already|think|must have|managed to|accidentally) )*";
const lost =
  "(?:lose|lost|spill|spilled|spilt|drop|dropped|splashed|tipped (?:out|over)|knocked over|poured away|threw (?:out|away)|binned|wasted|ate|eaten|licked|nicked|scraped off)";
const gone =
  "(?:(?:has|have|is|are|was|were|just|got|all|then|already) )*(?:fell|fallen|dropped|dripped|slipped|spilled|spilt|lost|gone|wasted|binned|eaten|landed|ended up|went (?=(?:on|onto|in|into|down|to|over)\\b)|stuck(?: (?:to|in|on))?|stayed(?: (?:in|on))?)";
const where =
  "(?: ?(?:on|onto|in|into|to|down|over|off|out|of|the|my|all|floor|table|counter|worktop|side|sink|drain|bin|bowl|spoon|spatula|dog|cat|already|now|sadly|just|there|it|edge|sides))*";
const ofIt = "(?: (?:of )?(?:it|that|this|(?:the |my |our )?(?:bowl|what)))?";

/** "20 g went in", "fell into the bowl": put in, and not lost; what sticks to a bowl is. */
const wentIn =
  /\b(?:in|into)(?: (?:it|there|that|what|the (?:bowl|mix)|my bowl))?(?: (?:already|now|there|too|by accident))*(?: [.!])*$/;
/** Verbs that say by themselves only that it moved. */
const onlyMoved =
  /# (?:(?:just|has|have|of|it|that|what|the) )*(?:fell|fallen|went|landed|ended up|slipped|dropped|dripped)\b/;
const place = /\b(?:floor|table|counter|worktop|side|sink|drain|bin|dog|cat|edge|out|over|off|lost|gone)\b/;

const ways = [
  new RegExp(`^${lead}${who}${lost} (?:about |around |some |maybe )?#${ofIt}${where}(?: [.!])*$`),
  new RegExp(`^${lead}(?:i think |theres |there is )?#${ofIt} ${gone}${where}(?: [.!])*$`),
];

/** The bowl that is worked from, and what stands in it. */
interface Bowl {
  grams: number;
  what: string;
  flavor_g?: number;
}

const plainly = (grams: number): number => Number(grams.toFixed(4));

function bowlOf({ tool, inputs }: NonNullable<State["last"]>): Bowl | undefined {
  const { base_g, base, batter_g, flavor_g } = inputs;
  if (tool === "dose" && typeof base_g === "number")
    return {
      grams: base_g,
      what: typeof base === "string" ? base : "filling",
      ...(typeof flavor_g === "number" ? { flavor_g } : {}),
    };
  return tool === "shells" && typeof batter_g === "number" ? { grams: batter_g, what: "batter" } : undefined;
}

/** "lost 20 g of lemon zest on the floor": none of the bowl, and no 20 g to be stirred in. It is off the shelf. */
function offTheShelf(
  { text, things }: Reading,
  { at: [from, to], text: amount }: Reading["amounts"][number],
): string | undefined {
  const named = things.filter((each) => !each.unit);
  const [only, ...others] = named;
  const isStuff = only && !only.base && (only.dose ?? only.taste ?? only.ingredient) !== undefined;
  if (!isStuff || others.length > 0 || only.at[0] < to) return undefined;
  const said = `${text.slice(0, from)}#${text.slice(to, only.at[0])}what${text.slice(only.at[1])}`;
  const plain = spaced(said.replace(/[’']/g, ""));
  const isLost = ways.some((each) => each.test(plain)) && !(wentIn.test(plain) && !place.test(plain));
  return isLost ? `used ${amount} of ${only.text} from the pantry` : undefined;
}

/** The sentence put plainly; undefined where nothing of a bowl is lost. Pure. */
export function lostOfBowl(reading: Reading, { last }: State): string | undefined {
  const { text, amounts, things, whens } = reading;
  const [only, ...others] = amounts;
  if (!last || only?.dim !== "weight" || only.high !== undefined || others.length > 0 || whens.length > 0)
    return undefined;
  const bowl = bowlOf(last);
  // "30 g stuck to the bowl": no sticky shells
  const isOwn = ({ base, count, symptom }: Reading["things"][number]) =>
    base === bowl?.what || count === "bowls" || symptom !== undefined;
  const off = last.tool === "dose" ? offTheShelf(reading, only) : undefined;
  if (off !== undefined) return off;
  if (!bowl || gramsOf(only) >= bowl.grams || !things.every((each) => isOwn(each) || each.unit))
    return undefined;
  const named = things.find(({ base }) => base === bowl.what);
  const plain = named ? `${text.slice(0, named.at[0])}what${text.slice(named.at[1])}` : text;
  const [from, to] = only.at;
  const moved = named && named.at[0] < from ? "what".length - (named.at[1] - named.at[0]) : 0;
  const said = spaced(`${plain.slice(0, from + moved)}#${plain.slice(to + moved)}`.replace(/[’']/g, ""));
  if (!/stuck|stayed/.test(said) && wentIn.test(said)) return undefined;
  if ((onlyMoved.test(said) && !place.test(said)) || !ways.some((each) => each.test(said))) return undefined;
  const left = bowl.grams - gramsOf(only);
  // what was stirred in is lost with it
  const mixed = bowl.flavor_g === undefined ? "" : `${plainly((bowl.flavor_g * left) / bowl.grams)} g in `;
  return `${mixed}${left} g ${bowl.what}`;
}
