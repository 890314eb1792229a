/**
 * What a turn reaches back to, where it isn't simply the question before: an earlier topic that is corrected or returned
 * to, both of the last two, all of the last turn, or the same question once more.
 */
import type { Reading } from "../tools/contract/index.ts";
import { weighing } from "../tools/lib/ounces.ts";
import type { State, Topic } from "./converse.ts";
import { isBare } from "./slots.ts";
import type { Inputs } from "./step.ts";

/**
 * "no wait, i've 250 g choc", said after something else: the earlier topic that was given a weight of just that is the
 * one that is corrected.
 */
export function corrected(reading: Reading, state: State): State {
  const sibling = ofSameTurn(reading, state);
  if (sibling) return { ...state, last: sibling };
  if (!/^(?:(?:no|nope|oh|sorry|oops|actually|wait|hang on|hold on|i meant?) (?:, )?)+/.test(reading.text))
    return state;
  // "no sorry, the buttercream is 260", behind the dose of a ganache
  const base = reading.things.find((thing) => thing.base)?.base;
  const own = state.row?.findLast((inputs) => inputs.base === base);
  if (base && own && state.last && state.last.inputs.base !== base)
    return { ...state, last: { tool: state.last.tool, inputs: own } };
  const said = reading.amounts.flatMap(({ dim, of }) =>
    dim === "weight" && of
      ? [of.chocolate || /chocolate/.test(of.ingredient ?? "") ? "chocolate_g" : `${of.ingredient}_g`]
      : [],
  );
  const [slot] = said;
  if (!slot || said.length > 1 || slot in (state.last?.inputs ?? {})) return state;
  const topic = state.topics.findLast(({ tool, inputs }) => tool !== state.last?.tool && slot in inputs);
  return topic ? { ...state, last: topic } : state;
}

/**
 * "make that 3 egg whites", "4 % sorry", behind a turn that asked two things: the one of them that took such an amount,
 * where the last one didn't.
 */
function ofSameTurn(reading: Reading, { turn, last }: State): Topic | undefined {
  const [amount, ...others] = reading.amounts;
  // "half that amount of smbc", behind the mix and its flavor
  const base = reading.things.find((thing) => thing.base)?.base;
  const mix =
    base &&
    /\b(?:that|the) (?:amount|quantity|much) of\b|\bas much\b/.test(reading.text) &&
    reading.things.length === 1
      ? turn?.topics.find(({ tool }) => about[base]?.includes(tool))
      : undefined;
  if (mix && (amount?.unit === "times" || amount?.fraction) && mix.tool !== last?.tool) return mix;
  const isChange =
    /^(?:(?:ok|and|no|oh|oops|sorry|actually|wait),? )*make (?:that|it) /.test(reading.text) ||
    /(?:^(?:no|sorry|oops|actually|wait)\b|\b(?:sorry|i mean|i meant)(?: \?)?$)/.test(reading.text);
  if (
    !turn ||
    turn.topics.length < 2 ||
    !amount ||
    others.length > 0 ||
    !isChange ||
    !isBare(withoutSorry(reading))
  )
    return undefined;
  const slot =
    amount.dim === "percent"
      ? "percent"
      : amount.of?.ingredient === "whites" || amount.of?.ingredient === "egg"
        ? "whites_count"
        : amount.of?.count === "macarons"
          ? "macarons"
          : undefined;
  if (!slot || slot in (last?.inputs ?? {})) return undefined;
  return turn.topics.find(({ inputs }) => slot in inputs);
}

const withoutSorry = (reading: Reading): Reading => ({
  ...reading,
  mask: reading.mask.replace(/(?:^| )(?:sorry|oops|mean|meant)(?= |$)/g, ""),
});

/** Which calculators a mix is the matter of. */
const about: Readonly<Record<string, readonly string[]>> = {
  ganache: ["ganache"],
  buttercream: ["buttercream"],
  batter: ["shells", "scale", "split"],
  filling: ["fill"],
};

const lead = "^(?:(?:no|wait|sorry|so|ok|okay|and|now|anyway|right|alright|well|oh|but),? )*";
const goesBack = new RegExp(`${lead}(?:back to|going back to|return to|returning to|about) (?:the|my|that) `);
const saidFirst = new RegExp(`${lead}what i (?:asked|said|wanted|had) (?:first|before|at first|earlier)\\b`);

/** "back to the buttercream": the earlier topic that was about what is named becomes the last one again. */
export function returned(reading: Reading, state: State): State {
  // "make the pear 3 percent", with something else between
  const named = /^(?:ok |and |no )*make the /.test(reading.text)
    ? reading.things.find((thing) => thing.taste)?.taste
    : undefined;
  const flavored = named && state.topics.findLast(({ inputs }) => inputs.taste === named);
  if (flavored && state.last?.tool !== flavored.tool) return { ...state, last: flavored };
  // "200 g of it", behind a split ganache: mended by its weight
  if (
    state.last?.inputs.symptom === "split ganache" &&
    /^(?:(?:its|it is|about|around|ok) )*\S*<weight>(?: of (?:it|ganache\S*))?$/.test(reading.mask)
  )
    return { ...state, last: { tool: "ganache", inputs: { want: "split" } } };
  // "what if i had 8 oz of almond flour instead", behind the macarons that it makes
  const ofStock = reading.amounts.length === 1 ? reading.amounts[0]?.of?.ingredient : undefined;
  const stock =
    ofStock &&
    state.last?.tool === "shells" &&
    /\b(?:if|instead|what about|suppose|only)\b/.test(reading.text)
      ? state.topics.findLast(
          ({ tool, inputs }) =>
            tool === "scale" &&
            Array.isArray(inputs.have) &&
            inputs.have.some(({ name }) => name === ofStock),
        )
      : undefined;
  if (stock) return { ...state, last: stock };
  // "and the same percent in 300 g", after something else
  const dose = state.topics.findLast(({ tool }) => tool === "dose");
  if (
    dose &&
    state.last?.tool !== "dose" &&
    (/\b(?:same|that) (?:percent|percentage|share|strength|dose)\b/.test(reading.text) ||
      // "same at 4 % but for a 300 g bowl"
      (/\bsame\b/.test(reading.text) && reading.amounts.some(({ dim }) => dim === "percent")))
  )
    return { ...state, last: dose };
  // "back to 4 cm, how many macarons was it", behind the filling for them
  const counted = reading.things.some(({ count }) => count === "macarons" || count === "shells");
  const sized =
    state.last?.tool === "fill" &&
    counted &&
    reading.amounts.some(({ dim }) => dim === "length") &&
    /\bback to\b/.test(reading.text)
      ? state.topics.findLast(({ tool }) => tool === "shells")
      : undefined;
  if (sized) return { ...state, last: sized };
  // "suppose i take milk choc, same 250", behind the rum for a ganache
  const mixOfChoc =
    state.last?.tool === "dose" &&
    reading.things.some(({ chocolate }) => chocolate) &&
    !reading.things.some(({ dose, taste, base: of }) => dose ?? taste ?? of) &&
    /\b(?:suppose|if|instead|same|switch|take|use|with|stick|back)\b/.test(reading.text)
      ? state.topics.findLast(({ tool }) => tool === "ganache")
      : undefined;
  if (mixOfChoc) return { ...state, last: mixOfChoc };
  const past = state.past ?? [];
  // "now what i asked first, the filling, but 36"
  const first = saidFirst.test(reading.text);
  if (!first && !goesBack.test(reading.text)) return state;
  const base = reading.things.find((thing) => thing.base)?.base ?? "";
  // "back to the lemon, 300 g"
  const taste = reading.things.find((thing) => thing.taste)?.taste;
  const isMeant = ({ tool, inputs }: Topic) =>
    (taste === undefined &&
      base !== "" &&
      (inputs.base === base || (about[base]?.includes(tool) ?? false))) ||
    (taste !== undefined && inputs.taste === taste);
  // "the big bowl", of several that were flavored
  const size = /\b(big|bigger|large|larger|small|smaller|little) (?:bowl|batch|one)\b/.exec(
    reading.text,
  )?.[1];
  const bowls = size ? past.filter(({ inputs }) => typeof inputs.base_g === "number") : [];
  const bySize = bowls.sort((a, b) => Number(a.inputs.base_g) - Number(b.inputs.base_g));
  const ofSize = /^(?:big|large)/.test(size ?? "") ? bySize.at(-1) : bySize[0];
  // "back to the 260": the one that was of so many
  const number = reading.amounts.find(({ at }) => /\bto the $/.test(reading.text.slice(0, at[0])))?.value;
  const ofNumber =
    number === undefined
      ? undefined
      : past.findLast(({ inputs }) => Object.values(inputs).some((each) => each === number));
  const topic = first ? (past.find(isMeant) ?? past[0]) : (past.findLast(isMeant) ?? ofNumber ?? ofSize);
  return topic && topic !== past.at(-1) ? { ...state, last: topic } : state;
}

/** "and at 4 percent for both": of the last two that were asked about. */
const forBoth = /(?:^| )(?:both|each of (?:them|those|these)|the two of them)(?: |$)/;

/**
 * "for 40 now", behind "batter for 32 macarons and the filling for them": what the last turn asked of several
 * calculators is asked of all of them again, where each was given what changes.
 */
export function ofWholeTurn(reading: Reading, draft: Inputs, { turn }: State): Topic[] {
  const keys = Object.keys(draft);
  // a size nobody has said is the usual one wherever macarons are counted
  const takes = (inputs: Inputs, key: string) =>
    key in inputs || (key === "diameter_mm" && "macarons" in inputs);
  const every =
    turn && keys.length > 0 && turn.topics.every(({ inputs }) => keys.some((key) => takes(inputs, key)));
  const open = isBare(reading) || forBoth.test(reading.mask) || /(?:^| )all(?: |$)/.test(reading.mask);
  return every && open ? turn.topics : [];
}

/** The last two that one calculator was asked in a row, where a turn is of both; else none. */
export const ofBoth = (reading: Reading, tool: string, { last, row, turn }: State): Inputs[] =>
  tool === last?.tool && (forBoth.test(reading.mask) || (turn?.times === 2 && theSame.test(reading.mask)))
    ? (row?.slice(-2) ?? [])
    : [];

/** "now the same for salt", behind two bowls of one turn. */
const theSame = /^(?:(?:and|now|ok|so) )*(?:the )?same (?:again |two\S* |both )?(?:for|with|in|of) /;

const asksWarmth = /\b(?:how (?:warm|hot)|what temp\w*|which temp\w*|a temp\w*)\b/;

/** "and if we tipped both bowls together?" */
const inOneBowl =
  /\b(?:both|the two|them|the lot)\b.* (?:together|combined|in one|into one)\b|\b(?:together|combined)\b.*\b(?:both|the two)\b|^(?:and |so |ok )*(?:all |both )?(?:together|combined|in total)(?: then)? ?\??$/;

/** "and in oz?": the answer before, in ounces. */
const inOz =
  /^(?:(?:and|or|now|ok|so|what about) )*(?:in|as) (?:oz|ounces|ounce)(?: \?)?(?: (?:please|pls|then|both|both of them))? ?\??$/;
/** "and now?": the same question again, where asking it does nothing but answer. */
const onceMore = /^(?:and |so |ok |what about )*(?:now|once more|same again|the same again|and now)(?: \?)?$/;
/** A ganache is answered with and without. */
const withoutButter = /^(?:and |but |ok )*(?:without|no) (?:the |any )?butter(?: (?:please|pls|then))? ?\??$/;
/** "how much of each", behind what was shared out. */
const ofEach =
  /^(?:and |so |ok )*how (?:much|many)(?: grams| g)? (?:of|for|in|is)? ?each(?: one| part| bowl| half)?(?: then)?(?: \?)?$/;
const readOnly = new Set(
  "recall keep day buy cost dose scale shells fill ganache buttercream convert trouble method".split(" "),
);

/** "how much does that make in all": the sum stands in the answer. */
const inAll =
  /^(?:(?:and|so|ok) )*(?:(?:how much|what) (?:does|would|will) (?:that|it|this) (?:all )?(?:make|give)(?: me)?(?: of it)?(?: in all| altogether| in total| all together)?|(?:whats|what is) the total(?: batter| weight)?|what does (?:that|it|this|all of it) weigh(?: in all| altogether| in total| all together)?|(?:whats|what's|what is|how much(?: \S+)? (?:is|was)) (?:that|it|this|they|everything) (?:now )?(?:in all|altogether|in total|all together|together)) ?\??$/;
const summing = new Set(["buttercream", "ganache", "scale", "fill"]);

/** "and the butter version?": a ganache of white chocolate is answered with and without. */
const butterVersion =
  /^(?:(?:and|what about|how about|ok) )*(?:the |a )?(?:butter version|version with butter|with butter|one with butter|butter one)(?: then)?(?:,? (?:and )?(?:the )?same total)? ?\??$/;
/** "found a battery, in grams?", behind a dose in spoons. */
const inGrams =
  /(?:^|, ?)(?:(?:and|so|ok|just) )*(?:in|(?:give|tell|show) me(?: it| that)?(?: in)?(?: the)?) (?:grams|grammes|g)(?: (?:please|pls|then))? ?\??$/;
/** "bit much?", of a flavor in its bowl. */
const verdict =
  /^(?:(?:is|was) (?:that|it) )?(?:a )?(?:(?:bit|little|tad) (?:too )?(?:much|strong)|(?:way )?too (?:much|strong|little)|enough|ok|okay|alright)(?: then)? ?\?$/;

/** The last question asked again as it was, in another unit or in none, and why. */
export function sameAgain(
  { text, mask }: Reading,
  { last, row, table }: State,
): { unit?: "oz"; drop?: string; inputs?: Inputs; because: string } | undefined {
  if (!last) return undefined;
  // "how warm should it be when i do that", of a ganache that split
  if (last.tool === "ganache" && last.inputs.want === "split" && asksWarmth.test(text))
    return { because: "asks how warm, which the same answer says" };
  // both scales stand in an answer about heat
  if (
    last.tool === "method" &&
    /^(?:(?:and|so|ok|what) )*(?:in|as) (?:f|c|fahrenheit|celsius|centigrade)(?: (?:please|pls|then))? ?\??$/.test(
      text,
    )
  )
    return { because: "asks for the same on the other scale, which stands in the answer" };
  if (["split", "fill"].includes(last.tool) && ofEach.test(text))
    return { because: "asks for each part, which the answer says" };
  // "how hot then must they be", of whites that are not safe as they are
  if (
    last.tool === "keep" &&
    last.inputs.about === "eggs" &&
    asksWarmth.test(text) &&
    !/fridge|freez|oven/.test(text)
  )
    return { because: "asks how hot, which the same answer says" };
  const [one, other] = row?.slice(-2) ?? [];
  const [first, second] = [one?.base_g, other?.base_g];
  if (last.tool === "dose" && inOneBowl.test(text) && typeof first === "number" && typeof second === "number")
    return { inputs: { ...last.inputs, base_g: first + second }, because: "asks for both bowls in one" };
  const [heavy, heavier] = table.recent ?? [];
  if (
    last.tool === "convert" &&
    inOneBowl.test(text) &&
    heavy &&
    heavier &&
    (row?.length ?? 0) > 1 &&
    // "thats my ganache, both together. how much kirsch" asks for more than their sum
    !/how (?:much|many) \S*<[^>]*(?:dose|taste)=/.test(mask)
  )
    return {
      inputs: { sum: `${heavy.grams} + ${heavier.grams}`, sum_unit: "g" },
      because: "asks for the last two together",
    };
  if (weighing.has(last.tool) && inOz.test(text))
    return { unit: "oz", because: "asks for the same in ounces" };
  const ofWhole =
    last.inputs.asks_heat && table.mass?.thing === last.tool ? { total_g: table.mass.grams } : undefined;
  if (summing.has(last.tool) && inAll.test(text))
    return { ...(ofWhole ? { inputs: ofWhole } : {}), because: "asks for the sum of the same" };
  const { does, entries } = last.inputs;
  // "and now?", behind what was taken off the shelf
  if (last.tool === "shelf" && does === "use" && Array.isArray(entries) && onceMore.test(mask))
    return {
      inputs: { does: "ask", entries: entries.map(({ name }: { name: string }) => ({ name })) },
      because: "asks what is left of it",
    };
  if (last.tool === "ganache" && butterVersion.test(text))
    return { because: "asks for the version with butter" };
  if (
    last.tool === "dose" &&
    last.inputs.flavor_g !== undefined &&
    last.inputs.base_g !== undefined &&
    verdict.test(text)
  )
    return { because: "asks again whether that is right" };
  // in ounces they stand beside the grams
  if (
    weighing.has(last.tool) &&
    /^(?:(?:and|so|ok) )*in (?:grams|grammes|g)(?: (?:please|pls|then))? ?\??$/.test(text) &&
    last.inputs.spoon === undefined
  )
    return { because: "asks for the same in grams, which stand in the answer" };
  if (
    last.tool === "dose" &&
    last.inputs.spoon !== undefined &&
    inGrams.test(text) &&
    !mask.includes("<number,fraction>")
  )
    return { drop: "spoon", because: "asks for the same in grams" };
  const noButter =
    last.tool === "ganache" &&
    last.inputs.want !== "composition" &&
    !/<[^>]*dose=/.test(mask) &&
    (withoutButter.test(text) ||
      (/\bone without (?:the |any )?butter ?\??$/.test(text) && !/<weight>/.test(mask)));
  return readOnly.has(last.tool) && (noButter || onceMore.test(mask))
    ? { because: "asks the same once more" }
    : undefined;
}
