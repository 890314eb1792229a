/** Reads a ganache question: which chocolate, what for, which weights, and what is wrong with it. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { counted, says, weighed } from "../lib/find.ts";
import { countedShares, namedShares } from "../lib/shares.ts";
import { onTable, readAim } from "./aim.ts";
import {
  forAnotherUse,
  haveOf,
  mendBefore,
  moreOfPart,
  partAsked,
  putRight,
  stirredIn,
} from "./before-said.ts";
import type { GanacheInputs } from "./ganache.ts";
import { isGrade, kindOf, mixedKinds, otherKind } from "./kind-said.ts";
import { readLines, readMix } from "./mix-said.ts";
import { pairSaid } from "./pair-said.ts";
import { ratioSaid } from "./ratio-said.ts";
import { asksChocolate, readWant } from "./want-said.ts";
import { readWeights } from "./weights-said.ts";

type Draft = Partial<GanacheInputs>;

export function readGanache(reading: Reading, memory: Memory): Draft | Draft[] {
  const other = otherKind.exec(reading.text)?.[1];
  if (other) return { other };
  if (
    /\b(?:butter|milk|water|coconut \w+|yogh?urt|sour cream|mascarpone|oil)\b (?:instead of|in place of|rather than) (?:the )?cream\b/.test(
      reading.text,
    )
  )
    return { other: "anything but cream with it" };
  const kinds = kindsOfOrder(reading);
  if (kinds) return kinds;
  const mixed = mixedKinds(reading);
  if (mixed) return { mixed };
  const pair = pairSaid(reading);
  const kind = pair && kindOf(reading);
  const wanted = readWant(reading);
  if (pair)
    return { ...(kind ? { chocolate: kind } : {}), ...(wanted.want === "mend" ? wanted : {}), ...pair };
  const said = ratioSaid(reading);
  const read = withRatio(readOrder(said?.rest ?? reading, memory), said?.ratio);
  const grades = reading.amounts.flatMap((each) => (isGrade(each, reading) ? [each.value] : []));
  return grades.length === 0 || Array.isArray(read) || read.want === "target" ? read : { ...read, grades };
}

const withRatio = (read: Draft | Draft[], ratio: number | undefined): Draft | Draft[] =>
  ratio === undefined
    ? read
    : Array.isArray(read)
      ? read.map((each) => ({ ...each, ratio }))
      : { ...read, ...(read.want === "ratio" ? { want: "build" as const } : {}), ratio };

function readOrder(reading: Reading, memory: Memory): Draft | Draft[] {
  const part = partAsked(reading, memory);
  if (part)
    return {
      want: "composition",
      part,
      ...((memory.last?.inputs as Draft | undefined)?.want === "target" ? onTable(memory, {}) : {}),
    };
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const aim = readAim(reading, memory);
  if (aim) return formula ? { ...aim, formula } : aim;
  if (formula && says(reading, /composition|water|fat|sugar|perishable/))
    return { want: "composition", formula };
  const several = readSeveral(reading);
  if (several) return several;
  const want = readWant(reading);
  const chocolate = kindOf(reading);
  const fills = says(
    reading,
    /(?:filling|macaron)\S* (?:\S+ )?\S*<[^>]*base=ganache|ganache\S* (?:filling|to fill)/,
  );
  const pours = says(reading, /(?:what|how much)[^?]* pour\S* (?:on|over|in|onto)(?: |$)/);
  const use =
    (fills && pours
      ? "piping"
      : reading.things.findLast((each) => each.use && !isRefused(reading, each))?.use) ??
    (says(reading, /(?:^| )(?:to|for) (?:fill|filling|sandwich)/) ? "piping" : undefined);
  const loosens =
    use === undefined &&
    asksChocolate(reading) &&
    reading.things.some((each) => each.symptom === "loose ganache");
  const common: Draft = {
    ...(chocolate ? { chocolate } : {}),
    ...(use ? { use } : loosens ? { use: "loose" as const } : {}),
    ...want,
  };
  // "250 g white and 100 g cream?" alone asks the same of another mix
  const alone = reading.mask.split(" ").every((word) => /<|^(?:and|with|plus|to|on|\?|,|&)$/.test(word));
  const before =
    (memory.follows || alone) && memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  // "next time i make the same but 300 g total", behind one that split
  const anew =
    memory.last?.tool === "ganache" &&
    ["split", "mend"].includes((memory.last.inputs as Draft).want ?? "") &&
    weighed(reading).length === 1 &&
    says(
      reading,
      /(?:^| )(?:next time|start (?:over|again|fresh)|a (?:new|fresh) (?:one|batch)|make (?:the same|it again|another|a new))(?: |$)/,
    );
  // "same thing with 300 g", behind one that split
  if (anew) return { ...common, want: "build", ...readWeights(reading, memory, false) };
  const hasSplit = memory.last?.tool === "ganache" && (memory.last.inputs as Draft).want === "split";
  const [only, ...rest] = weighed(reading);
  if (
    hasSplit &&
    only &&
    rest.length === 0 &&
    says(reading, /(?:^| )same(?: thing| again)? (?:with|for|but)(?: |$)/)
  )
    return { want: "split", total_g: only.grams };
  const have = haveOf(reading, memory);
  if (have) return have;
  const added =
    stirredIn(reading, memory) ??
    putRight(reading, memory) ??
    moreOfPart(reading, memory) ??
    mendBefore(reading, memory);
  if (added) return added;
  const elsewhere = forAnotherUse(reading, memory, use);
  if (elsewhere) return { ...common, ...elsewhere };
  const lines = readLines(reading);
  // "and with milk chocolate instead of the dark", of a mix with dark chocolate in it
  const kinds = reading.things.flatMap((each) => each.chocolate ?? []);
  const was = before?.lines?.filter((each) => /^(?:dark|milk|white) chocolate$/.test(each.name));
  const other = [...kinds, chocolate].find((each) => each && `${each} chocolate` !== was?.[0]?.name);
  if (
    before?.want === "composition" &&
    before.lines &&
    was?.length === 1 &&
    other &&
    reading.amounts.length === 0
  )
    return {
      ...common,
      chocolate: other,
      want: "composition",
      lines: before.lines.map((each) =>
        each === was[0] ? { name: `${other} chocolate`, grams: each.grams } : each,
      ),
    };
  // "and with 300 g of the chocolate", of a mix with dark chocolate in it
  const [first] = lines.lines ?? [];
  const ownKind = before?.lines?.find((each) => /chocolate$/.test(each.name))?.name;
  if (before?.want === "composition" && before.lines && first?.name === "chocolate" && ownKind)
    return {
      ...common,
      want: "composition",
      lines: before.lines.map((each) => (each.name === ownKind ? { ...each, grams: first.grams } : each)),
    };
  const swapped = withLine(reading, before, lines.lines);
  if (swapped) return { ...common, want: "composition", lines: swapped };
  // "and without butter"
  const without = says(
    reading,
    /(?:^| )(?:without|no|minus|leave out|leaving out) (?:the |any )?\S*<ingredient=/,
  );
  const gone = reading.things.filter(({ at }) =>
    /(?:without|\bno|minus|leav\w+ out) (?:the |any )?$/.test(reading.text.slice(0, at[0])),
  );
  const kept = before?.lines?.filter(
    (each) => !gone.some((thing) => thing.ingredient === each.name || thing.text === each.name),
  );
  if (before?.want === "composition" && without && kept && kept.length < (before.lines?.length ?? 0)) {
    // "without the butter but only 100 g cream"
    const now = lines.lines ?? [];
    return {
      ...common,
      want: "composition",
      lines: [...kept.map((each) => now.find(({ name }) => name === each.name) ?? each)],
    };
  }
  if (before?.want === "composition" && (lines.lines?.length ?? 0) > 1)
    return { ...common, want: "composition", ...lines };
  if (want.want === "composition") return { ...common, ...readMix(reading, memory) };
  // "so its 210 dark and 180 cream now, what will that do": what it is good for, and no more to be mended
  const now = readWeights(reading, memory, false);
  const told =
    before?.want === "mend" &&
    want.want === undefined &&
    weighed(reading).length > 1 &&
    now.chocolate_g !== undefined &&
    now.cream_g !== undefined &&
    says(
      reading,
      /what (?:will|does|can|would) (?:that|it|this)|good for|ratio|what(?:s| is) (?:that|it|this)|(?:right|ok|okay|good|enough) (?:for|to) /,
    );
  if (told) return { ...common, ...now, want: "check" };
  const weights = readWeights(reading, memory, want.want === "split");
  // "poured 170 cream in, too runny", of the chocolate that it was worked out for
  const had = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft).chocolate_g : undefined;
  const poured =
    had !== undefined &&
    weights.cream_g !== undefined &&
    weights.chocolate_g === undefined &&
    weights.total_g === undefined &&
    (want.want === "mend" || says(reading, /(?:^| )(?:poured|added|tipped|put)(?: |$)/));
  const kind = (memory.last?.inputs as Draft | undefined)?.chocolate;
  const tooSoft = says(reading, /too_(?:soft|runny|loose|thin|wet)|too (?:soft|runny|loose|thin|wet)/);
  if (poured && tooSoft)
    return {
      ...(kind ? { chocolate: kind } : {}),
      ...common,
      chocolate_g: had,
      ...weights,
      want: "mend",
      fault: "loose",
    };
  if (poured) return { ...(kind ? { chocolate: kind } : {}), ...common, chocolate_g: had, ...weights };
  return { ...common, ...weights };
}

/** "and with 30 g butter in it", "no, 90 cream", "make it 90 g cream": the mix before with one weight added or put right. */
function withLine(reading: Reading, before: Draft | undefined, said: Draft["lines"]): Draft["lines"] {
  const [only, ...others] = said ?? [];
  if (before?.want !== "composition" || !before.lines || !only || others.length > 0) return undefined;
  const adds = says(
    reading,
    /^(?:(?:and|what|how|about|if|so|but|now|then|ok) )*(?:with|plus|add|adding) |(?:put|add|added|stir|stirred|adding) \S*<weight>.* (?:as well|too|in)(?: |$)/,
  );
  const corrects =
    before.lines.some((each) => each.name === only.name) &&
    !says(reading, /(?:^| )(?:more|less|extra|another|how)(?: |$)/) &&
    says(
      reading,
      /^(?:(?:no|nope|sorry|oops|oh|actually|wait|make|it|its|was|that|change|set|say|try|only|just|and|what|if|the|i|meant|used|,) )*(?:\S*<(?:weight|number)> (?:of )?(?:the )?\S*<[^>]*ingredient=\S+|\S*<[^>]*ingredient=\S+ (?:to |is |was |are )?\S*<(?:weight|number)>)(?: (?:instead|then|now|please))?(?: \?)?$/,
    );
  if (!adds && !corrects) return undefined;
  // what was put right keeps its place
  return adds
    ? [...before.lines.filter((each) => each.name !== only.name), only]
    : before.lines.map((each) => (each.name === only.name ? { ...each, grams: only.grams } : each));
}

/** "ganache for 24 macarons, 12 dark and 12 white": one a chocolate, each for its own macarons. */
function kindsOfOrder(reading: Reading): Draft[] | undefined {
  const macarons = counted(reading, "macarons");
  const shares =
    macarons === undefined ? undefined : (countedShares(reading, macarons) ?? namedShares(reading));
  if (!shares || macarons === undefined || says(reading, /one (?:bowl|ganache)|mixed|together/))
    return undefined;
  const of = shares.map(({ name, share }) => ({ kind: name.split(" ")[0], count: macarons * share }));
  const known = ["dark", "milk", "white"] as const;
  const drafts = of.flatMap(({ kind, count }): Draft[] => {
    const chocolate = known.find((each) => each === kind);
    return chocolate && Number.isInteger(count)
      ? [{ chocolate, macarons: count, of_macarons: macarons, want: "build" }]
      : [];
  });
  return drafts.length === shares.length ? drafts : undefined;
}

/** "for a drip, not piping": the use that isn't meant. */
const isRefused = (reading: Reading, { at }: Thing) =>
  /(?:^| )(?:not|no|never|instead of|rather than)(?: for| a| to)* $/.test(reading.text.slice(0, at[0]));

/** "150 g dark for a drip and 150 g milk for filling, how much cream for each": one ganache a chocolate. */
function readSeveral(reading: Reading): Draft[] | undefined {
  const own = weighed(reading).filter((each) => each.thing?.chocolate);
  if (
    own.length < 2 ||
    new Set(own.map((each) => each.thing?.chocolate)).size < own.length ||
    weighed(reading).some((each) => each.thing?.ingredient === "cream")
  )
    return undefined;
  if (![undefined, "build"].includes(readWant(reading).want)) return undefined;
  const ends = own.map((_, at) => own[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY);
  return own.map(({ grams, thing, amount }, at) => {
    const use = reading.things.find(
      (each) => each.use && each.at[0] > amount.at[0] && each.at[0] < (ends[at] ?? 0),
    )?.use;
    return { chocolate: thing?.chocolate, chocolate_g: grams, ...(use ? { use } : {}) };
  });
}
