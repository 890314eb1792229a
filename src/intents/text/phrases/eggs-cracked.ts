/** Eggs that came cracked are no fault of the shells: "2 of the eggs were cracked already from the shop". */
import { smallNumbers } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "(?:(?:oh|ah|ugh|argh|damn|and|so|well|ok|no|hm|typical|great|btw|by the way),? )*";
const some = `(?:(?:${count}|some|a few|a couple|most|all|half|both|another)(?: more)?(?: of)? )?(?:(?:the|my|our|those|these) )?(?:new )?eggs?`;
const broke = "(?:cracked|broken|broke|smashed|chipped|bust|cracks)(?: shells?)?";
const came =
  "(?:(?:were|was|are|is|came|arrived|had|got|have|has|been|being|already|all|just|turned out|came out|be|also|slightly|a bit) )*";
const where =
  "(?:,? (?:already|before|when i (?:got|came|opened|unpacked)(?: (?:home|them|it|in|back|the [a-z]+))*|(?:from|in|at|on|out of) (?:the |its |their |my )?(?:shop|store|box|carton|market|way home|way back|way|bag|car|supermarket|tray|pack|packet|delivery|fridge|post)|of course|today|again|on arrival|lol|sadly|by the way|too))*";

const known = (word = ""): number => smallNumbers[word] ?? Number(word);

export const eggsCracked = (): readonly Phrase[] => [
  // only told: a nod is all there is to say
  {
    marks: ["egg"],
    from: new RegExp(`^${lead}${some} ${came}${broke}${where}[ .!]*$`, "g"),
    to: "ok",
  },
  // "cracked 2 whites, they weigh 70 g": so much they are
  {
    marks: [" weigh", " come to", " came to", " are ", " together ", " in all "],
    from: new RegExp(
      `\\b((?:${count}) (?:egg )?whites),? (?:and )?(?:(?:they|those|these|it|which|that|together|all|in all) )+(?:(?:weighs?|weighed|comes? to|came to|are|is) (?:together |in all |exactly |about |only )?|(?<=together |in all )(?:about |only )?)(?=\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|oz)\\b)`,
      "g",
    ),
    to: "$1 weigh ",
  },
  // "i have 6 eggs but 2 are cracked"
  {
    marks: ["egg"],
    from: new RegExp(
      `\\b(${count}) eggs(?: (?:here|left|in the box))?,? (?:but|and|only) (${count})(?: of (?:them|those))? (?:are|were|is|was|came|turned out) ${broke}`,
      "g",
    ),
    to: (said = "", all, gone) => {
      const left = known(all) - known(gone);
      return left > 0 ? `${left} eggs` : said;
    },
  },
];
