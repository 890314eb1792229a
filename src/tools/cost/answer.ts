/** Adds the cost up and turns it into price, margin, markup or food cost. */
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { moneyText } from "../lib/money.ts";
import { aimOf } from "./aim.ts";
import { type Bill, billOf, currencyOf, ofOneBox } from "./bill.ts";
import { soldTogether } from "./boxes-sold.ts";
import { breakEven } from "./break-even.ts";
import { compared } from "./change.ts";
import type { CostInputs } from "./cost.ts";
import { hasExtras, pricedAlone, withExtras } from "./extras.ts";
import { levelled } from "./level.ts";
import { isOrderAlone, orderPriced } from "./orders.ts";
import { answerList } from "./price-list.ts";
import { affordable, costAlone, priceOf } from "./priced.ts";
import { sharesOf } from "./shares-at-price.ts";

/** @throws never: what is missing comes back as `asking`, what can't be as `impossible`. */
export function answerCost(inputs: CostInputs, world: World): Outcome {
  const now = answerNow(inputs, world);
  const want = wantOf(inputs);
  return inputs.was && now.status === "answered" && want !== "break even"
    ? compared(now, answerNow(inputs.was as CostInputs, world), want)
    : now;
}

function answerNow(said: CostInputs, world: World): Outcome {
  if (said.mixed)
    return { status: "impossible", headline: `I can't add ${said.mixed}: say it all in one currency.` };
  if (said.part !== undefined)
    return asking(
      `I don't know what the ${said.part} alone costs. What goes into it? Each thing with its weight and its price, please.`,
      "lines",
    );
  if (said.sizes) return answerList(said, (one) => answerNow(one, world));
  const sold = soldTogether(said, world);
  if (sold && "status" in sold) return sold;
  if (sold) {
    const outcome = answerNow(sold.inputs, world);
    return outcome.working
      ? {
          ...outcome,
          assumed: [...(outcome.assumed ?? []), ...sold.assumed],
          working: [...sold.sums, ...outcome.working],
        }
      : outcome;
  }
  const level = levelled(said);
  if ("status" in level) return level;
  const { inputs, sums } = level;
  const bare = answerLevel(inputs, world);
  // without a cost the extras are in it already
  const outcome = bare.figures?.some((each) => each.name === "cost") ? withExtras(bare, inputs) : bare;
  return sums.length && outcome.working ? { ...outcome, working: [...sums, ...outcome.working] } : outcome;
}

/** What is asked: as said, or what follows from what there is. */
const wantOf = (inputs: CostInputs): NonNullable<CostInputs["want"]> =>
  inputs.want ?? (aimOf(inputs) ? "price" : inputs.price !== undefined ? "margin" : "cost");

function answerLevel(inputs: CostInputs, world: World): Outcome {
  // so many were ordered: what they come to, whatever they cost
  if (isOrderAlone(inputs))
    return hasExtras(inputs)
      ? pricedAlone(inputs, currencyOf(inputs, world))
      : orderPriced(inputs, currencyOf(inputs, world));
  const whole = billOf(inputs, world);
  const bill =
    whole && !("status" in whole) && inputs.per_box && inputs.boxes ? ofOneBox(whole, inputs.boxes) : whole;
  if (bill && "status" in bill) return bill;
  const want = wantOf(inputs);
  // "20 at €1.80 each less 10 %": what is charged, whatever it costs
  if (!bill && inputs.price !== undefined && hasExtras(inputs) && inputs.margin_percent === undefined)
    return pricedAlone(inputs, currencyOf(inputs, world));
  if (!bill)
    return inputs.price !== undefined && inputs.margin_percent !== undefined
      ? affordable(inputs, world)
      : asking("What does it cost to make?", "cost");
  if (want === "break even") return breakEven(inputs, bill);
  if (want === "price") return priceOf(inputs, bill);
  if (want === "cost") return costAlone(inputs, bill);
  if (inputs.price === undefined) {
    if (inputs.margin_percent === undefined && inputs.markup_percent === undefined)
      return asking("What do you sell it for?", "price");
    return priceOf(inputs, bill);
  }
  return unclearPrice(inputs, inputs.price, bill) ?? sharesOf(bill, inputs.price, want);
}

/**
 * A price below a quarter of what they all cost is hardly for all of them, since nobody means to lose so much; and of
 * six or more, a box's worth, it may be the price of each. From memory.
 */
const hardlyAll = { share: 1 / 4, macarons: 6 };

/** A question back where the price may be for one macaron or all, or for a box of nobody knows how many. */
function unclearPrice(inputs: CostInputs, price: number, bill: Bill): Outcome | undefined {
  const { price_for, macarons = 1, boxes } = inputs;
  // "cost 9 for 24, sell 6 a box": of a box of nobody knows how many
  const many = inputs.cost_for ?? inputs.macarons;
  if (
    inputs.boxed === "price" &&
    many !== undefined &&
    many > 1 &&
    inputs.box_of === undefined &&
    boxes === undefined
  )
    return asking("How many macarons go in a box?", "box_of");
  // "i sell them at 2.50", of 36 that cost 37: each of them, or all?
  const isEach =
    price_for === undefined &&
    boxes === undefined &&
    price < bill.total * hardlyAll.share &&
    macarons >= hardlyAll.macarons &&
    price * macarons >= bill.total;
  return isEach
    ? asking(`Is ${moneyText(price, bill.currency)} for one macaron, or for all ${macarons}?`, "price_for")
    : undefined;
}
