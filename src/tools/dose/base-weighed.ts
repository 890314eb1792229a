/** The bowl that the sentence weighs itself: whole, by its parts, in cups or as "200 g of that". */
import type { Amount } from "../contract/index.ts";
import { says, type Weighed } from "../lib/find.ts";
import { asksPart } from "./base-part.ts";
import { type BaseTurn, type BaseWay, mixOf, named, partOf, summed } from "./base-turn.ts";
import { inTurn } from "./of-turn.ts";
import { partAnew } from "./part-anew.ts";

/** "only got 90 g cream": one part of a mix is no bowl of it. */
const onePartOnly: BaseWay = ({ mix, parts, memory }) => {
  const [lone, ...others] = parts;
  const hadParts = memory.last?.tool === "dose" && memory.last.inputs.parts !== undefined;
  const isOnlyPart =
    /(?:^| )(?:cream|milk|whites|eggs?|yolks?|sugar|almond flour|water)$/.test(
      lone?.thing?.ingredient ?? "",
    ) && !lone?.thing?.base;
  return !mix && !hadParts && others.length === 0 && isOnlyPart ? {} : undefined;
};

/** "vanilla in the shells": in what they are piped from. */
const inShells: BaseWay = ({ reading, mix, parts }) =>
  !mix && parts.length === 0 && says(reading, /(?:in|into) (?:the |my )?\S*<count=shells>(?: \?)?$/)
    ? { base: "batter" }
    : undefined;

/** "2 cups of buttercream": no table weighs it. */
const inCups: BaseWay = ({ reading, base }) => {
  const cups = reading.amounts.find((each) => each.dim === "volume" && each.of?.base);
  return cups && { base, unweighable: `${cups.text} of ${cups.of?.base}` };
};

/** Two mixes weighed in one sentence: which of them is meant isn't said. */
const twoMixes: BaseWay = ({ parts }) =>
  new Set(parts.flatMap((each) => (each.thing?.base ? [each.thing.base] : []))).size > 1 ? {} : undefined;

/** "thats my ganache, both together", of two weights that were turned into grams. */
const bothTogether: BaseWay = ({ reading, memory, base, parts }) => {
  const [older, newer] = memory.last?.tool === "convert" ? (memory.table.recent ?? []) : [];
  const said = says(reading, /(?:both|the two|those two)(?: of them)? (?:together|in one)|together/);
  return base && older && newer && parts.length === 0 && said
    ? { base_g: older.grams + newer.grams, base }
    : undefined;
};

/** "add 20 g butter", to a bowl that was weighed whole. */
const addedToBowl: BaseWay = ({ reading, mix, parts, earlier }) => {
  const [lone, ...others] = parts;
  if (!lone?.thing?.ingredient || others.length > 0 || mix) return undefined;
  if (earlier?.base_g === undefined || earlier.parts) return undefined;
  const adds =
    /^(?:(?:and|ok|so|now|then|if i) )*(?:add|adding|added|plus|with|put(?: in)?|stir in) \S*<weight>/;
  return says(reading, adds) ? named({ base_g: earlier.base_g + lone.grams }, earlier.base) : undefined;
};

/** "the butter was 45, not 30": one part of a sum said before takes its new weight. */
const partCorrected: BaseWay = ({ parts, earlier }) => {
  const before = earlier?.parts;
  const now = parts.map(partOf);
  const known = before?.some((each) => each.name === now[0]?.name);
  return before && known && parts.length < before.length
    ? summed(before.map((each) => now.find((other) => other.name === each.name) ?? each))
    : undefined;
};

/** "150 dark choc and 75 cream, how much rum": the bowl, or what its parts weigh together. */
const weighedHere: BaseWay = ({ reading, base, parts }) => {
  if (parts.length === 0) return undefined;
  const whole_g = parts.reduce((sum, each) => sum + each.grams, 0);
  const draft = named(
    { base_g: whole_g * (halfOfIt(reading) ?? oneBowl(reading) ?? 1) },
    // "my filling is 180 g white chocolate and 72 g cream": a ganache, whatever it is for
    base === "filling" ? (baseOf(parts) ?? base) : (base ?? baseOf(parts)),
  );
  return parts.length > 1 ? { ...draft, parts: parts.map(partOf) } : draft;
};

/** "half of it", "half of my 400 g buttercream": of a weight said in the same breath. */
const halfOfIt = (reading: BaseTurn["reading"]): number | undefined =>
  says(
    reading,
    /<number,fraction> of (?:(?:it|that|this)(?: |$)|(?:my|the|our|those|these|that|this) \S*<weight>)/,
  )
    ? reading.amounts.find((each) => each.fraction && each.dim === "number" && !each.of)?.value
    : undefined;

const isParted = new Set(["bowls", "boxes"]);

/** "840 g batter in 3 bowls, how much gel color for one". */
function oneBowl(reading: BaseTurn["reading"]): number | undefined {
  const inBowls = says(
    reading,
    /(?:in|into|between|over) \S*<number> (?:equal )?\S*<[^>]*count=(?:bowls|boxes)/,
  );
  const bowls = inBowls && reading.amounts.find((each) => isParted.has(each.of?.count ?? ""))?.value;
  return bowls && bowls > 1 && asksPart.test(reading.text) ? 1 / bowls : undefined;
}

/** Chocolate with anything is a ganache; mascarpone, cream cheese or butter without it a butter filling. */
function baseOf(parts: readonly Weighed[]): string | undefined {
  const names = parts.map((each) => each.thing?.ingredient ?? "");
  if (parts.some((each) => each.thing?.chocolate) || names.some((name) => /chocolate/.test(name)))
    return "ganache";
  if (names.includes("cream cheese")) return "cream cheese filling";
  if (names.includes("mascarpone")) return "mascarpone filling";
  return names.includes("butter") ? "buttercream" : undefined;
}

/** "in the ganache too, i have 200 g of that". */
const ofThat: BaseWay = ({ reading, base, mix, weights }) => {
  const said = weights.find(
    (each) => !each.thing && /^ of (?:that|it|this|them)\b/.test(reading.text.slice(each.amount.at[1])),
  );
  if (!base || !mix || !said) return undefined;
  const isOfMix = mix.at[1] <= said.amount.at[0] || /\b(?:have|ive|got|theres|there is)\b/.test(reading.text);
  return isOfMix ? { base_g: said.grams, base } : undefined;
};

const neverWeighed = inTurn(/\b(?:forgot|didnt|havent|did not|have not|never) (?:to )?weigh/);

/** "i forgot to weigh it": none of the weights before is meant. */
const unweighed: BaseWay = ({ reading, base }) =>
  neverWeighed(reading.text) ? (base ? { base } : {}) : undefined;

/** "how much lemon flavor in the 250", of what was said before. */
const pointedAt: BaseWay = ({ reading, memory, base, weights }) => {
  if (weights.length > 0) return undefined;
  const before_g = Object.entries(memory.last?.inputs ?? {}).flatMap(([key, value]) =>
    key.endsWith("_g") && typeof value === "number" ? [value] : [],
  );
  const isIt = ({ dim, value, at }: Amount) =>
    dim === "number" &&
    value >= 20 &&
    before_g.includes(value) &&
    /\b(?:in|for|into) (?:the|that|those|all) $/.test(reading.text.slice(0, at[0]));
  const pointed = reading.amounts.find(isIt);
  const lay_as = memory.table.mass?.thing || String(memory.last?.inputs.filling ?? "");
  return pointed && named({ base_g: pointed.value }, base ?? mixOf(lay_as));
};

export const weighedWays: readonly BaseWay[] = [
  partAnew,
  onePartOnly,
  inShells,
  inCups,
  twoMixes,
  bothTogether,
  addedToBowl,
  partCorrected,
  weighedHere,
  ofThat,
  unweighed,
  pointedAt,
];
