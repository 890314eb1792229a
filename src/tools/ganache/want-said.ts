/** What is wanted of a ganache: its composition, its ratio, a part of it, or a mend for one gone wrong. */
import type { Reading, Thing } from "../contract/index.ts";
import { says, type Weighed, weighed } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { GanacheInputs } from "./ganache.ts";
import { isChocolate, isChocolateHere } from "./kind-said.ts";

type Want = Pick<Partial<GanacheInputs>, "want" | "fault">;
type Fault = NonNullable<Want["fault"]>;

interface Asked {
  reading: Reading;
  weights: readonly Weighed[];
  /** What was said to be wrong with it by name: "runny", "set like a rock". */
  symptom: Fault | undefined;
  /** Cream was weighed and chocolate too. */
  hasBoth: boolean;
}

type WantWay = Way<Asked, Want>;

const isCream = ({ thing }: Weighed): boolean => thing?.ingredient === "cream";

/** Cream was weighed and no chocolate: how much of that is to be worked out. */
export const asksChocolate = (reading: Reading): boolean => {
  const weights = weighed(reading);
  return (
    weights.some(isCream) &&
    !weights.some(({ thing }) => isChocolate(thing) || isChocolateHere(reading, thing))
  );
};

/** More cream is for what is too stiff, more chocolate for what is too loose. */
export const faultMendedBy = (part: string): Fault => (part === "cream" ? "stiff" : "loose");

const mend = (fault: Fault | undefined): Want | undefined => fault && { want: "mend", fault };

/** "how much chocolate gets it to piping", of the bowl there is. */
const bringsIt: WantWay = ({ reading }) => {
  const part =
    /how (?:much|many) \S*<[^>]*ingredient=(?:\w+_)?(cream|chocolate)[^>]*> (?:gets|brings|takes|makes|would get|will get|to get|does it take to get) (?:it|that|this|them) (?:up |down |back )?(?:to|into)/.exec(
      reading.mask,
    )?.[1];
  return part ? mend(faultMendedBy(part)) : undefined;
};

const asksComposition =
  /(?:^| )water\S* activity|(?:^| )a _ w(?: |$)|(?:^| )fat content|what(?:s| is) the (?:fat|sugar\S*|water\S*)(?: |$)|percent ?wise|(?:in|by|as) (?:percent|percentages)(?: |$)|(?:percentage|percent|share|much|proportion)\S* (?:of )?(?:the )?(?:fat|water\S*|sugar\S*)(?: |$)|(?:^| )(?:fat|water|sugar)\S* (?:percentage|percent|%<unit=%>|share|content|proportion)|%<unit=%> (?:of )?(?:the )?(?:fat|water|sugar)\S*(?: |$)|composition|made of|(?:water|fat|sugar)\S* (?:\S+ ){0,3}(?:and|,|&) (?:\S+ ){0,2}(?:water|fat|sugar)|(?:^| )a ?w(?: |$)|how (?:fatty|watery|sweet) (?:is|are)|how (?:much|fatty|wet).*(?:(?:^| )fat(?: |$)|(?:^| )water)/;

const composition: WantWay = ({ reading }) =>
  says(reading, asksComposition) ? { want: "composition" } : undefined;

const ratio: WantWay = ({ reading, weights }) =>
  weights.length === 0 && says(reading, /(?:^| )(?:ratio|proportions?)(?: |$)/)
    ? { want: "ratio" }
    : undefined;

const itSplit =
  /(?:^|(?:and|now|oh|no|oops|but|ok|so|,) )(?:it|its|that) (?:has |just |all |is |went and )*split(?:<\S+)?(?: |$)/;

/** "ganache split 150 white 60 cream": what is in it stands behind, and nothing is to be shared out. */
const splitThenLines =
  /<base=ganache[^ ]* (?:(?:has|just|all|went|and|is) )*(?:split|broke|broken|separated) \S*<(?:number|weight)> \S*<(?:ingredient|color=white)/;

const hasSplit: WantWay = ({ reading }) =>
  reading.things.some((each) => each.symptom === "split ganache") ||
  says(reading, itSplit) ||
  splitThenLines.test(reading.mask)
    ? { want: "split" }
    : undefined;

/** "how much cream"; of one that went wrong only where its chocolate is still to be worked out. */
const aPart: WantWay = ({ reading, symptom }) =>
  (!symptom || asksChocolate(reading)) &&
  says(reading, /how (?:much|many) (?:of )?(?:the )?\S*<[^>]*ingredient=(?:cream|chocolate)/)
    ? { want: "build" }
    : undefined;

/** "200 g dark and 180 g cream, how much more chocolate". */
const moreOf: WantWay = ({ reading, hasBoth }) => {
  const part =
    /how (?:much|many) (?:(?:more|extra) (?:of )?(?:the )?\S*<[^>]*ingredient=(cream|chocolate)|\S*<[^>]*ingredient=(cream|chocolate)[^>]*> (?:do|should|must|can|shall|have|to) (?:i |to )*(?:add|stir|mix|put|melt))/
      .exec(reading.mask)
      ?.slice(1)
      .find((each) => each !== undefined);
  return part && hasBoth ? mend(faultMendedBy(part)) : undefined;
};

const ofIt = /^(?:(?:and|but|so|oh|no|ok|now|hm|sorry|,) )*(?:its|it|that|thats|this)(?: |$)/;
const negated = "(?:not|never|no|\\w+nt) (?:quite |really |nearly |at all )?";
const soft = "(?:soft|wet|fluid|liquid|slack|loose|thin|runny|sloppy|soupy|slick)";
const hard = "(?:hard|solid|stiff|thick|firm|dense|set|tight)";
const tooSoft = new RegExp(
  `(?:^| )(?:(?:too|so|very|really|way_too|way too|rather|pretty)[_ ]${soft}|${negated}${hard}(?:<\\S+)? enough|${negated}${hard}_enough)`,
);
const tooHard = new RegExp(
  `(?:^| )(?:(?:too|so|very|really|way_too|way too|rather|pretty)[_ ]${hard}(?! that)|${negated}${soft}(?:<\\S+)? enough)`,
);

/** "too soft to roll, 260 dark and 150 cream", "isnt stiff enough to pipe"; "its too hard now", of the one before. */
const byFeel: WantWay = ({ reading, weights, symptom, hasBoth }) => {
  const isIt = weights.length === 0 && says(reading, ofIt);
  if (symptom || !(hasBoth || isIt)) return undefined;
  if (says(reading, tooSoft)) return mend("loose");
  return says(reading, tooHard) ? mend("stiff") : undefined;
};

const from = "(?:the |my |a )?(?:\\S+ )?(?:spoon|spatula|whisk|paddle|knife|palette knife|bag|tip|nozzle)";
/** "its pouring off the spoon", "runs straight out of the bag". */
export const runsOff = new RegExp(
  `(?:^| )(?:pour|run|drip|slid|slip|flow|dribbl|stream|fall|drop)(?:s|ning|ing|ping|es|e|ling|les)?(?:<\\S+)? (?:straight |right |just |all |clean )*(?:off|from|out of|through) ${from}(?: |$)`,
);
/** "wont go through the tip", "cant get it out of the bag". */
const staysIn = new RegExp(
  `(?:^| )(?:wont|cant|doesnt|isnt|not|never|hardly|barely|impossible) (?:\\S+ ){0,4}?(?:through|out of|thru) ${from}(?: |$)`,
);

/** How it comes off a spoon or out of a bag, with what is in it: too loose, or too stiff. */
const offTheSpoon: WantWay = ({ reading, weights, hasBoth }) => {
  const isIt = weights.length === 0 && says(reading, ofIt);
  if (!hasBoth && !isIt) return undefined;
  if (staysIn.test(reading.mask)) return mend("stiff");
  return runsOff.test(reading.mask) ? mend("loose") : undefined;
};

const loosens =
  /(?:^| )(?:loosen|soften|thin)\S* (?:it|this|that|down)|hard_?as|hard as|rock hard|like (?:a )?(?:brick|concrete|cement)|(?:its|is|it was|just|set to|set into|now) (?:a|an absolute|pure) (?:brick|rock)(?: |$)|(?:^| )(?:get|make|getting|making) (?:\S+ ){1,4}(?:softer|looser|thinner|runnier)(?: |$)/;
const thickens =
  /(?:^| )(?:get|make|getting|making) (?:\S+ ){1,4}(?:thicker|firmer|stiffer)(?: |$)|(?:^| )(?:thicken|stiffen)\S* (?:it|this(?! time)|that|up)|(?:^| )firm(?:s|ing)?(?:<\S+)? (?:(?:it|this|that|them|the \S+) up|it|up)(?: |$)|(?:came out|turned out|is|its|way|so|really|bit) (?:\S+ )?(?:thin|runny|liquid|loose|soupy|watery)(?:<| |$)/;

/** "loosen it", "its rock hard", "how do i get my ganache thicker". */
const wentWrong: WantWay = ({ reading, symptom }) => {
  if (symptom) return mend(symptom);
  if (says(reading, loosens)) return mend("stiff");
  return says(reading, thickens) ? mend("loose") : undefined;
};

const ways: readonly WantWay[] = [
  bringsIt,
  composition,
  ratio,
  hasSplit,
  moreOf,
  byFeel,
  offTheSpoon,
  aPart,
  wentWrong,
];

/** "set hard enough to cut", "isnt stiff enough to pipe": what it is to be, and no fault by that name. */
const isWish = ({ text }: Reading, { at, text: own }: Thing): boolean =>
  / enough$| enough\b/.test(`${own}${text.slice(at[1], at[1] + " enough".length)}`);

const symptomOf = (reading: Reading): Fault | undefined => {
  const found = reading.things.find(
    (each) =>
      (each.symptom === "loose ganache" || each.symptom === "stiff ganache") && !isWish(reading, each),
  );
  return found && (found.symptom === "loose ganache" ? "loose" : "stiff");
};

export function readWant(reading: Reading): Want {
  const weights = weighed(reading);
  const hasBoth = weights.some(isCream) && !asksChocolate(reading);
  return firstOf(ways, { reading, weights, symptom: symptomOf(reading), hasBoth }) ?? {};
}
