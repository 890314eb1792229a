/** "the almond flour goes into shells, what else", behind its cups in grams: so much of it. */
import type { Reading } from "../../tools/contract/index.ts";
import { sameIngredient } from "../../tools/lib/lines.ts";
import type { State } from "./state.ts";

/** What asks for the rest of a mix that it goes into. */
const asksMix = /<[^>]*(?:base|count=shells)=|(?:^| )(?:shells|batter|recipe)(?:<\S+)?(?: |$)/;
const asksOthers =
  /\b(?:what|how much|whats|the (?:rest|others?)|everything) (?:else|other|of|\S+ else|\S+ other|do|is|are|would|goes|for|$)/;

const thatMuch =
  /\bthat (?:much|many grams|amount|weight)(?: of)?(?: the)? (?=(?:egg|whites|almond|ground|powdered|icing|granulated|caster|castor|sugar|butter|cream|chocolate|dark|milk|white)\b)/;

/** What is to be made of so much of it. */
const fromIt =
  /^(?:(?:and|so|ok|now|then|please|can you|could you|right) )*(?:(?:base|build|scale|size|work out|make|do|give me|plan) )?(?:the |my |a )?(shell|batter|ganache|buttercream)s?(?: recipe)? (?:on|from|to|with|by|around|out of|for) (?:that|it|this)(?: (?:much|amount|weight|please|then))*[ ?.!]*$/;

/** "bag's empty after that. other three for the shells?": the other lines of the recipe. */
const otherLines =
  /^(?:.*[.,;] )?(?:(?:and|so|ok|then|whats|what are|what about) )*(?:the )?(?:other (?:three|3|things|ingredients|lines|ones|weights)|others)(?: (?:for|in|of) (?:the |my )?(?:shells?|batter|recipe|shell recipe))[ ?.!]*$/;

/** The sentence with the weight said; undefined where none is meant. */
export function justWeighed(
  { text, mask, amounts, things }: Reading,
  { last, table }: State,
): string | undefined {
  const mass = table.mass;
  if (last?.tool !== "convert" || !mass) return undefined;
  if (mass.thing && otherLines.test(text) && things.every((each) => !each.ingredient))
    return `${mass.grams} g ${mass.thing}, what else for the shells`;
  if (amounts.length > 0) return undefined;
  // "so use that much whites"
  const asMuch = thatMuch.exec(text)?.[0];
  if (asMuch !== undefined) return text.replace(asMuch, `${mass.grams} g `);
  if (!mass.thing) return undefined;
  // "base the shells on that", "shells from that much"
  const mix = fromIt.exec(text)?.[1];
  if (mix !== undefined && things.every((each) => !each.ingredient))
    return `${mass.grams} g ${mass.thing}, ${mix} recipe`;
  if (/\b(?:thats|that is|its|it is|those are)\b/.test(text)) return undefined;
  if (!asksMix.test(mask) || !asksOthers.test(text)) return undefined;
  const weighed = [...(table.recent ?? []), mass];
  const named = things.flatMap((thing) => {
    const own = weighed.findLast(
      (each) => each.thing && sameIngredient(each.thing, thing.ingredient ?? thing.text),
    );
    return own ? [{ thing, own }] : [];
  });
  const [only, ...others] = named;
  if (!only || others.length > 0) return undefined;
  const [from] = only.thing.at;
  const lead = /(?:\b(?:all )?(?:the|that|this|my|of the|those) )$/.exec(text.slice(0, from))?.[0];
  return lead === undefined
    ? undefined
    : `${text.slice(0, from - lead.length)}${only.own.grams} g ${text.slice(from)}`;
}
