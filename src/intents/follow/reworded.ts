/** What points at the answer before in words of its own, put as the calculator that gave it is asked plainly. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { halfOfKind } from "./half-of-kind.ts";
import { intoPart } from "./into-part.ts";
import { makingsAsked } from "./makings-asked.ts";
import { outOfBatter } from "./out-of-batter.ts";
import { spaced } from "./spaced.ts";
import { splitToo } from "./split-too.ts";
import type { State } from "./state.ts";
import { timesAlone } from "./times-plain.ts";

interface Rewording {
  /** The calculator that answered last. */
  after: readonly string[];
  from: RegExp;
  /** Sentences with an amount are meant, and no others; "any": both. */
  amounts?: true | "any";
  /** Not where this input was said before. */
  unless?: string;
  to: string;
}

const it = "(?:it|that|this|they|those|one|the thing|that one|this one|the last one)";
const later = "(?:(?:now|then|again|exactly|actually|please|pls|though|anyway) ?)*";

const place =
  "(?:the|my|our|her|his|their|that) (?:car|van|boot|trunk|truck|bus|train|taxi|tent|shed|garage)";
const degrees =
  "\\d+(?:\\.\\d+)? ?(?:°|degrees?|c|f|deg|celsius|fahrenheit|°c|°f)(?: (?:c|f|celsius|fahrenheit))?";

const rewordings: readonly Rewording[] = [
  // "and it was 34 c in the car", behind how long they were out
  {
    after: ["keep"],
    amounts: true,
    from: new RegExp(
      `^(?:${opening}|(?:and|but|so|ok|well) )*(?:it (?:was|is|got to|hit|reached|must have been)|its|there was) (?:about |around |over |nearly |like )?(${degrees}) (?:in|inside|at the back of) ${place}[ ?.!]*$`,
    ),
    to: "it was $1",
  },
  {
    after: ["keep"],
    amounts: true,
    from: new RegExp(
      `^(?:${opening}|(?:and|but|so|ok|well) )*${place} (?:was|is|got to|hit|reached|must have been|got up to)(?: (?:at|about|around|over|nearly|like))* (${degrees})(?: (?:inside|in there|hot|warm|then|too))*[ ?.!]*$`,
    ),
    to: "it was $1",
  },
  // "it was hot in the car"
  {
    after: ["keep"],
    from: new RegExp(
      `^(?:${opening}|(?:and|but|so|ok|well) )*(?:it (?:was|got|is)|its) (?:(?:quite|very|really|so|pretty|rather|that|boiling) )*hot (?:in|inside) ${place}(?: (?:though|actually|too))*[ ?.!]*$`,
    ),
    to: "it was really hot",
  },
  // "and gel... no wait, flavor for the rose bowl": what was said last is meant
  {
    after: ["split", "dose"],
    from: /^(?:(?:and|so|ok|then|now) )*(?:the )?(?:gel|powder|flavou?r|extract|oil|paste|colou?r|gel colou?r|powder colou?r)(?: ?[,.])* ?(?:no,? wait|no ,? wait|wait ,? no|no ,? hang on|no ,? sorry|sorry ,? no|scratch that|no ,? i mean|i mean) ?,? (?=(?:the |how much )?(?:gel|powder|flavou?r|extract|oil|paste|colou?r))/,
    to: "",
  },
  // "thats how much a macaron", "how much is that a piece", "each one then", behind a price
  {
    after: ["cost"],
    amounts: "any",
    from: new RegExp(
      `^(?:${opening}|(?:and|so|ok|then|but|now) )*(?:(?:(?:thats|that is|that's|its|it is|and|so|what|whats|what's|what is) )*(?:how much|what|what does|what's|whats) ?(?:(?:is|does|do|would|will|are) )?(?:(?:that|it|this|they|those) )?(?:(?:is|be|come to|cost|work out(?: at| to)?|make|comes to|come out at) )?(?:(?:for|per|by the|by) )?)(?:a|an|each|per|one|1|for one|the|single|every)?(?: single| one)? ?(?:macaron|mac|piece|each|apiece|shell pair|one)(?: (?:then|please|pls|now|each))*[ ?.!]*$`,
    ),
    to: "per macaron?",
  },
  // "when does that go off", "what time will it beep", "when am i being reminded"
  {
    after: ["timer"],
    from: new RegExp(
      `^${opening}(?:at )?(?:(?:what|which) time|when(?:'?s)?|what time's|whens|how soon) (?:(?:does|do|will|would|is|are|should|ll|s|was|am) )*(?:${it}|i|you|we) (?:(?:going|gonna|go|be|being|to|get|getting|due|supposed|meant|set|tell|call) )*(?:off|goes? off|ring\\w*|beep\\w*|ding\\w*|buzz\\w*|ping\\w*|bleep\\w*|sound\\w*|chim\\w+|alarm|finish\\w*|end\\w*|up|over|run out|reminded|called|told|remind me)(?: (?:off|me))?(?: ${later})?[ ?.]*$`,
    ),
    to: "how long is left on it",
  },
  // "can it be an hour", "could that run for 25 minutes"
  {
    after: ["timer"],
    amounts: true,
    from: new RegExp(
      `^${opening}(?:can|could|may|might|would|should|shall) (?:it|that|this|that one|this one) (?:be|run|go|last|take)(?: for)? (?=(?:an?|half|one|two|three|quarter|\\d)\\b)`,
    ),
    to: "make it ",
  },
  // "read it back to me", "what did you put down"
  {
    after: ["note"],
    from: new RegExp(
      `^${opening}(?:(?:can|could|will|would) you |let me |lets )?(?:please )?(?:(?:read|say|repeat|tell|show|give|play|hear|see|check)(?: (?:me|us))? (?:it|that|this|what (?:you|i|we) (?:wrote|put|noted|have|had|said|got|just wrote|just noted)(?: down)?|that note|the note|the whole (?:thing|note))(?: back| again| out| down| out loud| aloud| over)*|what (?:did|have) (?:you|i|we) (?:just )?(?:put|written?|noted?|got|jotted|say|said)(?: down)?|how does (?:it|that|the note) read)(?: (?:to|for|with) (?:me|us))?(?: ${later})?[ ?.]*$`,
    ),
    to: "show me that note",
  },
  // "and at 5?": nobody doses at so many grams
  {
    after: ["dose"],
    amounts: "any",
    from: new RegExp(
      `^(${opening}(?:(?:and|what about|how about|what if its|or|if|try|make it|do) )*at) (\\d(?:\\.\\d+)?)(?= ?(?:(?:then|instead|please|now|rather) ?)*[?. ]*$)`,
    ),
    to: "$1 $2 percent",
  },
  // "three times that", "3 times as many": of what was worked out, and no recipe
  {
    after: ["fill", "shells"],
    amounts: "any",
    from: new RegExp(
      `^${opening}(?:make (?:it|that) )?(?:three|3) times (?:that|it|as (?:much|many)|the amount|so (?:much|many))(?: (?:then|please|now|instead|again))*[ ?.]*$`,
    ),
    to: "triple that",
  },
  // "one more colour": a bowl for it
  {
    after: ["split"],
    amounts: "any",
    from: new RegExp(
      `^${opening}(?:with |for )?(?:one more|another|an extra|one extra) (?:colou?r|shade|part|portion|piece|share|way)[ ?.]*$`,
    ),
    to: "one more bowl",
  },
  // "ok tell them eleven", behind a plan: an hour, and no number of macarons
  {
    after: ["day"],
    amounts: true,
    from: new RegExp(
      `^${opening}(?:(?:ill|i will|id|lets|can you|just|better) )*(?:tell|let|text|ring|phone|call|message|offer|promise|give) (?:her|him|them|the (?:customer|client|bride|couple)) (?:(?:know|its|it is|for|by|about|at|to come|have them|around) )*(?=(?:\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: (?:then|instead|please|oclock|o'clock))*[ ?.]*$)`,
    ),
    to: "make it at ",
  },
  // "how much ganache do i add", behind too much flavor in one: plain, and no bowl to flavor
  {
    after: ["dose"],
    from: new RegExp(
      `^${opening}how (?:much|many grams of|many g of) (?:more )?(ganache|filling) (?:do|should|must|can|could|would|shall|ought) (?:i|we) (?:have to |need to |to )?(?:add|mix in|stir in|put in|fold in)(?: (?:to|into) (?:it|that|this))?(?: (?:then|now|to fix it|to fix that|to save it))*[ ?.]*$`,
    ),
    to: "how much more $1 do i add",
  },
  // "the chocolate is 200 now, rest as before"
  {
    after: ["dose"],
    amounts: true,
    from: /(?: ?[,;.])? (?:(?:and|but|with) )?(?:the )?(?:rest|others|other ones|everything else|all else) (?:(?:is|are|stays?|as|was|were|just|all) )*(?:before|the same|same|unchanged|it was|is)[ .]*$/,
    to: "",
  },
  // "the real bowl today is 265", "the bowl here is 310 though"
  {
    after: ["dose"],
    amounts: true,
    from: new RegExp(
      `^${opening}(?:the|my|our) (?:(?:real|actual|true|right) (?:bowl|batch|one|lot)|(?:bowl|batch|one|lot)(?= (?:here|today|now|really|itself)))(?: (?:here|today|now|itself|of mine|in front of me|on the scale))* (?:(?:is|was|weighs|comes to|has|holds|really|actually|only|just|about) )+(?=\\d)`,
    ),
    to: "the bowl is ",
  },
  // "how many macarons is that enough for"
  {
    after: ["ganache", "buttercream"],
    from: new RegExp(
      `^${opening}how many (?:macarons |macs |of them )?(?:(?:is|are|will|would|does|do|can) )?${it} (?:be )?(?:enough for|enough to fill|good for|do|cover|stretch to|reach|last for)(?: ${later})?[ ?.]*$`,
    ),
    to: "how many macarons does it fill",
  },
  // "so how many do i end up with", behind a recipe that was weighed out
  {
    after: ["scale"],
    // its own list says how many it makes
    unless: "makes",
    from: new RegExp(
      `^${opening}how many (?:(?:is|are|will|would|does|do|can|could|should|might) )*(?:${it}|i|we|you)(?: (?:be|make|give|come to|yield|get|end up with|have|get out of (?:it|that)|have in the end)(?: me| us)?)?(?: ${later})?[ ?.]*$`,
    ),
    to: "how many macarons is that",
  },
  // "no, the usual", behind so many percent
  {
    after: ["dose"],
    from: new RegExp(
      `^${opening}(?:(?:back to|go back to|just|make it|do|use|take|stick with|go with) )*the (?:usual|normal|standard|regular|ordinary|default)(?: (?:one|thing|way|strength|again|then|after all|please|for me))*[ .]*$`,
    ),
    to: "back to the usual range",
  },
  // "what you just gave me, in fahrenheit", "your answer in kg"
  {
    after: ["convert"],
    from: /\b(?:what (?:you|i) (?:just |only just )?(?:gave|said|told|got|answered|worked out)(?: me)?(?: just now)?|(?:your|the|that) (?:last |latest )?(?:answer|result|reply|figure|number)|(?:that|the) last (?:one|figure|number|result))(?=(?: ,)? (?:in|as|into|to)\b)/,
    to: "that",
  },
];

/** "also a third of 264", behind a recipe: a sum of its own, unless that number is what was spoken of. */
const shareOfNumber =
  /^(?:(?:and|also|plus|so|then|,) )*((?:(?:an?|one|two|three|four) )?(?:half|thirds?|quarters?|fifths?|sixths?|eighths?|tenths?)|\d+\/\d+|\d*\.\d+|\d+(?:\.\d+)? ?(?:%|percent)) of (\d+(?:\.\d+)?)(?: [?.=])*$/;

function sumOfItsOwn(text: string, { last }: State): string | undefined {
  const [, share, number] = shareOfNumber.exec(text) ?? [];
  if (!last || last.tool === "convert" || share === undefined || number === undefined) return undefined;
  const isSpokenOf =
    JSON.stringify(last.inputs)
      .match(/\d+(?:\.\d+)?/g)
      ?.includes(number) ?? false;
  return isSpokenOf ? undefined : `what is ${share} of ${number}`;
}

/** "tsp of orange extract for 300 g": asked in spoons, and no spoonful that went in. */
const inSpoons =
  /^((?:(?:and|also|so|then|please|can you|could you|would you|tell me|give me|i need|need) )*)(tsp|teaspoons?|tbsp|tablespoons?) of (?=.*\b(?:for|in|into) (?:the |my )?\d)(?!.*\b(?:ok|okay|fine|alright|too (?:much|strong)|enough|right)\b)/;

/** The sentence put plainly; undefined where nothing in it points so. */
export function reworded(reading: Reading, state: State): string | undefined {
  const { text: said, amounts } = reading;
  const { last } = state;
  const text = spaced(said);
  const sum = sumOfItsOwn(text, state);
  if (sum) return sum;
  const makings =
    makingsAsked(reading, state) ??
    intoPart(reading, state) ??
    halfOfKind(reading, state) ??
    splitToo(reading, state) ??
    outOfBatter(reading, state) ??
    timesAlone(reading, state);
  if (makings) return makings;
  if (inSpoons.test(text)) return text.replace(inSpoons, "how many $2 of ");
  const found = rewordings.find(
    ({ after, from, unless, amounts: has = false }) =>
      after.includes(last?.tool ?? "") &&
      !(unless && unless in (last?.inputs ?? {})) &&
      (has === "any" || has === amounts.length > 0) &&
      from.test(text),
  );
  return found && text.replace(found.from, found.to).replace(/\bthat , (?=in|as|into|to)/, "that ");
}
