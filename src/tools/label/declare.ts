/** Which allergens to declare for lines or for a description, and what has to be checked first. */
import { euSource, mixAllergens, usSource } from "../../../data/rules/allergens.ts";
import type { Market } from "../../../data/rules/labels.ts";
import type { Item, Outcome, Rule, World } from "../contract/index.ts";
import { allergenCaution } from "../lib/care.ts";
import { houseOf } from "../lib/house.ts";
import { listed } from "../lib/show.ts";
import { type Brings, bottleList, bringsOf, gather, tasteBrings } from "./allergens.ts";
import { partsAt } from "./composite.ts";
import type { LabelInputs } from "./label.ts";
import { declared } from "./lines.ts";

export interface Found extends Brings {
  from: { allergen: string; from: string }[];
  /** The baker's own shell recipe that was gone by. */
  house?: string;
}

/** Allergens of a description: shells and mixes by what they are made of, the rest by the tables. */
export function described(inputs: LabelInputs, world: World): Found {
  const house = houseOf(world);
  // her own shells may be of other nuts than the book's
  const isOwn = house.name !== undefined && Boolean(inputs.mixes?.includes("shells"));
  const mixes = (inputs.mixes ?? [])
    .filter((base) => !(isOwn && base === "shells"))
    .flatMap((base) => mixAllergens.find((row) => row.base === base) ?? []);
  const shells = (isOwn ? house.lines : []).map(({ name }) => {
    const brings = bringsOf(name, undefined, world.bottles);
    return {
      from: brings.sure.map((allergen) => ({ allergen, from: `shells (${name})` })),
      unsure: brings.unsure,
    };
  });
  const parts = [
    ...shells,
    ...(isOwn ? (house.unweighed ?? []) : []).map((said) => ({
      from: [],
      unsure: [`"${said}" in your shells: not known`],
    })),
    ...mixes.map((row) => ({
      from: row.brings.map((each) => ({ allergen: each.allergen, from: `${row.base} (${each.from})` })),
      unsure: row.unsure ? [`${row.base}: ${row.unsure}`] : [],
    })),
    ...(inputs.named ?? []).map(({ name, taste }) => {
      const brings = namedBrings(name, taste, inputs, world);
      return { from: brings.sure.map((allergen) => ({ allergen, from: name })), unsure: brings.unsure };
    }),
  ];
  const from = parts.flatMap((each) => each.from);
  const noFilling =
    inputs.mixes?.includes("shells") &&
    inputs.mixes.length === 1 &&
    !inputs.named?.some((each) => each.taste !== "almond");
  // a ganache's chocolate is named once, by its own kind
  const chocolate = inputs.named?.some((each) => / chocolate$/.test(each.name));
  const unsure = parts
    .flatMap((each) => each.unsure)
    .filter((text) => !(chocolate && text.startsWith("ganache:")));
  return {
    from,
    sure: [...new Set(from.map((each) => each.allergen))],
    unsure: [...new Set([...unsure, ...(noFilling ? ["the filling: not said what it is"] : [])])],
    ...(isOwn && house.name ? { house: house.name } : {}),
  };
}

/** What a thing brings that was named without its weight; an almond macaron's almond is its shells'. */
function namedBrings(
  name: string,
  taste: string | undefined,
  { mixes }: LabelInputs,
  { bottles }: World,
): Brings {
  const own = bottleList(taste, bottles);
  if (own) return { sure: own, unsure: [] };
  if (taste === "almond" && mixes?.includes("shells")) return { sure: ["almond"], unsure: [] };
  if (!taste) return bringsOf(name, undefined, bottles);
  // "casein", of which somebody made a taste: the tables know it all the same
  const parts = partsAt(taste).flatMap((each) => each.sure);
  return gather([tasteBrings(taste, taste), { sure: [...new Set(parts)], unsure: [] }]);
}

/** What has to be checked, by name: "ganache: which chocolate" is of the ganache. */
export const openNames = (open: readonly string[]): string =>
  listed([...new Set(open.map((text) => text.split(":")[0] ?? text))]);

/** A list only where there is something in it. */
export const given = (key: "assumed", list: string[]) => (list.length > 0 ? { [key]: list } : {});

export const lawOf = (market: Market): Rule =>
  market === "us"
    ? {
        text: "the nine major allergens by name, a tree nut by its own name",
        basis: "published",
        source: usSource,
      }
    : {
        text: "the fourteen allergens of Annex II, emphasised in the list of ingredients",
        basis: "published",
        source: euSource,
      };

export function allergensOf(found: Found, inputs: LabelInputs, market: Market): Outcome {
  const names = declared(found.sure, market);
  const open = [...found.unsure, ...(inputs.unread ?? []).map((text) => `"${text}": not read`)];
  const lead = inputs.asked?.length ? `${answerTo(found, inputs.asked, open.length > 0)} ` : "";
  return {
    status: "answered",
    headline:
      lead +
      (names.length
        ? `Declare ${listed(names)}${open.length ? `; not complete until you have checked ${openNames(open)}` : ""}`
        : `None that the tables know${open.length ? `, but check ${openNames(open)}` : ""}`),
    rule: lawOf(market),
    ...given("assumed", [
      ...(inputs.market
        ? []
        : [market === "us" ? "United States law" : "European Union law, as your bench is set"]),
      ...(inputs.mixes?.includes("shells") && (!inputs.lines || inputs.from_table)
        ? [
            found.house
              ? `shells by your house recipe, ${found.house}`
              : "shells of almond flour and egg whites",
          ]
        : []),
    ]),
    items: [
      ...found.from.map(({ allergen, from }): Item => ({ allergen, from })),
      ...open.map((text): Item => ({ check: text })),
    ],
    cautions: [
      allergenCaution,
      ...shellsLeftOut(found.sure, inputs),
      ...(open.length ? ["I can't call the list complete while something in it isn't known."] : []),
    ],
  };
}

/** The caution that a list is of a filling alone: nobody may take it for the macaron's. */
export const shellsLeftOut = (sure: readonly string[], { mixes }: LabelInputs): string[] =>
  mixes?.includes("shells") || sure.includes("almond")
    ? []
    : ["That is what was named, without shells: macaron shells bring almond and egg."];

/** What was asked about, never as a yes or a no: "are they nut-free" and "do they contain nuts" turn it round. */
function answerTo(found: Found, asked: readonly string[], isOpen: boolean): string {
  const hits = found.from.filter((each) => asked.includes(each.allergen));
  if (hits.length > 0)
    return `They contain ${listed([...new Set(hits.map((each) => `${each.allergen}, from the ${each.from}`))])}.`;
  return `The tables know of none of those in what was named${isOpen ? ", but that isn't sure" : "; traces are for you to rule out"}.`;
}
