/** Reads how many macarons are to be filled, with what, or what a bowl of filling is to fill. */
import { usualDiameter } from "../../../data/rules/shells.ts";
import { bases } from "../../../data/words/things.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { sameIn } from "../convert/same-in.ts";
import {
  bareNumbers,
  counted,
  diameter,
  pointsBack,
  says,
  saysDecimal,
  sizeAgain,
  thatSize,
  weighed,
} from "../lib/find.ts";
import { countedShares, namedShares, shareSaid, sharesChanged } from "../lib/shares.ts";
import type { FillInputs } from "./fill.ts";
import { type CountedMixes, flavorsCounted, mixesCounted, tastesNamed } from "./mixes-counted.ts";
import { edgeAndCenter, namesByPlace } from "./places.ts";

const ounces = new RegExp(sameIn("\\S*<unit=oz>").join("|").replaceAll("[?]", "\\?"));

export function readFill(reading: Reading, memory: Memory): Partial<FillInputs> {
  if (memory.last?.tool !== "fill") return fillSaid(reading, memory);
  // "same but in oz": once, and not for what is asked next
  if (ounces.test(reading.mask)) return { in_oz: true };
  return { ...fillSaid(reading, memory), ...(memory.last.inputs.in_oz ? { in_oz: false } : {}) };
}

function fillSaid(reading: Reading, memory: Memory): Partial<FillInputs> {
  const batter = ofBatter(reading, memory) ?? ofThatBowl(reading, memory);
  if (batter) return batter;
  const numberOf = (what: string) =>
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === what && !each.fraction)?.value;
  const mix = reading.things.find(
    (each) => each.base && each.base !== "filling" && each.base !== "batter",
  )?.base;
  const size = diameter(reading) ?? thatSize(reading, memory);
  const each_g = eachSaid(reading);
  const weights = weighed(reading).filter(
    (each) => (!each.thing || each.thing.base) && each.grams !== each_g,
  );
  const one =
    says(reading, /(?:one|each|per|every|a)(?:<number>)?(?: single)? \S*<count=macarons/) ||
    (says(reading, /in (?:one|each)(?: |$)/) && numberOf("macarons") === undefined);
  const two =
    !says(reading, onlyOne) &&
    // "can you ring my sister"
    !says(reading, /(?:^| )ring (?:my|her|him|me|them|up|back|someone)(?: |$)/) &&
    (says(reading, edgeAndCenter) ||
      (says(
        reading,
        /(?:^| )(?:rings?|borders?|rims?|dams?|walls?)(?: |$)|two fillings|both fillings|as (?:the |a )?(?:center|centre)(?: |$)|<base=\S+ (?:piped\S* )?(?:a?round|outside)(?: it| that)?(?: |$)/,
      ) &&
        says(
          reading,
          /(?:^| )(?:centers?|centres?|middles?|cores?|insides?|each|rings?|fillings)(?:_\S*)?(?: |$)/,
        )));
  const told = two ? undefined : (mixesCounted(reading) ?? ofTheOrder(reading, memory));
  if (told) return { ...told, ...(size === undefined ? {} : { diameter_mm: size }) };
  const together = bothBowls(reading, weights);
  if (together) return { ...together, ...(size === undefined ? {} : { diameter_mm: size }) };
  const mixes = two ? [] : twoMixes(reading);
  const macarons = counted(reading, "macarons") ?? minis(reading) ?? (one ? 1 : undefined);
  const shells = numberOf("shells");
  const enough = says(reading, suffices);
  const bare =
    macarons === undefined &&
    shells === undefined &&
    (weights.length === 0 || enough) &&
    (memory.follows ||
      memory.slot ||
      enough ||
      /for \S*<number|fill(?:ing)?(?:<\S+)? (?:\S+ ){0,2}?\S*<number>|<number> of (?:them|those|these)|<number> (?:\S+ )?ones/.test(
        reading.mask,
      ))
      ? bareNumbers(reading).find(
          (each) => !/(?:the|same|those|these|both|all) $/.test(reading.text.slice(0, each.at[0])),
        )?.value
      : undefined;
  const before =
    memory.follows && memory.last?.tool === "fill" ? (memory.last.inputs as Partial<FillInputs>) : undefined;
  // whether it is enough was asked before
  const judged = before?.macarons !== undefined && before.filling_g !== undefined;
  // "and for 36 with a jam center": no bowl's weight behind one of 320 g, and a ring is sized by the macarons
  const isCount = says(reading, two ? /(?:^| )for \S*<number>/ : tellsForward);
  const backward = before?.filling_g !== undefined && before.macarons === undefined && !isCount;
  const ways = /(?:per|each|every|a) \S*<dose=flavor/.test(reading.mask)
    ? reading.amounts.find((each) => each.of?.dose === "flavor" && each.dim === "number")?.value
    : flavorsCounted(reading)?.value;
  // "how many macs will that 370 fill"
  const bowl =
    weights.length === 0 &&
    says(
      reading,
      /how many \S*<count=macarons\S* (?:will|can|does|would|do) (?:that|the|this|those) \S*<number> (?:fill|do|cover)/,
    )
      ? bareNumbers(reading)[0]?.value
      : undefined;
  if (bowl !== undefined) return { filling_g: bowl, ...(size === undefined ? {} : { diameter_mm: size }) };
  const changed =
    before?.shares && before.macarons !== undefined
      ? sharesChanged(reading, before.shares, before.macarons)
      : undefined;
  if (changed)
    return {
      ...(before?.filling ? { filling: before.filling } : {}),
      ...(before?.diameter_mm ? { diameter_mm: before.diameter_mm } : {}),
      ...changed,
    };
  const shares = two ? undefined : (namedShares(reading) ?? countedShares(reading, macarons));
  // "how much filling for the lemon", of an order that was shared out
  const whole = memory.table.macarons;
  const share =
    shares || whole === undefined || reading.amounts.length > 0
      ? undefined
      : shareSaid(reading, memory.table.shares);
  if (share && whole !== undefined)
    return {
      macarons: Math.round(whole * share.share),
      of_macarons: whole,
      ...(mix ? { filling: mix } : {}),
      ...(size === undefined ? {} : { diameter_mm: size }),
    };
  // "and 60 g buttercream with it", behind so much ganache
  const [added] = weights;
  if (
    added &&
    before?.filling_g !== undefined &&
    before.macarons === undefined &&
    says(reading, /(?:with (?:it|that|them)|as well|too|on top|together)(?: |$)/) &&
    mix !== undefined &&
    mix !== before.filling
  )
    return { filling_g: before.filling_g + added.grams, filling: "filling" };
  const asSize = sizeAgain(
    reading,
    before?.diameter_mm ?? (before && saysDecimal(reading) ? usualDiameter.value : undefined),
  );
  const number = macarons ?? (asSize === undefined ? bare : undefined);
  const fromTable =
    number === undefined &&
    shells === undefined &&
    weights.length === 0 &&
    !(memory.follows && memory.last?.tool === "fill")
      ? memory.table
      : {};
  return {
    ...(backward && bare !== undefined
      ? {}
      : number !== undefined
        ? { macarons: number }
        : shells !== undefined
          ? { shells }
          : {}),
    ...(backward && bare !== undefined ? { filling_g: bare } : {}),
    ...(weights[0] && ((number ?? shells) === undefined || enough)
      ? { filling_g: weights[0].grams }
      : (enough || judged) && before?.filling_g !== undefined
        ? { filling_g: before.filling_g }
        : enough && isBowl(memory) && weights.length === 0
          ? { filling_g: memory.table.mass?.grams, filling: memory.table.mass?.thing }
          : {}),
    ...(each_g === undefined ? {} : { each_g }),
    ...(shares ? { shares } : {}),
    ...(!shares && memory.table.shares && whole !== undefined && says(reading, /(?:^| )(?:for )?each(?: |$)/)
      ? { shares: memory.table.shares }
      : {}),
    ...(ways !== undefined ? { flavors: ways } : {}),
    // "how much for 30 macarons", behind a ganache: of that
    ...(!mix &&
    isBowl(memory) &&
    says(reading, /how much (?:of (?:it|that) )?(?:do i need |will i need |is that )?for \S*<number>/)
      ? { filling: memory.table.mass?.thing }
      : {}),
    ...(mix && !two && mixes.length < 2 && !shares?.some((each) => each.base) ? { filling: mix } : {}),
    ...(mixes.length === 2 && !shares ? { two: true, ring: mixes[0], center: mixes[1], placed: true } : {}),
    ...(two ? { two, ...namesByPlace(reading.mask) } : {}),
    ...(before?.two && says(reading, onlyOne) ? { two: false } : {}),
    ...((size ?? asSize) !== undefined
      ? { diameter_mm: size ?? asSize }
      : fromTable.diameter_mm !== undefined && fromTable.macarons !== undefined
        ? { diameter_mm: fromTable.diameter_mm }
        : {}),
    ...(fromTable.macarons !== undefined
      ? { macarons: fromTable.macarons }
      : pointsBack(reading) &&
          fromTable.mass &&
          (!mix || (fromTable.mass.thing === mix && says(reading, /how many/)))
        ? { filling_g: fromTable.mass.grams }
        : {}),
  };
}

/** "two flavors: raspberry and pistachio", behind filling, batter or a recipe for so many: they share the filling evenly. */
function ofTheOrder(reading: Reading, { follows, last, table }: Memory): CountedMixes | undefined {
  const { macarons } = table;
  const tastes = [...new Set(tastesNamed(reading))];
  const ways = flavorsCounted(reading);
  const isOfIt = (follows && last?.tool === "fill") || ["scale", "shells"].includes(last?.tool ?? "");
  const isAll = isOfIt && reading.amounts.every((each) => each === ways);
  return macarons !== undefined && isAll && ways?.value === tastes.length
    ? { macarons, shares: tastes.map((name) => ({ name, share: 1 / tastes.length })) }
    : undefined;
}

/** "140 g buttercream and 90 g ganache, enough for 30": both go into them, whatever goes into which. */
function bothBowls(
  reading: Reading,
  weights: ReturnType<typeof weighed>,
): Pick<FillInputs, "filling_g" | "bowls" | "macarons"> | undefined {
  const bowls = weights.flatMap(({ grams, thing }) => (thing?.base ? [{ name: thing.base, grams }] : []));
  const isApart = new Set(bowls.map(({ name }) => name)).size === bowls.length;
  if (bowls.length < 2 || bowls.length !== weights.length || !isApart || !says(reading, suffices))
    return undefined;
  const macarons =
    counted(reading, "macarons") ??
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.fraction &&
        !weights.some((w) => w.amount === each),
    )?.value;
  return {
    filling_g: bowls.reduce((sum, { grams }) => sum + grams, 0),
    bowls,
    ...(macarons === undefined ? {} : { macarons }),
  };
}

/** "filling for 552 g batter", "how much filling would they need" behind a batter: for what that gives. */
function ofBatter(reading: Reading, memory: Memory): Partial<FillInputs> | undefined {
  const { amounts, things, mask } = reading;
  const others = amounts.filter(({ dim }) => dim !== "length");
  const mix = things.find((each) => each.base && each.base !== "batter")?.base;
  if (!mix || others.length > 1 || /(?:^| )(?:enough|how many)(?: |$)/.test(mask)) return undefined;
  const [only] = weighed(reading);
  const { mass, macarons } = memory.table;
  // "i have 3 eggs", behind a recipe for 30: the batter is of the eggs, and no longer for those
  const { whites_count, have } = memory.last?.inputs ?? {};
  const isAnew = whites_count !== undefined || have !== undefined;
  const isOfTable =
    others.length === 0 &&
    (macarons === undefined || isAnew) &&
    mass?.thing === "batter" &&
    memory.last?.tool === "scale" &&
    (pointsBack(reading) || /(?:^| )(?:they|goes|go|need|needs|take|takes|want|wants)(?: |$)/.test(mask));
  const batter_g = only?.thing?.base === "batter" ? only.grams : isOfTable ? mass?.grams : undefined;
  const size = diameter(reading) ?? thatSize(reading, memory);
  if (batter_g === undefined) return undefined;
  return {
    batter_g,
    ...(mix === "filling" ? {} : { filling: mix }),
    ...(size === undefined ? {} : { diameter_mm: size }),
  };
}

const asksHowMany =
  /(?:^| )how many (?:of (?:them|those) |(?:\S*<count=macarons\S*|macs) )?(?:will|can|does|would|do|could|is|are) (?:(?:it|that|this|the|one|lot|all|of|bowl\S*|\S*<base=\S+|i|we) )+(?:fill|do|cover|enough)(?: |$)/;

/** "and how many does that one fill", behind a ganache and others that were counted before it: of this bowl. */
function ofThatBowl(reading: Reading, memory: Memory): Partial<FillInputs> | undefined {
  const { mass, macarons } = memory.table;
  const isAsked = macarons !== undefined && isBowl(memory) && says(reading, asksHowMany);
  if (!mass || !isAsked || reading.amounts.some(({ dim, value }) => dim !== "length" && value !== 1))
    return undefined;
  const other = reading.things.find(
    (each) => each.base && each.base !== "filling" && each.base !== mass.thing,
  );
  const size = diameter(reading) ?? thatSize(reading, memory);
  return other
    ? undefined
    : {
        filling_g: mass.grams,
        ...(mass.thing ? { filling: mass.thing } : {}),
        ...(size === undefined ? {} : { diameter_mm: size }),
      };
}

/** "32 minis of 3 cm": small macarons. */
const minis = ({ amounts, text }: Reading): number | undefined =>
  amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.of &&
      !each.fraction &&
      /^ (?:[a-z]+ )?minis\b/.test(text.slice(each.at[1])),
  )?.value;

/** "60 macarons, 12 g filling each", "8 g in each of 48": g in one macaron. The largest that are baked (60 mm) take 16 g by 0.42 d², from memory: from 40 g on it is a bowl. */
function eachSaid(reading: Reading): number | undefined {
  const isEach =
    /<weight>(?: (?:of )?(?:\S*<[^>]*base=\S+|it|filling))? (?:each|apiece|a piece|in (?:each|every|one)|per (?:\S*<count=macarons|one|piece)|a \S*<count=macarons)|(?:each|every|per \S*<count=macarons\S*) (?:one )?(?:gets?|takes?|has|have|with)? ?\S*<weight>/;
  if (!says(reading, isEach)) return undefined;
  return weighed(reading).find(({ grams, thing }) => grams <= 40 && (!thing || thing.base))?.grams;
}

/** A ganache or buttercream that was just spoken of. */
const isBowl = ({ last, table }: Memory): boolean =>
  ["buttercream", "ganache", "dose"].includes(last?.tool ?? "") &&
  ["buttercream", "ganache", "filling"].includes(table.mass?.thing ?? "");

/** "is that enough for 40", "will it do 24". */
const suffices =
  /(?:^| )(?:enough|plenty|suffice)(?: |$)|(?:^| )(?:will|would|does|can) (?:it|that|this|they) (?:do|cover|stretch|last|fill)(?: |$)/;

/** "without the ring, just the one filling". */
/** "the other way: filling to make for 40", behind what a bowl fills: now the macarons are known. */
const tellsForward =
  /(?:^| )(?:other way|way) (?:a?round|about|:)?.* for \S*<number>|<base=\S+ (?:(?:do i|should i|i|to|must|will|would|need|have|make|mix|whip|up|it|needed|is|that) )*for \S*<number>/;

const onlyOne =
  /(?:just|only|all) (?:the )?\S*<base=(?:buttercream|ganache|filling)\S* (?:in|for|into) (?:all|them|each|every|the (?:whole )?lot|those|these|\S*<)|(?:forget|scrap|ditch|never ?mind|lose|skip|drop|leave out|no|without) (?:the |any |a )?\S*<[^>]*(?:ingredient|taste|chocolate|dose)=\S* (?:, |and |then |its |make it |do |use )*(?:just|only|all) (?:the |plain )?\S*<base=|(?:without|no|skip|drop|leave out) (?:the |a )?(?:ring|border|rim|dam|center|centre|middle)|(?:just|only) (?:the )?(?:one|a single|\S*<number>) \S*<base=filling/;

/** "buttercream and ganache": two that share the filling, the firmer one the ring; its name stands first. */
function twoMixes(reading: Reading): string[] {
  const named = reading.things.filter(
    (each) => each.base && !["filling", "batter", "meringue"].includes(each.base),
  );
  const [first, second] = [...new Set(named.map((each) => each.base ?? ""))];
  if (!first || !second) return [];
  const between = reading.text.slice(named[0]?.at[1], named.at(-1)?.at[0]);
  if (!/(?:^| )(?:and|&|,|plus|with)(?: |$)/.test(between) || /(?:^| )or(?: |$)/.test(between)) return [];
  const isButter = (base: string) => bases.find((each) => each.id === base)?.column === "buttercream";
  return !isButter(first) && isButter(second) ? [second, first] : [first, second];
}
