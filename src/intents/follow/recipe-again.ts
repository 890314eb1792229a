/**
 * "neighbour brought more, so double the recipe", "the house formula for the same weight", "what does the batter come to":
 * of the recipe that was scaled just before, or from which so many were counted since.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

interface Again {
  text: string;
  topic?: Topic;
}

const polite = "(?: (?:then|now|please|pls|instead|again|in all|in total|altogether|all told))*[ .?!]*$";

/** There is more than there was; of what, a weight behind it may be. */
const moreThere = new RegExp(
  `^${opening}(?:(?:i|we|ive|weve|they|she|he|(?:(?:the|my|our) )?[a-z]+) )?(?:(?:just|have|has|then|since|also|went out and) )*(?:bought|brought|got|found|fetched|borrowed|opened|picked up)(?: (?:me|us|in|round|over|some|plenty|lots|a lot|a bit|enough))* more(?: (?:now|today))?( (?!(?:so|and|then|but|now|today)\\b)(?:of )?[a-z]+(?: [a-z]+)?)?(?:(?: ,)? (?:so|and|then|but)| ,| \\.)+ (?=.)`,
);
const sumsUp = /\b(?:its|makes|thats|total|altogether|in all|all told|all together)\b/;
const isWhole = /\b(?:recipe|formula|batch|lot|everything)\b/;

/** The rest of it, where what is said first only says why. */
function withoutReason(text: string, { amounts }: Reading): string {
  const [lead = "", named] = amounts.length === 1 ? (moreThere.exec(text) ?? []) : [];
  const rest = text.slice(lead.length);
  const isAhead = /\d/.test(lead);
  return isAhead || (named !== undefined && !isWhole.test(rest)) ? text : rest;
}

const sameWeight = new RegExp(
  `^${opening}(?:(?:what|whats|how|about|with|would|is|give me|show me|do|try|use|using|in|it) )*(?:the |our )?house (?:formula|recipe|one|mix|version|shells?)(?: (?:be|need|take))* (?:for|at|to|of|with|by|in) (?:exactly )?(?:the same|that|this|as much) (?:total )?(?:weight|total|batter|amount of batter|weight of batter|batter weight|size of batch)${polite}`,
);

/** "house recipe with the same whites": of those that were weighed. */
const sameWhites = new RegExp(
  `^${opening}(?:(?:what|whats|how|about|with|would|is|give me|show me|do|try|use|using|in|it) )*(?:the |our )?house (?:formula|recipe|one|mix|version)(?: (?:be|need|take))* (?:for|with|on|from|of) (?:exactly )?(?:the same|those|these|as many) (?:egg )?whites${polite}`,
);

/** What the recipe on the table weighs. */
const weightOf = ({ table }: State): number | undefined => {
  const grams = (table.recipe ?? []).reduce((sum, each) => sum + each.grams, 0);
  return grams > 0 ? grams : undefined;
};

const batterSum = new RegExp(
  `^${opening}(?:(?:what|how much) (?:does|will|would|should|must) (?:the|that|this|my|all the|all that) (?:batter|bowl of batter)(?: then| all)? (?:come to|come out at|weigh|add up to|amount to|total|be)|(?:what|whats|what's|how much) (?:is |would be )?(?:the |my )?(?:batter (?:weight|total)|(?:total )?weight of the batter)|(?:the )?batter (?:comes to|adds up to|weighs) (?:what|how much))${polite}`,
);

/** "what would 540 g of it take", behind the sugar there was of it: so much in all, and no sugar. */
const weightOfIt =
  /^(?:(?:and|so|ok|then|now) )*(?:(?:what|how much of (?:each|everything))(?: of each)? (?:would|will|does|do|should|must|goes|go|is)(?: i need| need to go)?(?: in| into| for| to make)?|(?:what )?for|make) (?:about )?# (?:of it|of that|of the (?:curd|whole thing|lot|mix|batter)|in all|all told|altogether)(?: (?:take|need|want|be|use|be made of|come out of|have in it))?(?: ,)?(?: (?:then|now|please))*[ ?.!]*$/;

const timesIt = /^(?:(?:double|halve|treble|triple|quadruple|half|twice) |[^?]*\b(?:times|the recipe)\b)/;
const notThis = /\b(?:house|original|my|our|full|card)\b/;

/** The recipe, of which only the number of macarons was asked since. */
function beforeCount({ past = [] }: State): Topic | undefined {
  const topic = past.findLast(({ tool }) => tool !== "shells");
  return topic?.tool === "scale" ? topic : undefined;
}

/** "double the recipe": her own as it was told, and the house's as it was sized. */
function timesBefore(rest: string, times: number, { inputs }: Topic): string {
  const isOwn = inputs.lines !== undefined || inputs.formula !== undefined;
  return isOwn ? rest : `that times ${times}`;
}

/** Undefined where nothing of the kind is said of a recipe. Pure. */
export function recipeAgain(reading: Reading, state: State): Again | undefined {
  const { last } = state;
  if (!last || (last.tool !== "scale" && last.tool !== "shells") || reading.whens.length > 0)
    return undefined;
  const text = spaced(reading.text);
  if (reading.amounts.length === 0) {
    if (batterSum.test(text) && state.table.mass?.thing === "batter" && last.tool === "scale")
      return { text: "how much batter is that in all" };
    const whites = state.table.recipe?.find(({ name }) => name === "whites");
    if (last.tool === "scale" && whites && sameWhites.test(text))
      return { text: `house formula with ${whites.grams} g whites` };
    const grams = last.tool === "scale" && sameWeight.test(text) ? weightOf(state) : undefined;
    return grams === undefined ? undefined : { text: `house formula for ${grams} g batter` };
  }
  const rest = withoutReason(text, reading);
  const [times, ...others] = reading.amounts;
  const isTimes = times !== undefined && others.length === 0 && (times.unit === "times" || times.fraction);
  if (last.tool === "shells") {
    const topic =
      isTimes && isWhole.test(rest) && timesIt.test(rest) && !notThis.test(rest)
        ? beforeCount(state)
        : undefined;
    return topic && times ? { text: timesBefore(rest, times.value, topic), topic } : undefined;
  }
  const put = times ? rest.replace(times.text, "#") : rest;
  if (times?.dim === "weight" && others.length === 0 && last.inputs.have && weightOfIt.test(put))
    return { text: `${times.text} in all` };
  // "found more, its 208 g total" is of what was found
  const isSaid = isTimes || isWhole.test(rest) || (times?.dim === "weight" && !sumsUp.test(rest));
  return rest !== text && isSaid ? { text: rest } : undefined;
}
