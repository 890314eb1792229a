/** For how many macarons a sum is, and the size and filling of macarons whose own cost is asked. */
import type { Reading } from "../contract/index.ts";
import { bareNumbers, diameter, says } from "../lib/find.ts";
import { countsOf } from "./count.ts";
import type { Draft } from "./draft.ts";
import type { Sum } from "./money.ts";

/** For how many macarons each side was said. */
export function readCounts(reading: Reading, money: readonly Sum[]): Draft {
  const counts = countsOf(reading, money);
  const of = (side: "cost" | "price") => {
    const own = counts.filter((_, at) => {
      const { use } = money[at] as Sum;
      return side === "price"
        ? use === "price"
        : use === "cost" || use === "ingredients" || use === undefined;
    });
    const [first] = own;
    return first && own.every((each) => each.macarons === first.macarons) ? first : undefined;
  };
  const [cost, price] = [of("cost"), of("price")];
  const boxed = cost?.boxed ? "cost" : price?.boxed ? "price" : undefined;
  return {
    ...(cost?.macarons !== undefined ? { cost_for: cost.macarons } : {}),
    ...(price?.macarons !== undefined ? { price_for: price.macarons } : {}),
    ...(boxed ? { boxed } : {}),
  };
}

/** Size and filling of macarons whose own cost is asked. */
export function readMaking(reading: Reading, draft: Draft, formula: string | undefined): Draft {
  if (draft.lines || draft.cost !== undefined || draft.ingredients !== undefined) return {};
  const more =
    draft.macarons !== undefined && (draft.fitted || draft.want === "cost")
      ? bareNumbers(reading)[0]?.value
      : undefined;
  const mix = reading.things.find((each) => each.base === "ganache" || each.base === "buttercream")?.base;
  const kind = reading.things.find((each) => each.chocolate)?.chocolate;
  const size = diameter(reading);
  return {
    ...(more !== undefined && Number.isInteger(more) ? { macarons: more } : {}),
    ...(size !== undefined ? { diameter_mm: size } : {}),
    ...(mix && !formula ? { filling: mix } : {}),
    ...(kind && mix ? { chocolate: kind } : {}),
    ...(formula && says(reading, /<count=macarons> .*(?:with|of|filled)|fill(?:ed|ing)? /)
      ? { fitted: true }
      : {}),
  };
}
