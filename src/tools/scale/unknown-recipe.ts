/** "cloud mix scaled to 150 g almond flour": a recipe by a name that nobody has saved is never the house formula. */
import { leadingIn, takingBack } from "../../../data/words/openers.ts";
import { houseWords } from "../../../data/words/recipe-words.ts";
import type { Reading } from "../contract/index.ts";

const opens = `(?:(?:${leadingIn}|${takingBack}|,|can|could|would|will|you|i|we|want|need|wanna|to|like|lets|let|me|us|what|whats|how|do|does|doing|making|baking|mixing|much|is|if) )*`;
/** A name's words: plain ones, tastes and colors, the shells or the batter that it makes. */
const name = "((?:(?:[a-z]+|[a-z_]+<(?:[^>]*taste=|color=|count=shells|base=batter)[^>]*>) ){1,4}?)";
const amount = "\\S*<(?:weight|number|factor|percent)";
const link =
  "(?:(?:up|down|out|on|for|to|by|from|with|at|using|so|that|off|only|just|about|around|times|come|comes|a|total|of|my|the) )+";

const ways = [
  // "scale cloud mix to 150 g almond flour", "make my cloud mix from three whites"
  new RegExp(
    `^${opens}(?:scale|rescale|resize|upscale|shrink|stretch|make|use|bake|weights|amounts|quantities) (?:(?:up|down|out|for|of) )?(?:(?:the|my|our|a|an) )?${name}${link}${amount}`,
  ),
  // "make a batch of cloud shells with 66 g whites", "cloud shells from 66 g whites"
  new RegExp(
    `^${opens}(?:(?:make|bake|do|mix|have) )?(?:(?:(?:a|one|another|half|the|my|\\S*<number,fraction>) )*\\S*<count=batches\\S* of )?(?:(?:the|my|our) )?((?:[a-z]+ ){1,2}(?:[a-z_]+<(?:count=shells|base=batter)[^>]*> ))(?:from|with|using|out of|for) (?:(?:only|just|about) )?\\S*<(?:weight|number)[^>]*> (?:\\S+ )?\\S*<[^>]*(?:ingredient=|count=macarons)`,
  ),
  // "double cloud mix", "half the cloud mix", "1.5 times cloud mix"
  new RegExp(
    `^${opens}(?:make |scale )?(?:(?:a|one) )?(?:double|triple|halve|half|quarter|\\S*<factor\\S*|\\S*<number,fraction\\S*|\\S*<number> times) (?:of )?(?:(?:the|my|our|a|batch) )*${name}(?:(?:please|pls|then|now|instead|[?.!]) )*$`,
  ),
  // "cloud mix scaled to 150 g almond flour", "cloud mix times two"
  new RegExp(
    `^${opens}(?:(?:the|my|our) )?${name}(?:scaled|rescaled|resized|doubled|halved|tripled|times|x)(?: (?:up|down|to|by|for|from|with))* (?:${amount}|[?] $|$)`,
  ),
  // "cloud mix for 40 macarons", "the cloud recipe from 75 g whites"
  new RegExp(
    `^${opens}(?:(?:the|my|our) )?${name.replace("{1,4}?)", "{1,3}?(?:mix|recipe|formula|card) )")}(?:for|from|with|at|to|using) (?:(?:only|just|about) )?${amount}`,
  ),
  // "how much almond flour for the sunday mix with 90 g whites"
  / (?:for|of|in|by|from|with|use|using|want|make|need|take) (?:the|my|our) ((?:(?:[a-z]+|[a-z_]+<when>) ){1,2}?(?:mix|recipe|formula) )/,
  // "my recipe called snowy, how much almond for 60 g whites"
  new RegExp(` (?:recipe|formula|card) (?:called|named) ((?:[a-z]+ ){1,3}?)(?:[,:] |.*${amount})`),
];

/** A sentence's own joints: no name has them. */
const inNoName =
  /^(?:for|to|with|from|by|in|on|at|of|weigh|measure|need|want|do|does|is|are|i|we|you|if|how|what|much|many|it|that|this|and|or|so|than|when)$/;

/** "no wait times 1.2": how a turn begins is no recipe either. */
const begins = new RegExp(`^(?:${leadingIn}|${takingBack})$`);

const ofRecipe = /(?:^| )(?:recipe|formula|card)$/;

/** The name of such a recipe; undefined where the house formula or something said before is meant. Pure. */
export function unknownRecipe({ mask }: Pick<Reading, "mask">): string | undefined {
  for (const way of ways) {
    const said = way.exec(`${mask} `)?.[1]?.trim();
    if (said === undefined) continue;
    const words = said.split(" ");
    if (words.some((word) => inNoName.test(word))) continue;
    const isOwn = words.some(
      (word) => /^[a-z_]+(?:<when>)?$/.test(word) && !houseWords.has(word) && !begins.test(word),
    );
    // "my pistachio recipe", where no such recipe was saved; pistachio shells are the house formula's
    const isTaste = /(?:taste=|color=)/.test(said) && ofRecipe.test(said) && !/shells|batter/.test(said);
    const plain = said.replace(/<[^>]*>/g, "").replaceAll("_", " ");
    return isOwn || isTaste ? plain.replace(/ (?:recipe|formula|card)$/, "") : undefined;
  }
  return undefined;
}
