/** What is weighed: an ingredient of the tables and how it is measured, or a name that no table knows. */

import { doseRows } from "../../../data/rules/doses.ts";
import type { Amount, Reading, Thing } from "../contract/index.ts";
import type { ConvertInputs } from "./convert.ts";

/** Manners that stand inside an ingredient's own words: "sliced almonds", "ground pistachios". */
const inside =
  /\b(unsifted|sifted|ground|whole|sliced|flaked|slivered|chopped|packed|whipped|mini chips|large chips)\b/;

/** Bare nut names of which the table has several measures: a cup of them whole isn't a cup of them ground. */
const severalWays = /^(?:almonds|hazelnuts?|walnuts?|pecans?)$/;

/** Rows of the dose table whose spoons are estimated in a dose, though no table weighs them. */
const liquids = new Set(doseRows.filter((row) => row.liquid).map((row) => row.id));

/** Nuts whose flour or meal is the nut ground. */
const nuts = new Set(["hazelnuts", "pistachios", "walnuts"]);

type Named = Pick<ConvertInputs, "ingredient" | "manner" | "unknown" | "several" | "liquid">;

/** An ingredient's name and the manner in its words, or what else the thing is called. */
export function nameOf(thing: Thing): Partial<Named> {
  // a spoon of vanilla is one of its extract to most who bake, and the answer says that it was taken so
  if (!thing.ingredient && thing.text === "vanilla")
    return { ingredient: "vanilla extract", unknown: "vanilla" };
  if (!thing.ingredient)
    return { unknown: thing.text, ...(liquids.has(thing.dose ?? "") ? { liquid: true } : {}) };
  const milled = /\b(?:flour|meal)\b/.test(thing.text) && nuts.has(thing.ingredient) ? "ground" : undefined;
  const manner = inside.exec(thing.text)?.[1]?.replace("flaked", "sliced") ?? milled;
  const usual =
    thing.ingredient === "milk"
      ? undefined
      : manner === "ground" && /almond/.test(thing.ingredient)
        ? undefined
        : manner;
  return {
    ingredient: thing.text === "almonds" ? "almonds" : thing.ingredient,
    ...(usual ? { manner: usual } : {}),
    ...(severalWays.test(thing.text) ? { several: true } : {}),
  };
}

/** "isnt sifted", "sifted after measuring", "measured and then sifted": the cup was filled with what wasn't. */
const siftedToo =
  /\b(?:not|isnt|wasnt|arent|werent|never|havent|hasnt|hadnt|without being|didnt get) (?:yet |been |being )*si(?:ft|ev)ed|\bsi(?:ft|ev)(?:e|ed)?(?: (?:it|them|that|only))* (?:after(?:wards)?|later|once)\b|\b(?:measured?|scoop(?:ed)?|fill(?:ed)?)(?: (?:it|them|first|and|,|then|the cup))+ si(?:ft|ev)/;

const howSaid = ({ manner }: Thing, { text }: Reading): string | undefined =>
  manner === "sifted" && siftedToo.test(text) ? "unsifted" : manner;

/** "sifted", "packed" where it stands by itself: with several amounts, the one that follows this amount. */
export function mannerIn(reading: Reading, thing: Thing | undefined, amount?: Amount): string | undefined {
  const manners = reading.things.filter((each) => each.manner);
  const next =
    amount &&
    reading.amounts.find((each) => each.at[0] > amount.at[0] && ["weight", "volume"].includes(each.dim));
  const said =
    reading.amounts.length > 1 && amount
      ? manners.find((each) => each.at[0] > amount.at[0] && (!next || each.at[0] < next.at[0]))
      : manners[0];
  const inWords = thing && nameOf(thing).manner;
  const loose = /(?:^| )(ground|slivered|whole)(?: |$)/.exec(reading.mask)?.[1];
  return (said && howSaid(said, reading)) ?? inWords ?? (reading.amounts.length <= 1 ? loose : undefined);
}

/** "i sift it first", "did sift it", "without sifting": told of what was turned before, with the verb. */
export function siftingTold({ text }: Reading): string | undefined {
  const isTold =
    /\bsi(?:ft|ev)(?:e|ed|ing)?\b/.test(text) &&
    !/\?|\b(?:do|does|did|should|must|shall|can|could) (?:i|you|we|it)\b|\b(?:need|have|ought|got|want|going|like|forgot) to\b|\bhow\b|\bwhy\b/.test(
      text,
    );
  if (!isTold) return undefined;
  return siftedToo.test(text) || /\b(?:dont|didnt|doesnt|havent|never|not|without|no) si(?:ft|ev)/.test(text)
    ? "unsifted"
    : "sifted";
}

const skipped = new Set(
  "of the a an some my same worth level heaped rounded full good nice soft hot cold warm fresh big small".split(
    " ",
  ),
);
const ends = new Set(
  "in to into as is are how what whats please pls and weigh weighs what's for make makes does do be it its thats that then or equals equal mean means come comes would will should gives give i you we from at on by if with so u instead now too also rather again only ? , . ! = ( )".split(
    " ",
  ),
);

/** The words behind an amount that may be the name of something unknown: "a cup of edible glitter". */
export function unknownBehind(reading: Reading, amount: Amount): string | undefined {
  const nth = reading.amounts.filter((each) => each.at[0] < amount.at[0]).length;
  const tokens = reading.mask.split(" ");
  const places = tokens.flatMap((token, at) =>
    /<(?:number|percent|factor|weight|volume|length|time|temperature|money)[^>]*>$/.test(token) ? [at] : [],
  );
  const words: string[] = [];
  for (const token of tokens.slice((places[nth] ?? tokens.length) + 1)) {
    if (words.length === 0 && skipped.has(token)) continue;
    const tagged = /^(.*)<([^>]*)>$/.exec(token);
    if (
      ends.has(token) ||
      words.length === 4 ||
      (tagged && /(?:unit|manner)=|weight|volume|number/.test(tagged[2] ?? ""))
    )
      break;
    words.push((tagged?.[1] ?? token).replaceAll("_", " "));
    if (tagged) break;
  }
  return words.length > 0 ? words.join(" ") : undefined;
}

/** "sprinkles half a cup in grams": nothing stands before the amount but a name that no table knows. */
export function unknownBefore({ mask, amounts }: Reading): string | undefined {
  const [, name = ""] = beforeVolume.exec(mask) ?? [];
  const words = name.split(" ").filter(Boolean);
  return amounts.length === 1 && words.length > 0 && !words.some((each) => ends.has(each) || talk.has(each))
    ? words.join(" ")
    : undefined;
}
const beforeVolume =
  /^(?:(?:and|so|ok|now|the|my|of|for) )*((?:[a-z]{3,} ){1,3}?)(?:, |: )?\S*<volume[^>]*>(?: (?:of it|is|are|=|in|to|into|as|in to))* \S*<unit=(?:g|oz|lb|kg)>/;
const talk = new Set(
  "how much many can could you tell me need want have got just only about turn convert give put show say there here some more less half times whole one two three does did was were not but same that this these those them it its hey hi hello yes okay".split(
    " ",
  ),
);

/** "cream of mushroom": an ingredient with more behind it that no table knows is another thing. */
export function longerName(reading: Reading, thing: Thing): string | undefined {
  const tokens = reading.mask.split(" ");
  const at = tokens.findIndex((token) => token.startsWith(`${thing.text.replaceAll(" ", "_")}<`));
  const word = tokens[at + 2];
  if (
    at < 0 ||
    tokens[at + 1] !== "of" ||
    !word ||
    ends.has(word) ||
    skipped.has(word) ||
    !/^[a-z]+$/.test(word)
  )
    return undefined;
  return `${thing.text} of ${word}`;
}
