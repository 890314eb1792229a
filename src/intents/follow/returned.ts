/** An earlier topic that a sentence comes back to. */
import type { Reading } from "../../tools/contract/index.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { lineAgain, marginAgain, mixAgain } from "./named-again.ts";
import { ofOtherKind } from "./of-other-kind.ts";
import { splitChanged } from "./split-changed.ts";
import { about, type State, sizing, type Topic } from "./state.ts";
import { bowlRighted, convertedNamed, doseOfTurn, recipeOf, tasteNamed } from "./the-one-named.ts";

interface Said {
  reading: Reading;
  state: State;
}

/** "make the pear 3 percent", with something else between. */
const flavorNamed: Way<Said, Topic> = ({ reading, state: { last, topics } }) => {
  const taste = reading.things.find((thing) => thing.taste)?.taste;
  const topic =
    taste && /^(?:ok |and |no )*make the /.test(reading.text)
      ? topics.findLast(({ inputs }) => inputs.taste === taste)
      : undefined;
  return topic?.tool === last?.tool ? undefined : topic;
};

/** "200 g of it", behind a split ganache: mended by its weight. */
const splitGanache: Way<Said, Topic> = ({ reading, state: { last } }) =>
  last?.inputs.symptom === "split ganache" &&
  /^(?:(?:its|it is|about|around|ok) )*\S*<weight>(?: of (?:it|ganache\S*))?$/.test(reading.mask)
    ? { tool: "ganache", inputs: { want: "split" } }
    : undefined;

/** "what if i had 8 oz of almond flour instead", behind the macarons that it makes. */
const stockChanged: Way<Said, Topic> = ({ reading, state: { last, topics } }) => {
  const [only, ...others] = reading.amounts;
  const name = others.length === 0 ? only?.of?.ingredient : undefined;
  const supposes = /\b(?:if|instead|what about|suppose|only)\b/.test(reading.text);
  const hasIt = ({ tool, inputs: { have } }: Topic) =>
    tool === "scale" && Array.isArray(have) && have.some((each) => each.name === name);
  return name && last?.tool === "shells" && supposes ? topics.findLast(hasIt) : undefined;
};

/** "and the same percent in 300 g", "same at 4 % but for a 300 g bowl", after something else. */
const sameShare: Way<Said, Topic> = ({ reading, state: { last, topics } }) => {
  const isSame =
    /\b(?:same|that) (?:percent|percentage|share|strength|dose)\b/.test(reading.text) ||
    (/\bsame\b/.test(reading.text) && reading.amounts.some(({ dim }) => dim === "percent"));
  return last?.tool !== "dose" && isSame ? topics.findLast(({ tool }) => tool === "dose") : undefined;
};

/** "back to 4 cm, how many macarons was it", behind the filling for them. */
const shellsOfSize: Way<Said, Topic> = ({ reading, state: { last, topics } }) =>
  last?.tool === "fill" &&
  reading.things.some(({ count }) => count === "macarons" || count === "shells") &&
  reading.amounts.some(({ dim }) => dim === "length") &&
  /\bback to\b/.test(reading.text)
    ? topics.findLast(({ tool }) => tool === "shells")
    : undefined;

/** "suppose i take milk choc, same 250", behind the rum for a ganache. */
const otherChocolate: Way<Said, Topic> = ({ reading, state: { last, topics } }) =>
  last?.tool === "dose" &&
  reading.things.some(({ chocolate }) => chocolate) &&
  !reading.things.some(({ dose, taste, base }) => dose ?? taste ?? base) &&
  /\b(?:suppose|if|instead|same|switch|take|use|with|stick|back)\b/.test(reading.text)
    ? topics.findLast(({ tool }) => tool === "ganache")
    : undefined;

/** Behind what these answer, a chocolate that is weighed is of the ganache before. */
const besideGanache: ReadonlySet<string> = new Set("fill timer dose convert keep method shells".split(" "));
const sameOf = /\b(?:same|again|likewise|instead|if)\b/;
const backTo = /\b(?:back|return(?:ing)?) to (?:the |my |that )?(dark|milk|white)\b/;
/** "milk" alone is a liquid elsewhere, "white" a color. */
const kindIn = ({ chocolate, ingredient, color }: Reading["things"][number]): string | undefined =>
  [chocolate, ingredient, color].find((each) => each === "dark" || each === "milk" || each === "white");

/** "same for milk chocolate, 220 g of it", "back to the dark, make it 300 g", behind how many a ganache fills. */
const ganacheOfKind: Way<Said, Topic> = ({
  reading: { text, things, amounts },
  state: { last, past = [] },
}) => {
  const named = backTo.exec(text)?.[1];
  const [kind, ...others] = new Set(named ? [named] : things.flatMap((each) => kindIn(each) ?? []));
  const [only, ...more] = amounts;
  if (!last || !besideGanache.has(last.tool) || !kind || others.length > 0) return undefined;
  if (only?.dim !== "weight" || more.length > 0 || things.some(({ dose, taste }) => dose ?? taste))
    return undefined;
  if (named) return past.findLast(({ tool, inputs }) => tool === "ganache" && inputs.chocolate === kind);
  return sameOf.test(text) ? past.findLast(({ tool }) => tool === "ganache") : undefined;
};

/** "powder color instead of the gel", with a timer between. */
const otherDose: Way<Said, Topic> = ({ reading: { text, things }, state: { last, topics } }) =>
  last?.tool === "timer" &&
  things.some(({ dose }) => dose) &&
  !things.some(({ base }) => base) &&
  /\binstead\b/.test(text)
    ? topics.findLast(({ tool }) => tool === "dose")
    : undefined;

const putsIn =
  /\b(?:put|added|tipped|poured|used|stirred|dropped|chucked|threw|(?:went|gone|fell|slipped|ended up|got) in(?:to it|to that)?)\b/;

/**
 * "anyway i put 12 g of the passion fruit in, alright?", with a timer or another flavor between: into the bowl that was
 * spoken of with it.
 */
const putInAfter: Way<Said, Topic> = ({
  reading: { text, things, amounts },
  state: { last, topics, past },
}) => {
  const tasted = things.find((thing) => thing.taste);
  const taste = tasted?.taste;
  if (amounts.length !== 1 || things.some(({ base }) => base) || !putsIn.test(text)) return undefined;
  if (last?.tool === "timer") {
    const topic = topics.findLast(({ tool }) => tool === "dose");
    const isOfIt = taste === undefined ? /\bof (?:it|that)\b/.test(text) : taste === topic?.inputs.taste;
    return isOfIt ? topic : undefined;
  }
  const isThat = tasted !== undefined && /\b(?:the|that|my) $/.test(text.slice(0, tasted.at[0]));
  if (last?.tool !== "dose" || !isThat || last.inputs.taste === taste) return undefined;
  return past?.findLast(({ tool, inputs }) => tool === "dose" && inputs.taste === taste);
};

const leansOn =
  /^(?:(?:and|but|so|ok|okay|now|then|or|well|right|hm|oh|no|actually|sorry|wait),? )*(?:and|but|so|if|what if|what about|how about|or|with|for|from|in|same|only|instead|no|make it|suppose)\b/;
const ofTime =
  /\b(?:timers?|alarm|clock|ring\w*|beep\w*|remind\w*|minutes?|mins?|hours?|seconds?|longer|o'?clock|oven|bake\w*|rest\w*)\b/;

/** "and with 80, trays?", "and for 400 g?", with a timer between: nothing that a timer takes. */
const asBeforeTimer: Way<Said, Topic> = ({ reading, state: { last, past = [] } }) => {
  const { text, amounts, things, whens } = reading;
  if (last?.tool !== "timer" || amounts.length === 0 || whens.length > 0) return undefined;
  if (!leansOn.test(text) || ofTime.test(text) || amounts.some(({ dim }) => dim === "time")) return undefined;
  const isMeasured = amounts.some(({ dim }) => ["weight", "percent", "length"].includes(dim));
  const isCounted = things.some(({ count }) => ["trays", "shells", "macarons"].includes(count ?? ""));
  // what names a mix or a flavor of its own is a question of its own
  const isAnother = things.some(
    ({ base, dose, ingredient, chocolate }) => base ?? dose ?? ingredient ?? chocolate,
  );
  return (isMeasured || isCounted) && !isAnother ? past.findLast(({ tool }) => sizing.has(tool)) : undefined;
};

/** What each calculator of mixes works from. */
const worksFrom: Readonly<Record<string, RegExp>> = {
  scale: /^(?:whites|egg|almond flour|powdered sugar|granulated sugar|sugar|batter)$/,
  shells: /^batter$/,
  buttercream: /^(?:whites|egg|butter|granulated sugar|sugar|buttercream)$/,
  ganache: /chocolate$|^(?:cream|ganache)$/,
  dose: /^(?:buttercream|ganache|batter|filling)$/,
  fill: /^filling$/,
};

/** Said of what is to be made, and no unit that is asked for. */
const usesIt =
  /^(?:(?:ok|okay|so|and|right|well|then|no|actually|now|oh|fine|good|great|but|id|i|ill|we|lets|could|can|just|rather) ?,? ?)*(?:use|using|take|taking|make it|do it with|do|go with|try|with|have|say|go for)\b|\b(?:instead|after all)\b/;
const asksUnit =
  /\b(?:in|into|to|as) (?:oz|ounces?|g|grams?|grammes?|kg|ml|lbs?|pounds?|cups?|c|f|celsius|fahrenheit)\b|\bhow (?:much|many|heavy)\b/;

/** "ok use 5 oz of whites instead", behind what 5 oz are in grams: of the recipe before that. */
const afterUnits: Way<Said, Topic> = ({ reading: { text, amounts, things }, state: { last, past = [] } }) => {
  const [only, ...others] = amounts;
  const of = only?.of ?? things.find((thing) => thing.ingredient ?? thing.chocolate ?? thing.base);
  const name = of?.ingredient ?? (of?.chocolate ? "chocolate" : of?.base);
  if (last?.tool !== "convert" || !only || others.length > 0 || name === undefined) return undefined;
  if (!usesIt.test(text) || asksUnit.test(text)) return undefined;
  const topic = past.findLast(({ tool }) => tool in worksFrom);
  return topic && worksFrom[topic.tool]?.test(name) ? topic : undefined;
};

/** "double the first lot", "three trays of the first size": of what this calculator was asked first. */
const firstLot: Way<Said, Topic> = ({ reading: { text, amounts }, state: { last, past = [] } }) => {
  const isFirst =
    /\bthe first (?:lot|batch|size|amount)\b/.test(text) ||
    // "no, triple the first bowl", behind one that was doubled
    (/\bthe first (?:bowl|one|mix|weight)\b/.test(text) && amounts.some((each) => each.unit === "times"));
  if (!isFirst || !last) return undefined;
  const own = past.filter(({ tool }) => tool === last.tool);
  return own.length > 1 ? own[0] : undefined;
};

/** "first one again but 400 g", of two bowls that were asked about. */
const ofTwo: Way<Said, Topic> = ({ reading: { text }, state: { last, past = [] } }) => {
  const which = /^(?:(?:and|now|ok|so|then) )*(?:the )?(first|second) (?:one|bowl)\b/.exec(text)?.[1];
  if (!which || last?.tool !== "dose") return undefined;
  const of = ({ inputs }: Topic) => `${inputs.base} ${inputs.dose} ${inputs.taste ?? ""}`;
  const doses = past.filter(({ tool }) => tool === "dose");
  const kinds = [...new Set(doses.map(of))];
  const kind = kinds[which === "first" ? 0 : 1];
  return kinds.length === 2 ? doses.findLast((each) => of(each) === kind) : undefined;
};

const lead = "^(?:(?:no|wait|sorry|so|ok|okay|and|now|anyway|right|alright|well|oh|but),? )*";
const goesBack = new RegExp(
  `${lead}(?:back to|go back to|going back to|return to|returning to|about) (?:the|my|that) `,
);
const saidFirst = new RegExp(`${lead}what i (?:asked|said|wanted|had) (?:first|before|at first|earlier)\\b`);

/**
 * The topics about the taste or the mix that is named: "the buttercream", "the lemon, 300 g". "back to the buttercream,
 * how much rum" names a taste that nobody spoke of: then the mix is what is returned to.
 */
function aboutNamed({ things }: Reading, past: readonly Topic[]): Topic[] {
  const shells = things.some((thing) => thing.count === "shells") ? "batter" : undefined;
  const base = things.find((thing) => thing.base)?.base ?? shells;
  const taste = things.find((thing) => thing.taste)?.taste;
  const ofTaste = past.filter(({ inputs }) => taste !== undefined && inputs.taste === taste);
  if (ofTaste.length > 0 || base === undefined) return ofTaste;
  return past.filter(({ tool, inputs }) => inputs.base === base || (about[base]?.includes(tool) ?? false));
}

/** "back to the bottle": the flavor that was dosed from one. */
const fromBottle = ({ text }: Reading, past: readonly Topic[]): Topic | undefined =>
  /\bto the (?:bottle|flavou?r(?:ing)?|dose)\b/.test(text)
    ? past.findLast(({ inputs }) => ["flavor", "extract", "oil"].includes(String(inputs.dose)))
    : undefined;

/** "back to the big bowl", of several that were flavored. */
function bowlBySize({ text }: Reading, past: readonly Topic[]): Topic | undefined {
  const size = /\b(big|bigger|large|larger|small|smaller|little) (?:bowl|batch|one)\b/.exec(text)?.[1];
  if (!size) return undefined;
  const bowls = past.filter(({ inputs }) => typeof inputs.base_g === "number");
  const bySize = bowls.sort((a, b) => Number(a.inputs.base_g) - Number(b.inputs.base_g));
  return /^(?:big|large)/.test(size) ? bySize.at(-1) : bySize[0];
}

/** "back to the 260": the one that was of so many. */
function byNumber({ text, amounts }: Reading, past: readonly Topic[]): Topic | undefined {
  const number = amounts.find(({ at }) => /\bto the $/.test(text.slice(0, at[0])))?.value;
  return number === undefined
    ? undefined
    : past.findLast(({ inputs }) => Object.values(inputs).some((each) => each === number));
}

/** "now what i asked first, the filling, but 36". */
const askedFirst: Way<Said, Topic> = ({ reading, state: { past = [] } }) =>
  saidFirst.test(reading.text) ? (aboutNamed(reading, past)[0] ?? past[0]) : undefined;

/** "back to the buttercream". */
const saysBack: Way<Said, Topic> = ({ reading, state: { past = [] } }) =>
  goesBack.test(reading.text)
    ? (aboutNamed(reading, past).at(-1) ??
      fromBottle(reading, past) ??
      byNumber(reading, past) ??
      bowlBySize(reading, past))
    : undefined;

/** Ways that name what is returned to: its taste, its mix, its bowl. */
const named: readonly Way<Said, Topic>[] = [
  flavorNamed,
  splitGanache,
  stockChanged,
  sameShare,
  shellsOfSize,
  otherChocolate,
  ganacheOfKind,
  otherDose,
  putInAfter,
  afterUnits,
  asBeforeTimer,
  ofTwo,
  (said) => splitChanged(said.reading, said.state),
  (said) => ofOtherKind(said.reading, said.state),
  askedFirst,
  saysBack,
  marginAgain,
  lineAgain,
  mixAgain(aboutNamed),
  bowlRighted,
  recipeOf,
  convertedNamed,
  tasteNamed,
  doseOfTurn,
];

/** Whether a sentence names what it returns to. */
export const returnsByName = (reading: Reading, state: State): boolean =>
  firstOf(named, { reading, state }) !== undefined;

/** The state with the topic in front that this sentence returns to. */
export function returned(reading: Reading, state: State): State {
  const topic = firstOf([firstLot, ...named], { reading, state });
  return topic && topic !== state.past?.at(-1) ? { ...state, last: topic } : state;
}
