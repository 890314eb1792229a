/** Which symptoms a sentence names, once each, those of a mix only where nothing else fits. */
import { otherDishes } from "../../../data/words/other-dishes.ts";
import { praise, symptoms } from "../../../data/words/symptoms.ts";
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { pointsBack } from "../lib/find.ts";
import { wordsOf } from "../lib/pieces.ts";
import { ovenSaid } from "./heat.ts";
import type { TroubleInputs } from "./trouble.ts";

const faultOf = new Map<string, string | undefined>(symptoms.map((row) => [row.id, row.of]));
const kinds = ["buttercream", "ganache", "batter", "meringue"] as const;

/** One draft a symptom; none named and nothing to go on gives an empty one, which asks. */
export function readTrouble(reading: Reading, memory: Memory): Partial<TroubleInputs>[] {
  // "it split", behind the flavor for a bowl of it
  const ofBowl = memory.last?.tool === "dose" ? String(memory.last.inputs.base ?? "") : "";
  const broke =
    /^(?:(?:oh|no|ugh|now|and|but|help) )*(?:it|its|it has|its just|it just) (?:all )?(?:split|curdled|broke|broken|separated|gone grainy)\b/.test(
      wordsOf(reading),
    );
  if (broke && (ofBowl === "buttercream" || ofBowl === "ganache"))
    return [{ symptom: ofBowl === "ganache" ? "split ganache" : "curdled buttercream" }];
  // "still split", of no bowl that was named
  if (stillSplit.test(wordsOf(reading)) && reading.things.every((each) => each.id === "split ganache"))
    if (memory.last?.tool !== "trouble") return [{ symptom: "split ganache" }];
  const other = ofOther(reading) ?? ofOtherDish(reading);
  if (other) return [{ other }];
  const next = nextCause(reading, memory);
  if (next) return [next];
  const found = reading.things.flatMap((each) =>
    each.symptom && !praise.includes(each.symptom) ? [settle(each.symptom, reading, memory)] : [],
  );
  if (found.length === 0) found.push(...ofMixBefore(reading, memory));
  // "now its grainy", behind a ganache: no shell's tops
  const before = memory.last?.tool;
  if (
    (before === "ganache" || before === "buttercream") &&
    found.length === 1 &&
    found[0] === "lumpy tops" &&
    /^(?:(?:now|and|but|oh|ok) )*(?:its|it is|it|still) /.test(wordsOf(reading))
  )
    return [{ symptom: `grainy ${before}` }];
  // "it looks greasy now": that ganache's oil
  if (
    before === "ganache" &&
    found.length === 1 &&
    found[0] === "wrinkled tops" &&
    oilyNow.test(wordsOf(reading))
  )
    return [{ symptom: "split ganache" }];
  const [mix, ...mixesMore] = [...new Set(mixes(reading))];
  const fitting = found.map((id) => (mix && mixesMore.length === 0 ? ofMix(id, mix) : id));
  const all = [...new Set(fitting)];
  // a meringue without peaks isn't a shell with them
  const named = all.includes("meringue that will not peak")
    ? all.filter((id) => id !== "peaks that stay")
    : all;
  const heat = ovenSaid(reading);
  if (named.length === 0) return [{ ...spelt(reading), ...heat }];
  // a grainy meringue, a yellow buttercream: shells have such faults, those mixes have no row of it
  const kind = mix && mixesMore.length === 0 && mix !== "batter" && mix !== "filling" ? mix : undefined;
  const ofShell = /\b(?:shell|shells|macaron|macarons|macs|tops?|bottoms?|feet)\b/.test(wordsOf(reading));
  const at = reading.things.find((each) => each.base === mix)?.at[0] ?? 0;
  const isSubject = reading.things.some((each) => each.symptom && each.at[0] > at);
  if (kind && isSubject && !ofShell && named.every((id) => faultOf.get(id) !== kind))
    return [{ other: `${kind === "meringue" ? "a meringue" : kind} like that` }];
  const ofShells = named.filter((id) => !faultOf.get(id));
  const ofMixes = named.filter((id) => faultOf.get(id) && mixes(reading).includes(faultOf.get(id)));
  // "wrinkly, oily tops": oil on a shell is no split ganache where no ganache is named
  const fits = [...ofShells, ...ofMixes];
  // in the order in which she tells them
  const kept = fits.length > 0 ? named.filter((id) => fits.includes(id)) : named;
  // "browned on one side only": the side of the oven, and no feet that lean
  const isLean = /\b(?:feet|foot|lean\w*|lopsided|skirts?|frills?|tilt\w*)\b/.test(reading.text);
  const leaning = kept.length > 1 && !isLean ? kept.filter((id) => id !== "lopsided feet") : kept;
  const side = onOneSide.test(reading.text) ? { one_side: true } : {};
  return leaning.map((symptom) => ({ symptom, ...heat, ...side }));
}

const oilyNow =
  /^(?:(?:now|and|but|oh|ok|ugh|hm|so) )*(?:its|it is|it|it has|still|looks|gone|all) (?:(?:all|so|looks?|looking|gone|went|going|turned|is|a bit|quite|really|very|now) )*(?:oily|greasy)\b(?! (?:tops?|shells?|spots?|patches))/;

/** "the left ones", "at the back", "one side of the tray", and no "that's not right". */
const onOneSide =
  /\b(?:on|at|near|along|toward|towards|to|in) (?:the|its|my) (?:left|right|back|front|edges?|sides?|corners?|outside)\b|\b(?:left|right|back|front)(?: hand)? (?:side|ones?|half|row|shells|macs|macarons|corner|tops)\b|\bthe (?:left|right|back|front) (?:are|is|were|cracked|browned)\b|\b(?:one|other|only one|the far|the same) (?:side|half|end|corner|edge) (?:of|only|cracked|browned)\b/;

const stillSplit =
  /^(?:(?:and|but|oh|no|ugh|argh|now|ok|well|help|hm|its|it|is|the|my|this|all) )*still (?:all |a bit |so |quite )*split(?: (?:now|though|help))*$/;

/** "caramel too hard", "my jam is runny": cooked fillings and sauces that no row is of. */
function ofOther(reading: Reading): string | undefined {
  const said =
    /(?:^| )(caramel|salted_caramel|jam|curd|lemon_curd|jelly|praline|marshmallow|fudge|custard|pastry_cream|pur[eé]e|icing|glaze)\S* (?:(?:is|was|went|has|gone|goes|came|out|turned|looks?|a|bit|way|so|very|still|all|just|now) )*\S*<(?:symptom=|(?:loose|stiff|grainy|split|curdled|soupy)_)/.exec(
      reading.mask,
    )?.[1];
  return said && mixes(reading).length === 0 ? said.replaceAll("_", " ") : undefined;
}

const dish = new RegExp(
  `(?<!\\b(?:like|as|than) (?:a |an |the |some |wet |sticky |cold )*)\\b(?:${otherDishes})\\b`,
);
const isCooked = /\b(?:cook|boil|fry|roast|steam|bak|mak)\w* (?:my |the |some |a |an |good |nice )*$/;

/** "how do i cook rice so its not sticky", "my bread came out hollow": no fault of anything that is made here. */
function ofOtherDish({ text, things, mask }: Reading): string | undefined {
  const isOurs = things.some((each) => each.base || each.count || each.step || each.formula);
  if (isOurs || /\b(?:ones?|feet|foot|macaronage|meringues?|piped?|piping)\b/.test(text)) return undefined;
  const said = dish.exec(text);
  if (!said) return undefined;
  const faults = things.filter((each) => each.symptom && !each.text.includes(said[0]));
  const isSubject = faults.some((each) => each.at[0] > said.index) || / (?:\S*cracks?|sank|sink)/.test(mask);
  return isSubject || isCooked.test(text.slice(0, said.index)) ? said[0] : undefined;
}

/** "i rested 30 min", "tried that", "what else": the cause that was named isn't it. */
function nextCause(reading: Reading, { follows, last }: Memory): Partial<TroubleInputs> | undefined {
  const before = follows && last?.tool === "trouble" ? (last.inputs as Partial<TroubleInputs>) : undefined;
  if (!before?.symptom || reading.things.some((each) => each.symptom)) return undefined;
  const words = wordsOf(reading);
  if (/\b(?:humid|damp|raining|rainy|wet)\b/.test(words)) return { symptom: before.symptom, damp: true };
  // "still split": what was tried hasn't mended it
  const id = before.symptom;
  if (
    /^(?:\S+ ){0,4}still /.test(words) &&
    reading.things.every((each) => each.id === id) &&
    reading.things.length > 0
  )
    return { symptom: id, ruled_out: (before.ruled_out ?? 0) + 1 };
  const isRuled =
    /\b(?:did (?:that|it|so|rest)|do that|rested|let them rest|dried|tried|whipped|sifted|checked|not that|isnt (?:it|that)|not it|else)\b|^(?:but |well |and )*(?:i|we) \S*rest/.test(
      words,
    );
  return isRuled ? { symptom: before.symptom, ruled_out: (before.ruled_out ?? 0) + 1 } : undefined;
}

/** Symptoms told in a sentence instead of a word: "why don't my macarons have feet", "what makes shells crack". */
function spelt(reading: Reading): Partial<TroubleInputs> {
  const words = wordsOf(reading);
  if (
    /\b(?:no|dont|didnt|wont|without|havent|never|not|none|zero|doesnt)\b.*\b(?:feets?|foot|frills?)\b/.test(
      words,
    )
  )
    return { symptom: "no feet" };
  if (/\b(?:fold|folded|folding|macaronage|batter)\b.*\b(?:runny|thin|liquid|loose)\b/.test(words))
    return { symptom: "runny batter" };
  if (/\b(?:crack|cracks|cracked|cracking|burst)\b/.test(words)) return { symptom: "cracked tops" };
  return {};
}

/** The same fault in another mix: a batter that "won't hold" is runny, no ganache that hasn't set. */
const alike: readonly Readonly<Record<string, string>>[] = [
  {
    ganache: "loose ganache",
    buttercream: "soupy buttercream",
    batter: "runny batter",
    meringue: "meringue that will not peak",
  },
  { ganache: "stiff ganache", batter: "stiff batter" },
  { ganache: "grainy ganache", buttercream: "grainy buttercream" },
  { ganache: "split ganache", buttercream: "curdled buttercream" },
];

const ofMix = (id: string, mix: string): string => {
  if (faultOf.get(id) === undefined || faultOf.get(id) === mix) return id;
  return alike.find((row) => Object.values(row).includes(id))?.[mix] ?? id;
};

/** "now its gone soupy instead", behind a curdled buttercream: a word for what is wrong with that. */
function ofMixBefore(reading: Reading, memory: Memory): string[] {
  const before = memory.last?.tool === "trouble" ? memory.last.inputs.symptom : undefined;
  const kind = faultOf.get(String(before)) ?? memory.table.filling;
  if (kind === undefined || mixes(reading).length > 0) return [];
  // "its gone all soupy", behind the flavor for it
  if (!memory.follows && !pointsBack(reading)) return [];
  return reading.things.flatMap(({ id }) =>
    faultOf.has(id) && !praise.includes(id) ? [ofMix(id, kind)] : [],
  );
}

const mixes = (reading: Reading): (string | undefined)[] =>
  reading.things.flatMap((each: Thing) => (each.base ? [each.base] : []));

/** "it's gone grainy" right after a ganache was spoken of is the ganache's grain. */
function settle(id: string, reading: Reading, memory: Memory): string {
  if (mixes(reading).length > 0 || !memory.follows || !memory.table.filling) return id;
  const word = reading.things.find((each) => each.symptom === id)?.text;
  const kind = kinds.find((each) => each === memory.table.filling);
  const other = symptoms.find((row) => row.of === kind && word !== undefined && row.words.includes(word));
  return kind && other ? other.id : id;
}
