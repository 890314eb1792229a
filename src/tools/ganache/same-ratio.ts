/** "scale it to 600 g in all", behind a ganache told by its chocolate and its cream: as it was, and not by the book. */
import { says } from "../lib/find.ts";
import type { GanacheWay } from "./turn.ts";

const pointsAtIt =
  /(?:^| )(?:scale|scaled|make|take|bring|stretch|blow|double|get|want|need) (?:\S+ ){0,3}?(?:it|that|this|the same|same)(?: |$)|(?:^| )(?:of|from) (?:it|that|this|the same)(?: |$)|(?:^| )same (?:ratio|way|mix|one|again)/;

/** The ratio that was told holds for the new whole; nothing where another part or use is asked for. */
export const sameRatio: GanacheWay = ({ reading, before, weights, want, use }) => {
  const { chocolate_g, cream_g, chocolate } = before ?? {};
  const [only, ...more] = weights;
  if (!chocolate_g || !cream_g || !only || more.length > 0 || use || want.want) return undefined;
  if (only.thing && only.thing.base !== "ganache") return undefined;
  // "and with 210 g of it", behind other weights of cream: of the cream
  if (!says(reading, pointsAtIt) || says(reading, /^(?:(?:and|or|so|then|what about|what if) )*with /))
    return undefined;
  return {
    ...(chocolate ? { chocolate } : {}),
    chocolate_g: undefined,
    cream_g: undefined,
    ratio: chocolate_g / cream_g,
    total_g: only.grams,
  };
};
