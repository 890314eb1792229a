/** "How clever.", "ta very much.", "bless you!": heard before a question, and no question though it begins with "how". */
import { praiseWords, thanksWords } from "../../../data/words/small-talk.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { carriesAmount, type Ear, type Part } from "./part.ts";

const lead = "(?:(?:oh|ooh|ah|aw|well|my|gosh|goodness|goodness me|and|now|but|right) )*";
const praise = [
  ...praiseWords,
  ..."clever kind good nice useful helpful handy thoughtful delightful charming marvellous marvelous odd strange peculiar funny curious exciting impressive interesting smart fun silly satisfying reassuring encouraging annoying frustrating maddening typical generous patient true quick".split(
    " ",
  ),
].join("|");
const thanks = thanksWords.join("|");
const degree =
  "(?:very |ever so |so |really |most |awfully |terribly |absolutely |quite |too |just |truly )*";

/** With "how" in front only what nobody asks the measure of: "how good" is one, "how long" none. */
const exclaimed = new RegExp(
  `^${lead}(?:${[
    `how ${degree}(?:${praise})(?: (?:of you|that is|is that|thats|it is|you are|this is|indeed))?`,
    `(?:what a|what an|such a) (?:[a-z]+ ){0,2}[a-z]+(?: (?:you are|that is|it is|this is|youve been|it has been|its been))?`,
    `(?:thats|that is|that was|its|it is|youre|you are|youve been|this is|sounds|looks) ${degree}(?:an? )?${degree}(?:${praise}|star|angel|marvel|gem|treasure|dear|darling|love|lifesaver|life saver|wonder|genius|help|godsend|good help|great help)(?: (?:of you|indeed|thank you|thanks|to know|to hear|you are))?`,
    `(?:isnt|arent|wasnt|werent) (?:that|you|it|this|they) (?:an? |just )?${degree}(?:${praise}|star|angel|marvel|gem|dear|wonder|treat)`,
    `(?:${thanks}|thank you|many thanks|much obliged|much appreciated|most grateful|im (?:much |very |most )?(?:obliged|grateful)|bless you|bless your heart|thanks a (?:lot|million|bunch))(?: (?:${thanks}|thank you|to you|very|ever|so|much|muchly|kindly|awfully|indeed|again|loads|lots|a lot|a million|a bunch|heaps|love|dear|darling|my love|my dear|mate|pet|hun|duck|for (?:that|this|it|all that)|for (?:your|the) help))*`,
    "(?:fancy that|well i never|i never|imagine that|who knew|would you believe it|you dont say|(?:would|can) you believe (?:it|that|this)|do you know|dyou know|(?:do )?you know what|guess what|you see|goodness me|my word|heaven help me|whatever next|what is the world coming to|whats the world coming to|good heavens|bless my soul|what do you know|that was easy|just the ticket|just the job|spot on)",
  ].join("|")})$`,
);

const isStop = (item: Item | undefined) =>
  item?.is === "sign" && [",", ".", "!", "?", ";", "-"].includes(item.text);
const leansOn = new Set("and what how but so can could would when which why now also".split(" "));

/** How many items such an exclamation at the start of a turn takes, its stop included; none where nothing follows it. */
export function exclamation(items: Part, ear: Ear): number {
  const stop = items.findIndex(isStop);
  // "well, how clever. ..."
  const from = stop === 1 ? 2 : 0;
  const end = from === 0 ? stop : items.findIndex((item, at) => at >= from && isStop(item));
  if (end < 1 || end > 12) return 0;
  const said = items.slice(from, end);
  if (!said.every((item) => item.is === "word")) return 0;
  const bySelf = items[end];
  // "what a comma": behind a comma only thanks and praise are over
  const isComma = bySelf?.is === "sign" && bySelf.text === ",";
  const mask = ear.mask(said);
  if (!exclaimed.test(mask) || (isComma && /^(?:\S+ )?(?:what a|what an|such) /.test(mask))) return 0;
  let to = end + 1;
  while (isStop(items[to])) to += 1;
  const rest = items.slice(to);
  if (rest.length === 0) return 0;
  return carriesAmount(rest) ||
    ear.claimed(rest) !== undefined ||
    leansOn.has(wordOf(rest[0])) ||
    rest.length > 4
    ? to
    : 0;
}
