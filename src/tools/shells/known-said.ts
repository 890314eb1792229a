/** What a sizing question starts from: macarons, shells, batter, whites, other ingredients at hand or trays. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { Amount } from "../contract/index.ts";
import { eggsTold } from "../lib/eggs-told.ts";
import { bareNumbers, countedOf, forUs, isWhitesCount, says, type Weighed, weighed } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { lostOf } from "./lost-said.ts";
import { onTraySaid } from "./tray-said.ts";
import type { Draft, ShellsTurn } from "./turn.ts";

interface Known extends ShellsTurn {
  weights: readonly Weighed[];
  /** Weights of what the house formula is made of. */
  lines: readonly Weighed[];
  batter: Weighed | undefined;
  macarons: Amount | undefined;
  /** Whites by number. */
  whites: Amount | undefined;
  /** How many of something were said. */
  numberOf: (what: string) => Amount | undefined;
}

type KnownWay = Way<Known, Draft>;

/** "of those", "big ones": macarons by another word. */
const theseOnes = /^ of (?:them|those|these)|^ (?:big |small |large |little |mini )*ones\b/;

function knownOf(turn: ShellsTurn): Known {
  const { amounts, text } = turn.reading;
  const ofEggs = eggsTold(turn.reading).eggs_g !== undefined;
  const weights = weighed(turn.reading).filter(
    ({ thing }) => !ofEggs || (thing && thing.ingredient !== "egg"),
  );
  const lines = weights.filter(({ thing }) => houseFormula.some((each) => each.name === thing?.ingredient));
  const numberOf = (what: string) => countedOf(turn.reading, what);
  return {
    ...turn,
    weights,
    lines,
    // a weight of nothing named is batter's, unless it stands among ingredients
    batter:
      weights.find((each) => each.thing?.base === "batter") ??
      (lines.length > 0 ? undefined : weights.find((each) => !each.thing && each.amount.dim === "weight")),
    macarons:
      numberOf("macarons") ??
      amounts.find(
        (each) =>
          each.dim === "number" && each.unit === "" && !each.of && theseOnes.test(text.slice(each.at[1])),
      ),
    whites: amounts.find(isWhitesCount),
    numberOf,
  };
}

/** "no, all 128 g", behind so many grams of whites. */
const allTheWhites: KnownWay = ({ reading, memory, weights: [only, ...more] }) => {
  const have =
    memory.last?.tool === "scale" ? (memory.last.inputs.have as { name: string }[] | undefined) : undefined;
  const isOfWhites = have?.length === 1 && have[0]?.name === "whites";
  return isOfWhites &&
    only &&
    !only.thing &&
    more.length === 0 &&
    says(reading, /(?:^| )(?:all|only|just|no|instead)(?: |$)/)
    ? { whites_g: only.grams }
    : undefined;
};

/** "how many trays is 48", of macarons that were spoken of. */
const traysFor: KnownWay = ({ reading: { amounts, text }, memory }) => {
  const number = amounts.find(
    (each) => each.of?.count === "trays" && /\btrays? (?:is|are|for) $/.test(text.slice(0, each.at[0])),
  );
  return number && memory.table.macarons !== undefined ? { macarons: number.value } : undefined;
};

/** "30 macarons out of my 400 g": what is asked of the batter, and no order. */
const outOfBatter: KnownWay = ({ reading, batter }) =>
  batter && says(reading, /(?:out of|from) (?:\S+ ){0,3}\S*<weight/) ? { batter_g: batter.grams } : undefined;

/** "my shells weigh 9 g baked, how much batter was that". */
const fromBaked: KnownWay = ({ reading, weights: [first] }) =>
  first &&
  says(
    reading,
    /<weight>.*bak.*(?:how much|what)(?: \S+)? \S*<base=batter|how much \S*<base=batter.*<weight>.* (?:once |when )?\S*bak/,
  )
    ? { baked_g: first.grams }
    : undefined;

/** "400 g of batter, can i get 25 macarons out of it". */
const canGet =
  /(?:^| )(?:can|could|will|would|do|does) (?:i|we|it|that|this|they|(?:\S*<weight> (?:of )?)?(?:my |the )?\S*<base=batter\S*) (?:(?:get|make|do|give|yield|manage|pipe|fill|stretch to|reach|be|still|really|squeeze) )+(?:me |us )?(?:(?:all|about|the|as many as) )*\S*<number> (?:[a-z]+ )?\S*<count=macarons/;

/** "is 380 g of batter enough for 20 macarons". */
const isBatterEnough: KnownWay = ({ reading, macarons, batter }) =>
  macarons &&
  batter &&
  (says(reading, /(?:^| )(?:enough|plenty|suffice|do|cover)(?: |$)/) || says(reading, canGet))
    ? { macarons: macarons.value, batter_g: batter.grams }
    : undefined;

/** "can i make 60 macarons with 3 egg whites". */
const areWhitesEnough: KnownWay = ({ reading, macarons, whites }) =>
  macarons &&
  whites &&
  says(
    reading,
    /(?:^| )(?:with|from|out of) (?:only |just |the |my )?\S*<number> (?:[a-z]+ )?\S*<ingredient=(?:egg|whites)/,
  )
    ? { macarons: macarons.value, whites_count: whites.value, ...eggsTold(reading) }
    : undefined;

const order: KnownWay = ({ reading, before, macarons }) => {
  if (!macarons) return undefined;
  // "and 72 of those", of shells
  const ofShells = !macarons.of && before?.shells !== undefined && before.macarons === undefined;
  return ofShells ? { shells: macarons.value } : { macarons: macarons.value + forUs(reading, macarons) };
};

/** "3 trays of 24", "two sheets with 30 circles each": so many shells in all. */
const traysOfSo: KnownWay = ({ reading: { amounts, text }, batter }) => {
  const [trays, each] = amounts.filter(({ dim, unit }) => dim === "number" && unit === "");
  const joins =
    trays &&
    each &&
    /^ ?(?:full )?(?:baking )?(?:trays?|sheets?|mats?|pans?) (?:of|with|at|x|holding|that (?:hold|take)) (?:about )?$/;
  if (!trays || !each) return undefined;
  // "4 trays, 30 shells on each"
  const isOnEach =
    /^ ?(?:full )?(?:baking )?(?:trays?|sheets?|mats?|pans?) ?[,.;:-]?(?: (?:and|with|it is|thats))? $/.test(
      text.slice(trays.at[1], each.at[0]),
    ) &&
    /^ (?:shells? )?(?:(?:on|in|to|for) (?:each|every|a|one)|per|each|a)(?: (?:one|tray|sheet|mat|pan|of (?:them|those)))?(?: ?[,.;:?-]|$| (?:how|what|batter|shells))/.test(
      text.slice(each.at[1]),
    );
  return (isOnEach || joins?.test(text.slice(trays.at[1], each.at[0]))) && !batter
    ? { shells: trays.value * each.value, on_tray: each.value }
    : undefined;
};

/** "112 shells, 6 cracked". "How much batter in one shell" names no number of them. */
const shellsMade: KnownWay = ({ reading }) => {
  const onTray = onTraySaid(reading);
  const shells = reading.amounts.find(
    (each) => each.dim === "number" && each.of?.count === "shells" && !each.fraction && each.value !== onTray,
  );
  const isOne = says(reading, /(?:one(?:<number>)?|a|each|per|single) \S*<count=shells/);
  return shells && !(isOne && shells.value === 1)
    ? { shells: shells.value - lostOf(reading, shells) }
    : undefined;
};

const shellWeighed: KnownWay = ({ weights }) => {
  const shell = weights.find((each) => each.thing?.count === "shells");
  return shell && { shell_g: shell.grams };
};

/** "460 g of batter", "3 batches of batter, each 460 g". */
const batterMade: KnownWay = ({ reading, batter, numberOf }) => {
  const batches = says(reading, /(?:^| )each(?: |$)/) ? (numberOf("batches")?.value ?? 1) : 1;
  return batter && { batter_g: batter.grams * batches };
};

/** "i have 150 g almond flour and 90 g whites"; whites alone are asked about as whites. */
const linesAtHand: KnownWay = ({ weights, lines }) => {
  const have = lines.map(({ thing, grams }) => ({ name: thing?.ingredient ?? "", grams }));
  if (have.some((each) => each.name !== "whites")) return { have };
  const whites = weights.find((each) => each.thing?.ingredient === "whites");
  return whites && { whites_g: whites.grams };
};

const forThose =
  /how many \S*<[^>]*ingredient=(?:egg|whites).*(?:those|that|the|these) \S*<ingredient=whites/;
const forThat =
  /how many \S*<[^>]*ingredient=(?:egg|whites).*(?:crack|separate|break|need|use)\S* (?:for|in) (?:that|it|this)(?: one| lot| batch\S*)?(?: \?)?$/;

/** "how many eggs am i cracking for those whites", of the recipe on the table; "for that", behind a buttercream. */
const whitesOnTable: KnownWay = ({ reading, memory }) => {
  const whites = memory.table.recipe?.find((each) => each.name === "whites");
  return whites &&
    reading.amounts.length === 0 &&
    (says(reading, forThose) || (memory.last?.tool === "buttercream" && says(reading, forThat)))
    ? { whites_g: whites.grams, want: "whites" }
    : undefined;
};

const whitesCounted: KnownWay = ({ reading, whites }) =>
  whites && { whites_count: whites.value, ...eggsTold(reading) };

/** "make that 3 trays", behind what one of them holds: the shells on them. */
const traysSaid: KnownWay = ({ reading, before, numberOf }) => {
  const said = numberOf("trays");
  const trays = said?.value ?? 1;
  // "rest 30 tray 2": which tray, and not how many
  const isName = said && /^ ?(?:min )?(?:tray|sheet|pan)s? \d/.test(reading.text.slice(said.at[1]));
  return trays > 1 && !isName ? { trays, ...(before?.want === "tray" ? { want: "shells" } : {}) } : undefined;
};

/** "how many trays for 15". */
const forSoMany: KnownWay = ({ reading }) => {
  const [bare] = bareNumbers(reading);
  const asks = says(reading, /how (?:many|much)|<count=trays|<base=batter[^>]*> for \S*<number/);
  return bare && asks && /(?:^| )for (?:just |only |about )?$/.test(reading.text.slice(0, bare.at[0]))
    ? { macarons: bare.value }
    : undefined;
};

const ways: readonly KnownWay[] = [
  allTheWhites,
  traysOfSo,
  traysFor,
  isBatterEnough,
  outOfBatter,
  fromBaked,
  areWhitesEnough,
  order,
  shellsMade,
  shellWeighed,
  batterMade,
  linesAtHand,
  whitesOnTable,
  whitesCounted,
  traysSaid,
  forSoMany,
];

/** Empty where nothing of it is said. */
export const knownSaid = (turn: ShellsTurn): Draft => firstOf(ways, knownOf(turn)) ?? {};
