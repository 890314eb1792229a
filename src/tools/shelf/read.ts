/** Reads an order or a question about the shelf. */
import { allergens } from "../../../data/rules/allergens.ts";
import { forms } from "../../../data/words/flavors.ts";
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { merged, nameOf, readLines } from "../lib/lines.ts";
import { inBase, unitRow } from "../lib/units.ts";
import { bottleFacts } from "./facts.ts";
import type { ShelfInputs } from "./shelf.ts";
import { readPack, readWhole } from "./whole.ts";

type Draft = Partial<ShelfInputs>;
type Entry = NonNullable<ShelfInputs["entries"]>[number];
type Does = NonNullable<ShelfInputs["does"]>;

export function readShelf(reading: Reading, memory: Memory): Draft {
  const whole = readWhole(reading, memory);
  if (whole) return whole;
  const pack = readPack(reading);
  if (pack) return pack;
  const bottle = readBottle(reading);
  if (bottle) return bottle;
  const before = memory.last?.tool === "shelf" ? (memory.last.inputs as Draft) : undefined;
  if (
    before?.does === "use" &&
    memory.follows &&
    says(reading, /zero|nothing|empty|all of it|use it up|go ahead|^(?:yes|yep|yeah|ok|okay|do it)/)
  )
    return { ...before, to_zero: true };
  const does = doesWhat(reading, before, memory);
  const priced = does === "price" ? prices(reading) : [];
  const entries = priced.length > 0 ? priced : entriesOf(reading, before, memory, does);
  const taste = reading.things.find((each) => each.taste && !each.ingredient)?.taste;
  if (does === "forget" && taste && says(reading, /bottle/)) return { does, taste };
  if (does === "list" && taste && says(reading, /bottle/)) return { does: "ask", taste };
  if (does === "list") return { does };
  return {
    ...(does ? { does } : {}),
    ...(entries.length > 0 ? { entries } : taste && (does === "forget" || does === "ask") ? { taste } : {}),
    ...(does === "use" && says(reading, /to zero|go to nothing|even so/) ? { to_zero: true } : {}),
  };
}

/** "my mint bottle says half to one percent": the taste, its form where one is said, the range. */
function readBottle(reading: Reading): Draft | undefined {
  if (!says(reading, /bottle|label says|label reads|directions|(?:oil|extract|flavou?r\S*) (?:says|reads)/))
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
      ...(share ? range(share) : (mix ?? {})),
      ...more,
      ...(contains ? { allergens: contains } : {}),
    };
  if (!share && !contains) {
    const drops = reading.amounts.find((each) => each.of?.count === "drops" || each.dim === "volume");
    return drops && thing && !says(reading, /how (?:much|many)/)
      ? {
          does: "bottle",
          ...named(thing, reading),
          unweighable: `${drops.text}${drops.of?.count === "drops" ? " drops" : ""}`,
        }
      : undefined;
  }
  if (!thing) return share ? { does: "bottle", ...range(share) } : undefined;
  return {
    does: "bottle",
    ...named(thing, reading),
    ...(share ? range(share) : {}),
    ...(contains ? { allergens: contains } : {}),
  };
}

const range = (share: Amount): Draft => ({
  low_percent: share.value,
  high_percent: share.high ?? share.value,
});

/** "mint bottle" is of any form; "vanilla extract bottle" only of extract. A form may stand apart from its taste. */
function named(thing: Thing, reading: Reading): Draft {
  const apart = reading.things.find((each) => !each.taste && each.dose && each.dose !== "flavor")?.dose;
  const form = thing.dose && !["flavor", "other powder"].includes(thing.dose) ? thing.dose : apart;
  const known = forms.some((each) => each.dose === form) || form !== undefined;
  return {
    ...(thing.taste ? { taste: thing.taste } : { taste: thing.text }),
    ...(known && form ? { form } : {}),
  };
}

/** Allergens said of a bottle: "contains almond", "contains milk and soy"; "no allergens" is an empty list. */
function containsOf(reading: Reading): string[] | undefined {
  const found = allergens.filter((row) =>
    new RegExp(`\\b(?:${[row.id, row.us, row.eu].filter(Boolean).join("|")})s?\\b`, "i").test(
      reading.text.slice(reading.text.search(/contains?/)),
    ),
  );
  if (says(reading, /no allergens?|allergen free/)) return [];
  return says(reading, /contains?/) && found.length > 0 ? found.map((row) => row.id) : undefined;
}

function doesWhat(reading: Reading, before: Draft | undefined, memory: Memory): Does | undefined {
  if (says(reading, /^(?:please |pls |ok |and )*(?:forget|remove|delete|drop|take .* off)/)) return "forget";
  const asks = says(
    reading,
    /how (?:much|many)|do i have|have i (?:still )?got (?:any|some)|is there (?:any|still)|any .* left|whats left|what is left/,
  );
  const hasPrice =
    reading.amounts.some((each) => each.dim === "money") ||
    says(reading, /(?:costs?|cost me|paid|price) \S*<number/);
  if (hasPrice && !asks) return "price";
  if (
    says(
      reading,
      /\b(?:used|use|using|took|gone through|got through|spilt|spilled|threw|binned|finished|used up|ran out|run out|out of|all gone|is gone)\b/,
    ) &&
    !asks
  )
    return "use";
  if (asks)
    return reading.things.some((each) => each.ingredient || each.taste) || memory.follows || before?.entries
      ? "ask"
      : "list";
  if (
    says(reading, /(?:what|whats|show|list|tell|which) /) &&
    !reading.amounts.some((each) => each.dim === "weight")
  )
    return "list";
  const left = says(
    reading,
    /(?:only|just) .*left|(?:there is|theres|ive got|i have|i got) .* left|(?:^| )left(?: |$)|set .* to|actually|correct|should be|now have|change/,
  );
  if (left && !says(reading, /(?:^| )(?:put|add|bought)(?: |$)/)) return "set";
  // "pantry: 50 g sugar" tells what is there; "put", "bought", "more" add to it
  const adds = says(
    reading,
    /(?:^| )(?:put|add|adding|bought|buy|stick|chuck|pop|bung|more|another|extra|too|also|plus|picked|just got|new|save|keep|store)(?: |$)/,
  );
  if (!adds && says(reading, /(?:^| )(?:pantry|larder|cupboard|stock|shelf)(?: |$)/)) return "set";
  if (reading.amounts.some((each) => each.dim === "weight" || each.dim === "volume" || each.dim === "number"))
    return "add";
  return before?.does;
}

/** Ingredients with their weights; without a name the one that was spoken of before. */
function entriesOf(
  reading: Reading,
  before: Draft | undefined,
  memory: Memory,
  does: Does | undefined,
): Entry[] {
  const bags = bagsOf(reading);
  if (bags) return [bags];
  const lines = merged(readLines(reading).lines.map((each) => ({ name: each.name, grams: each.grams })));
  const known = lines.filter(
    (each) => reading.things.some((thing) => nameOf(thing) === each.name) || does === "add" || does === "use",
  );
  if (known.length > 0 && reading.things.some((each) => each.ingredient || each.taste || each.chocolate))
    return known;
  const names = [
    ...new Set(reading.things.filter((each) => each.ingredient || each.chocolate || each.taste).map(nameOf)),
  ];
  const weight = reading.amounts.find((each) => each.dim === "weight");
  const part = reading.amounts.find((each) => each.fraction);
  const name =
    names[0] ??
    (memory.follows || says(reading, /(?:^| )(?:it|that|left|there)(?: |$)/)
      ? before?.entries?.[0]?.name
      : undefined);
  if (known.length > 0 && !name) return known;
  if (name === undefined) return [];
  const amount = weight
    ? { grams: inBase(weight.value, weight.unit) }
    : part
      ? { part: part.value }
      : does === "use"
        ? { part: 1 }
        : {};
  return names.length > 1
    ? names.map((each) => ({ name: each, ...(does === "use" ? { part: 1 } : {}) }))
    : [{ name, ...amount }];
}

/** "2 bags of almond flour, 500 g each". */
function bagsOf(reading: Reading): Entry | undefined {
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const number = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.fraction && Number.isInteger(each.value),
  );
  const owner = reading.things.find((each) => each.ingredient || each.chocolate);
  const [weight] = weights;
  if (
    !number ||
    !owner ||
    !weight ||
    weights.length > 1 ||
    !says(reading, /(?:^| )each(?: |$)|(?:bags?|packs?|packets?|boxes|cartons|tubs|jars|blocks) /)
  )
    return undefined;
  return {
    name: nameOf(owner),
    grams: number.value * inBase(weight.value, weight.unit),
    pack_g: inBase(weight.value, weight.unit),
  };
}

/** "almond flour costs 16 a kilo", "$9 for a 2 lb bag of almond flour". */
function prices(reading: Reading): Entry[] {
  const owner = reading.things.find((each) => each.ingredient || each.chocolate || each.taste);
  const money =
    reading.amounts.find((each) => each.dim === "money") ??
    reading.amounts.find((each) => each.dim === "number" && each.unit === "" && !each.fraction);
  if (!owner || !money) return [];
  const weight = reading.amounts.find((each) => each.dim === "weight");
  const per =
    money.per && unitRow(money.per.unit).dim === "weight"
      ? inBase(money.per.value, money.per.unit)
      : weight
        ? inBase(weight.value, weight.unit)
        : undefined;
  if (per === undefined) return [{ name: nameOf(owner) }];
  const value = money.dim === "money" ? inBase(money.value, money.unit) : money.value;
  const currency =
    money.dim === "money" && !money.text.includes("$") ? { currency: money.unit.slice(0, 3) } : {};
  const pack =
    weight && !money.per && says(reading, /(?:bag|pack|packet|box|carton|tub|jar|sack|block)(?: |$)/)
      ? { pack_g: per }
      : {};
  return [{ name: nameOf(owner), price_per_g: value / per, ...pack, ...currency }];
}
