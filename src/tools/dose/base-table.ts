/** What lies on the table is flavored: "it", "the ganache", "half of the filling". */
import { vessel } from "../../../data/words/vessels.ts";
import { pointsBack, says } from "../lib/find.ts";
import { type BaseTurn, type BaseWay, mixOf, named, taken } from "./base-turn.ts";
import { isFlavor } from "./flavor-said.ts";
import { partsOf } from "./parts-said.ts";

/** "with 5 g salt?", right behind the mix that was worked out. */
const withFlavor: BaseWay = ({ reading, memory }) => {
  const { mass } = memory.table;
  const behindMix = ["ganache", "buttercream", "fill"].includes(memory.last?.tool ?? "");
  const said = /^(?:(?:and|ok|so|now) )*(?:with|plus) \S*<weight> (?:of )?\S*<[^>]*dose=/.test(reading.mask);
  return mass && behindMix && said
    ? { ...named({ base_g: mass.grams }, mixOf(mass.thing)), want: "check" }
    : undefined;
};

/** The sentence weighs its own, asks for the mix, or stays with a dose: what lies there isn't meant. */
function isElsewhere({ reading, memory, weights, base, before }: BaseTurn): boolean {
  // "espresso in the ganache then", behind a dose for buttercream: the ganache that lies there
  const ofOtherMix =
    base !== undefined &&
    before?.base !== undefined &&
    before.base !== base &&
    memory.table.masses?.[base] !== undefined &&
    new RegExp(`\\b(?:the|my|that) ${base}\\b`).test(reading.text);
  const ownWeight = weights.some((each) => !each.thing || isFlavor(each.thing)) && !pointsBack(reading);
  const asksBase =
    /how (?:much|many) (?:more |plain |extra |other )*\S*<base/.test(reading.mask) &&
    !/(?:thats|that is|this is|its|it is) how (?:much|many)/.test(reading.mask);
  return ownWeight || asksBase || (memory.last?.tool === "dose" && !ofOtherMix);
}

/** "half of it": the share that is meant, 1 where none is said. */
const shareSaid = ({ reading }: BaseTurn): number =>
  reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      (each.fraction || each.unit === "times") &&
      // "for that half": what was worked out is the half already
      !/\b(?:that|this) $/.test(reading.text.slice(0, each.at[0])),
  )?.value ?? 1;

/** "for the whole ganache", with something else worked out since. */
const laidAside: BaseWay = (turn) => {
  const { reading, memory, base } = turn;
  const kept = base === undefined ? undefined : memory.table.masses?.[base];
  if (kept === undefined || base === memory.table.mass?.thing) return undefined;
  return /whole|all|the lot|entire|that|the/.test(reading.text) && !isElsewhere(turn)
    ? { base_g: kept * shareSaid(turn), base }
    : undefined;
};

const asksFlavor =
  /(?:^| )(?:add|adding|flavou?r|put|with|how (?:much|many)) |^(?:and |then |now |so |also |plus |the |some )*\S*<[^>]*(?:dose|taste)=[^>]*>(?: (?:please|pls|then|too|also|as well))*(?: [,:])?(?: (?:in |how many )?\S*<unit=(?:g|oz)>| (?:the )?weight| amount| how (?:much|many))?(?: (?:please|pls))?(?: \?)?$/;

/** True where what was worked out last is something to flavor, and no other mix is named. */
function wantsFlavor({ reading, memory, base }: BaseTurn): boolean {
  const tool = memory.last?.tool ?? "";
  const thing = memory.table.mass?.thing ?? "";
  const colors = reading.things.some((each) => /color$/.test(each.dose ?? ""));
  const isMix =
    ["buttercream", "ganache"].includes(tool) ||
    (tool === "fill" && ["buttercream", "ganache"].includes(thing)) ||
    (tool === "shells" && thing === "batter" && colors);
  return !base && isMix && says(reading, asksFlavor);
}

const forBowl = new RegExp(
  `(?:^| )(?:for|in|into|to) (?:the|my|this|that|our|one) (?:whole |full |entire )?(?:\\S*<count=(?:batches|bowls)>|batch|mix|mixture|${vessel})(?:ful)?(?: |$)`,
);

/** "caramel flavor for the batch", right behind the mix that was worked out: batter takes colors alone. */
function namesBowl({ reading, memory }: BaseTurn): boolean {
  const { mass } = memory.table;
  const isMix = mixOf(mass?.thing) !== undefined && (mass?.thing !== "batter" || says(reading, /color/));
  return (
    isMix &&
    ["buttercream", "ganache", "fill", "shells", "scale", "split"].includes(memory.last?.tool ?? "") &&
    says(reading, forBowl)
  );
}

const ofEachPart = new RegExp(
  `\\b(?:for|in|into|per) each(?: (?:one|colou?r|half|flavou?r|${vessel}))?(?: then)? ?[?.!]?$`,
);

const whatFlavorDoes =
  /(?:^| )\S*<weight> (?:of )?(?:the |my )?\S*<[^>]*taste=.* what (?:can|could|will|would|does|do) (?:i|it|that|this)(?: (?:do|cover|\S*<dose=flavor>)| )/;

/** "how much vanilla for it". */
const whatLiesThere: BaseWay = (turn) => {
  const { reading, memory, base } = turn;
  const { mass } = memory.table;
  if (!mass || isElsewhere(turn)) return undefined;
  // "lemon buttercream for those", behind batter: that is another bowl
  if (mass.thing === "batter" && base !== undefined && base !== "batter") return undefined;
  // "6 g lemon flavor left, what does that do", behind batter: "that" is the flavor, and no batter takes it
  if (mass.thing === "batter" && says(reading, whatFlavorDoes)) return undefined;
  // "gel for each", of a batch that nobody has split yet: what each weighs isn't known
  if (ofEachPart.test(reading.text) && reading.amounts.length === 0 && !partsOf(memory).length)
    return named({}, base ?? mixOf(mass.thing));
  const isSame = base !== undefined && [base, "filling", ""].includes(mass.thing);
  return pointsBack(reading) || wantsFlavor(turn) || isSame || namesBowl(turn)
    ? taken(mass.grams * shareSaid(turn), turn, mass.thing)
    : undefined;
};

const wholeLot =
  /(?:^| )(?:the (?:whole |full |entire )?lot|(?:the )?whole (?:of it|thing|amount)|all of (?:it|that|them)|all (?:that|this)|everything|the (?:whole|entire) (?:batch|batches|\S*<count=batches>))(?: |$)/;

/** "espresso powder for the whole lot", behind a filling and the batter beside it: no batter takes a flavor. */
const besideBatter: BaseWay = (turn) => {
  const { reading, memory, base } = turn;
  const { mass, masses = {} } = memory.table;
  if (mass?.thing !== "batter" || base !== undefined || isElsewhere(turn)) return undefined;
  const colors = reading.things.some((each) => each.color || /color$/.test(each.dose ?? ""));
  if (colors || !says(reading, wholeLot)) return undefined;
  const [only, ...others] = Object.entries(masses).filter(
    ([thing]) => thing !== "batter" && mixOf(thing) !== undefined,
  );
  return only && others.length === 0 ? { base_g: only[1] * shareSaid(turn), base: only[0] } : undefined;
};

/** "how much plain filling do i add", of a bowl that was named before. */
const plainOfBefore: BaseWay = ({ base, before }) =>
  base === "filling" && before?.base && before.base_g !== undefined ? { base: before.base } : undefined;

export const tableWays: readonly BaseWay[] = [
  withFlavor,
  laidAside,
  besideBatter,
  whatLiesThere,
  plainOfBefore,
];
