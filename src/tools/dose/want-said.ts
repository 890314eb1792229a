/** What is wanted: a dose, a verdict on what is in the bowl, or a way to mend it. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { type Draft, doseLeanedOn } from "./draft.ts";
import { inTurn } from "./of-turn.ts";
import { plainAsked } from "./plain-asked.ts";

export type WantWay = Way<{ reading: Reading; before?: Draft }, Draft>;

/** Said of a bowl with its flavor in. */
const ofBowlBefore =
  (pattern: RegExp, want: Draft["want"]): WantWay =>
  ({ reading, before }) =>
    before?.flavor_g !== undefined && before.base_g !== undefined && says(reading, pattern)
      ? { want }
      : undefined;

/** "what now?" */
const whatNow = ofBowlBefore(
  /(?:^|, )(?:oh no |so |ok |and |oops )*(?:what now|now what|what (?:do|should|can|must) i (?:add|do)(?: so| then| now)*|(?:whats|what is|is there) (?:the|a|any) (?:fix|remedy|cure|solution|way out)(?: for (?:it|that|this))?)(?: \?)?$/,
  "mend",
);

const howMuchAlone = ofBowlBefore(
  /^(?:(?:so|and|ok|but|then|well) )*how (?:much|many)(?: more| then| extra)*(?: (?:do|should|must|shall) i (?:need|add|put in))?(?: then)?(?: \?)?$/,
  "mend",
);

/** "so how much more", "how much": what brings it back into the range. */
const howMuchMore: WantWay = (turn) => (turn.before?.want === "flavor" ? undefined : howMuchAlone(turn));

/** "how much buttercream should i add", of the same. */
const baseToAdd = ofBowlBefore(
  /(?:how (?:much|many)|what (?:weight|amount) of) (?:\S+ ){0,3}\S*<[^>]*(?:base=|color=plain)\S* .*\b(?:add|adding|goes in|stir|to fix)\b|how (?:much|many) (?:\S+ ){0,2}(?:more|extra) (?:\S+ )?\S*<[^>]*base=|^(?:(?:so|and|then) )*\S*<base=\S+ to (?:add|put in)(?: \?)?$/,
  "mend",
);

/** "what should it have been", of a bowl with too much in it. */
const shouldHaveBeen = ofBowlBefore(
  /^(?:(?:so|and|ok|hm|then) )*(?:what|how much) (?:should|ought) (?:it|that|there|i|to) (?:have (?:been|had|put(?: in)?|used|gone in)|be)(?: (?:in(?: there)?|then))?(?: \?)?$|^(?:(?:so|and|ok|hm|then) )*(?:what|how much)(?: of it| flavou?r)? (?:should|shouldve|should have|ought to have|was meant to have) (?:been|gone|been put|been in|gone in)(?: (?:in(?: there)?|then))?(?: \?)?$/,
  "flavor",
);

/** "and what would the right amount be in grams": for that bowl, whatever is in it. */
const rightAmount: WantWay = ({ reading, before }) =>
  before?.base_g !== undefined &&
  reading.amounts.length === 0 &&
  says(
    reading,
    /(?:what|whats|how much|which) (?:\S+ ){0,3}?(?:right|correct|proper|usual|normal|ideal|recommended|actual) (?:amount|dose|quantity|weight|number|one|range)(?: |$)|(?:what|how much|which)(?: (?:amount|dose|quantity|weight))? (?:would|should) (?:have been|be|it have been|that have been) (?:right|correct|enough|ok|okay|fine|the right one)(?: |$)/,
  )
    ? { want: "flavor", fresh: true }
    : undefined;

/** "and 220 g smbc, i want 3 % flavor", behind a bowl that had some in it: another bowl, with nothing in it yet. */
const newBowl: WantWay = ({ reading: { amounts }, before }) =>
  before?.flavor_g !== undefined &&
  amounts.some((each) => each.dim === "weight" && each.of?.base) &&
  amounts.some((each) => each.dim === "percent") &&
  !amounts.some((each) => each.dim === "weight" && (each.of?.dose || each.of?.taste) && !each.of.base)
    ? { want: "flavor", fresh: true }
    : undefined;

const saysMend = inTurn(
  /\b(?:rescues?|fix(?:es)?|saves?|dilutes?|(?<!\b(?:is|be|are)(?: then| the)? )correct|mend|tone it down|bring it (?:back|down)|(?:so )?(?:its|it is|thats|get (?:it|that|this)) (?:back )?(?:in|into|within) (?:the )?range|balance it|weaken|put (?:it |that |this |them )?right|sort (?:it|that|this)|calm (?:it|that|this) down|even it out|water it down|too much what now|undo the|repair|to get it back|to bring)\b/,
);

/** "a touch of citric acid would fix it": what is to go in, and nothing that went in. */
const wouldHelp =
  /(?:touch|pinch|bit|dash|splash|hint|drop|little|spot|squeeze|some|grain|smidge|smidgen|spoonful|lot)s? (?:of )?\S*<[^>]*dose=\S* (?:(?:would|will|might|could|should|may|can|ought|to|usually|always|really|just) )*(?:fix|fixes|rescue|save|balance|balances|correct|corrects|mend|mends|sort|calm|repair)(?: |$)/;

/** "how can i rescue it"; "save my lemon oil, 0.1 to 0.2 percent" is for the shelf. */
const toMend: WantWay = ({ reading }) =>
  saysMend(reading.text) &&
  !says(reading, /\bsave (?:my |this |a |our )?\S*<[^>]*(?:dose|taste)=/) &&
  !says(reading, wouldHelp)
    ? { want: "mend" }
    : undefined;

const tooStrong = inTurn(
  /too (?:strong|much|intense|sharp|powerful)\b.*\b(?:what|how (?:much|many)) (?:do|should|can|must) i (?:add|put|mix)/,
);
const moreBase = inTurn(
  /(?:how (?:much|many)(?: g| grams)?(?: of)?|what (?:mass|weight|amount) of|what) (?:more|extra|plain|additional) (?:plain\S* |extra )?\S*(?:buttercream|ganache|filling|base|butter cream)/,
);
const plainToAdd = inTurn(
  /\bhow (?:much|many) (?:more |extra )?plain\b (?:\S+ ){0,2}(?:do|should|must|shall|can) i (?:need to |have to |need )?(?:add|stir|put|mix|beat)/,
);

/** "how much more buttercream", "too strong, what do i add": plain mix to bring it down with. */
const plainMix: WantWay = ({ reading: { text } }) =>
  tooStrong(text) || moreBase(text) || plainToAdd(text) ? { want: "mend" } : undefined;

/** "14 g in 200 g, how much ganache": flavor and bowl are weighed, so the mix that is asked for comes on top. */
const baseOfBoth: WantWay = ({ reading }) =>
  reading.amounts.filter((each) => each.dim === "weight").length > 1 &&
  says(reading, /how (?:much|many) (?:plain\S* |more |extra )*\S*<[^>]*base/)
    ? { want: "mend" }
    : undefined;

/** "what percent is that". */
const asksShare: WantWay = ({ reading }) =>
  says(
    reading,
    /(?:what|which) (?:\S*<unit=%>|percentage|share) (?:is|was|are|were) (?:that|it|this|in|there)/,
  )
    ? { want: "check" }
    : undefined;

const ofNow =
  /(?:^| )(?:\S*<unit=%>|percentage|percent|proportion|concentration)(?: |$)|^(?:(?:and|so|ok|hm|but) )*(?:how strong (?:is|am|are) (?:it|that|this|she|he|i|we)(?: |$)|(?:whats|what is) (?:the|its) (?:share|strength)(?: |$))/;
const ofOther =
  /(?:^| )(?:should|supposed|meant|ought|range|usual|normal|max|maximum|min|minimum|most|least|top|allowed|aim|want|fat|water|sugar|margin|markup|cost|price)(?:<| |$)/;

/** "whats the percentage as it stands", "how strong is it right now", of a bowl with its flavor in. */
const shareNow: WantWay = ({ reading, before }) =>
  before?.flavor_g !== undefined &&
  before.base_g !== undefined &&
  reading.amounts.length === 0 &&
  reading.things.every((each) => each.unit) &&
  says(reading, ofNow) &&
  !says(reading, ofOther)
    ? { want: "check" }
    : undefined;

/** "is 9 g of lemon flavor too much": that depends on what it went into. */
const asksVerdict: WantWay = ({ reading }) =>
  // a look at its first word costs less than compiling the pattern
  says(reading, /^(?:so|and|hm|um|ok|is|would|will|\S*<)/) &&
  says(
    reading,
    /^(?:(?:so|and|hm|um|ok) )*(?:is|would|will) \S*<weight> .*(?:too (?:much|little|strong|weak)|overdoing it|enough(?: \?)?$)|^(?:(?:so|and|hm|um|ok) )*\S*<(?:weight|volume)> (?:ok|okay|enough|fine|alright|too (?:much|little|strong|weak)|right)(?: then)?(?: \?)?$/,
  )
    ? { want: "check" }
    : undefined;

/** "is 4 % ok for ganache". */
const isShareFine: WantWay = ({ reading }) =>
  reading.mask.includes("<percent>") &&
  says(
    reading,
    /^(?:(?:so|and|hm|um|ok) )*(?:is |would |will )?\S*<percent> (?:of )?(?:\S*<[^>]*(?:dose|taste)=\S* )?(?:be )?(?:ok|okay|enough|fine|alright|right|too (?:much|little|strong|weak))(?: then)?(?: (?:for|in) (?:an? |my |the )?\S*<base=\S+)?(?: \?)?$/,
  )
    ? { want: "check" }
    : undefined;

const judges = inTurn(
  /already|verdict|over or under|under or over|over the top|(?:inside|within) (?:the )?(?:range|limit)|in range|is (?:that|it|this) (?:ok|okay|alright|enough|too)|: ?ok\b|went in/,
);

/** "9 g went in", "is that too much". */
const isJudged: WantWay = ({ reading }) => (judges(reading.text) ? { want: "check" } : undefined);

/** "my usual", "as i always do". */
const asUsual: WantWay = ({ reading }) =>
  says(
    reading,
    /(?:^| )(?:my (?:usual|normal|best|own)|as (?:i )?(?:usual|always)|like (?:usual|always)|i (?:usually|normally|always))(?: |$)/,
  )
    ? { usual: true }
    : undefined;

const enoughFor =
  /(?:^| )(?:(?:what|how (?:much|many)|that|is|is it|it|it is|its) enough for|enough for (?:how|what)|how far (?:does|will|would|can|do) (?:it|that|this|they|i) (?:go|get|last|stretch|reach)|how (?:much|many) (?:\S+ ){0,3}?(?:can|could|will|would|does|do|is) (?:i|it|that|this|we|they)(?: be)? (?:enough for|do|make|flavou?r\S*|cover|dose|fill)|what \S*<[^>]*base=\S* (?:does|will|can|would|could) (?:it|that|this) (?:flavou?r|do|cover|dose))/;
/**
 * "5 g of lemon left, 4 percent in buttercream, what is it enough for": one weight, the flavor's, and a mix that nobody
 * weighed. A share said with it is how strong it is to be, and nothing to check.
 */
export function asksEnoughFor(reading: Reading): boolean {
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  return (
    weights.length === 1 &&
    !weights[0]?.of?.base &&
    reading.things.some((each) => (each.dose || each.taste) && !each.base) &&
    reading.things.some((each) => each.base) &&
    says(reading, enoughFor)
  );
}

const ways: readonly WantWay[] = [
  ({ reading }) => (asksEnoughFor(reading) ? { want: "base" } : undefined),
  shareNow,
  whatNow,
  howMuchMore,
  baseToAdd,
  plainAsked,
  shouldHaveBeen,
  rightAmount,
  newBowl,
  toMend,
  plainMix,
  baseOfBoth,
  asksShare,
  asksVerdict,
  isShareFine,
  isJudged,
  asUsual,
];

export const readWant = (reading: Reading, memory: Memory): Draft =>
  firstOf(ways, { reading, before: doseLeanedOn(memory) }) ?? {};
