/**
 * "no, back to the full lot", "the first one after all. how many whites is that", "as it was", "go back to the 500": one
 * of the sizes that the same was asked for before, and whatever else the sentence says of it.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import type { Way } from "../../tools/lib/ways.ts";
import { sizes } from "../chosen/slots.ts";
import { mayBeEarlier } from "./earlier-hint.ts";
import { pastConversion } from "./past-conversion.ts";
import { returnsByName } from "./returned.ts";
import { spaced } from "./spaced.ts";
import { type Inputs, type State, sizing, type Topic } from "./state.ts";

/** The question that is come back to, and what is left of the sentence; empty where it says no more than that. */
export interface Earlier {
  topic: Topic;
  rest: string;
}

/** Calculators that work out how much of something: others have first ones and whole ones of their own. */
const counting: ReadonlySet<string> = new Set([...sizing, "convert"]);

const noun =
  "(?:lot|amount|number|quantity|weight|batch|bowl|bowlful|figure|order|thing|measure|recipe|count|mix|value|total|size)";

/** What is come back to, the narrower before the wider. */
const references = {
  full: `(?:the |my )?(?:full|whole|entire|complete) ${noun}|(?:the )?whole of it|all of (?:it|them)`,
  single: `(?:the |a |my )?(?:single|undoubled|normal|usual|regular) ${noun}|just (?:the )?once|(?:not|un)doubled|without (?:the )?doubling`,
  undone: "undo (?:the |that |my )?(?:halving|doubling|half)|(?:not|un)halved|without (?:the )?halving",
  before: `(?:as|like|how|what) it was(?: before| at first| originally| to start with| to begin with)?|the (?:previous|former) (?:one|${noun})|the former|the one before(?: that| it)?`,
  first: `(?:the |my )?(?:very )?(?:first|original|initial|earlier|starting) (?:one|${noun}|(?:one )?of (?:the (?:two|three)|them|those))|the first(?= [.,;:?!]| after all| again| then| please| was| is|$)|the original(?= [.,;:?!]| after all|$)`,
  second: `the (?:second|2nd) (?:one|${noun}|(?:one )?of (?:the (?:two|three)|them|those))`,
  third: `the (?:third|3rd) (?:one|${noun}|(?:one )?of (?:the (?:two|three)|them|those))`,
} as const;

type Kind = keyof typeof references;

/** How it is come back to: "lets stick with", "i meant", "go back to", "do". */
const verbs =
  "(?:(?:i|we|id|ill|well|lets|let us|can|could|you|want|wanted|need|rather|meant|mean|said|go|going|get|do|doing|make|making|use|using|take|taking|stick|keep|keeping|return|returning|back|give|me|have|try|it|its|thats|to|with|at|for|about|was|is|on|prefer|like|would|will|ll|should|be|again|actually|just) )*";

const tail =
  "(?:(?: ,)? (?:again|after all|then|instead|please|pls|now|(?:was|is) (?:right|fine|better|correct|it|good)|it is|it was|this time|will do|for me|thanks|ta))*";

const end = "(?= [,.;:?!]| (?:and|but|how|what|whats|with|as|in)\\b|$)";

const leading = new Map<Kind, RegExp>();
const trailing = new Map<Kind, RegExp>();

// compiled when first asked for: hardly a turn gets here
const compiled = (known: Map<Kind, RegExp>, kind: Kind, source: string) => {
  const found = known.get(kind) ?? new RegExp(source);
  known.set(kind, found);
  return found;
};

/** At the beginning, with the rest behind it. */
const leads = (kind: Kind) =>
  compiled(leading, kind, `^${opening}${verbs}(?:${references[kind]})${tail}${end}`);

/** "coffee in the full lot", "how many trays for the first amount". */
const closes = (kind: Kind) =>
  compiled(trailing, kind, `^(.+) (?:for|in|into|with|to|from) (?:${references[kind]})${tail}(?: [.?!])*$`);

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersIn) : [];
};

/** Alike but for what of it was asked for: "and the trays?". */
const same = (one: Inputs, other: Inputs) =>
  JSON.stringify({ ...one, want: undefined }) === JSON.stringify({ ...other, want: undefined });

/** A question that took nothing from the one before. */
const isFresh = ({ said = [], inputs }: Topic) => Object.keys(inputs).every((key) => said.includes(key));

/** What the last calculator was asked, oldest first: since it was last asked afresh, else all of it. */
function rowOf({ past = [], turn }: State, last: Topic): Topic[] {
  // "3 cups sugar in grams and 2 cups of flour too": the two of one turn
  if (turn && turn.times > 1 && past.at(-1)?.tool === last.tool) return past.slice(-turn.times);
  const own = past.filter(({ tool }) => tool === last.tool);
  const row = own.slice(Math.max(0, own.findLastIndex(isFresh)));
  return row.some(({ inputs }) => !same(inputs, last.inputs)) ? row : own;
}

/** How much it is of, with the input that says so. */
function sizeOf(inputs: Inputs): { slot: string; value: number } | undefined {
  const slot = [...sizes, "factor"].find((each) => typeof inputs[each] === "number");
  if (slot) return { slot, value: inputs[slot] as number };
  const [line, ...others] = Array.isArray(inputs.have) ? (inputs.have as { grams?: number }[]) : [];
  return typeof line?.grams === "number" && others.length === 0
    ? { slot: "have", value: line.grams }
    : undefined;
}

/** The last question with so much of it as an earlier one was of: what was changed since then stays. */
const resized = (last: Topic, earlier: Topic, slot: string): Topic => ({
  tool: last.tool,
  inputs: { ...last.inputs, [slot]: earlier.inputs[slot] },
  ...(earlier.table ? { table: earlier.table } : {}),
});

/** The latest that was of more, or of less; a recipe taken twice or by half is of once without that. */
function bySize(row: readonly Topic[], last: Topic, up: boolean): Topic | undefined {
  const now = sizeOf(last.inputs);
  if (!now) return undefined;
  const earlier = row.findLast(({ inputs }) => {
    const size = sizeOf(inputs);
    return size?.slot === now.slot && (up ? size.value > now.value : size.value < now.value);
  });
  if (earlier) return resized(last, earlier, now.slot);
  const isOnce = now.slot === "factor" && (up ? now.value < 1 : now.value > 1);
  return isOnce ? { tool: last.tool, inputs: { ...last.inputs, factor: 1 } } : undefined;
}

function pick(kind: Kind, row: readonly Topic[], last: Topic): Topic | undefined {
  const others = row.filter(({ inputs }) => !same(inputs, last.inputs));
  if (kind === "full") return bySize(row, last, true);
  if (kind === "single") return bySize(row, last, false);
  if (others.length === 0) return undefined;
  if (kind === "before" || kind === "undone") return others.at(-1);
  const distinct = row.filter((each, at) => row.findIndex(({ inputs }) => same(inputs, each.inputs)) === at);
  return distinct[kind === "first" ? 0 : kind === "second" ? 1 : 2];
}

interface Said {
  text: string;
  mask: string;
  state: State;
  last: Topic;
}

/** What is left without what led up to it: ", and coffee this time". */
const trimmed = (rest: string): string =>
  rest
    .replace(/^[ ,.;:?!]+/, "")
    .replace(/^(?:and|but) (?=(?:how|what|whats|which)\b)/, "")
    .replace(/^but /, "and ");

/** Nothing that would ask for more. */
const isNothing = (rest: string) =>
  /^(?:(?:and|then|please|pls|thanks|ta|ok|okay|so|now|again|instead)? ?[,.?!]? ?)*$/.test(rest);

const wholes = /\b(?:whole|all of)\b/;
/** A part of it was spoken of since. */
const isPart = (row: readonly Topic[]) =>
  row.slice(1).some(({ text = "" }) => /\b(?:half|halve\w*|thirds?|quarters?|part|some)\b/.test(text));

const isReference = (rest: string) =>
  (["full", "first", "before"] as const).some((kind) => leads(kind).exec(rest)?.[0] === rest);

const saidFirst = new RegExp(
  `^${opening}(?:${verbs})what (?:i|we) (?:asked|said|wanted|had|told you)(?: you)? (?:first|before that|at first|earlier|originally)${tail}(?: [.?!])*$`,
);

/** "no, what i said first", with nothing behind it. */
const firstSaid: Way<Said, Earlier> = ({ text, state, last }) => {
  const topic =
    counting.has(last.tool) && saidFirst.test(text) ? pick("first", rowOf(state, last), last) : undefined;
  return topic && { topic, rest: "" };
};

const byWords: Way<Said, Earlier> = ({ text, state, last }) => {
  if (!mayBeEarlier(text) || !counting.has(last.tool)) return undefined;
  const row = rowOf(state, last);
  for (const kind of Object.keys(references) as Kind[]) {
    const lead = leads(kind).exec(text)?.[0];
    const before = lead === undefined ? closes(kind).exec(text)?.[1] : undefined;
    const rest = lead === undefined ? before : trimmed(text.slice(lead.length));
    // "rum for all of it", "salt for the whole bowl": of what was come to, unless that was a part
    const isOfNow =
      kind === "full" && (lead === undefined ? wholes.test(text) : wholes.test(lead) && !isPart(row));
    // a bowl that was shared out has a first one too
    const isOfParts = last.tool === "split" && (rest !== "" || lead === undefined);
    if (isOfNow || isOfParts) continue;
    const topic = rest === undefined ? undefined : pick(kind, row, last);
    // "undo the halving, the whole amount again": said twice
    if (topic && rest !== undefined) return { topic, rest: isNothing(rest) || isReference(rest) ? "" : rest };
  }
  return undefined;
};

/** With something that is weighed, mixed or piped: "the first one" of timers and notes is another. */
const ofMixes =
  /<[^>]*(?:(?:base|dose|taste|ingredient|chocolate)=|count=(?:shells|macarons|trays))|\b(?:split|divide|ingredients?)\b/;

const within: readonly (readonly [Kind | "larger" | "smaller", RegExp])[] = [
  [
    "first",
    /\b(?:the first (?:one|lot|bowl|batch|amount|weight)|the first of (?:them|those|the two)|the former)\b/,
  ],
  ["first", /\bthe first(?= (?:goes|go|is|gets|will|should|into|in|for))/],
  [
    "second",
    /\b(?:the second (?:one|lot|bowl|batch|amount|weight)|the second of (?:them|those|the two)|the latter)\b/,
  ],
  ["third", /\bthe third (?:one|lot|bowl|batch|amount|weight)\b/],
  ["larger", /\bthe (?:bigger|larger|heavier) (?:one|lot|bowl|batch|amount|weight)\b/],
  ["smaller", /\bthe (?:smaller|lighter) (?:one|lot|bowl|batch|amount|weight)\b/],
];

const massOf = ({ table }: Topic): number => table?.mass?.grams ?? 0;

/** "the first one goes all into shells", "split the second one in two": the weight that the answer came to. */
const inTheMiddle: Way<Said, Earlier> = ({ text, mask, state, last }) => {
  const [which, pattern] = within.find((each) => each[1].test(text)) ?? [];
  if (!which || !pattern || !counting.has(last.tool) || last.tool === "split") return undefined;
  const isOfWeights = ofMixes.test(mask) && !mask.includes("<factor>");
  if (!isOfWeights || (/er$/.test(which) && last.tool !== "convert")) return undefined;
  const row = rowOf(state, last).filter(({ table }) => table?.mass);
  if (row.length < 2) return undefined;
  const topic =
    which === "larger" || which === "smaller"
      ? row.toSorted((a, b) => massOf(a) - massOf(b)).at(which === "larger" ? -1 : 0)
      : pick(which, row, last);
  if (!topic) return undefined;
  // what was turned into grams is said as such
  const { grams, thing } = topic.table?.mass ?? {};
  const meant = topic.tool === "convert" && thing ? `${grams} g ${thing}` : "it";
  return { topic, rest: text.replace(pattern, meant) };
};

const toNumber = new RegExp(
  `^${opening}(?:(?:i|id|we|ill|lets|rather|go|going|get|want|will|would|actually) )*(?:back|return|returning|stick|keep|stay|staying|sticking) (?:to|with|at) (?:the |those |that )?(\\d+(?:\\.\\d+)?)(?: ?(g|grams|macarons|macs|shells|ml|percent|%))?${tail}${end}`,
);

/** The inputs that hold what was said in a unit. */
const heldBy: Readonly<Record<string, RegExp>> = {
  g: /_g$|^(?:have|lines|parts)$/,
  grams: /_g$|^(?:have|lines|parts)$/,
  macarons: /^macarons$/,
  macs: /^macarons$/,
  shells: /^shells$/,
  percent: /percent/,
  "%": /percent/,
};

/** "go back to the 500". */
const byNumber: Way<Said, Earlier> = ({ text, state: { past = [] } }) => {
  const [lead = "", number, unit = ""] = toNumber.exec(text) ?? [];
  const key = heldBy[unit];
  // "go back to 40 g" is none of the 40 macarons
  const has = (inputs: Inputs) =>
    Object.entries(inputs).some(
      ([name, value]) => (key?.test(name) ?? true) && numbersIn(value).includes(Number(number)),
    );
  const topic =
    number === undefined ? undefined : past.findLast(({ tool, inputs }) => counting.has(tool) && has(inputs));
  if (!topic) return undefined;
  const rest = trimmed(text.slice(lead.length));
  return { topic, rest: isNothing(rest) ? "" : rest };
};

/** What was worked out last. */
const counted = ({ past = [] }: State) => past.findLast(({ tool }) => counting.has(tool));

/** What a sentence comes back to among the questions before; undefined where it says nothing of the kind. */
export function earlierOne(reading: Reading, state: State): Earlier | undefined {
  const { last } = state;
  if (!last) return undefined;
  const between = pastConversion(reading, state);
  if (between) return between;
  const said = { text: spaced(reading.text), mask: reading.mask, state, last };
  const number = byNumber(said) ?? firstSaid(said);
  // a taste, a mix or a bowl that is named says more than "the first one"
  if (number || returnsByName(reading, state)) return number;
  // "the first amount after all", with a timer between
  const before =
    last.tool === "timer" && !/\b(?:one|timers?|thing)\b/.test(said.text) ? counted(state) : last;
  return byWords({ ...said, last: before ?? last }) ?? inTheMiddle(said);
}

/** "no, the first one.": a sentence of its own that is no talk beside the question. */
export const namesEarlier = (text: string): boolean =>
  (["full", "single", "before", "first", "second"] as const).some((kind) =>
    new RegExp(`${leads(kind).source.replace(end, "")}(?: [.,;:?!])*$`).test(spaced(text)),
  );
