/** "12 boxes of 6, cost 38, sell 11 a box": a price of each box against what all of them cost. */
import type { Outcome, Reading, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { moneyText } from "../lib/money.ts";
import { plain } from "../lib/show.ts";
import { currencyOf } from "./bill.ts";
import { forEachBox } from "./box-sum.ts";
import type { CostInputs } from "./cost.ts";
import type { Draft } from "./draft.ts";
import type { Sum } from "./money.ts";

/** "sell each box at", "12 boxes of 6 at". */
const boxAt =
  /\b(?:(?:a|each|every|per) box(?: (?:sells?|goes|is|sold|at|for))*|boxes(?: of \d+)? (?:at|@)|(?:sell|sold|selling) (?:\S+ )?boxes(?: of \d+)? for) $/;

const countOf = ({ amounts, text }: Reading, money: readonly Sum[]): number | undefined =>
  amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      Number.isInteger(each.value) &&
      each.value > 1 &&
      !money.some((sum) => sum.amount === each) &&
      /^ boxes\b/.test(text.slice(each.at[1])),
  )?.value;

const free =
  /\b(\d+) (?:of (?:them|those|the boxes) |boxes |of the boxes )?(?:(?:go|went|given|are|were|is|for) )*(?:free(?! (?:sample|deliver|shipping|postage|ribbon|bag|sticker|tast))|away|for nothing|as (?:a )?gifts?|on the house|unsold|not sold|as samples?)\b|\b(?:give|gave|giving|donate|donated|lose|lost) (?:away )?(?:them )?(\d+)(?: boxes| of them)?(?: away| for free| free)?(?: ?[?.])?$|\b(\d+) (?:free|unsold) box(?:es)?\b|\b(?:cant|dont|do not|didnt) sell (\d+)\b|\b(\d+)(?: boxes| of them)? (?:dont|do not|didnt|wont) sell\b/;
const onlySold =
  /\b(?:only )?(?:sell|sold) only (\d+)\b|\bonly (?:sell|sold) (\d+)(?: boxes| of them)?(?: ?[?.])?$/;

/** How many of all the boxes are paid for, and whose cost it is; what was said before of the boxes stays. */
export function readBoxesSold(reading: Reading, money: readonly Sum[], draft: Draft, before: Draft): Draft {
  const { text } = reading;
  const isEach = money.some(
    ({ use, amount }) =>
      use === "price" &&
      (forEachBox.test(text.slice(amount.at[1])) || boxAt.test(text.slice(0, amount.at[0]))),
  );
  const counted = isEach && draft.price !== undefined ? countOf(reading, money) : undefined;
  const known = counted ?? (before.price === undefined ? undefined : before.boxes);
  if (known === undefined) return {};
  if (counted !== undefined && (draft.cost ?? draft.ingredients) !== undefined) {
    const ofBox = money.some(
      ({ use, amount }) =>
        use === "cost" &&
        (forEachBox.test(text.slice(amount.at[1])) ||
          /^ ?(?:each|apiece)\b/.test(text.slice(amount.at[1])) ||
          /\b(?<!\d )(?:box|each) costs?(?: me)? $/.test(text.slice(0, amount.at[0]))),
    );
    const holds = Number(/\bboxes of (\d+)\b/.exec(text)?.[1] ?? 0);
    return ofBox
      ? {}
      : {
          boxes: counted,
          sold_boxes: counted,
          per_box: false,
          ...(holds > 0 && holds < 1000 ? { box_of: holds } : {}),
        };
  }
  // "3 free samples", "free delivery": no boxes
  const away = free.exec(text)?.slice(1).find(Boolean);
  const only = onlySold.exec(text)?.slice(1).find(Boolean);
  if (money.length === 0 && away !== undefined && Number(away) < known)
    return { boxes: known, sold_boxes: known - Number(away), per_box: false };
  if (money.length === 0 && only !== undefined && Number(only) <= known && Number(only) > 0)
    return { boxes: known, sold_boxes: Number(only), per_box: false };
  // another price, or another cost: all of them are paid for again
  if (before.sold_boxes !== undefined && draft.price !== undefined)
    return { boxes: known, sold_boxes: known };
  return {};
}

interface Together {
  inputs: CostInputs;
  sums: string[];
  assumed: string[];
}

/** The price of all boxes that are paid for, beside what all of them cost; for a price that is asked, one box's share. */
export function soldTogether(inputs: CostInputs, world: World): Together | Outcome | undefined {
  const { sold_boxes, boxes, price, price_for: _p, cost_for: _c, boxed: _b, cost_of, ...others } = inputs;
  if (sold_boxes === undefined || boxes === undefined) return undefined;
  const currency = currencyOf(inputs, world);
  const cost = inputs.cost ?? inputs.ingredients;
  const { sold_boxes: _s, ...rest } = others as CostInputs;
  if (cost === undefined) return undefined;
  const said = `${moneyText(cost, currency)} is what all ${plain(boxes)} boxes cost${sold_boxes < boxes ? `, ${plain(sold_boxes)} of them paid for` : ""}`;
  if (price === undefined)
    return { inputs: { ...rest, boxes: sold_boxes, per_box: true }, sums: [], assumed: [said] };
  // less than one box sells for: it may be what one of them costs
  if (cost < price && cost_of === undefined)
    return asking(`Is ${moneyText(cost, currency)} what one box costs, or all ${plain(boxes)}?`, "cost_of");
  const taken = price * sold_boxes;
  return {
    inputs: { ...rest, boxes, price: taken },
    sums: [`${plain(sold_boxes)} boxes × ${moneyText(price, currency)} = ${moneyText(taken, currency)}`],
    assumed: [said],
  };
}

/** "one", "all of them", where it was asked whose cost that is. */
export function costOfSaid({ text }: Reading, before: Draft): Draft {
  if (/\b(?:all|whole|lot|everything|together|batch|total)\b/.test(text))
    return { ...before, cost_of: "all" };
  if (!/\b(?:one|each|single|apiece|per|a box|1)\b/.test(text)) return before;
  // one box against the price of one: how many there are takes no part in it
  const { boxes: _all, sold_boxes: _sold, price_for: _p, cost_for: _c, ...others } = before;
  return others;
}
