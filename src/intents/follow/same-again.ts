/** The question before, asked once more: as it was, in another unit, for both, or for what stands in its answer. */
import type { Reading } from "../../tools/contract/index.ts";
import { isUntilDone, isWhichDay } from "../../tools/lib/asked-again.ts";
import { sameIngredient } from "../../tools/lib/lines.ts";
import { weighing } from "../../tools/lib/ounces.ts";
import { inBase } from "../../tools/lib/units.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { about, type Inputs, type State, type Topic } from "./state.ts";

/** How it is asked again: in which unit, without which input or with others, and why it was read so. */
export interface Again {
  /** The calculator whose answer is meant, where it is not the last one's. */
  tool?: string;
  unit?: "oz";
  /** What the answer is held against. */
  against?: { value: number; unit: string };
  drop?: string;
  inputs?: Inputs;
  because: string;
}

interface Said {
  reading: Reading;
  state: State;
  last: Topic;
}

type AgainWay = Way<Said, Again>;

const polite = "(?: (?:please|pls|then|now))?";
const whole = (pattern: string, lead = "and|so|ok") =>
  new RegExp(`^(?:(?:${lead}) )*${pattern}(?: \\?)?${polite} ?\\??$`);

const asksWarmth = /\b(?:how (?:warm|hot)|what temp\w*|which temp\w*|a temp\w*)\b/;

/** "how warm should it be when i do that", of a ganache that split. */
const warmthOfMending: AgainWay = ({ reading, last }) =>
  last.tool === "ganache" && last.inputs.want === "split" && asksWarmth.test(reading.text)
    ? { because: "asks how warm, which the same answer says" }
    : undefined;

/** "how hot then must they be", of whites that are not safe as they are. */
const heatOfEggs: AgainWay = ({ reading: { text }, last }) =>
  last.tool === "keep" &&
  last.inputs.about === "eggs" &&
  asksWarmth.test(text) &&
  !/fridge|freez|oven/.test(text)
    ? { because: "asks how hot, which the same answer says" }
    : undefined;

const otherScale = whole("(?:in|as) (?:f|c|fahrenheit|celsius|centigrade)", "and|so|ok|what");

/** "in f?": both scales stand in an answer about heat. */
const onOtherScale: AgainWay = ({ reading, last }) =>
  last.tool === "method" && otherScale.test(reading.text)
    ? { because: "asks for the same on the other scale, which stands in the answer" }
    : undefined;

const ofEach = whole("how (?:much|many)(?: grams| g)? (?:of|for|in|is)? ?each(?: one| part| bowl| half)?");

/** "are they done maturing", asked of the timer once more. */
const leftAgain: AgainWay = ({ reading, last }) =>
  last.tool === "timer" && last.inputs.do === "left" && isUntilDone(reading, String(last.inputs.name ?? ""))
    ? { because: "asks how long is left, once more" }
    : undefined;

/** "and what day was that", of a note that was found: its day stands in the answer. */
const dayOfNote: AgainWay = ({ reading, last }) =>
  last.tool === "recall" && isWhichDay(reading.mask)
    ? { because: "asks for the day, which the same answer says" }
    : undefined;

/** "how much of each", behind what was shared out. */
const eachPart: AgainWay = ({ reading, last }) =>
  ["split", "fill"].includes(last.tool) && ofEach.test(reading.text)
    ? { because: "asks for each part, which the answer says" }
    : undefined;

const ofRest = whole("(?:the )?(?:rest|remainder)(?: (?:is|then|how much|gets))?", "and|so|ok|then|now|but");

/** "then rest", behind parts of which one is what is left. */
const restOfSplit: AgainWay = ({ reading, last }) =>
  last.tool === "split" && ofRest.test(reading.text)
    ? { because: "asks for the rest, which the answer says" }
    : undefined;

const inOneBowl =
  /^(?:(?:and|so|ok|now|then|please|can you) )*(?:add|sum|total|put) (?:up )?(?:the two|both|them|those(?: two)?|the last two|these(?: two)?)(?: (?:up|together|of them|numbers|then|please))* ?\??$|\b(?:both|the two|them|the lot)\b.* (?:together|combined|in one|into one)\b|\b(?:together|combined)\b.*\b(?:both|the two)\b|^(?:and |so |ok )*(?:all |both )?(?:together|combined|in total)(?: then)? ?\??$|^(?:(?:and|so|ok|whats|what is|what) )*(?:the |in )?total(?: weight)?(?: of (?:them|those|that|both|the two))?(?: then)? ?\??$/;

/** "and if we tipped both bowls together?" */
const bowlsTogether: AgainWay = ({ reading, state, last }) => {
  const [first, second] = (state.row?.slice(-2) ?? []).map(({ base_g }) => base_g);
  const both = typeof first === "number" && typeof second === "number" ? first + second : undefined;
  return last.tool === "dose" && inOneBowl.test(reading.text) && both !== undefined
    ? { inputs: { ...last.inputs, base_g: both }, because: "asks for both bowls in one" }
    : undefined;
};

/** "and both together", behind two weights that were turned into grams. */
const weightsTogether: AgainWay = ({ reading: { text, mask }, state: { row, table }, last }) => {
  const [older, newer] = table.recent ?? [];
  if (last.tool !== "convert" || !inOneBowl.test(text) || !older || !newer) return undefined;
  // "thats my ganache, both together. how much kirsch" asks for more than their sum
  const asksFlavor = /how (?:much|many) \S*<[^>]*(?:dose|taste)=/.test(mask);
  return (row?.length ?? 0) > 1 && !asksFlavor
    ? {
        inputs: { sum: `${older.grams} + ${newer.grams}`, sum_unit: "g" },
        because: "asks for the last two together",
      }
    : undefined;
};

/** "add the two", behind two plain sums. */
const sumsTogether: AgainWay = ({ reading: { text }, state: { past = [], table }, last }) => {
  if (last.tool !== "convert" || !inOneBowl.test(text) || table.number === undefined) return undefined;
  const [older, newer] = past.slice(-2).filter(({ tool }) => tool === "convert");
  const [one, other] = [older?.table?.number, newer?.table?.number];
  return one !== undefined && other !== undefined && older?.table !== newer?.table
    ? { inputs: { sum: `${one} + ${other}` }, because: "asks for the last two together" }
    : undefined;
};

const inOz =
  /^(?:(?:and|or|now|ok|so|what about) )*(?:in|as) (?:oz|ounces|ounce)(?: \?)?(?: (?:please|pls|then|both|both of them))? ?\??$/;

/** "and in oz?" */
const inOunces: AgainWay = ({ reading, last }) =>
  weighing.has(last.tool) && inOz.test(reading.text)
    ? { unit: "oz", because: "asks for the same in ounces" }
    : undefined;

const inAll =
  /^(?:(?:and|so|ok) )*(?:(?:how much|what) (?:(?:does|would|will) (?:that|it|this) (?:all )?(?:make|give)|(?:it|that|this) (?:all )?(?:makes|gives))(?: me)?(?: of it)?(?: in all| altogether| in total| all together)?|(?:whats|what is|what was|and|so)? ?(?:the |in )?total(?: batter| weight| mass)?(?: (?:of|for) (?:it|that|this|them|those|all (?:of )?(?:it|that|them)|everything|the (?:lot|two|whole (?:lot|thing))))?(?: then)?|what (?:batter |weight )?(?:does|will|would|do) (?:that|it|this|they|all of it) (?:all )?(?:weigh|come to|add up to|amount to)(?: in all| altogether| in total| all together)?|(?:whats|what's|what is|how much(?: \S+)? (?:is|was)) (?:that|it|this|they|everything) (?:now )?(?:in all|altogether|in total|all together|together)) ?\??$/;
const summing = new Set(["buttercream", "ganache", "scale", "fill", "shells", "split"]);

/** "how much does that make in all": the sum stands in the answer. */
const sum: AgainWay = ({ reading, state: { table }, last }) => {
  if (!summing.has(last.tool) || !inAll.test(reading.text)) return undefined;
  const mass = last.inputs.asks_heat && table.mass?.thing === last.tool ? table.mass : undefined;
  return { ...(mass ? { inputs: { total_g: mass.grams } } : {}), because: "asks for the sum of the same" };
};

/** "how much ganache was that altogether", with its timer between: of the mix that is named. */
const sumOfNamed: AgainWay = ({ reading: { text, things }, state: { past = [] }, last }) => {
  const base = things.find((each) => each.base)?.base;
  const tools = base === undefined || !inAll.test(text) ? [] : (about[base] ?? []);
  const topic = past.findLast(({ tool }) => tools.includes(tool) && summing.has(tool));
  return topic && topic.tool !== last.tool
    ? { tool: topic.tool, inputs: topic.inputs, because: "asks for the sum of the mix that is named" }
    : undefined;
};

/** "whats the total", of a bowl and the flavor in it, where that is one weight. */
const bowlAndFlavor: AgainWay = ({ reading, last: { tool, inputs } }) => {
  const { base_g, flavor_g, percent, percent_high, of_finished, want } = inputs;
  if (tool !== "dose" || !inAll.test(reading.text) || typeof base_g !== "number" || want === "mend")
    return undefined;
  const share =
    typeof percent === "number" && percent_high === undefined && !of_finished ? percent : undefined;
  const put =
    typeof flavor_g === "number" ? flavor_g : share === undefined ? undefined : (base_g * share) / 100;
  return put === undefined
    ? undefined
    : {
        tool: "convert",
        inputs: { sum: `${base_g} + ${put}`, sum_unit: "g" },
        because: "asks for the bowl with its flavor in",
      };
};

/** Their answers have a sum of their own, or are asked for one in other words. */
const withSums = new Set([...summing, "convert", "cost", "keep", "dose", "buy"]);
/** "whats the total weight of that", behind a timer or a setting: there is none. */
export const asksNoSum = ({ text, things }: Reading, last: string): boolean =>
  !withSums.has(last) &&
  inAll.test(text) &&
  // "how much ganache was that altogether", with its timer between, says of what
  things.every(({ base, count, ingredient }) => !(base ?? count ?? ingredient));

/** "and now?": asked again where asking does nothing but answer. */
const onceMore =
  /^(?:and |so |ok |what about )*(?:now|once more|again|once again|one more time|same again|the same again|and now|(?:can you |could you |please )*(?:say|tell me|give me|show me|read|repeat) (?:me )?(?:that|it|this)(?: to me| for me)?(?: back)?(?: again| once more| one more time)?|what (?:was|were) (?:that|it|they|those)(?: again| once more)?|come again|how much was (?:that|it)(?: again)?)(?: (?:please|pls|then|for me))*(?: \?)?$/;

/** "and now?", behind what was taken off the shelf. */
const leftOnShelf: AgainWay = ({ reading, last }) => {
  const { does, entries } = last.inputs;
  return last.tool === "shelf" && does === "use" && Array.isArray(entries) && onceMore.test(reading.mask)
    ? {
        inputs: { does: "ask", entries: entries.map(({ name }: { name: string }) => ({ name })) },
        because: "asks what is left of it",
      }
    : undefined;
};

const butterVersion =
  /^(?:(?:and|what about|how about|ok) )*(?:the |a )?(?:butter version|version with butter|with butter|one with butter|butter one)(?: then)?(?:,? (?:and )?(?:the )?same total)? ?\??$/;

/** "and the butter version?": a ganache of white chocolate is answered with and without. */
const withButter: AgainWay = ({ reading, last }) =>
  last.tool === "ganache" && butterVersion.test(reading.text)
    ? { because: "asks for the version with butter" }
    : undefined;

const noButter = /^(?:and |but |ok )*(?:without|no) (?:the |any )?butter(?: (?:please|pls|then))? ?\??$/;

/** "and without butter?": the same answer says both. */
const withoutButter: AgainWay = ({ reading: { text, mask }, last }) =>
  last.tool === "ganache" &&
  last.inputs.want !== "composition" &&
  !/<[^>]*dose=/.test(mask) &&
  (noButter.test(text) || (/\bone without (?:the |any )?butter ?\??$/.test(text) && !/<weight>/.test(mask)))
    ? { because: "asks the same once more" }
    : undefined;

const judges =
  /^(?:(?:is|was) (?:that|it) )?(?:a )?(?:(?:bit|little|tad) (?:too )?(?:much|strong)|(?:way )?too (?:much|strong|little)|enough|ok|okay|alright)(?: then)? ?\?$/;

/** "bit much?", of a flavor in its bowl. */
const verdict: AgainWay = ({ reading, last: { tool, inputs } }) =>
  tool === "dose" && inputs.flavor_g !== undefined && inputs.base_g !== undefined && judges.test(reading.text)
    ? { because: "asks again whether that is right" }
    : undefined;

const gramsAsked = /^(?:(?:and|so|ok) )*in (?:grams|grammes|g)(?: (?:please|pls|then))? ?\??$/;

/** "in grams?": they stand in the answer already. */
const inGrams: AgainWay = ({ reading, last }) =>
  weighing.has(last.tool) && gramsAsked.test(reading.text) && last.inputs.spoon === undefined
    ? { because: "asks for the same in grams, which stand in the answer" }
    : undefined;

const gramsInstead =
  /(?:^|, ?)(?:(?:and|so|ok|just) )*(?:in|(?:give|tell|show) me(?: it| that)?(?: in)?(?: the)?) (?:grams|grammes|g)(?: (?:please|pls|then))? ?\??$/;

/** "found a battery, in grams?", behind a dose in spoons. */
const noSpoons: AgainWay = ({ reading: { text, mask }, last }) =>
  last.tool === "dose" &&
  last.inputs.spoon !== undefined &&
  gramsInstead.test(text) &&
  !mask.includes("<number,fraction>")
    ? { drop: "spoon", because: "asks for the same in grams" }
    : undefined;

const partAsked =
  /^(?:(?:and|so|ok|then) )*how much \S*<[^>]*ingredient=([a-z_]+)[^>]*>(?: (?:then|is that|does that need|for that|in that|do i need))*(?: \?)?$/;

/** "how much sugar", behind a mix with sugar in it: its weight stands in the answer. */
const partOfMix: AgainWay = ({ reading, state: { table }, last }) => {
  const name = partAsked.exec(reading.mask)?.[1]?.replaceAll("_", " ");
  const stands = name && ["buttercream", "ganache", "scale"].includes(last.tool);
  return stands && table.recipe?.some((each) => sameIngredient(each.name, name))
    ? { because: `asks for the ${name}, which stands in the answer` }
    : undefined;
};

const readOnly = new Set(
  "recall keep day buy cost dose scale shells fill ganache buttercream convert trouble method split label".split(
    " ",
  ),
);

const again: AgainWay = ({ reading, last }) =>
  readOnly.has(last.tool) && onceMore.test(reading.mask) ? { because: "asks the same once more" } : undefined;

const compares =
  /^(?:(?:and|so|ok|but|hm|well|right|now|then|,) )*(?:is|was|will|would|does|do|did|are|were|should|cant|isnt|wont|doesnt) (?:it|that|this|they|those|these|all that|all of (?:it|that)|the (?:total|lot|batter|filling|whole lot|mix|whole thing)(?:<\S+)?) (?:(?:be|going|gonna|to|come|comes|coming|make|making|give|work|out|at|weigh|add|up|all|still|already|even|in|total|really|now|run|mean|need|then|altogether|a|bit|lot) )*(?:more|less|over|under|above|below|fewer|bigger|smaller|heavier|lighter|at least)(?: than)?(?: (?:about|around|roughly|the))* (\S*<(?:weight|number)(?:,fraction)?>)(?: (?:of )?(?:\S*<[^>]*(?:base|count)=\S+|it|grams|in|all|total|altogether|then|together|mix|now|still))*(?: \?)?$/;

const measured =
  "(\\S*<(?:weight|number)(?:,fraction)?>)(?: (?:of )?(?:the )?(?:\\S*<[^>]*(?:base|count)=\\S+|it|grams|in|all|total|altogether|then|together|mix|now|still|for (?:it|that|them)))*";
const somebody = "(?:i|we|it|that|this|they|you)";
/** "do i need more than 500 g of batter", "will it take over 600 g". */
const needsMore = new RegExp(
  `^(?:(?:and|so|ok|but|hm|well|right|now|then|,) )*(?:do|will|would|did|does|should|ll) ${somebody} (?:(?:really|actually|still|have|need|to|be|needing|take|use|want|make|require|mix|get|pipe|a|bit|lot) )*(?:more|less|over|under|above|below|fewer|at least)(?: than)?(?: (?:about|around|roughly|the))* ${measured}(?: \\?)?$`,
);
/** "is 500 g of batter enough", "will 500 g do", "can i get away with 500 g". */
const isEnough = new RegExp(
  `^(?:(?:and|so|ok|but|hm|well|right|now|then|,) )*(?:(?:is|are|will|would) ${measured} (?:(?:be|then|still|already) )*(?:enough|do|suffice|too (?:little|few|much))(?: (?:for|of) (?:it|that|them|those|all of them))?|(?:can|could|will|would) (?:i|we) (?:get away|manage|get by|do it|make do|make them) (?:with|on) (?:only |just )?${measured})(?: then)?(?: \\?)?$`,
);

const mixNamed = /<weight(?:,fraction)?> (?:of )?(?:the )?\S*<[^>]*base=(batter|filling)/;
const comparing = new Set(["scale", "shells", "fill", "ganache", "buttercream", "convert"]);

/** "is that more than 600 g of batter all in all?": compared with, and no other weight to work from. */
const heldAgainst: AgainWay = ({ reading: { mask, amounts }, last }) => {
  const [only, ...others] = amounts;
  if (!comparing.has(last.tool) || !only || others.length > 0 || only.high !== undefined) return undefined;
  const isWeight = only.dim === "weight";
  if (only.unit === "times" || (only.fraction && !isWeight)) return undefined;
  // how much is needed is held against a size only where the size wasn't what it was worked out from
  const isNeed = typeof last.inputs.macarons === "number" && (needsMore.test(mask) || isEnough.test(mask));
  if (!compares.test(mask) && !isNeed) return undefined;
  const mix = mixNamed.exec(mask)?.[1];
  const { macarons, diameter_mm } = last.inputs;
  // "is that more than 200 g of batter", behind filling for so many: of the batter for them
  const other =
    mix === "batter" && last.tool === "fill"
      ? "shells"
      : mix === "filling" && last.tool === "shells"
        ? "fill"
        : undefined;
  if (other && macarons === undefined) return undefined;
  const against = {
    value: isWeight ? inBase(only.value, only.unit) : only.value,
    unit: isWeight ? "g" : (only.of?.count ?? ""),
  };
  if (other)
    return {
      tool: other,
      inputs: { macarons, ...(diameter_mm === undefined ? {} : { diameter_mm }) },
      against,
      because: "holds the other mix for as many against what is named",
    };
  return { against, because: "holds the answer against what is named" };
};

const ways: readonly AgainWay[] = [
  heldAgainst,
  warmthOfMending,
  onOtherScale,
  eachPart,
  dayOfNote,
  leftAgain,
  restOfSplit,
  heatOfEggs,
  bowlsTogether,
  sumsTogether,
  weightsTogether,
  inOunces,
  sum,
  sumOfNamed,
  bowlAndFlavor,
  leftOnShelf,
  withButter,
  verdict,
  inGrams,
  noSpoons,
  withoutButter,
  partOfMix,
  again,
];

/** How the last question is asked again, if this sentence does no more than that. */
export const sameAgain = (reading: Reading, state: State): Again | undefined =>
  state.last && firstOf(ways, { reading, state, last: state.last });
