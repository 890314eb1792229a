/**
 * "one gets caramel flavor", "another one coconut, 4 percent", "the last freeze dried mango powder", behind a bowl that was
 * split: a dose into what that part weighs, put as it is asked for a bowl of so many grams. Read word by word: what is no
 * part, no flavor, no amount and no word of asking leaves the sentence to others.
 */
import { leadingWords, takingBackPhrases } from "../../../data/words/openers.ts";
import { vessel } from "../../../data/words/vessels.ts";
import type { Amount, Reading, Thing } from "../../tools/contract/index.ts";
import { areEqual, type PartOnTable } from "../../tools/lib/parts.ts";
import { isFlavor } from "./into-part.ts";
import { numberSaid } from "./number-said.ts";
import type { State } from "./state.ts";

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Words beside the part and its flavor that say nothing of their own. */
export const talkBeside: ReadonlySet<string> = new Set([
  ...leadingWords,
  ...takingBackPhrases.flatMap((said) => said.split(" ")),
  ...(
    "gets get getting got becomes become turns turn will would should could can to be being is are was going go goes gonna " +
    "has have having had takes take wants want needs need i id ill we well lets let make making made do doing put putting " +
    "with in into for of on at as a an the my that this these those them it its it's thats only just about say please pls " +
    "now then so and also but how much many grams g gram what what's whats dose amount right ok okay fine alright enough " +
    "too strong weak add adding added flavor flavored flavoured color colored coloured does " +
    "using use used stir stirred mixed mix work up im id like instead though i'll i'm which"
  ).split(" "),
]);

const ordinals = "first second third fourth fifth sixth".split(" ");
const shorts = "1st 2nd 3rd 4th 5th 6th".split(" ");
/** What a part is called behind the word that says which. */
const nouns = new RegExp(`^(?:${vessel}|one|half|third|quarter|bit|lot|share|batch)$`);
/** Any of those that weigh the same. */
const anyOf = set("one another next remaining");
const larger = set("bigger larger biggest largest big large");
const smaller = set("smaller smallest small little");
const counted = set("bowl part tub pot jar number no half portion");

/** Calculators behind whose answers the parts still stand there. */
const between: ReadonlySet<string> = new Set(
  "split dose timer convert note recall method keep trouble shelf".split(" "),
);

interface Parts {
  thing: string;
  parts: readonly PartOnTable[];
  /** What each weighs, where they are equal. */
  each?: number;
  /** What the last of them that was flavored weighs. */
  flavored?: number;
}

const stays = set("stays stay staying remains remain kept left leave leaving keep keeping is are will be");
const which = set("one another next remaining last final other first second third fourth fifth sixth");

/** "one stays plain", "leave the last plain": nothing is asked of that part, and the words for it are gone. */
function withoutPlain(words: readonly string[]): string[] {
  const at = words.indexOf("plain");
  if (at < 0) return [...words];
  let from = at;
  const before = () => words[from - 1] ?? "";
  while (stays.has(before())) from -= 1;
  const isTold = from < at;
  while (nouns.test(before()) && which.has(words[from - 2] ?? "")) from -= 1;
  if (which.has(before())) from -= 1;
  while (before() === "the" || stays.has(before())) from -= 1;
  return isTold || stays.has(words[from] ?? "")
    ? [...words.slice(0, from), ...words.slice(at + 1)]
    : [...words];
}

/** The parts that lie there, where nothing else was weighed out since. */
function partsLying({ last, past = [], table }: State): Parts | undefined {
  const at = past.findLastIndex(({ tool }) => tool === "split");
  const since = past.slice(at);
  if (at < 0 || !last || !between.has(last.tool) || since.some(({ tool }) => !between.has(tool)))
    return undefined;
  const parts = table.parts ?? [];
  const total = parts.reduce((sum, { grams }) => sum + grams, 0);
  const thing = table.part?.thing ?? past[at]?.inputs.thing;
  const isPart = (grams: unknown) =>
    typeof grams !== "number" ||
    [total, ...parts.map((each) => each.grams)].some((each) => Math.abs(each - grams) < 1e-6);
  const doses = since.filter(({ tool }) => tool === "dose");
  // another bowl was spoken of since: "the other one" may be that
  if (parts.length < 2 || typeof thing !== "string" || !doses.every(({ inputs }) => isPart(inputs.base_g)))
    return undefined;
  const flavored = doses.at(-1)?.inputs.base_g;
  return {
    thing,
    parts,
    ...(areEqual(parts) && parts[0] ? { each: parts[0].grams } : {}),
    ...(typeof flavored === "number" ? { flavored } : {}),
  };
}

/** What a word says of which part it is, g; "unknown" where it names one that isn't clear. */
function partCalled(word: string, { parts, each, flavored }: Parts): number | "unknown" | undefined {
  const sizes = parts.map(({ grams }) => grams);
  const at = Math.max(ordinals.indexOf(word), shorts.indexOf(word));
  if (at >= 0) return sizes[at] ?? "unknown";
  if (word === "last" || word === "final") return sizes.at(-1);
  const named = parts.find(({ name }) => name === word);
  if (named) return named.grams;
  if (larger.has(word)) return each ?? Math.max(...sizes);
  if (smaller.has(word)) return each ?? Math.min(...sizes);
  if (word === "other") {
    const other = sizes.length === 2 ? sizes.find((grams) => grams !== flavored) : undefined;
    return each ?? (flavored === undefined ? "unknown" : (other ?? "unknown"));
  }
  return anyOf.has(word) ? (each ?? "unknown") : undefined;
}

/**
 * The parts that the words name, g each, in their order; undefined where a word stands there that is nothing of that.
 * @param words what is left without flavors and amounts
 */
function partsNamed(words: readonly string[], lying: Parts): number[] | undefined {
  const found: number[] = [];
  let i = 0;
  const next = () => words[i + 1] ?? "";
  while (i < words.length) {
    const word = words[i] ?? "";
    // "bowl 2", "number two"
    const numbered = counted.has(word) ? numberSaid(next()) : Number.NaN;
    const grams =
      numbered > 0 && !ordinals.includes(next())
        ? (lying.parts[numbered - 1]?.grams ?? "unknown")
        : partCalled(word, lying);
    if (grams === "unknown") return undefined;
    if (grams !== undefined) {
      i += numbered > 0 ? 2 : 1;
      // "the other two": both of them together
      const many = numbered > 0 ? Number.NaN : numberSaid(words[i] ?? "");
      const several = many > 1 && many < lying.parts.length;
      if (several && lying.each === undefined) return undefined;
      found.push(several ? many * grams : grams);
      if (several) i += 1;
      if (nouns.test(words[i] ?? "")) i += 1;
      // "one of the three"
      if (words[i] === "of") i += afterOf(words.slice(i));
      continue;
    }
    if (!talkBeside.has(word)) return undefined;
    i += 1;
  }
  return found;
}

const those = set("them those these the my");
/** How many words "of them", "of the three bowls" are. */
function afterOf(words: readonly string[]): number {
  if (!those.has(words[1] ?? "")) return 0;
  const many = numberSaid(words[2] ?? "") > 0 ? 3 : 2;
  return many + (/^(?:bowls|parts|halves|thirds|quarters|tubs|pots|ones)$/.test(words[many] ?? "") ? 1 : 0);
}

/** The text without what stands at some places, as words. */
export function wordsWithout(text: string, gone: readonly { at: readonly [number, number] }[]): string[] {
  const kept = gone.reduce(
    (left, { at: [from, to] }) => `${left.slice(0, from)}${" ".repeat(to - from)}${left.slice(to)}`,
    text,
  );
  return kept.toLowerCase().match(/[a-z0-9']+/g) ?? [];
}

/** A dose as it is asked for a bowl that was weighed. */
export function plainDose(
  flavors: readonly Thing[],
  amount: Amount | undefined,
  grams: number,
  thing: string,
): string {
  const named = flavors.map(({ text }) => text);
  const last = named.pop() ?? "";
  const flavor = named.length > 0 ? `${named.join(", ")} and ${last}` : last;
  const bowl = `${grams} g${thing ? ` ${thing}` : ""}`;
  if (!amount) return `how much ${flavor} for ${bowl}`;
  return amount.dim === "percent"
    ? `${amount.text} ${flavor} in ${bowl}`
    : `is ${amount.text} ${flavor} in ${bowl} ok`;
}

/** The flavors of a sentence and the one amount of them; undefined where something else is weighed or named. */
export function flavorsSaid({ things, amounts }: Reading): { flavors: Thing[]; amount?: Amount } | undefined {
  const dosed = things.filter((each) => isFlavor(each) && !each.color);
  const colors = things.filter((each) => each.dose && each.color);
  const flavors = dosed.length > 0 ? dosed : colors;
  const measured = amounts.filter(({ dim }) => dim !== "number");
  const [amount, ...others] = measured;
  const isOfIt = !amount || amount.dim === "percent" || amount.dim === "weight";
  if (flavors.length === 0 || others.length > 0 || !isOfIt || (amount && flavors.length > 1))
    return undefined;
  return { flavors, ...(amount ? { amount } : {}) };
}

/** More than this of a part is no dose any more, but what the part is to weigh. */
const mostDosed = 0.25;

const mixes = set("buttercream ganache");

/** "flavor for the ganache", of a filling that is part ganache, part caramel: what that part is. */
function mixOfPart({ things }: Reading, grams: number, { parts, thing }: Parts): string {
  const said = things.find(({ base }) => base !== undefined && mixes.has(base))?.base;
  const [own, ...others] = parts.filter((each) => Math.abs(each.grams - grams) < 1e-6);
  if (said !== undefined) return said;
  return own && others.length === 0 && mixes.has(own.name) ? own.name : thing;
}

/** The dose asked plainly; undefined where no part of a split is given a flavor. */
export function partGets(reading: Reading, state: State): string | undefined {
  const said = flavorsSaid(reading);
  const lying = said && partsLying(state);
  if (!said || !lying || reading.whens.length > 0) return undefined;
  const { flavors, amount } = said;
  // a mix of its own, another number of bowls: no part of this one
  const isForeign = ({ base }: Thing) =>
    base !== undefined && base !== lying.thing && !lying.parts.some(({ name }) => name === base);
  if (reading.things.some((each) => isForeign(each) && !flavors.includes(each))) return undefined;
  const words = wordsWithout(reading.text, [...flavors, ...(amount ? [amount] : [])]);
  const parts = partsNamed(withoutPlain(words), lying);
  const [grams, ...others] = parts ?? [];
  if (grams === undefined || others.some((each) => Math.abs(each - grams) > 1e-6)) return undefined;
  if (amount?.dim === "weight" && amount.value > grams * mostDosed) return undefined;
  return plainDose(flavors, amount, grams, mixOfPart(reading, grams, lying));
}
