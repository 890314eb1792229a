/** Reads what a bottle's own label says: its taste and form, its directions, its allergens. */
import { allergens } from "../../../data/rules/allergens.ts";
import { forms } from "../../../data/words/flavors.ts";
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { Draft } from "./draft.ts";
import { bottleFacts } from "./facts.ts";

/** What a bottle may be called that is no flavor. */
const plainWords = new Set(
  "new old other second first next small big little large half full empty whole same flavor flavour own best last glass brown".split(
    " ",
  ),
);

/** "my mint bottle says half to one percent": the taste, its form where one is said, the range. */
export function readBottle(reading: Reading): Draft | undefined {
  if (
    !says(
      reading,
      /bottle|label says|label reads|directions|(?:oil|extract|flavou?r\S*) (?:says|reads)|<[^>]*dose=[^>]*> (?:says|said|reads|states|recommends|wants)(?: |$)|^(?:(?:the|my|our|ok|so|and|new|a|this) )*\S*<[^>]*taste=[^>]*>(?: (?:bottle|jar|label|tube|tub|packet))* (?:says|said|reads|states|recommends|wants) .*<percent>|^(?:my|this|our) \S*<[^>]*taste=[^>]*> (?:says|said|reads) \S*<(?:weight|volume)|^(?:(?:please|pls|ok|can you) )*(?:save|remember|keep|store|note|put|add|log|record) (?:my|this|our|a|the) (?:new )?\S*<[^>]*(?:dose|taste)=\S* .*<percent>/,
    )
  )
    return undefined;
  const share = reading.amounts.find((each) => each.dim === "percent");
  const { mix, ...more } = bottleFacts(reading);
  if (!share && says(reading, /(?:^| )(?:what|whats|which|show|forget|remove|delete)(?: |$)/))
    return undefined;
  const thing =
    reading.things.find((each) => each.taste) ??
    reading.things.find((each) => each.dose && each.dose !== "flavor");
  const contains = says(reading, /contains?|allergens?|free/) ? containsOf(reading) : undefined;
  if (thing && (mix || more.strength !== undefined || more.left_g !== undefined))
    return {
      does: "bottle",
      ...named(thing, reading),
      ...(share ? range(share, reading) : (mix ?? {})),
      ...more,
      ...(contains ? { allergens: contains } : {}),
    };
  if (!thing && mix) return { does: "bottle", ...mix };
  if (!share && !contains) {
    const written = says(reading, /(?:^| )(?:says|said|reads|directions)(?: |$)/);
    const drops = reading.amounts.find(
      (each) => each.of?.count === "drops" || each.dim === "volume" || (each.dim === "weight" && written),
    );
    return drops && thing && !says(reading, /how (?:much|many)/)
      ? {
          does: "bottle",
          ...named(thing, reading),
          unweighable: `${drops.text}${drops.of?.count === "drops" ? " drops" : ""}`,
        }
      : undefined;
  }
  // "my tamarind bottle": a name that no table has is hers to give
  const own = /(?:^| )(?:my|the|this|our|new) ([a-z]{3,}(?: [a-z]{3,})?) bottle(?: |$)/.exec(
    reading.mask,
  )?.[1];
  const name = own?.split(" ").every((word) => !plainWords.has(word)) ? { taste: own } : {};
  if (!thing) return share ? { does: "bottle", ...name, ...range(share, reading) } : undefined;
  return {
    does: "bottle",
    ...named(thing, reading),
    ...(share ? range(share, reading) : {}),
    ...(contains ? { allergens: contains } : {}),
  };
}

/** The range; "max 1 %" has no lower end of its own, which 0 stands for. */
const range = (share: Amount, { text }: Pick<Reading, "text">): Draft => ({
  low_percent: mostOf(share, text) ? 0 : share.value,
  high_percent: share.high ?? share.value,
});

const mostOf = ({ at, high }: Amount, text: string): boolean =>
  high === undefined &&
  (/\b(?:max|maximum|at most|up to|no more than|not more than|not over|never over|never more than)(?: (?:of|is|:))* ?$/.test(
    text.slice(0, at[0]),
  ) ||
    /^ ?(?:max|maximum|at most|or less|tops)\b/.test(text.slice(at[1])));

/** "mint bottle" is of any form; "vanilla extract bottle" only of extract. A form may stand apart from its taste. */
function named(thing: Thing, reading: Reading): Draft {
  const apart = reading.things.find((each) => !each.taste && each.dose && each.dose !== "flavor")?.dose;
  const form = thing.dose && !["flavor", "other powder"].includes(thing.dose) ? thing.dose : apart;
  const known = forms.some((each) => each.dose === form) || form !== undefined;
  return {
    taste: thing.taste ?? colorName(form, reading) ?? thing.text,
    ...(known && form ? { form } : {}),
  };
}

/** "my red gel": its hue and its form; "my gel bottle" is of any hue. */
function colorName(form: string | undefined, { things }: Reading): string | undefined {
  if (!form || !/ color$/.test(form)) return undefined;
  const hue = things.find((each) => each.color && !each.base && !each.dose)?.color;
  return hue ? `${hue} ${form}` : form;
}

/** Allergens said of a bottle: "contains almond", "contains milk and soy"; "no allergens" is an empty list. */
function containsOf(reading: Reading): string[] | undefined {
  const found = allergens.filter((row) =>
    new RegExp(
      `\\b(?:${[row.id, row.us, row.eu, ...(row.words ?? [])].filter(Boolean).join("|")})s?\\b`,
      "i",
    ).test(reading.text.slice(reading.text.search(/contains?/))),
  );
  if (says(reading, /no allergens?|allergen free/)) return [];
  return says(reading, /contains?/) && found.length > 0 ? found.map((row) => row.id) : undefined;
}

/** "raspberry", where the flavor was asked for; "no 2 %", "no it is 1 to 2", of the bottle that was saved. */
export function ofBottle(reading: Reading, { slot }: Memory, before: Draft | undefined): Draft | undefined {
  if (before?.does !== "bottle") return undefined;
  const thing = reading.things.find((each) => each.taste);
  if (slot === "taste" && thing?.taste && reading.amounts.length === 0)
    return { ...before, taste: thing.taste };
  const share = shareAgain(reading);
  const isRight =
    slot === "low_percent" ||
    /^(?:(?:oh|no|nope|sorry|actually|wait|hang on|oops|i meant?|i misread|rather|its|it is|it says|it said|it was|that was|thats|make (?:that|it)|should be|change (?:that|it) to|,) )+/.test(
      reading.mask,
    );
  if (!isRight || !share) return undefined;
  const { does, taste, form } = before;
  return { does, ...(taste ? { taste } : {}), ...(form ? { form } : {}), ...share };
}

/** "no, bottle says 1", behind a dose: the bottle of what was dosed, and that bowl once more. */
export function ofDosed(reading: Reading, { last }: Memory): Draft | undefined {
  if (last?.tool !== "dose" || reading.things.some((each) => each.taste || each.base)) return undefined;
  const { taste, dose, base_g, ...more } = last.inputs;
  const share = shareAgain(reading);
  const isSaid = says(
    reading,
    /(?:^| )(?:bottle|label|directions?)(?: (?:really|actually|only|itself|in fact))* (?:says?|said|reads?|is|has)(?: |$)/,
  );
  if (typeof taste !== "string" || !share || !isSaid) return undefined;
  const form = typeof dose === "string" && !["flavor", "other powder"].includes(dose) ? dose : undefined;
  const isPlain = typeof base_g === "number" && !Object.keys(more).some((key) => notPlain.has(key));
  return {
    does: "bottle",
    taste,
    ...(form ? { form } : {}),
    ...share,
    ...(isPlain ? { bowl_g: base_g } : {}),
  };
}

/** Inputs by which a dose is no longer that of one bowl. */
const notPlain = new Set([
  "parts",
  "flavor_g",
  "each_bowl",
  "added_g",
  "percent",
  "left_out",
  "share",
  "whole_g",
]);

/** The one share that is said, in percent or in bare numbers: "1 to 2", "2". */
function shareAgain({ amounts, text }: Reading): Draft | undefined {
  const [one, two, ...others] = amounts;
  const isShare = ({ dim, unit, of, value }: Amount) =>
    dim === "percent" || (dim === "number" && unit === "" && !of && value > 0 && value <= mostBare);
  if (!one || !isShare(one) || others.length > 0) return undefined;
  if (!two) return range(one, { text });
  const isRange = isShare(two) && /^ ?(?:to|-|and|till|until) ?$/.test(text.slice(one.at[1], two.at[0]));
  return isRange && two.value >= one.value
    ? { low_percent: one.value, high_percent: two.high ?? two.value }
    : undefined;
}

/** No bottle is dosed by more, in percent; a larger bare number is something else. Common practice. */
const mostBare = 30;
