/** An earlier topic that a sentence comes back to. */
import type { Reading } from "../../tools/contract/index.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { splitChanged } from "./split-changed.ts";
import { about, type State, type Topic } from "./state.ts";

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

/** "powder color instead of the gel", with a timer between. */
const otherDose: Way<Said, Topic> = ({ reading: { text, things }, state: { last, topics } }) =>
  last?.tool === "timer" &&
  things.some(({ dose }) => dose) &&
  !things.some(({ base }) => base) &&
  /\binstead\b/.test(text)
    ? topics.findLast(({ tool }) => tool === "dose")
    : undefined;

/** "anyway i put 12 g of the passion fruit in, alright?", with a timer between: into the bowl that was spoken of. */
const putInAfter: Way<Said, Topic> = ({ reading: { text, things, amounts }, state: { last, topics } }) => {
  const topic = topics.findLast(({ tool }) => tool === "dose");
  const taste = things.find((thing) => thing.taste)?.taste;
  const isOfIt = taste === undefined ? /\bof (?:it|that)\b/.test(text) : taste === topic?.inputs.taste;
  return last?.tool === "timer" &&
    isOfIt &&
    amounts.length === 1 &&
    !things.some(({ base }) => base) &&
    /\b(?:put|added|tipped|poured|used|stirred|dropped)\b/.test(text)
    ? topic
    : undefined;
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
  /\bto the (?:bottle|flavou?ring)\b/.test(text)
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

/** The state with the topic in front that this sentence returns to. */
export function returned(reading: Reading, state: State): State {
  const topic = firstOf(
    [
      flavorNamed,
      splitGanache,
      stockChanged,
      sameShare,
      shellsOfSize,
      otherChocolate,
      otherDose,
      putInAfter,
      ofTwo,
      firstLot,
      (said) => splitChanged(said.reading, said.state),
      askedFirst,
      saysBack,
    ],
    { reading, state },
  );
  return topic && topic !== state.past?.at(-1) ? { ...state, last: topic } : state;
}
