/** "sieved dry mix 298 how much whites": almond flour and powdered sugar in equal weights, together. */
import type { Phrase } from "./phrase.ts";

const sifted = "(?:(?:my|the|a|of|sieved|sifted|ready|weighed|whole|almond) )*";
const dry = "dry (?:mix(?:ture)?|ingredients|stuff|blend)";
/** Nothing of it may be told by itself as well: then that is what is weighed. */
const together =
  "(?!.*\\b(?:almond flou?r|ground almonds?|almond meal|almonds|af|powdered sugar|icing sugar|confectioners)\\b)";
const grams = "(\\d{2,4}(?:[.,]\\d+)?) ?(?:g|gr|grams?)?";
/** What the weight is of stands before it: an ingredient behind it would have it. */
const ends =
  "(?= ?(?:$|[?;!,]|\\.(?!\\d))| (?:so |and |then |now )*(?:how|what|whats|what's|which|need|for|please|pls|in all|together|altogether)\\b)";
/** What goes with it by weight; how it is folded in is asked of no weight. */
const asked =
  "(?=.*\\b(?:whites|eggs?|sugar|caster|granulated|meringue|recipe|the rest|batter|macarons?)\\b)";
const asks = "(?=.*\\b(?:how much|how many|what|whats|for|need)\\b)";

export const dryMixWeighed = (): readonly Phrase[] => [
  {
    marks: ["dry mix", "dry ingredients", "dry stuff", "dry blend"],
    from: new RegExp(
      `^(?=.{0,300}$)${together}${asked}${asks}((?:.* )?)${sifted}${dry}(?:,|:| -)? ?(?:(?:is|are|weighs|weigh|weighed|comes to|came to|at|of|it is|its|it weighs|,) )*${grams}${ends}`,
      "g",
    ),
    to: "$1$2 g tant pour tant",
  },
  {
    marks: ["dry mix", "dry ingredients", "dry stuff", "dry blend"],
    from: new RegExp(
      `^(?=.{0,300}$)${together}${asked}${asks}(.*?)(?<![\\d.,])${grams} ${sifted}${dry}`,
      "g",
    ),
    to: "$1$2 g tant pour tant",
  },
];
