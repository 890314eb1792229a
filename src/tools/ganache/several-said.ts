/** Several ganaches asked for at once, one of each chocolate. */
import type { Reading } from "../contract/index.ts";
import { counted, says } from "../lib/find.ts";
import { countedShares, namedShares } from "../lib/shares.ts";
import type { Draft, GanacheWay } from "./turn.ts";

const kinds = ["dark", "milk", "white"] as const;

/** "ganache for 24 macarons, 12 dark and 12 white": one a chocolate, each for its own macarons. */
export function kindsOfOrder(reading: Reading): Draft[] | undefined {
  const macarons = counted(reading, "macarons");
  if (macarons === undefined || says(reading, /one (?:bowl|ganache)|mixed|together/)) return undefined;
  const shares = countedShares(reading, macarons) ?? namedShares(reading) ?? [];
  const drafts = shares.flatMap(({ name, share }): Draft[] => {
    const chocolate = kinds.find((each) => each === name.split(" ")[0]);
    const count = macarons * share;
    return chocolate && Number.isInteger(count)
      ? [{ chocolate, macarons: count, of_macarons: macarons, want: "build" }]
      : [];
  });
  return shares.length > 0 && drafts.length === shares.length ? drafts : undefined;
}

/** "150 g dark for a drip and 150 g milk for filling, how much cream for each": one ganache a chocolate. */
export const ofEachKind: GanacheWay = ({ reading, weights, want }) => {
  const own = weights.filter((each) => each.thing?.chocolate);
  const areKinds = own.length > 1 && new Set(own.map((each) => each.thing?.chocolate)).size === own.length;
  if (!areKinds || weights.some((each) => each.thing?.ingredient === "cream")) return undefined;
  if (want.want !== undefined && want.want !== "build") return undefined;
  return own.map(({ grams, thing, amount }, at) => {
    const end = own[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY;
    const use = reading.things.find((each) => each.use && each.at[0] > amount.at[0] && each.at[0] < end)?.use;
    return { chocolate: thing?.chocolate, chocolate_g: grams, ...(use ? { use } : {}) };
  });
};
