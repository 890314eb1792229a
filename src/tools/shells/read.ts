/** Reads a sizing question: what is known, and which of batter, shells, macarons, trays or eggs is wanted. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { Amount, Memory, Reading } from "../contract/index.ts";
import {
  bareNumbers,
  diameter,
  forUs,
  isWhitesCount,
  says,
  sizeAgain,
  thatSize,
  weighed,
} from "../lib/find.ts";
import { countedShares, namedShares } from "../lib/shares.ts";
import { sparesSaid } from "../lib/spares.ts";
import { inBase } from "../lib/units.ts";
import { boxesAsked } from "./boxes.ts";
import { eggsFor, fromBareNumber, fromTable, ofBatter, ofBowl } from "./earlier.ts";
import type { ShellsInputs } from "./shells.ts";

type Draft = Partial<ShellsInputs>;

export function readShells(reading: Reading, memory: Memory): Draft | Draft[] {
  const boxes = boxesAsked(reading, memory);
  if (boxes) return boxes;
  const weighs = finishedWeight(reading, memory);
  if (weighs) return weighs;
  const lost = lostSome(reading, memory);
  if (lost) return lost;
  const sizes = severalSizes(reading);
  if (sizes) return sizes;
  const bowl = ofBowl(reading, memory) ?? eggsFor(reading);
  if (bowl) return bowl;
  // "how many shells of each", behind a split: of each bowl
  const { parts } = memory.table;
  if (
    parts &&
    parts.length > 1 &&
    memory.table.mass?.thing === "batter" &&
    says(
      reading,
      /how (?:many|much) \S*<count=(?:shells|macarons)\S* (?:\S+ ){0,4}(?:of|from|for|in) each(?: (?:one|part|colou?r\S*|of them))?(?: \?)?$/,
    )
  ) {
    const size = diameter(reading) ?? memory.table.diameter_mm;
    const want = readWant(reading);
    return parts.map(({ grams }) => ({
      batter_g: grams,
      ...(size === undefined ? {} : { diameter_mm: size }),
      ...(want ? { want } : {}),
    }));
  }
  // "will that be four trays or five"
  if (
    memory.last?.tool === "shells" &&
    says(
      reading,
      /(?:will|would|is|are|does|do) (?:that|it|they|those|this) (?:be |go on |fit on |fit |need |take )?(?:on )?\S*<number> \S*<count=trays> or|(?:will|would|do|does) (?:that|it|they|those|this) (?:all )?(?:go|fit) on \S*<number> \S*<count=trays>(?: \?)?$/,
    )
  )
    return { want: "trays" };
  // "how many 38 mm shells go on it", behind the tray's own size
  if (
    memory.last?.tool === "bench" &&
    says(
      reading,
      /how many (?:\S*<length> )?\S*<count=(?:shells|macarons)> (?:will |would |can |do )?(?:go|fit|get) (?:on|onto) (?:it|that|there|one)/,
    )
  ) {
    const size_mm = diameter(reading);
    return { want: "tray", ...(size_mm === undefined ? {} : { diameter_mm: size_mm }) };
  }
  const again = sizeAgain(
    reading,
    memory.last?.tool === "shells" ? (memory.last.inputs as Draft).diameter_mm : undefined,
  );
  const size = diameter(reading) ?? sizeAt(reading) ?? again ?? thatSize(reading, memory);
  const known = readKnown(reading, memory);
  const shells = reading.amounts.find((each) => each.of?.count === "shells");
  const want = readWant(reading) ?? (shells && lostOf(reading, shells) > 0 ? "macarons" : undefined);
  const isBatter = reading.amounts.some((each) => each.of?.base === "batter");
  const before = memory.last?.tool === "shells" ? (memory.last.inputs as Draft) : undefined;
  const draft: Draft = {
    ...known,
    ...(isBatter && known.batter_g !== undefined ? ofBatter(want) : {}),
    ...(size !== undefined ? { diameter_mm: size } : usualSize(reading) ? { usual_size: true } : {}),
    ...(want ? { want } : {}),
    ...onTrayOf(reading),
    ...(known.macarons !== undefined ? sharedOut(reading, known.macarons) : {}),
    ...sparesSaid(reading, before?.macarons),
  };
  if (Object.keys(known).length > 0 || again !== undefined) return draft;
  if (draft.spare_percent !== undefined && before?.macarons !== undefined) return draft;
  // "and once it is baked?", of the one shell that was weighed
  if (want === "baked" && memory.follows && before?.want === "one") return { ...draft, shells: 1 };
  return { ...draft, ...fromBareNumber(reading, memory), ...fromTable(reading, memory, want) };
}

const asksFinished =
  /(?:how (?:much|heavy|many \S*<unit=g>\S*)|what) (?:do|does|will|would|is|are) (?:\S+ ){0,3}\S*<count=(?:macarons|boxes)\S*(?: \S+){0,3} weigh(?: |$)|net weight (?:of|for) (?:\S+ ){0,2}\S*<count=macarons|weight of (?:one|an?|each|\S*<number>) (?:filled |finished )?\S*<count=macarons/;

/** "how much does one macaron weigh", "net weight of 6 macarons": filled ones, as they are boxed. */
function finishedWeight(reading: Reading, { table }: Memory): Draft | undefined {
  if (!says(reading, asksFinished)) return undefined;
  const size = diameter(reading) ?? table.diameter_mm;
  const numbers = reading.amounts.filter(
    ({ dim, unit, fraction }) => dim === "number" && unit === "" && !fraction,
  );
  const isHeld = (each: Amount) =>
    each.of?.count !== "boxes" || /\bbox(?:es)? (?:of|with) $/.test(reading.text.slice(0, each.at[0]));
  const held = numbers.find(isHeld)?.value;
  const boxes = numbers.find((each) => !isHeld(each))?.value;
  // "how much do 2 boxes weigh", of boxes of nobody knows how many
  if (boxes !== undefined && held === undefined) return { want: "finished" };
  const macarons = held === undefined ? undefined : held * (boxes ?? 1);
  return { want: "finished", macarons: macarons ?? 1, ...(size === undefined ? {} : { diameter_mm: size }) };
}

/** "the kids ate 6 shells", of those that were piped: what is left still pairs up. */
function lostSome(reading: Reading, { table }: Memory): Draft | undefined {
  const [only, ...more] = reading.amounts;
  const isLost =
    /(?:^| )(?:ate|eaten|lost|dropped|gave away|smashed|binned|threw away|tossed) (?:about |only )?\S*<number> (?:of (?:the|my) )?\S*<count=shells/;
  if (!only || more.length > 0 || table.shells === undefined || !says(reading, isLost)) return undefined;
  return only.value < table.shells
    ? {
        shells: table.shells - only.value,
        lost: only.value,
        want: "macarons",
        ...(table.diameter_mm === undefined ? {} : { diameter_mm: table.diameter_mm }),
      }
    : undefined;
}

/** "40 shells at 35 mm and 40 at 45 mm": each size for itself. */
function severalSizes(reading: Reading): Draft[] | undefined {
  const lengths = reading.amounts.filter((each) => each.dim === "length");
  const counts = lengths.map((length) =>
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        /^ (?:\S+ )?(?:(?:at|of|with) )?$/.test(reading.text.slice(each.at[1], length.at[0])),
    ),
  );
  const first = counts[0]?.of?.count;
  const slot = first === "shells" || first === "macarons" ? first : undefined;
  if (lengths.length < 2 || !slot || counts.some((each) => each === undefined)) return undefined;
  const want = readWant(reading);
  return lengths.map((length, at) => ({
    [slot]: counts[at]?.value,
    diameter_mm: inBase(length.value, length.unit),
    ...(want ? { want } : {}),
  }));
}

/** "48 macarons, half raspberry half pistachio". */
function sharedOut(reading: Reading, macarons: number): Draft {
  const shares = namedShares(reading) ?? countedShares(reading, macarons);
  return shares ? { shares } : {};
}

/** "612 g batter, how many macs at 35": mm, where a weight or a count was said. */
function sizeAt(reading: Reading): number | undefined {
  const at = bareNumbers(reading).find((each) => / at $/.test(reading.text.slice(0, each.at[0])));
  const others = reading.amounts.some((each) => each !== at && (each.dim === "weight" || each.of?.count));
  return at && others && at.value >= 20 && at.value <= 80 ? at.value : undefined;
}

/** "and back to regular": the size that counts where none is said. */
const usualSize = (reading: Reading): boolean =>
  says(
    reading,
    /back to (?:the |my )?(?:regular|normal|usual|standard)|(?:regular|normal|usual|standard) (?:size|ones)/,
  );

/** "12 shells per tray, how many trays for 40 macarons": the number belongs to the tray. */
function onTrayOf(reading: Reading): Draft {
  const number =
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        (!each.of || each.of.count === "shells" || each.of.count === "trays") &&
        /^ ?(?:\S+ )?(?:per|a|on (?:a|each|one|every|the)|to (?:a|each|the)|each) (?:baking )?(?:tray|sheet|mat|pan)/.test(
          reading.text.slice(each.at[1]),
        ),
    ) ??
    // "if one tray takes 28 shells"
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.of?.count === "shells" &&
        /(?:tray|sheet|mat|pan)s? (?:takes?|holds?|fits?|has|have|gets?) $/.test(
          reading.text.slice(0, each.at[0]),
        ),
    );
  // "each tray 25 how many trays"
  const each =
    number ??
    reading.amounts.find(
      ({ dim, unit, of, at }) =>
        dim === "number" &&
        unit === "" &&
        (!of || of.count === "trays" || of.count === "shells") &&
        /(?:each|every|a|one) (?:baking )?(?:tray|sheet|mat|pan) (?:is |has |holds |takes |fits |= ?)?$/.test(
          reading.text.slice(0, at[0]),
        ),
    );
  const another = reading.amounts.some(
    (other) => other !== each && other.dim === "number" && other.of?.count,
  );
  return each && another ? { on_tray: each.value } : {};
}

function readKnown(reading: Reading, memory: Memory): Draft {
  const numberOf = (what: string) =>
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === what && !each.fraction);
  const weights = weighed(reading);
  const lines = weights.filter(({ thing }) => isHouseLine(thing?.ingredient));
  // "no, all 128 g", behind so many grams of whites
  const stock =
    memory.last?.tool === "scale" ? (memory.last.inputs.have as { name: string }[] | undefined) : undefined;
  const [loose, ...more] = weights;
  if (
    stock?.length === 1 &&
    stock[0]?.name === "whites" &&
    loose &&
    !loose.thing &&
    more.length === 0 &&
    says(reading, /(?:^| )(?:all|only|just|no|instead)(?: |$)/)
  )
    return { whites_g: loose.grams };
  const batter =
    weights.find((each) => each.thing?.base === "batter") ??
    (lines.length > 0 ? undefined : weights.find((each) => !each.thing && each.amount.dim === "weight"));
  const shellWeight = weights.find((each) => each.thing?.count === "shells");
  const whites = weights.find((each) => each.thing?.ingredient === "whites");
  const counted = reading.amounts.find(isWhitesCount);
  // "how many trays is 48", of macarons that were spoken of
  const ofTrays = reading.amounts.find(
    (each) =>
      each.of?.count === "trays" && /\btrays? (?:is|are|for) $/.test(reading.text.slice(0, each.at[0])),
  );
  if (ofTrays && memory.table.macarons !== undefined) return { macarons: ofTrays.value };
  const macarons =
    numberOf("macarons") ??
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.of &&
        /^ of (?:them|those|these)|^ (?:big |small |large |little |mini )*ones\b/.test(
          reading.text.slice(each.at[1]),
        ),
    );
  const onTray = onTrayOf(reading).on_tray;
  const shells = reading.amounts.find(
    (each) => each.dim === "number" && each.of?.count === "shells" && !each.fraction && each.value !== onTray,
  );
  const one = says(reading, /(?:one(?:<number>)?|a|each|per|single) \S*<count=shells/);
  if (batter && says(reading, /(?:out of|from) (?:\S+ ){0,3}\S*<weight/)) return { batter_g: batter.grams };
  const piped = weights[0];
  // "my shells weigh 9 g baked, how much batter was that"
  if (
    piped &&
    says(
      reading,
      /<weight>.*bak.*(?:how much|what)(?: \S+)? \S*<base=batter|how much \S*<base=batter.*<weight>.* (?:once |when )?\S*bak/,
    )
  )
    return { baked_g: piped.grams };
  // "is 380 g of batter enough for 20 macarons"
  if (macarons && batter && says(reading, /(?:^| )(?:enough|plenty|suffice|do|cover)(?: |$)/))
    return { macarons: macarons.value, batter_g: batter.grams };
  // "can i make 60 macarons with 3 egg whites"
  if (
    macarons &&
    counted &&
    says(
      reading,
      /(?:^| )(?:with|from|out of) (?:only |just |the |my )?\S*<number> \S*<ingredient=(?:egg|whites)/,
    )
  )
    return { macarons: macarons.value, whites_count: counted.value };
  const last = memory.last?.tool === "shells" ? (memory.last.inputs as Draft) : undefined;
  // "and 72 of those", of shells
  if (macarons && !macarons.of && last?.shells !== undefined && last.macarons === undefined)
    return { shells: macarons.value };
  if (macarons) return { macarons: macarons.value + forUs(reading, macarons) };
  if (shells && !(one && shells.value === 1)) return { shells: shells.value - lostOf(reading, shells) };
  if (shellWeight) return { shell_g: shellWeight.grams };
  const batches = numberOf("batches")?.value ?? 1;
  // "3 batches of batter, each 460 g"
  if (batter) return { batter_g: batter.grams * (says(reading, /(?:^| )each(?: |$)/) ? batches : 1) };
  const have = lines.map(({ thing, grams }) => ({ name: thing?.ingredient ?? "", grams }));
  if (have.some((each) => each.name !== "whites")) return { have };
  if (whites) return { whites_g: whites.grams };
  // "how many eggs am i cracking for those whites", of the recipe on the table; "for that", behind a buttercream
  const onTable = memory.table.recipe?.find((each) => each.name === "whites");
  const forThose =
    /how many \S*<[^>]*ingredient=(?:egg|whites).*(?:those|that|the|these) \S*<ingredient=whites/;
  const forThat =
    /how many \S*<[^>]*ingredient=(?:egg|whites).*(?:crack|separate|break|need|use)\S* (?:for|in) (?:that|it|this)(?: one| lot| batch\S*)?(?: \?)?$/;
  if (
    onTable &&
    reading.amounts.length === 0 &&
    (says(reading, forThose) || (memory.last?.tool === "buttercream" && says(reading, forThat)))
  )
    return { whites_g: onTable.grams, want: "whites" };
  if (counted) return { whites_count: counted.value };
  const trays = numberOf("trays");
  // "make that 3 trays", behind what one of them holds
  const held = last?.want === "tray" ? { want: "shells" as const } : {};
  if (trays && trays.value > 1) return { trays: trays.value, ...held };
  // "how many trays for 15"
  const bare = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.of && !each.fraction,
  );
  const asks = says(reading, /how (?:many|much)|<count=trays|<base=batter[^>]*> for \S*<number/);
  return bare && asks && /(?:^| )for (?:just |only |about )?$/.test(reading.text.slice(0, bare.at[0]))
    ? { macarons: bare.value }
    : {};
}

const isHouseLine = (name: string | undefined): boolean => houseFormula.some((each) => each.name === name);

/** "112 shells, 6 cracked": those that can't be used. */
function lostOf({ amounts, text }: Reading, all: Amount): number {
  const lost = amounts.find(
    (each) =>
      each !== all &&
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      each.value < all.value &&
      /^ (?:of (?:them|those|these) )?(?:are |were |got |have |came out |is |was )?(?:cracked|broken?|hollow|burnt|burned|ruined|lost|stuck|bad|duds?|no good|unusable|in the bin|smashed|ugly)\b/.test(
        text.slice(each.at[1]),
      ),
  );
  return lost?.value ?? 0;
}

function readWant(reading: Reading): ShellsInputs["want"] {
  if (says(reading, /(?:gives|makes|yields) (?:me )?how many(?: \?)?$/)) return "macarons";
  if (
    says(
      reading,
      /^(?:and |so |ok |then )*\S*<count=trays>(?:(?: needed| then| now)?(?: \?)?$| (?:needed )?for \S*<number>)/,
    )
  )
    return "trays";
  const asked =
    /(?:how|hw|what) (?:many|much|number)(?: more| of| \S*<color\S*| \S*<length>)* (?:of )?(?:my |the )?(\S*<[^>]*>)/.exec(
      reading.mask,
    )?.[1] ?? "";
  if (says(reading, /(?:once|after|when) (?:(?:it|they|its|theyre|that)(?: \S+)? )?\S*bak/)) return "baked";
  if (says(reading, /^(?:and |what about |ok )*\S*bak\S*(?:<\S+)?(?: [?])?$/)) return "baked";
  if (says(reading, /bak\S*<.*(?:weigh|heavy)|(?:weigh|heavy).*bak|baked weight/)) return "baked";
  if (
    onTrayOf(reading).on_tray === undefined &&
    says(
      reading,
      /fit|per \S*<count=trays|on (?:a|one|1|my|the|each|\S*<number>) ?\S*<count=trays|(?:one|a|each) \S*<count=trays/,
    ) &&
    !says(reading, /<count=macarons/)
  )
    return "tray";
  if (/count=trays/.test(asked)) return "trays";
  const sized = says(reading, /<length>/) && says(reading, /<count=trays/);
  if (
    sized &&
    !says(reading, /<count=macarons/) &&
    !reading.amounts.some((each) => each.dim === "number" && each.value > 1)
  )
    return "tray";
  if (/ingredient=(egg|whites)/.test(asked) || says(reading, /crack(?!ed)/)) return "whites";
  if (
    says(reading, /(?:one(?:<number>)?|a|each|per|single) (?:\S*<length> )?\S*<count=shells/) &&
    says(reading, /how much|batter|weigh/)
  )
    return "one";
  if (/count=macarons/.test(asked)) return "macarons";
  if (/count=shells/.test(asked)) return "shells";
  if (says(reading, /<base=batter/) && !reading.amounts.some((each) => each.of?.base === "batter"))
    return "batter";
  return undefined;
}
