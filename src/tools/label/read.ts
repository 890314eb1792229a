/** Reads a label's ingredients, or a description to find allergens by. */
import type { Memory, Reading, Span, Thing } from "../contract/index.ts";
import { nameOf, readLines, sameIngredient } from "../lib/lines.ts";
import { wordsOf } from "../lib/pieces.ts";
import { gramsOf, inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import { amended } from "./amended.ts";
import type { LabelInputs } from "./label.ts";
import { isPrintOnly, printSaid } from "./print-said.ts";

type Draft = Partial<LabelInputs>;

export function readLabel(reading: Reading, memory: Memory): Draft {
  const before = beforeIt(memory);
  const want = wanted(reading) ?? (memory.follows ? before?.want : undefined);
  const net = netWeight(reading);
  const made = reading.whens[0];
  if (
    /(?:safe|ok|okay|suitable|fine|can|for) .*(?:allerg(?:y|ic)|intoleran|coeliac|celiac)|(?:allerg(?:y|ic)|intoleran\S*|coeliac|celiac)\b.*(?:kid|child|guest|friend|customer|person|eat|instead|safe|suitable|can (?:i|we|she|he|they)|(?:is|are|would) (?:it|this|these|they|that) (?:ok|okay|fine|alright))/.test(
      reading.text,
    )
  )
    return { want: "safe" };
  const bare = before?.lines ? bareWeight(reading) : undefined;
  // "no 140 g", behind a label with its net weight: that stood last
  if (before?.lines && bare !== undefined)
    return before.net_g === undefined && before.net_oz === undefined
      ? { ...before, bare_g: bare }
      : { ...before, net_g: bare, net_oz: undefined };
  if (before?.lines && memory.last?.inputs.bare_g !== undefined && reading.amounts.length === 0) {
    const given = nameGiven(reading, before, memory.last.inputs.bare_g as number);
    if (given) return given;
  }
  const print = printSaid(reading);
  const title = before?.lines ? titleSaid(reading) : undefined;
  if (before && title) return { ...before, title };
  const of = /^(?:and |ok |please )*\S*<number> of (?:them|those|it)(?: please)?$/.test(reading.mask);
  if (before?.lines && of) return { ...before, as_pdf: true, copies: reading.amounts[0]?.value };
  const by = responsible(reading);
  const common: Draft = {
    ...(by ? { by: by.name } : {}),
    ...(want || print.as_pdf ? { want: print.as_pdf && want !== "dates" ? "label" : want } : {}),
    ...print,
    ...marketOf(reading),
    ...(net ? net.input : {}),
    ...(made ? { made: placeless(made) } : {}),
  };
  const read = readLines(reading);
  const lines = read.lines.filter((each) => each.at[0] !== net?.at && !(by && within(by, each.at)));
  const taken = lines.map(({ name, grams, thing }) => ({
    name,
    grams,
    ...(flavored(thing) ? { taste: thing?.taste } : {}),
  }));
  const asks = asksAbout(reading);
  // "add address: Anna Baker": her name is no ingredient
  const foods = by ? { ...reading, things: reading.things.filter((each) => !within(by, each.at)) } : reading;
  const changed = amended(foods, memory, taken);
  if (by && !changed && before?.lines && lines.length === 0)
    return { ...before, ...common, want: before.want };
  if (changed)
    return {
      ...changed,
      ...common,
      ...(asks.length ? { asked: asks } : {}),
      want: asks.length ? "allergens" : before?.want,
    };
  // "nut free version?", of the label before
  if (before?.lines && lines.length === 0 && asks.length > 0 && !namesFood(reading))
    return { ...before, want: "allergens", asked: asks };
  if (lines.length > 0) {
    const unread = read.unread.filter((each) => namesSomething(each, reading));
    // "add 40 g pistachio paste to the ingredients"
    const more =
      memory.follows &&
      before?.lines &&
      /^(?:(?:and|ok|oh|also|now|please) )*(?:add|plus|with|put) |\bas well\b|(?:to|on|in) the (?:ingredients|list|label)\b/.test(
        reading.text,
      )
        ? before.lines.filter(({ name }) => !lines.some((each) => each.name === name))
        : [];
    return {
      want: "label",
      ...common,
      lines: [
        ...more,
        ...lines.map(({ name, grams, thing }) => ({
          name,
          grams,
          ...(flavored(thing) ? { taste: thing?.taste } : {}),
        })),
      ],
      ...(unread.length ? { unread } : {}),
    };
  }
  // "net weight 480", behind its allergens: of the label again
  if (net && memory.follows && before?.lines) return { ...before, ...common, want: "label" };
  // "add my name: ...", and nothing else of the label
  if (by && memory.follows && before?.lines) return { ...before, ...common };
  // "print that label" is about the one before, whatever came between
  if (print.as_pdf && isPrintOnly(print, reading) && (before || memory.table.label) && !namesFood(reading))
    return { ...(before ?? (memory.table.label as Draft)), ...common };
  const formulas = memory.names.formulas.filter((name) => reading.text.includes(name.toLowerCase()));
  if (formulas.length > 0) return { want: "label", ...common, formulas };
  if (want === "dates") return common;
  const asked = want === "allergens" ? asksAbout(reading) : [];
  const said = describe(reading, asked);
  // "and now the us one for the same": another label, and nothing else in it
  const isSame = memory.follows && before?.lines && !said?.named && said?.mixes?.join() === "shells";
  const described = isSame ? undefined : said;
  // "and if i put peanut butter in them": more in what was asked about
  const more =
    described &&
    memory.follows &&
    before &&
    /(?:^| )(?:in|into|on|to) (?:them|it|those|that|these)(?: |$)/.test(reading.mask);
  if (described && more && before)
    return {
      ...before,
      ...common,
      mixes: [...new Set([...(before.mixes ?? []), ...(described.mixes ?? [])])],
      named: [...(before.named ?? []), ...(described.named ?? [])],
    };
  // "and for pistachio with white chocolate?", behind macarons: their shells are in it all the same
  const isWhole = before?.mixes?.includes("shells") && before.want === "allergens";
  if (described && memory.follows && isWhole && !described.mixes?.includes("shells") && described.named)
    described.mixes = ["shells", ...(described.mixes ?? [])];
  const swapped =
    described && memory.follows && before?.named ? inPlaceOf(reading, before, described) : undefined;
  if (swapped) return { ...common, ...swapped };
  if (described)
    return {
      ...common,
      want: want === "label" && !memory.follows ? "label" : (want ?? "allergens"),
      ...described,
      ...(asked.length ? { asked } : {}),
    };
  const table = memory.table.recipe;
  // "which allergens are in them", behind a filling: in the macarons, with their shells
  const whole = want === "allergens" && /(?:^| )(?:they|them|these|those|theyre)(?: |$)/.test(reading.mask);
  const mix = memory.table.filling ?? memory.table.mass?.thing;
  if (whole && !before && mix && ["ganache", "buttercream"].includes(mix))
    return {
      ...common,
      want,
      mixes: ["shells", mix],
      named: (table ?? []).filter((each) => /chocolate/.test(each.name)).map(({ name }) => ({ name })),
    };
  if (table?.length && !before)
    return {
      ...common,
      want: want ?? "label",
      lines: table.map(({ name, grams }) => ({ name, grams })),
      from_table: true,
    };
  // "does it have nuts", of the label before
  return asked.length && memory.follows && before ? { ...before, ...common, asked } : common;
}

/** "and with peanut butter in place of the walnut": the rest stays as it was asked about. */
function inPlaceOf(reading: Reading, before: Draft, described: Draft): Draft | undefined {
  // "and if theyre pistachio instead": the taste alone is another
  const tastes = (before.named ?? []).filter((each) => each.taste !== undefined);
  const onlyTaste = described.named?.length === 1 && described.named[0]?.taste !== undefined;
  if (onlyTaste && tastes.length === 1 && /\binstead(?! of\b)/.test(reading.text))
    return {
      ...before,
      named: [...(before.named ?? []).filter((each) => each.taste === undefined), ...(described.named ?? [])],
    };
  const behind = /\b(?:in place of|instead of|rather than|not)\b/.exec(reading.text)?.index;
  const swap = /\b(?:swap|swapped|replace|replaced|exchange|change)\b.*?\b(?:for|with|by|to)\b/.exec(
    reading.text,
  );
  if ((behind === undefined && !swap) || !described.named) return undefined;
  const isOld = ({ at }: Thing) =>
    behind === undefined ? at[0] < (swap?.index ?? 0) + (swap?.[0].length ?? 0) : at[0] > behind;
  const gone = new Set(reading.things.filter(isOld).flatMap((each) => [each.taste, nameOf(each)]));
  const isGone = (each: { name: string; taste?: string }) => gone.has(each.name) || gone.has(each.taste);
  return {
    ...before,
    named: [
      ...(before.named ?? []).filter((each) => !isGone(each)),
      ...described.named.filter((each) => !isGone(each)),
    ],
  };
}

/** A filling or an ingredient in the sentence: another label than the one before. */
const namesFood = (reading: Reading): boolean =>
  reading.things.some((each) => each.ingredient || each.taste || each.base || each.chocolate || each.formula);

function wanted(reading: Reading): LabelInputs["want"] {
  if (/free\b/.test(wordsOf(reading)) && asksAbout(reading).length > 0) return "allergens";
  if (
    /^(?:and |so |but )*(?:(?:does|do|has|have) (?:it|they|that|these|those|this)|any) /.test(
      wordsOf(reading),
    ) &&
    asksAbout(reading).length > 0
  )
    return "allergens";
  if (/(?:is|are) there .*\bin\b/.test(wordsOf(reading)) && asksAbout(reading).length > 0) return "allergens";
  if (
    /\ball?erg\w+|\b(?:nut|gluten|dairy|egg|milk|soy|lactose)[ -]free\b|\bdeclare\b|\bcontains?\b(?! [\d])/.test(
      reading.mask,
    )
  )
    return "allergens";
  if (
    /(?:best|use)[ -](?:by|before)|expir\w+|what dates?\b/.test(reading.text) &&
    reading.amounts.every((each) => each.dim !== "weight")
  )
    return "dates";
  if (/\blabels?\b|ingredients? (?:list|line|statement)/.test(reading.mask)) return "label";
  return undefined;
}

/** The label before, without the weight of which it was asked what it is of. */
function beforeIt({ last }: Memory): Draft | undefined {
  if (last?.tool !== "label") return undefined;
  return { ...(last.inputs as Draft), bare_g: undefined };
}

/** "the butter", "the net weight": what weighs that much. */
function nameGiven(reading: Reading, before: Draft, grams: number): Draft | undefined {
  if (/\bnet\b/.test(reading.text)) return { ...before, net_g: grams, net_oz: undefined };
  const [food, ...more] = reading.things.filter((each) => each.ingredient || each.chocolate || each.taste);
  if (!food || more.length > 0) return undefined;
  const name = nameOf(food);
  const others = (before.lines ?? []).filter((each) => !sameIngredient(each.name, name));
  return { ...before, lines: [...others, { name, grams }] };
}

/** "no, 140 g", "make it 140": a weight in grams put right, of which nothing says what it is of. */
function bareWeight({ mask, amounts, things }: Reading): number | undefined {
  const [only, ...more] = amounts;
  const isBare =
    /^(?:(?:no|nope|oh|oops|sorry|actually|wait|hang on|i meant|i mean|make|it|that|its|thats|is|be|should|to|,) )*\S*<(?:weight|number)>(?: now| please| then)?$/.test(
      mask,
    );
  if (!isBare || !only || more.length > 0 || things.length > 0 || only.of) return undefined;
  // "make it 24" may be labels: a bare number counts only where something is put right
  const isRight = /^(?:no|nope|oh|oops|sorry|actually|wait|i meant|i mean)\b/.test(mask);
  return only.dim === "weight" || isRight ? gramsOf(only) : undefined;
}

/** "call it Raspberry Cloud": as she typed it. */
const titleSaid = ({ said }: Reading): string | undefined =>
  /^(?:(?:please|ok|and) )*(?:call|name|title) (?:it|them|this) (.{2,60})$/i.exec(said)?.[1]?.trim();

/** "my name is Ida Holm, 3 Mill Lane": what stands behind it, as she typed it. */
function responsible(reading: Reading): { name: string; at: Span } | undefined {
  const intro =
    /\b(?:(?:my|our|the|add|add the|add my|put) (?:name|address)(?: and (?:my )?address)?|name and address|name on it|made by)(?: (?:is|are))? ?[:,]? ?(?=\S)/;
  const end = /\s*(?:;|\bnet (?:weight|wt)\b|\bbest (?:before|by)\b|:|$)/;
  const cut = (text: string): Span | undefined => {
    const found = intro.exec(text.toLowerCase());
    if (!found) return undefined;
    const from = found.index + found[0].length;
    return [from, from + (end.exec(text.slice(from).toLowerCase())?.index ?? 0)];
  };
  const [said, at] = [cut(reading.said), cut(reading.text)];
  if (!said || !at || said[1] - said[0] < 3) return undefined;
  return { name: reading.said.slice(...said).trim(), at };
}

const within = ({ at }: { at: Span }, span: Span): boolean => span[0] >= at[0] && span[1] <= at[1];

/** Countries of whose labels no table here knows the form. */
const otherLands =
  /\b(?:(uk|u\.k\.|british|english|scottish|welsh|canadian|australian|aussie|indian|japanese|swiss|norwegian|mexican|brazilian|south african|new zealand) (?:label|form|version|rules?|law|one)|for (?:the |a )?(uk|u\.k\.|united kingdom|britain|england|scotland|wales|canada|australia|india|japan|switzerland|norway|mexico|brazil|south africa|new zealand))\b/;

function marketOf(reading: Reading): Draft {
  if (/\b(?:eu|e\.u\.|europe\w*|german\w*|french|irish)\b/.test(reading.text)) return { market: "eu" };
  if (
    /\b(?:us|usa|u\.s\.|american?|fda|states) (?:label|form|version|rules?|law|one)|\b(?:usa|american|fda|united states)\b|for the (?:us|states)\b/.test(
      reading.text,
    )
  )
    return { market: "us" };
  if (/^(?:the |a )*us(?: one| please| pls| then)*[.!]?$/.test(reading.text)) return { market: "us" };
  const land = otherLands.exec(reading.text);
  return land ? { elsewhere: land[1] ?? land[2] } : {};
}

/** "net weight 120 g", "net 5 oz", "120 g net". */
function netWeight(reading: Reading): { input: Draft; at: number } | undefined {
  const weights = reading.amounts.filter(
    (each) =>
      each.dim === "weight" || (each.dim === "number" && each.unit === "" && !each.of && each.value >= 10),
  );
  const before = ({ at }: { at: Span }) => reading.text.slice(Math.max(0, at[0] - 24), at[0]);
  // "cream 3 oz. net weight 5 oz": the one that it stands before
  const said =
    weights.find((each) => /\bnet (?:weight|wt)\b[\s\w]{0,10}:?\s*$/.test(before(each))) ??
    weights.find(
      (each) =>
        /\bnet\b[\s\w:]{0,20}$/.test(before(each)) ||
        /^\s*net\b/.test(reading.text.slice(each.at[1])) ||
        (!each.of && /\b(?:box|bag|pack|weighs?)\b[\s\w:]{0,12}$/.test(before(each))),
    );
  if (!said) return undefined;
  if (said.dim === "number") return { at: said.at[0], input: { net_g: said.value } };
  const ounces = said.unit === "oz" || said.unit === "lb";
  return {
    at: said.at[0],
    input: ounces
      ? { net_oz: inBase(said.value, said.unit) / inBase(1, "oz") }
      : { net_g: inBase(said.value, said.unit) },
  };
}

/** A piece without a weight that still names something to eat: it can't be dropped. Talk around the list can. */
const namesSomething = (piece: string, reading: Reading) =>
  reading.things.some(
    (each) =>
      piece.includes(each.text) &&
      (each.ingredient || each.taste || each.dose || each.chocolate || each.base),
  ) && !/\blabels?\b|\ball?erg/.test(piece);

const flavored = (thing: Thing | undefined): boolean => Boolean(thing?.taste && !thing.ingredient);

const askedWords: readonly (readonly [RegExp, readonly string[]])[] = [
  [
    /\bnuts?(?:free)?\b/,
    ["almond", "hazelnut", "pistachio", "walnut", "pecan", "macadamia", "cashew", "Brazil nut", "pine nut"],
  ],
  [/\b(?:gluten|wheat)(?:free)?\b/, ["wheat", "barley", "rye", "oats"]],
  [/\b(?:soya?|soy)(?:free)?\b/, ["soy"]],
  [/\b(?:dairy|milk|lactose)(?:free)?\b/, ["milk"]],
  [/\beggs?(?:free)?\b/, ["egg"]],
  [/\bpeanuts?(?:free)?\b/, ["peanut"]],
  [/\bsesame(?:free)?\b/, ["sesame"]],
  [/\balmonds?\b/, ["almond"]],
];

/** The allergens behind "contain", "allergic to", "any", or before "free": what is asked about, not what is in it. */
function asksAbout(reading: Reading): string[] {
  const words = wordsOf(reading);
  const behind =
    /\b(?:contains?|allergic to|allergy to|free (?:of|from)|(?:is|are) there|any|(?:does|do|has|have|got) (?:it|they|that|these|those|this)(?: have| got)?)\b(.*?)(?:\bin\b|,|\?|$)/.exec(
      words,
    )?.[1] ?? "";
  const before = /(\S+) ?free\b/.exec(words)?.[0] ?? "";
  return [
    ...new Set(askedWords.flatMap(([pattern, ids]) => (pattern.test(`${behind} ${before}`) ? ids : []))),
  ];
}

const isAllergenWord = (thing: Thing) =>
  ["milk", "egg", "almonds"].includes(thing.ingredient ?? "") || (thing.taste === "sesame" && !thing.dose);

/** "hazelnut macarons": a taste alone, of which nobody said whether it is nut, paste or flavor. */
const bareTaste = (thing: Thing): boolean =>
  Boolean(
    thing.taste &&
      (!thing.dose || thing.dose === "flavor") &&
      (!thing.ingredient || thing.text === thing.taste),
  );

/** Mixes, chocolates, nuts and tastes by name. Macarons and "ones" bring their shells. */
function describe(reading: Reading, asked: readonly string[]): Draft | undefined {
  const mixes = [
    ...new Set(
      reading.things.flatMap((each) =>
        each.base && each.base !== "filling" && each.base !== "batter" && each.base !== "meringue"
          ? [each.base]
          : [],
      ),
    ),
  ];
  const named = reading.things
    .filter(
      (each) =>
        (each.ingredient || each.chocolate || each.taste) &&
        each.id !== "dates" &&
        !(isAllergenWord(each) && asked.length > 0),
    )
    .map((each) =>
      bareTaste(each) ? { name: each.taste ?? each.text, taste: each.taste } : { name: nameOf(each) },
    );
  const shells =
    reading.things.some(
      (each) => each.count === "macarons" || each.count === "shells" || each.base === "batter",
    ) || /\bones?\b/.test(reading.mask);
  if (!shells && mixes.length === 0 && named.length === 0) return undefined;
  return {
    ...(shells || (mixes.length === 0 && named.length === 0) ? { mixes: ["shells", ...mixes] } : { mixes }),
    ...(named.length ? { named } : {}),
  };
}
