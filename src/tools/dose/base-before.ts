/** The bowl that was spoken of before, changed by this sentence: more of it, less of it, without one of its parts. */
import { says, type Weighed } from "../lib/find.ts";
import { gramsOf } from "../lib/units.ts";
import { type BaseTurn, type BaseWay, partOf, summed } from "./base-turn.ts";
import { bowlOf, flavorOf } from "./draft.ts";
import { inTurn } from "./of-turn.ts";
import { partMore } from "./part-more.ts";

const leavesOut =
  /(?:^| )(?:without|minus|skip(?:ped|ping)?|drop(?:ped|ping)?|omit(?:ted|ting)?|forgot|no|not? adding|(?:leave|leaving|left|take|taking|took|miss|missed) (?:out|(?:the |my |any )?\S*<[^>]*ingredient=\S+ out))(?: |$)/;

/** "without the butter?": a part of the sum said before is left out. */
const partLeftOut: BaseWay = ({ reading, earlier }) => {
  const before = earlier?.parts;
  if (!before || !says(reading, leavesOut)) return undefined;
  const gone = reading.things.flatMap((each) => each.ingredient ?? []);
  const parts = before.filter((each) => !gone.includes(each.name));
  if (parts.length === 0 || parts.length === before.length) return undefined;
  return { ...summed(parts), left_out: before.filter((each) => !parts.includes(each)) };
};

/** "ok butter back in": a part that had been left out. */
const partBack: BaseWay = ({ reading, before }) => {
  const isBack = says(
    reading,
    /<ingredient=\S* (?:(?:is|was|goes|go|went|stays|stayed) )*(?:back(?: in| again)?|in (?:it )?(?:after all|again)|after all)(?: |$)|back with (?:the )?\S*<ingredient=/,
  );
  return isBack && before?.parts && before.left_out
    ? summed([...before.parts, ...before.left_out])
    : undefined;
};

const isPart = ({ thing }: Weighed) => thing?.ingredient !== undefined && !thing.taste && !thing.dose;

/** The one weight of plain mix, or of a part of one, that the sentence speaks of. */
function onlyPlain({ reading }: BaseTurn, weights: readonly Weighed[]): Weighed | undefined {
  const [only, ...others] = weights.filter(
    (each) =>
      each.thing?.base !== undefined ||
      isPart(each) ||
      /^(?: g| grams)?(?: more| extra)?(?: of)? (?:the )?plain\b/.test(reading.text.slice(each.amount.at[1])),
  );
  return others.length === 0 ? only : undefined;
}

/** "another 30 of plain": grams, where a bowl was weighed in them. */
const bareGrams = ({ reading }: BaseTurn): Weighed[] =>
  reading.amounts.flatMap((amount) =>
    amount.dim === "number" && amount.unit === "" && !amount.fraction && amount.value >= 5
      ? [{ grams: amount.value, amount }]
      : [],
  );

/** "forgot 30 g butter, thats in it too", "plus 30 g butter": one more part of a bowl that was told in its parts. */
const oneMorePart =
  /^(?:(?:oh|and|i|ive|sorry|wait|no|oops|ah|so|also|,) )*(?:plus|also|(?:forgot|missed|left out|didnt (?:say|mention|count)|forgot to (?:say|mention|count|add up))(?: that)?|there(?:s| is| was)(?: also)?|with)(?: (?:the|my|another|about|some|also|,|there is|theres|of))* \S*<weight>|^(?:(?:oh|and|so|,) )*\S*<weight> (?:of )?\S*<[^>]*ingredient=\S* (?:as well|too|also)(?: |$)/;

/** "oh and another 50 g butter went in": on top of the bowl that was spoken of, its flavor with it. */
const partAdded: BaseWay = (turn) => {
  const { reading, before, weights } = turn;
  const added = onlyPlain(turn, weights.length > 0 ? weights : bareGrams(turn));
  if (before?.base_g === undefined || !added || !isPart(added)) return undefined;
  const asWell =
    /\b(?:another|extra|more|as well|too|also)\b|went in|goes in/.test(reading.mask) &&
    /^(?:and |now )*(?:with|plus) \S*<weight>|\b(?:put \S* ?\S*<weight> .* in(?:to)? (?:it|that|there|the bowl)|went in|goes in|gone in|beating|beat|adding|added|add|in as well|in too|in (?:it|there|that|the (?:bowl|mix|ganache)) (?:as well|too|also)|also in|stir\w*|melt\w*)\b/.test(
      reading.mask,
    );
  const isNew = before.parts?.every(({ name }) => name !== added.thing?.ingredient) ?? false;
  if (!asWell && !(isNew && oneMorePart.test(reading.mask))) return undefined;
  return {
    ...(before.parts ? summed([...before.parts, partOf(added)]) : { base_g: before.base_g + added.grams }),
    ...(before.flavor_g === undefined ? {} : { flavor_g: before.flavor_g, want: "check" as const }),
  };
};

/** "what should i have put in to begin with": asked, and nothing that was done. */
const asksRight = inTurn(/\bhow (?:much|many)\b|\b(?:should|ought|supposed to|meant to)\b/);

/** "hang on, that is with the bowl: it weighs 90": the bowl itself is no part of it. */
const withoutBowl: BaseWay = ({ reading, before }) => {
  const [only, ...others] = reading.amounts;
  const empty =
    /^(?:(?:hang on|wait|oh|no|sorry|but|and|so|the|my|empty|,) )*bowl\S* (?:itself |alone |on its own )?(?:weighs?|weighed|is \S*<(?:number|weight)> empty)|(?:thats|that is|that was|its) with the bowl\S* .*<(?:number|weight)>/;
  if (before?.base_g === undefined || !only || others.length > 0 || !says(reading, empty)) return undefined;
  const bowl_g = gramsOf(only);
  return bowl_g < before.base_g ? { base_g: before.base_g - bowl_g } : undefined;
};

/** "and if it had been 8 g i put in": of the flavor, into the bowl as it was before plain mix went on top. */
const hadPut: BaseWay = ({ reading, before, weights }) => {
  const [only, ...others] = weights;
  const supposes =
    /\bif (?:it|that|there|i) (?:(?:had|would have|was|were|have)(?: (?:been|put|used|added|tipped|gone with))?) (?:only |just |about )?\S*<weight>/;
  if (!only || others.length > 0 || only.thing?.base || /\b(?:plain|more|how)\b/.test(reading.text))
    return undefined;
  if (before?.base_g === undefined || before.flavor_g === undefined || !says(reading, supposes))
    return undefined;
  const base_g = before.base_g - (before.added_g ?? 0);
  return { base_g, flavor_g: only.grams, want: before.want === "mend" ? "mend" : "check" };
};

const addsIt = inTurn(/\b(?:i|ive|i have|ill|we) (?:just )?(?:add|added|put|stirred|mixed)\b/);

/** "can i fix it w 50 g", "and with 200 more": so much plain mix, where something is over. */
const fixesWith =
  /\b(?:fix|save|rescue|mend|dilute|repair|sort|stretch) (?:it|that|this|them) (?:with|w|by adding|using) (?:only |just |another )?\S*<(?:weight|number)>|^(?:(?:and|or|so|ok|what if|what about|how about) )*(?:with|w) (?:only |just |another )?\S*<(?:weight|number)>(?: more|(?: more)? (?:of |plain )*\S*<[^>]*base=\S*)(?: (?:then|instead|[?.]))*$/;

/** "what about 140 instead", "or 140?", behind a bowl with 60 g of plain mix in: so much of that instead. */
const insteadAdded =
  /^(?:(?:and|or|ok|so|then|no|but|what|how|about|if|its|it|make|that|with|say|just|only|use|put|take|is) )*\S*<(?:weight|number)>(?: (?:then|instead|rather|please|in|of it|do|enough|ok|[?.]))*$/;
const isInsteadAdded = ({ reading: { mask }, before }: BaseTurn, grams: number): boolean => {
  const { base_g, added_g, flavor_g } = before ?? {};
  if (base_g === undefined || added_g === undefined || flavor_g === undefined) return false;
  const isLikeAdded = Math.abs(Math.log(grams / added_g)) < Math.abs(Math.log(grams / flavor_g));
  return isLikeAdded && grams < base_g - added_g && insteadAdded.test(mask);
};

/** "i add another 80", behind 60 g of plain mix: on top of those. */
const onTop = /\b(?:another|extra|further) \S*<(?:weight|number)>/;

/** "i add 60 g, now is good?", where plain mix was what had to be added; "and if i add 80 instead" of that. */
const mendedBy: BaseWay = (turn) => {
  const { reading, before, weights } = turn;
  const said = weights.length > 0 ? weights : bareGrams(turn);
  const [only] = said;
  const fixes = fixesWith.test(reading.mask);
  const isOther = only?.thing !== undefined && !(fixes && only.thing.base);
  const isInstead = only !== undefined && only.grams > 0 && isInsteadAdded(turn, only.grams);
  if (!only || said.length > 1 || isOther || asksRight(reading.text)) return undefined;
  if (!fixes && !isInstead && !addsIt(reading.text)) return undefined;
  if (before?.base_g === undefined || before.flavor_g === undefined) return undefined;
  if (!fixes && before.want !== "mend" && before.added_g === undefined) return undefined;
  const had_g = onTop.test(reading.mask) ? (before.added_g ?? 0) : 0;
  const plain_g = before.base_g - (before.added_g ?? 0);
  return {
    ...flavorOf(before),
    ...bowlOf(before),
    base_g: plain_g + had_g + only.grams,
    added_g: had_g + only.grams,
    flavor_g: before.flavor_g,
    want: "check",
  };
};

const goneIn =
  /\b(?:added|add|adding|stirred|stir|mixed|put|tipped|folded|beat|beaten|whisked|whipped)\b(?: in)? (?:another |all |the |just |only )*\S*<(?:weight|number)> .*(?:more|plain)|(?:gone|went|goes|all) in\b|\b(?:another|extra) \S*<(?:weight|number)>|<weight> more\b/;
const asksNow =
  /where (?:does|do|did) that (?:leave|put)|what (?:percent|\S*<unit=%>|share)|now\b|where am i|enough|ok\b|then\b|^(?:(?:and|so|but|what) )*if i /;

/** "i have only 100 g more smbc": what there is to bring it down with. */
const hasOnly = /\b(?:have|got|found|spotted|dug out|ive|theres|there is|only|left)\b/;
const isMore =
  /<(?:weight|number)> (?:of )?(?:more|extra|spare|plain)\b|\b(?:another|extra|spare) \S*<(?:weight|number)>|\b(?:left|spare|more)(?: \?)?$/;

/** "only 100 g plain bc left so all of thats gone in": what the flavor is in it now. */
const plainAdded: BaseWay = (turn) => {
  const { reading, before, weights } = turn;
  const added = onlyPlain(turn, weights.length > 0 ? weights : bareGrams(turn));
  if (before?.base_g === undefined || before.flavor_g === undefined || !added) return undefined;
  if (asksRight(reading.text)) return undefined;
  const hasMore =
    hasOnly.test(reading.mask) &&
    (before.want === "mend" || isMore.test(reading.mask)) &&
    !/\b(?:how|what|another(?! \S*<(?:weight|number))|other|new|fresh|clean|in there|in it|now|total|altogether|in all|same)\b|<[^>]*(?:dose|taste)=/.test(
      reading.mask,
    );
  return (goneIn.test(reading.mask) && asksNow.test(reading.mask)) || hasMore
    ? {
        base_g: before.base_g + added.grams,
        added_g: added.grams,
        flavor_g: before.flavor_g,
        want: "check",
      }
    : undefined;
};

const staysPlain =
  /<number,fraction> (?:of )?(?:(?:the|it|that|this|my) )?(?:\S*<base=\S+ )?(?:is |will be |are )?(?:staying|stays?|kept|left) \S*plain/;

/** "half the batter is staying plain": the flavor is for the rest. */
const shareKeptPlain: BaseWay = ({ reading, before }) => {
  const share = reading.amounts.find((each) => each.fraction && each.dim === "number" && each.value < 1);
  return before?.base_g !== undefined && share && staysPlain.test(reading.mask)
    ? { base_g: before.base_g * (1 - share.value) }
    : undefined;
};

const stays =
  "(?:stays?|staying|remains?|remaining|kept|keep|keeping|left|leave|leaving|hold|holding|reserv\\w+|set|setting)";
const keptPlain = new RegExp(`${stays}\\b.* \\S*plain`);
/** Of batter that is colored. */
const keptPale = new RegExp(
  `${stays}\\b.* \\S*(?:white|natural|uncolou?red|undyed|untinted|pale)(?:<|_| |$)`,
);
const keptBack =
  /(?:^| )(?:keep|keeping|hold|holding|set|setting|put|putting|leave|leaving|reserve|reserving) (?:(?:back|aside|out) )?\S*<(?:weight|number)> (?:of (?:it|that) )?(?:back|aside|out|for later)(?: |$)|(?:^| )(?:keep|keeping|hold|holding|set|setting|put|putting) (?:back|aside) \S*<(?:weight|number)>|(?:^| )reserv\w+ \S*<(?:weight|number)>/;

/** "350 of that stays plain", "im holding back 100 g". */
const gramsKeptPlain: BaseWay = ({ reading, before, weights }) => {
  const said =
    says(reading, keptPlain) ||
    (before?.flavor_g === undefined && says(reading, keptBack)) ||
    (/color$/.test(before?.dose ?? "") && says(reading, keptPale));
  const grams =
    weights[0]?.grams ?? reading.amounts.find((each) => each.dim === "number" && each.value >= 20)?.value;
  return before?.base_g !== undefined && said && grams !== undefined && grams < before.base_g
    ? { base_g: before.base_g - grams }
    : undefined;
};

const flavors =
  /(?:^| )(?:\S*(?:flavou?r|colou?r|tint|dye|dos|season|spik|infus)(?:e|ing|ed|s)?(?:<\S+)?|doing|using|taking|do|use|take|only|just) (?:\S+ ){0,4}?(?:just |only |about )?\S*<(?:weight|number|number,fraction)> (?:of )?(?:it|that|this|them|(?:the|my) (?:\S*<[^>]*(?:base=|count=(?:bowls|batches))\S*|bowl|mix|lot|batch))(?: |$)/;
const putsIn =
  /\b(?:have|ive|got|enough|put|added|add|tipped|poured|stirred|dropped|went|gone|squeezed|plain|left|bottle|jar|tube)\b/;

/** A part is a twelfth of the bowl at least, where the highest range but nut paste and purée ends: less is of the flavor. */
const leastPart = 1 / 12;

/** "im only gonna flavor 180 of it", "just tinting half the batter": a part of the bowl before, which holds nothing yet. */
const partOfBowl: BaseWay = ({ reading, earlier, base }) => {
  const [only, ...others] = reading.amounts;
  if (earlier?.base_g === undefined || earlier.flavor_g !== undefined || !only || others.length > 0)
    return undefined;
  if (!says(reading, flavors) || putsIn.test(reading.text)) return undefined;
  if (base !== undefined && earlier.base !== undefined && base !== earlier.base && base !== "filling")
    return undefined;
  const isShare = only.dim === "number" && only.fraction !== undefined && only.value < 1;
  const isWeight = only.dim === "weight" || (only.dim === "number" && only.unit === "" && !only.fraction);
  const grams = isShare ? earlier.base_g * only.value : isWeight ? gramsOf(only) : Number.NaN;
  return grams >= earlier.base_g * leastPart && grams < earlier.base_g ? { base_g: grams } : undefined;
};

export const beforeWays: readonly BaseWay[] = [
  withoutBowl,
  partLeftOut,
  partBack,
  hadPut,
  mendedBy,
  partMore,
  partAdded,
  plainAdded,
  shareKeptPlain,
  gramsKeptPlain,
  partOfBowl,
];
