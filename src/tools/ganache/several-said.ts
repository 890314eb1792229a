/** Several ganaches asked for at once, one of each chocolate. */
import type { Reading, Thing } from "../contract/index.ts";
import { counted, says, type Weighed } from "../lib/find.ts";
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

const inOne = /(?:^| )(?:one\S*|a|same|single) (?:bowl|pot|\S*<[^>]*base=ganache)|together|mixed/;
const asksPart = /how (?:much|many) (?:\S+ )?\S*<[^>]*ingredient=(?:cream|\w*chocolate)/;

/** Dark, milk or white, where "milk" or "white" stands alone too. */
const kindNamed = ({ chocolate, ingredient, color }: Thing): Draft["chocolate"] =>
  chocolate ?? (ingredient === "milk" ? "milk" : color === "white" ? "white" : undefined);

/** What stands behind each weight as far as the next: its kind, its use, and whether it is of a ganache. */
const ordersOf = ({ things }: Reading, weights: readonly Weighed[]) =>
  weights.map(({ grams, amount }, at) => {
    const end = weights[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY;
    const own = things.filter((each) => each.at[0] >= amount.at[1] && each.at[0] < end);
    const kind = own.find(kindNamed);
    return {
      grams,
      kind,
      use: own.find((each) => each.use)?.use,
      isGanache: own.some((each) => each.base === "ganache"),
      isOther: own.some(({ base }) => base !== undefined && base !== "ganache" && base !== "filling"),
    };
  });

const alike = /<(?:weight|number)> (?:of )?(?:each|apiece)(?: |$)|(?:^| )each (?:at |of )?\S*<weight>/;

/** "half a kilo each of dark and milk ganache": one weight, or the same one handed to each of them. */
function kindsAlike(reading: Reading, [only, ...others]: readonly Weighed[]): Draft[] | undefined {
  if (!only || says(reading, inOne)) return undefined;
  const isHanded = others.every(({ amount }) => amount.at[0] === only.amount.at[0]);
  if (others.length > 0 ? !isHanded : !says(reading, alike)) return undefined;
  const named = reading.things.filter(kindNamed);
  const kinds = [...new Set(named.map(kindNamed))];
  const isWhole =
    reading.things.some((each) => each.base === "ganache") &&
    reading.things.every((each) => each.ingredient !== "cream") &&
    named.every((each) => !/choc|couverture/.test(each.text));
  return isWhole && kinds.length > 1
    ? kinds.map((chocolate) => ({ chocolate, total_g: only.grams }))
    : undefined;
}

/**
 * "150 g dark for a drip and 150 g milk for filling, how much cream for each": one ganache a chocolate. "150 g dark and
 * 150 g milk ganache" are the weights of the whole.
 */
export const ofEachKind: GanacheWay = ({ reading, weights, want }) => {
  const each = kindsAlike(reading, weights);
  if (each) return each;
  const orders = ordersOf(reading, weights);
  const own = orders.filter(({ kind }) => kind);
  const named = new Set(own.map(({ kind }) => kind && kindNamed(kind)));
  if (own.length < 2 || named.size < own.length || own.some(({ isOther }) => isOther)) return undefined;
  if (weights.some((each) => each.thing?.ingredient === "cream") || says(reading, inOne)) return undefined;
  if (want.want !== undefined && want.want !== "build") return undefined;
  const isKind = own.every(({ kind }) => !/choc|couverture/.test(kind?.text ?? ""));
  const isNamed =
    own.at(-1)?.isGanache === true ||
    (own[0]?.isGanache === true && own.every(({ isGanache, use }) => isGanache || use !== undefined));
  const areWhole = own.length === orders.length && isKind && isNamed && !says(reading, asksPart);
  // "200 g dark and 150 g milk" may be a chocolate and what goes into it
  if (!areWhole && own.some(({ kind }) => !kind?.chocolate)) return undefined;
  return own.map(({ grams, kind, use }) => ({
    chocolate: kind && kindNamed(kind),
    ...(areWhole ? { total_g: grams } : { chocolate_g: grams }),
    ...(use ? { use } : {}),
  }));
};
