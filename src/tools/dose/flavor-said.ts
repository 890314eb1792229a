/** Which flavors a dose question asks for, and the row of the dose table that each is. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { pointsBack, says } from "../lib/find.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { ofTurn } from "./of-turn.ts";

export const isFlavor = (thing: Thing | undefined): thing is Thing =>
  Boolean(thing && (thing.dose || thing.taste) && !thing.base);

/** "caramel buttercream": a taste right before a mix says what that is. */
export const describesMix = (each: Thing, { things }: Reading): boolean =>
  things.some((other) => other.base && other.at[0] > each.at[1] && other.at[0] - each.at[1] <= 1);

/** Where the turn comes to what is replaced: "kirsch instead of the rum". */
const replacedFrom = ofTurn(
  (text) => /(?:instead of|rather than) /.exec(text)?.index ?? Number.POSITIVE_INFINITY,
);

const swaps =
  /\b(?:swap|swop|swapping|replace|replacing|switch|switching|change|changing|trade|trading|exchange|exchanging|substitute|sub)(?: (?:out|over))? (?:the |that |my |this )?$/;

/** "swap the gel for powder color", "substitute kirsch for the rum": the one of the two that is given up. */
function givenUp({ text, things }: Reading): Thing | undefined {
  const flavors = things.filter(isFlavor);
  const before = (each: Thing) => text.slice(Math.max(0, each.at[0] - 40), each.at[0]);
  const at = flavors.findIndex((each) => swaps.test(before(each)));
  const [first, second] = [flavors[at], flavors[at + 1]];
  if (!first || !second) return undefined;
  const between = text.slice(first.at[1], second.at[0]);
  if (
    !/^(?: out| over)? (?:for|with|by|to|into|against|and use|and put in) (?:the |some |a bit of |a little )?$/.test(
      between,
    )
  )
    return undefined;
  const lead = swaps.exec(before(first))?.[0] ?? "";
  return /^sub/.test(lead) && / for /.test(between) ? second : first;
}

/** "im gonna flavor 180 of it", "to flavor 180 of that": what is done, and no taste. */
function isVerb({ taste, dose, text, at }: Thing, reading: Reading): boolean {
  if (dose !== "flavor" || taste) return false;
  const leads =
    /\b(?:to|i|we|ill|id|lets|lemme|gonna|wanna|gotta|dont|will|would|could|should|can|might)(?: just| only| actually| rather)* $/.test(
      reading.text.slice(0, at[0]),
    );
  return leads && text.split(" ").length === 1 && reading.amounts.some((each) => each.at[0] > at[1]);
}

/** The flavors asked for: not the taste that only describes a mix ("300 g caramel buttercream, how much salt"). */
export function flavorsAsked(reading: Reading): Thing[] {
  const replaced = replacedFrom(reading.text);
  // "whites that are left from the curd", "the center is raspberry jam, how much lemon flavor for the ring"
  const isAside = (each: Thing) =>
    / not (?:the |an? )?$/.test(` ${reading.text.slice(0, each.at[0])}`) ||
    // "i am nearly out of butterscotch flavoring": some of it is left
    /(?:left (?:over )?from|(?<!\b(?:nearly|almost|practically|virtually|basically|running|run(?:ning)? almost|getting|about|soon) )\bout of|(?:center|centre|middle|ring) (?:is|will be|has)) (?:the |a |my |making )*$/.test(
      reading.text.slice(0, each.at[0]),
    );
  // "the gel's dried up, how much if i use powder color"
  const isGone = (each: Thing) =>
    /^(?:'?s)? ?(?:has |have |is |are |all )*(?:dried (?:up|out)|run out|ran out|all gone|is gone|has gone|finished|empty|used up)\b/.test(
      reading.text.slice(each.at[1]),
    );
  const given = givenUp(reading);
  const all = reading.things.filter(
    (each) => each !== given && isFlavor(each) && !isAside(each) && !isVerb(each, reading),
  );
  const named = all.some((each) => !isGone(each)) ? all.filter((each) => !isGone(each)) : all;
  const before = named.filter((each) => each.at[0] < replaced);
  // "and instead of the paste the pistachio aroma?": what comes last takes the place
  const flavors = before.length > 0 ? before : named.slice(-1);
  const loosePowder = flavors.find((each) => each.dose === "powder");
  // "ground to powder, how much powder goes in": the same twice
  const others = flavors.filter((each) => each.dose !== "powder" || each.taste !== undefined);
  // "a colour in powder"
  const dye = loosePowder && others.find((each) => each.dose === "color");
  if (dye) return [{ ...dye, id: "powder color", dose: "powder color" }];
  if (loosePowder && others.length > 0) return [powdered(others.at(-1) as Thing)];
  // "18 are filled with vanilla, whats the raspberry dose"
  const dosed = flavors.filter((each) => /^ dose\b/.test(reading.text.slice(each.at[1])));
  if (dosed.length > 0) return dedupe(dosed);
  const formed = flavors.filter((each) => each.dose && !describesMix(each, reading));
  const free = flavors.filter((each) => !each.dose && each.taste && !describesMix(each, reading));
  if (formed.length === 0) return dedupe(free.length > 0 ? free : flavors.slice(-1));
  // "zest, citric acid and salt for 170 g": a bare form that no other of the list has is one of them
  const isOwnForm = (each: Thing) =>
    !["flavor", "color"].includes(each.dose ?? "") &&
    formed.some((other) => isJoint(reading, each, other) || isJoint(reading, other, each)) &&
    formed.every((other) => other === each || other.dose !== each.dose);
  const particular = formed.filter(
    (each) => each.taste || each.ingredient || !generic.has(each.dose ?? "") || isOwnForm(each),
  );
  // "want it peach, how much flavor": one flavor said twice
  if (particular.length === 0 && free.length > 0) return free.map((each) => inForm(each, formed[0]?.dose));
  // "how much vanilla, how much salt": asked for as plainly as what has a form
  const asked = free.filter((each) =>
    /how (?:much|many)(?: of)?(?: the| my)? $/.test(reading.text.slice(0, each.at[0])),
  );
  // "coffee and salt for 200 g", "lemon flavor, rum": listed beside what has a form
  const isListed = (each: Thing) =>
    particular.some((other) => isJoint(reading, each, other) || isJoint(reading, other, each));
  const listed = free.filter(
    (each) => !asked.includes(each) && isListed(each) && !partIs.test(reading.text.slice(0, each.at[0])),
  );
  const both = [...asked, ...listed, ...particular].sort((a, b) => a.at[0] - b.at[0]);
  // "flavor and salt for 275 g": two of them
  const plain = formed.find(
    (each) =>
      each.dose === "flavor" &&
      !particular.includes(each) &&
      particular.some(
        (other) =>
          /^,? (?:and|&|plus) (?:the )?$/.test(reading.text.slice(each.at[1], other.at[0])) ||
          /^,? (?:and|&|plus) (?:the )?$/.test(reading.text.slice(other.at[1], each.at[0])),
      ),
  );
  if (plain && particular.length === 1) return dedupe([plain, ...particular]);
  return dedupe(particular.length > 0 ? both.filter((each) => !repeats(each, both)) : formed);
}

/** "half of it is going to be coffee, espresso powder for that half": what the half is, and no flavor of a list. */
const partIs =
  /\b(?:half|part|third|quarter|rest)(?: of (?:it|that|this|the \w+))? (?:is|will be|becomes)(?: going)?(?: to be)? $/;

/** Nothing but "and" or a comma between the two. */
const isJoint = ({ text }: Reading, first: Thing, second: Thing): boolean =>
  /^(?:,? (?:and|&|plus)|,) (?:the |some |a bit of |a little )?$/.test(text.slice(first.at[1], second.at[0]));

/** Rows that a bare word names; beside a more particular word they say nothing new. */
const generic = new Set(["flavor", "extract", "oil", "color", "nut paste", "purée", "zest", "fruit powder"]);

/** "vanilla extract ... the extract", "should taste of vanilla, what weight of vanilla extract": one flavor said twice. */
const repeats = (each: Thing, all: readonly Thing[]) =>
  !each.ingredient &&
  all.some(
    (other) =>
      other !== each &&
      (each.taste
        ? each.dose === "flavor" && other.dose !== "flavor" && other.taste === each.taste
        : other.dose === each.dose && Boolean(other.taste || other.ingredient)),
  );

const powdered = (thing: Thing): Thing => ({
  ...thing,
  dose:
    thing.dose ??
    (thing.taste === "coffee" ? "coffee powder" : thing.ingredient ? "fruit powder" : "other powder"),
});

/** "vanilla is paste": that of its beans, and of no nut; "raspberry is freeze-dried powder": no fresh ones. */
function inForm(thing: Thing, dose: string | undefined): Thing {
  const { ingredient: _fresh, ...taste } = thing;
  if (thing.taste === "vanilla" && dose === "nut paste")
    return { ...taste, id: "vanilla bean paste", dose: "vanilla paste" };
  return dose === "fruit powder" ? { ...taste, dose } : { ...thing, dose };
}

const dedupe = (things: Thing[]) =>
  things.filter(
    (each, at) => things.findIndex((other) => other.id === each.id && other.dose === each.dose) === at,
  );

/** Tastes that are colors too: in a bowl of batter the color is meant, as no flavor goes in there. */
const colorTastes = new Set(["violet", "orange", "rose", "lavender", "peach"]);

/** "violet for that", behind a bowl of batter; "pink for 480 g batter", where no flavor is named. */
export function colorsOfBatter(reading: Reading, memory: Memory, asked: Thing[]): Thing[] {
  const named = reading.things.find((each) => each.base)?.base;
  const { mass } = memory.table;
  const isBack = pointsBack(reading) || memory.last?.tool === "split";
  if ((named ?? (isBack ? mass?.thing : undefined)) !== "batter") return asked;
  const asColor = (each: Thing): Thing => ({ id: "color", dose: "color", text: each.text, at: each.at });
  // "powder for one of those": of the powders only the color has a dose in batter
  const asPowder = (each: Thing): Thing => ({ ...each, dose: "powder color" });
  if (asked.length > 0)
    return asked.map((each) =>
      colorTastes.has(each.taste ?? "") && !each.dose
        ? asColor(each)
        : each.dose === "powder" && !each.taste && !each.ingredient
          ? asPowder(each)
          : each,
    );
  const hue = reading.things.find(
    (each) =>
      each.color && !each.base && !["plain", "natural", "uncolored", "uncoloured"].includes(each.color),
  );
  return hue && says(reading, /<color=\S+ (?:colou?r )?for /) ? [asColor(hue)] : asked;
}

/** "red gel": the hue right before a color. */
export function hueOf(target: Thing, { things }: Reading): Draft {
  const hue = things.find(
    (each) => each.color && !each.base && !each.dose && target.at[0] - each.at[1] === 1,
  )?.color;
  return hue && / color$/.test(target.dose ?? "") ? { hue } : {};
}

/** "the powder kind": of the color that was spoken of. */
export function colorKind(target: Thing, memory: Memory): Thing {
  const before = doseBefore(memory)?.dose;
  // "and if i only color half of it": with what it was colored before
  if (target.dose === "color" && before && / color$/.test(before))
    return { ...target, dose: before, id: before };
  // "3 g of the powder"
  if (target.dose === "powder" && before === "powder color") return { ...target, dose: before };
  return target.dose === "powder" && before && / color$|^color$/.test(before)
    ? { ...target, dose: "powder color", id: "powder color" }
    : target;
}

/** "the paste", "the gel": the form alone, of the flavor that was spoken of before. */
export function sameAgain(target: Thing, memory: Memory): boolean {
  const before = doseBefore(memory);
  if (!before?.dose || target.taste || target.ingredient || !memory.follows) return false;
  const kin = (dose: string) => families.find((family) => family.includes(dose))?.[0] ?? dose;
  return kin(target.dose ?? "") === kin(before.dose);
}

const families = [
  ["nut paste", "vanilla paste", "fruit paste", "paste"],
  ["fruit powder", "tea powder", "coffee powder", "cocoa powder", "powder", "other powder"],
];

/** The inputs that a flavor is named by: its row of the dose table, its taste, its own name. */
export function nameOf(
  target: Pick<Thing, "id" | "taste" | "dose" | "ingredient" | "text">,
  reading: Reading,
): Draft {
  const ground =
    leaves.test(target.taste ?? "") && says(reading, /(?:^| )(?:ground|milled|powdered|sifted)(?:<| |$)/);
  // "grated nutmeg", "ground star anise": the spice itself, and no concentrated flavor of it
  const spice =
    target.dose === undefined &&
    spices.has(target.taste ?? "") &&
    says(
      reading,
      /(?:^| )(?:ground|grated|milled|crushed|powdered|cracked)(?:<\S*>)? (?:\S+ )?\S*<[^>]*taste=/,
    );
  // "how much paste": that of a nut, of vanilla or of a fruit, each with its own dose
  const ofAnything =
    target.dose === "nut paste" && !target.taste && !target.ingredient && /^pa?ste$/.test(target.text);
  if (ofAnything) return { dose: "paste" };
  const dose = target.dose ?? (spice ? "other powder" : ground ? "tea powder" : usualRow(target));
  const bare = target.dose === undefined || (target.dose === "flavor" && !/concentrat/.test(target.text));
  // "strawberry jam" doses as purée, but keeps its name
  const jam =
    dose === "purée" && /jam|jelly|curd|marmalade|preserve/.test(target.text) ? target.text : undefined;
  const own = jam ?? (target.ingredient && target.dose ? target.ingredient : undefined);
  // "powder", of batter
  const isDye = dose === "powder color" && target.id === "powder";
  return {
    dose,
    ...(target.taste ? { taste: target.taste } : {}),
    ...(own ? { name: own } : target.dose && !target.taste ? { name: isDye ? dose : target.id } : {}),
    ...(bare && dose === "flavor" ? { bare: true } : {}),
  };
}

const usualRow = (thing: Pick<Thing, "taste">): string =>
  spirits.has(thing.taste ?? "") ? "spirit" : teas.has(thing.taste ?? "") ? "tea powder" : "flavor";
const spirits = new Set([
  "rum",
  "kirsch",
  "brandy",
  "cognac",
  "whisky",
  "vodka",
  "gin",
  "tequila",
  "limoncello",
  "amaretto",
  "irish cream liqueur",
  "coffee liqueur",
  "orange liqueur",
  "cassis liqueur",
  "calvados",
]);
const teas = new Set(["matcha", "hojicha"]);
/** They come off the grater or out of the mill, and no rule has a dose of those. */
const spices = new Set(
  "cinnamon,cardamom,ginger,pumpkin spice,anise,licorice,saffron,tonka,nutmeg,clove,black pepper,pink pepper".split(
    ",",
  ),
);
/** Teas that are a flavor unless they are said to be ground. */
const leaves = /earl grey|tea|chai|assam|darjeeling/;
