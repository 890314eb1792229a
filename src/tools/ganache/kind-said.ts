/** The chocolate that a sentence speaks of: its kind, its grade, two kinds in one bowl, one that the book has not. */
import type { Amount, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { GanacheInputs } from "./ganache.ts";
import { isGone } from "./kind-gone.ts";

/** Chocolates that the book has no ratio for. */
export const otherKind =
  /\b(ruby|blonde?|golden|caramelis?z?ed white|vegan|sugar.?free)(?: (?:chocolate|choc|couverture)\b|(?: \S+)? ganache\b|$|(?= [?]))|\b((?:caramelis?z?ed|toasted|roasted|pink|gold|blue|purple|keto|raw|compound|protein|diabetic|dulce|carob|bean to bar)(?: (?:pink|gold|blue|milk|dark|white|ruby))?)(?: (?:chocolate|choc|couverture)\b)|\b(carob)\b(?! (?:powder|syrup|extract|molasses))/;

/** "half dark, half milk in one ganache": two kinds in one bowl, whose ratio no book gives. */
export function mixedKinds(reading: Reading): string[] | undefined {
  if (
    !/half (?:\S+ )?(?:and |& |, )?half|50 ?\/ ?50|(?:^| )(?:mix|blend|mixture) of|(?:^| )mixed|\b(?:dark|milk|white)(?: choc\w*)? (?:in|into|for|as|makes?|become) (?:one|a single|the same|1) (?:ganache|bowl|pot|batch)|(?:^| )(?:from|out of|using|made of) (?:both )?(?:dark|milk|white)(?: choc\w*)? (?:and|&|plus) (?:dark|milk|white)\b/.test(
      reading.text,
    ) ||
    !says(reading, /<[^>]*base=ganache/)
  )
    return undefined;
  const kinds = reading.things.flatMap(
    (each) =>
      each.chocolate ??
      (each.ingredient === "milk" ? "milk" : each.color === "white" ? "white" : undefined) ??
      [],
  );
  const two = [...new Set(kinds)];
  return two.length > 1 ? two : undefined;
}

/** "70 % dark chocolate", "35 % cream": a grade, said right before the thing or right behind it. */
export const isGrade = (amount: Amount, reading: Reading): boolean => {
  if (amount.dim !== "percent") return false;
  const near = reading.things.filter(
    (each) => each.chocolate || /chocolate|cream/.test(each.ingredient ?? ""),
  );
  return near.some(
    (each) =>
      /^ ?(?:(?:cocoa|cacao|fat|solids|of|the) ?)*$/.test(reading.text.slice(amount.at[1], each.at[0])) ||
      (each.at[1] <= amount.at[0] && /^ ?[(,]? ?$/.test(reading.text.slice(each.at[1], amount.at[0]))),
  );
};

const refusing =
  /\b(?:not|never|no longer|instead of|rather than|(?:was|is|are|were)nt|(?:was|is) no|no more|out of|none of|without)(?: the| a| any| really| actually| in fact| for)* $/;

/** "it wasnt dark, it was milk": the kind that isn't meant. */
function isRefusedKind(reading: Reading, thing: Thing): boolean {
  const { text, things } = reading;
  const lead = text.slice(0, thing.at[0]);
  const names = (each: Thing) => each.chocolate ?? (each.color === "white" || each.ingredient === "milk");
  // "no dark, white it was"
  return (
    isGone(reading, thing) ||
    refusing.test(lead) ||
    (/\bno $/.test(lead) && things.some((each) => each !== thing && names(each)))
  );
}

/** "another bowl, milk, too stiff": milk by itself between the signs of a ganache is its chocolate. */
const standsAlone = ({ text }: Reading, { at }: Thing): boolean =>
  /(?:^|[,:.] ?|\b(?:its|it is|it was|thats|is|was|one in|made it|in|for|of|the|a|and)(?: a)? )$/.test(
    text.slice(0, at[0]),
  ) && /^(?: ?[,:.?]| one\b| instead\b| this time\b| actually\b|$)/.test(text.slice(at[1]));

/** The kind of chocolate: by name, or by "white" and "milk" where a ganache is spoken of. */
export function kindOf(said: Reading): GanacheInputs["chocolate"] {
  const reading = {
    ...said,
    things: said.things.filter(
      (each) =>
        !(each.chocolate || each.ingredient === "milk" || each.color === "white") ||
        !isRefusedKind(said, each),
    ),
  };
  // "we have dark and milk, 300 g milk ganache": the one that the ganache is called by
  const own = reading.things.find(
    (each) =>
      (each.chocolate || each.ingredient === "milk" || each.color === "white") &&
      reading.things.some((mix) => mix.base === "ganache" && mix.at[0] - each.at[1] === 1),
  );
  if (own) return own.chocolate ?? (own.color === "white" ? "white" : "milk");
  const named = reading.things.find((each) => each.chocolate)?.chocolate;
  if (named) return named;
  const before = (thing: Thing) =>
    reading.things.some(
      (each) =>
        (each.base === "ganache" ||
          each.step === "ganache sets" ||
          each.ingredient === "chocolate" ||
          each.use) &&
        each.at[0] >= thing.at[1] &&
        each.at[0] - thing.at[1] <= 2,
    ) ||
    // "a firm white one", of what there is cream for
    (reading.things.some((each) => each.use && thing.at[0] - each.at[1] === 1) &&
      reading.things.some((each) => each.ingredient === "cream"));
  // "ganache lait", as the trade's French has it
  const behind = (thing: Thing) =>
    reading.things.some((each) => each.base === "ganache" && thing.at[0] - each.at[1] === 1);
  const alone = (thing: Thing) =>
    !reading.amounts.some((each) => each.of === thing && each.dim !== "number") ||
    isChocolateHere(reading, thing);
  const white = reading.things.find((each) => each.color === "white");
  const besideCream =
    reading.things.some((each) => each.ingredient === "cream" || each.ingredient === "chocolate") &&
    !reading.things.some((each) => each.base === "batter" || each.count || each.base === "buttercream");
  if (white && (before(white) || besideCream || reading.things.length <= 2)) return "white";
  const milk = reading.things.find((each) => each.ingredient === "milk" && alone(each));
  if (milk && (before(milk) || behind(milk) || reading.things.length <= 2 || isChocolateHere(reading, milk)))
    return "milk";
  const weighsChocolate = reading.things.some((each) => each.ingredient === "chocolate");
  const byItself = weighsChocolate && [white, milk].find((each) => each && standsAlone(reading, each));
  if (byItself) return byItself === white ? "white" : "milk";
  return undefined;
}

/** A chocolate of a kind or "chocolate" alone. */
export const isChocolate = (thing: Thing | undefined): boolean =>
  Boolean(thing?.chocolate) || /chocolate/.test(thing?.ingredient ?? "");

/** "250 g white and 100 g cream", "and with 280 g white": milk and white are chocolates beside cream, or alone. */
export const isChocolateHere = (reading: Reading, thing: Thing | undefined): boolean =>
  (thing?.color === "white" || thing?.ingredient === "milk") &&
  (isNamedToo(reading, thing) ||
    reading.things.every(
      (each) =>
        each === thing ||
        each.use !== undefined ||
        each.color === "white" ||
        each.ingredient === "cream" ||
        each.base === "ganache" ||
        /ganache/.test(each.symptom ?? ""),
    ));

/** "white choc ganache set with butter, 300 g white": the chocolate that was named with its kind. */
const isNamedToo = (reading: Reading, { color, ingredient }: Thing): boolean =>
  reading.things.some((each) => each.chocolate === (color ?? ingredient));

/** "630 g dark piping ganache": the kind of the ganache, not a weight of chocolate. */
export function describes(reading: Reading, chocolate: Thing): boolean {
  const mix = reading.things.find((each) => each.base === "ganache" && each.at[0] > chocolate.at[0]);
  const between = mix ? reading.text.slice(chocolate.at[1], mix.at[0]).trim() : "-";
  // "cream for 300 g dark chocolate ganache": the weight stands before the name of the whole
  if (/choc/.test(chocolate.text))
    return (
      between === "" &&
      /\d ?(?:g|gr|grams?|kg|oz)(?: of)?(?: [a-z]+)? $/.test(reading.text.slice(0, chocolate.at[0]))
    );
  return between === "" || reading.things.some((each) => each.use && each.text === between);
}
