/** A second batch told right behind a note, with no order of its own: "and from thursday: fig batch, shiny, 9/10". */
import { leadingIn } from "../../../data/words/openers.ts";
import { sign } from "../lib/cue.ts";

const leads = `(?:(?:${leadingIn}|also|plus|then|next|lastly|finally|,) )*`;
const anew = "(?:and|also|then|next|plus|another|one more|now|lastly|finally|second|secondly|same again)";
/** "another one", "the next batch", "same for": they lead to the batch and are none of its words. */
const which =
  "(?:(?:this|that|the|a|an|another|one more|next|last|same|again|it|one|ones|batch|bake|entry|note|thing|{count=batches}|from|for|on|of|with|had|did|made|baked|i|we|there was|was) )*";
const asked =
  "(?!.*(?:^| )(?:how|what|whats|which|why|when|where|who|(?:did|do|does) (?:i|we|you|it|they|the|my)|show|find|list|[?])(?: |$))";
/** A number that only an order of another kind has. */
const noOrder = "(?!.*(?:{weight}|{money}|{percent}|timers?|alarm|shelf|recipe|formula|plan))";
const batch = "(?:(?:some|the|my|a|an|of|few|more|dozen|{number}) )*{taste}(?: (?:and )?{taste})*";
/** How it came out: without it nothing says that it is told. */
const told =
  "(?=.*(?:{symptom}|\\S*<number,fraction>|out of {number}|(?:rated|rating|scored?) {number}|{temperature}|baked|rested|(?: |^)(?:good|great|nice|lovely|shiny|perfect|delicious|tasty|super|bad|awful|fine|best|worst|dull|bland|soapy|sweet|sour|gorgeous|beautiful|flat|dry|wet|chewy|crisp|smooth|crunchy|pale|fab|yum\\S*)(?: |$)))";

const filler =
  "(?:one|ones|again|too|{count=batches}|i|we|it|there|was|were|made|baked(?:<\\S*>)?|did|had|another|a|the)";
const ofKind = "(?: (?:one|ones|{count=(?:batches|macarons|shells)}))?";
/** "on monday the lemon ones tasted better": more of the batch there is. */
const later =
  "(?!.*(?:^| )(?:tasted?|tastes|is|are|got|even|much) (?:\\S+ )?(?:better|worse|sharper|softer|nicer)(?: |$))";

/** Signs that count only behind a note. */
export const anotherBatch: readonly string[] = [
  // by its day: "thursdays one: mango, cracked"
  `^${asked}${noOrder}${leads}${which}{when}(?: ${filler})* [:-] ${batch}${ofKind}`,
  `^${asked}${noOrder}${later}${told}${leads}${which}{when}(?: ${filler})*(?: ,)?(?: ${filler})* ${batch}${ofKind}`,
  // by a word for one more: "next one: mango batch, cracked, 4/10"
  `^${asked}${noOrder}${told}${leads}${anew} ${which}(?:[:,-] )?${batch} (?:one|ones|{count=(?:batches|macarons|shells)}|[,:-])`,
];

const signs = anotherBatch.map(sign);

const oneMore = /(?:^| )(?:another|next|one more|same again)(?: |$)|<when>/;

/** @param before the flavors of the note right before: of the same ones more is told, where no word says one more */
export const isAnotherBatch = (mask: string, said: readonly string[], before: readonly string[]): boolean =>
  signs.some((each) => each.test(mask)) &&
  (oneMore.test(mask) || !said.every((each) => before.includes(each)));

/** Her words without those that only lead to it: "from thursday: fig batch, shiny". */
export const withoutLead = (text: string): string =>
  text
    .replace(
      /^(?:(?:and|also|plus|then|next|lastly|finally|now|ok|okay|oh|so|same again|same)\b[\s,:–-]*)+/i,
      "",
    )
    .replace(
      /^(?:(?:another|one more|the next)(?: (?:one|batch|note|entry))?(?=\s|[:,])|one(?=\s*[:,]))[\s:,–-]*/i,
      "",
    )
    .trim();
