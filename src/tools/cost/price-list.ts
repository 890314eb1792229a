/** "price list: 12 pack 30, 6 pack 16": what a box of each size sells for, and the size that is asked about. */
import type { Figure, Outcome, Reading } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { says } from "../lib/find.ts";
import { plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";
import type { Draft } from "./draft.ts";

type Listed = NonNullable<CostInputs["sizes"]>[number];

const sum = "[$€£]? ?(\\d+(?:[.,]\\d{1,2})?)(?: ?(?:[$€£]|dollars?|euros?|eur|usd|gbp|pounds|quid|bucks))?";
const link = "(?: (?:is|are|for|at|sells? for|goes for|costs?|:|=|@))* ";
const packs = "(?:packs?|pk|pcs|pieces?|box|boxes|bags?|set|sets|er|ers|piece box)";
const sizeFirst = new RegExp(`\\b(\\d+) ?-?${packs}\\b${link}${sum}`, "g");
const boxFirst = new RegExp(`\\b(?:box(?:es)?|packs?|bags?|sets?) of (\\d+)${link}${sum}`, "g");

/** "price list: 6 for 14, 12 for 26". */
const bareFirst = new RegExp(`\\b(\\d+) (?:for|at|=|:) ${sum}`, "g");

const number = (text: string | undefined) => Number((text ?? "").replace(",", "."));

/** At least two sizes, each with its own price, and no other number; undefined where that isn't said. */
export function listSaid({ text, amounts }: Reading): Listed[] | undefined {
  // "10 boxes at 8, 4 boxes at 9" counts boxes, unless it is called a list of prices
  const isList =
    /\b(?:price ?list|prices|my list|i sell|we sell|menu|on sale)\b|\b\d+ ?-?(?:packs?|pk|pcs|er)\b/.test(
      text,
    );
  const isNamed = /\b(?:price ?list|prices|menu)\b/.test(text);
  const found = [sizeFirst, boxFirst, ...(isNamed ? [bareFirst] : [])].flatMap((pattern) =>
    [...text.matchAll(pattern)].map((hit) => ({ holds: number(hit[1]), price: number(hit[2]) })),
  );
  const said = amounts.filter((each) => each.dim === "number" || each.dim === "money").length;
  const sizes = new Set(found.map((each) => each.holds));
  return isList && found.length >= 2 && sizes.size === found.length && said === found.length * 2
    ? found
    : undefined;
}

/** "margin on the 12", "and the 6 pack": one of the sizes on the list. */
export function sizeAsked({ amounts, text }: Reading, { sizes }: Draft): Listed | undefined {
  const [only, ...others] = amounts;
  if (!sizes || !only || others.length > 0 || only.dim !== "number") return undefined;
  const behind = text.slice(only.at[1]);
  const isSize =
    /(?:^|\b(?:on|for|of|the|a|about|and|or|with|per) )$/.test(text.slice(0, only.at[0])) &&
    new RegExp(`^ ?(?:-?${packs}|s|one|ones)?(?: then| too| as well)?(?: ?[?.])?$`).test(behind);
  return isSize ? sizes.find((each) => each.holds === only.value) : undefined;
}

/** What was read of a list: a new one, one of its sizes, or the cost that goes with it. */
export function readList(reading: Reading, before: Draft): Draft | undefined {
  const sizes = listSaid(reading);
  const { sizes: _list, holds: _size, was: _was, ...rest } = before;
  if (sizes) {
    const signed = reading.amounts.find((each) => each.dim === "money" && each.unit !== "unsigned");
    return {
      ...(rest.cost !== undefined && rest.cost_for !== undefined
        ? { cost: rest.cost, cost_for: rest.cost_for }
        : {}),
      ...(signed ? { currency: signed.unit.slice(0, 3) } : { bare_sign: "" as const }),
      ...(signed?.text.includes("$") ? { bare_sign: "$" as const } : {}),
      sizes,
    };
  }
  const size = sizeAsked(reading, before);
  if (!size) return undefined;
  const want = says(reading, /mark ?-?up/) ? "markup" : says(reading, /margin/) ? "margin" : undefined;
  return { ...before, was: undefined, holds: size.holds, ...(want ? { want } : {}) };
}

/** The answer for the size that was asked about, or for each of them. */
export function answerList(inputs: CostInputs, answer: (one: CostInputs) => Outcome): Outcome {
  const { sizes = [], holds, was: _was, ...others } = inputs;
  if (others.cost === undefined) return asking("What does one macaron cost to make?", "cost");
  if (others.cost_for === undefined) return asking("For how many macarons is that cost?", "cost_for");
  const one = others.cost / others.cost_for;
  const asked = sizes.filter((each) => holds === undefined || each.holds === holds);
  const all = asked.map(({ holds: macarons, price }) => ({
    macarons,
    // a box's own packaging goes with each box
    outcome: answer({
      ...others,
      cost: one * macarons,
      cost_for: macarons,
      price,
      price_for: macarons,
      macarons,
      box_of: macarons,
    }),
  }));
  const [first] = all;
  if (all.length === 1 && first) return first.outcome;
  const failed = all.find(({ outcome }) => outcome.status !== "answered");
  if (failed) return failed.outcome;
  const figures: Figure[] = all.flatMap(({ macarons, outcome }) =>
    (outcome.figures ?? [])
      .filter(({ name }) => ["margin", "cost", "price"].includes(name))
      .map((each) => ({ ...each, name: `${each.name} of ${plain(macarons)}` })),
  );
  return {
    status: "answered",
    headline: all
      .map(
        ({ macarons, outcome }) =>
          `${plain(macarons)} in a box: ${"headline" in outcome ? outcome.headline : ""}`,
      )
      .join("; "),
    figures,
    rule: { text: "margin = 1 − cost / price", basis: "arithmetic" },
    ...(first?.outcome.cautions ? { cautions: first.outcome.cautions } : {}),
    working: all.flatMap(({ outcome }) => outcome.working ?? []),
  };
}

/** "each", "12", where it was asked how many macarons a cost is for. */
export const costForSaid = ({ amounts, text }: Reading): number | undefined =>
  /\b(?:one|each|single|apiece|a macaron|per)\b/.test(text)
    ? 1
    : amounts.find((each) => each.dim === "number" && Number.isInteger(each.value) && each.value >= 1)?.value;
