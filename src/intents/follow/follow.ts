/** Which calculator a sentence is for when the turn before matters: follow-ups, answers, references. */
import { opening } from "../../../data/words/openers.ts";
import { otherDishes } from "../../../data/words/other-dishes.ts";
import { strangers } from "../../../data/words/strangers.ts";
import type { Memory, Reading, Tool } from "../../tools/contract/index.ts";
import { faint, type Score, stands } from "../chosen/choose.ts";
import { opinions } from "../chosen/classify.ts";
import { drafts } from "../chosen/drafts.ts";
import { leftOver } from "../chosen/left-over.ts";
import { pointsToGoOn } from "../chosen/signs.ts";
import { isBare, multiplied } from "../chosen/slots.ts";
import { type Inputs, type State, sizing } from "./state.ts";
import { saidNow } from "./step.ts";

/** A turn that opens like this leans on the one before. */
const leans =
  /^(?:and|suppose|theres (?:another|one more)|hm|hmm|er|um|ah|well|or|but|no|nope|nah|actually|ok|okay|also|same|now|then|returning to|returning|half of|what about|how about|what if|make it|make that|make the|if|with|at|for|from|in|instead|so|plus|only|just|hang on|hold on|sorry|i mean|i meant|pardon(?: me)?|excuse me|forgive me|rather|wait|oh|not|use|try|say|rather|the (?:other|second|third|next|first) (?:bowl\S*|one|batch\S*)|yes|yeah|that|thats|it|its|they|theyre|theyve|theyd|theyll|itll|thatll|mine|ours|them|those|these|this|without|half|double\S*|(?:halve|triple|treble|quadruple)\S*|twice\S*|(?:go(?:ing)? )?back to|still|already|again|take|add|another|one more|remove|swap|replace|exchange)(?: |$)/;
const pronoun =
  /(?:^| )(?:it|its|that|thats|them|they|those|these|this|one|ones|instead|same|again|each|both|there|rest|too|more|less|now)(?: |$)/;

const isLeaning = (reading: Reading) =>
  pronoun.test(reading.mask) || leans.test(`${reading.mask} `) || isBare(reading);

/** "the ganache was actually 300 g", "turns out the bowl only holds 350": of the bowl that something went into. */
const tellsBowl = new RegExp(
  `^${opening}(?:(?:it )?turns out (?:that )?|turned out (?:that )?|i see (?:that )?|i find (?:that )?)?(?:the|my|that|our) \\S*<[^>]*(?:base=(\\w+)|count=bowls)[^>]*> (?:(?:is|was|weighs|weighed|has|had|holds|held|came to|turned out to be|turned out|really|actually|only|just|in fact|about|more like|nearer|there|in it|to be) )*\\S*<(?:weight|number)>(?: (?:of it|in it|really|actually|only|instead|not \\S+|then|now|after all|in fact|in all|,))*$`,
);

/** "my macarons are 45 mm", behind what was worked out for the usual size; "always" and "remember" set the bench. */
const tellsSize = new RegExp(
  `^${opening}(?:my|our|the) (?:\\S*<[^>]*count=(?:macarons|shells)>|ones) (?:(?:are|is|were|measure|will be|should be|come out|came out|about|around|only|just|all|actually|really|more like|at|nearer) )*\\S*<length>(?: (?:across|wide|in diameter|each|ones|not \\S+|then|this time|actually|though|,))*$`,
);
const tellsItsSize = ({ mask }: Reading, { last }: State): boolean =>
  (last?.tool === "fill" || last?.tool === "shells") && tellsSize.test(mask);

const tellsItsBowl = ({ mask }: Reading, { last }: State): boolean => {
  if (last?.tool !== "dose" || last.inputs.flavor_g === undefined) return false;
  const told = tellsBowl.exec(mask);
  return told !== null && [undefined, last.inputs.base].includes(told[1]);
};

/** "how much coffee for 180 g buttercream and how much for 220 g ganache": the second goes on from the first. */
const isElided = (reading: Reading, { last, turn }: State): boolean =>
  last?.tool === "dose" &&
  turn?.said === reading.said &&
  /^(?:how (?:much|many)(?: grams| g)? (?:for|in|into|with) (?:the |my )?\S*<|(?:(?:and|or) )?(?:(?:it|that) )?(?:covers?|flavou?rs?|does|do|goes into|good for|enough for) how (?:much|many) (?:of )?\S*<[^>]*base=)/.test(
    reading.mask,
  );

/** "155 c what f", behind a fault: a heat on the other scale, and no oven that was too hot. */
const asksScale =
  /<temperature>(?: (?:is|in|to|as|into|equals|what|whats|deg|degrees))* (?:f|c|fahrenheit|celsius|\S*<unit=[^>]*>)(?: (?:please|pls))*(?: \?)?$/;

/**
 * A word of another matter with no sure sign of the trade, or a sentence of which hardly a word is known: better
 * declined than guessed at.
 */
export function strange(reading: Reading, points: number): boolean {
  // "the dog got the dark, so milk": what became of it, and what is used in its place
  const mask = petAteIt.test(reading.mask) ? reading.mask.replace(pet, "") : reading.mask;
  const words = mask
    // "banana bread macarons": what they taste of
    .replace(/(?:^| )[a-z]+(?= \S*<[^>]*count=(?:macarons|shells|batches))/g, "")
    // "taste like bread", "no calories on it"
    .replace(/(?:^| )(?:like|no|not|without) (?:(?:a|an|any|the) )?[a-z]+(?= |$)/g, "")
    .split(" ")
    .filter((each) => /^[a-z]/.test(each));
  // "a recipe for pea soup": a word for a loose ganache, where one is spoken of
  const isOurs = reading.things.some((each) => each.base ?? each.count);
  const foreign = words
    // "230 g of the buttercream, rest goes on muffins": whose question it is then, is looked at by itself
    .filter((each) => !(isOurs && isDish(each)))
    .some((each) => strangers.has(each.replace(/<(?!.*=).*$/, "")));
  // a fault that the trade has a name for is told, whatever else was going on
  const told =
    reading.things.some((each) => each.formula) ||
    (reading.mended.length === 0 && reading.things.some((each) => each.symptom && !each.color));
  // nothing leaves this machine
  if (sendsIt.test(reading.text) && points < 9) return true;
  const sure = told ? faint : reading.amounts.length > 0 || reading.whens.length > 0 ? 4 : 6;
  if (foreign && points < sure) return true;
  const lost = reading.unknown.length + reading.mended.length;
  return reading.unknown.length >= 2 && lost >= 3 && lost >= words.length / 2 && reading.amounts.length === 0;
}

const isDish = (word: string): boolean => dishWord.test(word);
const dishWord = new RegExp(`^(?:${otherDishes})$`);

const pet = /(?:^| )(?:dogs?|cats?|puppy|kitten|pets?)(?= )/g;
const petAteIt =
  /(?:^| )(?:dog|cat|puppy|kitten|pet)s? (?:(?:has|have|just|only) )*(?:ate|eaten|got|had|nicked|demolished|stole|pinched|scoffed|licked|finished) (?:(?:all|of|up|the|my|our|that) )*\S*<[^>]*(?:ingredient|chocolate)=[^>]*>(?: \S+){0,3} (?:(?:,|so|then|its|use|using|with|make it|got to be|has to be) )+(?:the )?\S*<[^>]*(?:ingredient|chocolate|color)=[^>]*>(?: (?:then|instead|now|it is|please|will do|this time))*(?: [.?])?$/;

const sendsIt =
  /\b(?:text|email|message|mail|dm) (?:it|this|that|them|me|her|him) (?:to|over)\b(?! (?:take|turn|check|start|stop|get|put|buy|flip|pipe|bake|call)\b)|\bsend (?:it|this|that) to (?:my|her|his|the)\b/;

/** Worked out when it is first asked for, and then known. */
function once<T>(make: () => T): () => T {
  let made: { of: T } | undefined;
  return () => {
    made ??= { of: make() };
    return made.of;
  };
}

export interface Choice {
  tool: Tool;
  follows: boolean;
  /** Others that the words speak for, the likeliest first. */
  others?: Tool[];
}

/** The calculator, and whether the sentence takes what is missing from the turn before; undefined when unsure. */
export function choose(
  reading: Reading,
  state: State,
  scores: Score[],
  tools: readonly Tool[],
  memory: (follows: boolean) => Memory,
  trace: string[],
): Choice | undefined {
  const last = tools.find((each) => each.name === state.last?.tool);
  const leaning = once(
    () =>
      isLeaning(reading) ||
      isElided(reading, state) ||
      tellsItsBowl(reading, state) ||
      tellsItsSize(reading, state),
  );
  const dose = tools.find((each) => each.name === "dose");
  if (dose && (scores[0]?.points ?? 0) < stands && intoMix(reading, state.last?.tool))
    return { tool: dose, follows: false };
  if (last?.name === "timer" && tellsGone.test(reading.mask)) return undefined;
  if (
    last &&
    state.last &&
    follows(tools, last, state.last.inputs, reading, scores, memory(true), leaning())
  ) {
    trace.push(`follows ${last.name}`);
    return { tool: last, follows: true };
  }
  // "will it be windy in the morning", with nothing before: "it" is nothing that was spoken of
  if (
    saysOnlyDay(reading) &&
    (scores[0]?.points ?? 0) < stands &&
    (!leaning() || (!state.last && !asksFitness.test(reading.mask)))
  )
    return undefined;
  const [settled, ...others] = settle(reading, scores, state.last?.tool);
  if (!settled) return undefined;
  const empty =
    settled.tool === last &&
    drafts(last, reading, memory(true)).every((draft) => Object.keys(draft).length === 0);
  // nothing new was said and no word speaks for it: the answer before would only come again
  const words = scores.find((each) => each.tool === last)?.points ?? 0;
  if (empty && words <= 0 && !leaning() && !/ then(?: \?)?$/.test(reading.mask)) return undefined;
  if (empty && words <= 0 && saysMore(reading)) return undefined;
  // "how much plain do i add" says nothing but for the bowl before it
  const alone =
    words >= stands &&
    drafts(settled.tool, reading, memory(false)).every((draft) => Object.keys(draft).length === 0);
  return {
    tool: settled.tool,
    follows: settled.tool === last && (empty || alone || leaning()),
    others: others.map((each) => each.tool),
  };
}

/** "we did optics on friday, would you know the refractive index of glass": a day, and nothing of the trade. */
const saysOnlyDay = ({ amounts, things, whens, mask }: Reading): boolean =>
  whens.length > 0 &&
  amounts.length === 0 &&
  things.length === 0 &&
  whens.every((each) => each.minute === undefined) &&
  mask.split(" ").filter((each) => /^[a-z]{4,}$/.test(each)).length >= 5;

/** "will they be fresh in the morning": of macarons, whether they were spoken of or not. */
const asksFitness =
  /(?:^| )(?:keep|keeps|last|lasts|fresh|good|ok|okay|alright|fine|safe|edible|eat|eaten|soft|crisp|stale|soggy|ready|done|still|filled|baked|made|set|matured?|at their best|off|freeze|freezer|frozen|thawed?|fridge)(?: |$)/;

/** "can i use it to stick them": more than a pointing word, and none of it read. */
const saysMore = (reading: Reading): boolean =>
  !leans.test(`${reading.mask} `) &&
  reading.mask.split(" ").filter((each) => /^[a-z]{3,}$/.test(each) && !smallTalk.has(each)).length >= 2;

const smallTalk = new Set(
  "that this them those these they its the and for are was can could should would will does did what how much many long now then one ones more less same again please each both there here with from into all any some lot still just too really thing things say tell show give".split(
    " ",
  ),
);

/** The choice with what it reads; where that leaves a weight out, another that the words speak for and that takes all. */
export function fullest(
  { tool, follows, others = [] }: Choice,
  reading: Reading,
  memory: (follows: boolean) => Memory,
  trace: string[],
): { tool: Tool; follows: boolean; drafted: Inputs[]; left: string[] } {
  const drafted = drafts(tool, reading, memory(follows));
  const last = memory(true).last;
  const before = last?.tool === tool.name ? last.inputs : undefined;
  const left = leftOver(tool.name, reading, drafted, follows, before);
  if (left.length === 0) return { tool, follows, drafted, left };
  for (const other of others) {
    const read = drafts(other, reading, memory(false));
    if (!read.some((each) => Object.keys(each).length > 1)) continue;
    if (leftOver(other.name, reading, read).length > 0) continue;
    trace.push(`${other.name}: ${tool.name} leaves out ${left.join(", ")}`);
    return { tool: other, follows: false, drafted: read, left: [] };
  }
  return { tool, follows, drafted, left };
}

/** A lead that the classifier isn't asked about: from so many points, and so far before the next. */
const clear = { points: 5.25, lead: 2.5 };
/** How far the classifier can lift or lower a calculator, in points for each factor of ten in likelihood. */
const pull = 1.5;
/** However unlikely it finds a calculator, it takes no more than this off: words decide. */
const least = 5e-3;
/** A likelihood that says neither yes nor no, among all calculators. */
const even = 0.04;
/** From here the classifier is as good as never wrong where it differs from the words, and gets so many points more. */
const certain = { sureness: 0.95, points: 2 };

/**
 * Words decide; where they don't decide clearly, the classifier weighs in. Under the threshold of words only a
 * calculator that it is sure of is taken, and of two that stay close none.
 */
function settle(reading: Reading, scores: Score[], last: string | undefined): Score[] {
  const [best, second] = scores;
  if (!best) return [];
  const likely = scores.filter((each) => each.points >= faint);
  if (best.points >= clear.points && best.points - (second?.points ?? 0) >= clear.lead) return likely;
  const sureness = new Map(opinions(reading.mask, last).map((each) => [each.tool, each.sureness]));
  if (sureness.size === 0) return best.points >= stands ? likely : [];
  return scores
    .filter((each) => each.points >= faint || each.tool.name !== "help")
    .map((each) => ({
      ...each,
      points: each.points + weight(sureness.get(each.tool.name) ?? 0),
    }))
    .filter((each) => each.points >= faint)
    .sort((a, b) => b.points - a.points);
}

/** What the classifier's likelihood adds, in points of cues. */
const weight = (sureness: number): number =>
  pull * Math.log10(Math.max(least, sureness) / even) + (sureness >= certain.sureness ? certain.points : 0);

/** "300 g ganache, rum for it": one bowl that is weighed, a flavor, and no number of parts. */
const dosesOwnBowl = ({ amounts, things, text }: Reading): boolean =>
  amounts.length === 1 &&
  amounts.every(({ dim, of }) => dim === "weight" && of?.base !== undefined) &&
  things.filter(({ dose, taste, base }) => !base && (dose ?? taste)).length === 1 &&
  / (?:for|in|into) (?:it|that|this)\b/.test(text);

/** True when the last calculator can make something of the sentence and no other has the better claim to it. */
function follows(
  tools: readonly Tool[],
  last: Tool,
  before: Inputs,
  reading: Reading,
  scores: Score[],
  memory: Memory,
  leaning: boolean,
): boolean {
  if (!["convert", "method"].includes(last.name) && asksScale.test(reading.mask)) return false;
  const own = scores.find((each) => each.tool === last)?.points ?? 0;
  const rival = scores[0] && scores[0].tool !== last ? scores[0].points : 0;
  if (last.name === "dose" && own <= -4) return false;
  // "for 400 g butter what whites and sugar", behind salt for the lot: parts of the mix, and nothing that goes into it
  if (last.name === "dose" && rival > 0 && asksParts.test(reading.mask)) return false;
  // "also 16 minutes for the ganache", behind a dose: a time weighs nothing
  if (sizing.has(last.name) && reading.amounts.length > 0 && reading.amounts.every(isTime)) return false;
  // "pink for half the batter": a color of another bowl than the flavor was for
  const color = reading.things.some((each) => each.color && !each.base);
  if (color && reading.things.some((each) => each.base === "batter") && before.base !== "batter")
    return false;
  // "and 3 colors": bowls, which split alone is about
  const bowls = reading.amounts.some((each) => each.of?.count === "bowls" && !each.fraction);
  if (bowls && isBare(reading) && ["scale", "shells", "fill", "buttercream", "ganache"].includes(last.name))
    return false;
  // "now 300 g ganache, rum for it", behind a split: another bowl, and what goes into that
  if (last.name === "split" && dosesOwnBowl(reading)) return false;
  // a question that another calculator claims puts nothing on the shelf
  if (last.name === "shelf" && rival >= stands && reading.mask.endsWith("?")) return false;
  // "i sifted 190 already": done, and no other number for what was worked out
  if (counting.has(last.name) && (tellsDone.test(reading.mask) || tellsMoney.test(reading.mask)))
    return false;
  const goingOn = pointsToGoOn(tools, last, reading.mask);
  const bare = isBare(reading);
  // "double the batch": of what was worked out
  if (sizing.has(last.name) && lotTimes.test(reading.text) && multiplied(reading, before)) return true;
  // "less 10 percent": of what was worked out, whatever that was
  const onlyTimes =
    reading.amounts.length === 1 &&
    reading.amounts[0]?.unit === "times" &&
    reading.amounts[0].dim === "number";
  if (bare && onlyTimes && /percent|%/.test(reading.amounts[0]?.text ?? "") && multiplied(reading, before))
    return true;
  if (!leaning && goingOn === 0 && !(rival < faint && own < faint && isShort(reading))) return false;
  // "and the flavor for 320 g?" in the middle of timers: the dose calculator's, whatever it leans on
  const asksDose =
    !["dose", "shelf", "note", "label"].includes(last.name) &&
    (scores.find((each) => each.tool.name === "dose")?.points ?? 0) >= faint &&
    reading.things.some((each) => each.dose);
  if (asksDose && own < 0) return false;
  // "cost of those": against the last one, and for another, if faintly
  if (own + goingOn < 0 && rival > 0 && !isBare(reading) && !isTimesOnly.test(reading.mask)) return false;
  const bonus = isTimesOnly.test(reading.mask)
    ? 9
    : bare && !asksDose
      ? leans.test(`${reading.mask} `) ||
        reading.amounts.length === 0 ||
        (last.name === "dose" && /^\S*<weight> (?:of )?(?:\S+ )*\S*<[^>]*base=\S+ \?$/.test(reading.mask))
        ? 5
        : 3
      : leaning && !asksDose
        ? 2
        : 0;
  if (own + bonus + goingOn <= rival - 1e-9 && rival >= stands) return false;
  if (!bare && own + bonus + goingOn < faint && rival >= faint) return false;
  return drafts(last, reading, memory).some((draft) => {
    const said = saidNow(last, draft, reading, before);
    return (
      Object.entries(said).some(([key, value]) => JSON.stringify(before[key]) !== JSON.stringify(value)) ||
      multiplied(reading, before) !== undefined
    );
  });
}

/** "one is gone", behind a timer: told of macarons, and no minutes. */
const tellsGone =
  /^(?:(?:and|so|ok|oh|no|now|ugh|but) )*(?:(?:another )?(?:one|\S*<number>)|another)(?: of (?:them|those|these))? (?:(?:is|are|was|were|has|have|got|just|already|been) )*(?:gone|eaten|broken|broke|cracked|lost|missing|stolen|dropped|smashed|ruined|fell)(?:<\S*>)?(?: (?:already|now|sadly|too|on the floor))*(?: [.!])*$/;

const asksParts =
  /(?:^| )(?:what|whats|how much|which) (?:(?:of|the|are|is|about) )*\S*<[^>]*ingredient=(?:whites|butter|granulated_sugar|sugar|cream)[^>]*> (?:and|or|,) (?:(?:the|what|how much) )*\S*<[^>]*ingredient=(?:whites|butter|granulated_sugar|sugar|cream)[^>]*>/;

const lotTimes =
  /^(?:(?:and|so|ok|now|or|what about|how about|actually|please|then) )*(?:double|triple|halve|half(?: of)?|twice|three times|treble) (?:the|this|that|my) (?:batch|bowl|lot|amount|mix)(?: (?:please|then|now))*[ ?.!]*$/;
const isTime = ({ dim }: { dim: string }) => dim === "time";
const counting = new Set(["shells", "fill", "scale", "buttercream", "day"]);
const tellsDone =
  /^(?:(?:and|so|ok|oh|just|already) )*(?:i|ive|i have|we|weve) (?:have |just |already )*(?:sifted|weighed|measured|melted|whisked|whipped|folded|ground|chopped|cracked|separated)(?:<\S+)? (?:out )?(?:about |only )?\S*<number>(?: (?:already|now|so far|out|of it|of them))*$/;

/** "costs me about 9 for everything": a sum, and no number of macarons. */
const tellsMoney =
  /(?:^| )(?:costs?|paid|pays?|spent|charge|sells?|sold|price) (?:\S+ ){0,3}\S*<(?:number|money)>/;

/** "add 20 g" of what nobody knows, behind a ganache or a buttercream: what goes into it, never the mix itself. */
const intoMix = ({ mask, unknown }: Reading, last: string | undefined): boolean =>
  ["ganache", "buttercream"].includes(last ?? "") &&
  /^(?:(?:and|with|plus|add|adding|put|also|then|now|ok|so|if|i) )*\S*<(?:weight|volume)> (?:of )?(?:[a-z]+ ){0,2}[a-z]+(?: \?)?$/.test(
    mask,
  ) &&
  unknown.some(
    (word) => mask.includes("> ") && new RegExp(`> (?:of )?(?:[a-z]+ )?${word}(?: |$)`).test(mask),
  );

/** "twice as much", "half as many please": of what the question before was about. */
const isTimesOnly =
  /^(?:(?:and|so|ok|now|or|what about|how about|actually) )*\S*<(?:factor|number,fraction)> (?:as (?:much|many|big|large)|(?:the |that )?(?:number|amount|quantity|lot|order))(?: (?:please|pls|then))?(?: \?)?$/;

const isShort = (reading: Reading) =>
  reading.mask.split(" ").length <= 14 &&
  reading.unknown.length === 0 &&
  reading.amounts.length + reading.things.length > 0;
