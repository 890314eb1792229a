/** Reads a scaling question: the recipe's lines apart from what is at hand, and what sets the size. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import {
  bareNumbers,
  diameter,
  isWhitesCount,
  pointsBack,
  says,
  type Weighed,
  weighed,
  white_g,
} from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import type { ScaleInputs } from "./scale.ts";

type Draft = Partial<ScaleInputs>;
type Line = { name: string; grams: number };

export function readScale(reading: Reading, memory: Memory): Draft {
  const order = readOrder(reading, memory);
  const isOpen =
    Object.keys(order).length === 0 &&
    !memory.follows &&
    reading.amounts.length === 0 &&
    says(reading, asksOneLine) &&
    !says(reading, /(?:^| )(?:house|recipe|formula|batch|book)(?:<| |$)/);
  const draft: Draft = isOpen ? { unsized: true } : withEqualParts(order);
  const before = memory.follows && memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  const { have } = draft;
  const had = before?.have;
  // "there are 270 g of powdered sugar now", of several that are at hand
  return have &&
    had &&
    !says(reading, /(?:^| )(?:scale|rescale|resize)(?: |$)/) &&
    have.length < had.length &&
    have.every(({ name }) => had.some((each) => each.name === name))
    ? { ...draft, have: had.map((each) => have.find(({ name }) => name === each.name) ?? each) }
    : draft;
}

/** Tant pour tant is almond flour and powdered sugar in equal weights. */
function withEqualParts({ have, lines, ...rest }: Draft): Draft {
  const split = (some: Line[]) =>
    some.flatMap((each) =>
      each.name === "tant pour tant"
        ? ["almond flour", "powdered sugar"].map((name) => ({ name, grams: each.grams / 2 }))
        : [each],
    );
  return { ...rest, ...(have ? { have: split(have) } : {}), ...(lines ? { lines: split(lines) } : {}) };
}

const asksOneLine =
  /how (?:much|many) \S*<[^>]*ingredient=(?:almond_flour|powdered_sugar|granulated_sugar|sugar|whites)[^>]*> (?:do|should|must|will|would|shall) (?:i|we) (?:need|use|weigh|take|have)/;

function readOrder(reading: Reading, memory: Memory): Draft {
  const factor = factorOf(reading);
  const size = diameter(reading);
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  // "180 butter, 240 caramel, 3 salt": a number beside a taste is a weight in a list that is scaled
  const tasted =
    factor === undefined
      ? []
      : reading.amounts.flatMap((amount) =>
          amount.dim === "number" &&
          amount.unit === "" &&
          !amount.fraction &&
          amount.of?.taste &&
          !amount.of.ingredient &&
          !amount.of.base
            ? [{ grams: amount.value, thing: amount.of, amount }]
            : [],
        );
  const weights = [...weighed(reading), ...tasted].filter(
    (each) =>
      each.thing?.ingredient ||
      each.thing?.chocolate ||
      each.thing?.dose ||
      (each.thing?.taste && !each.thing.base),
  );
  const common: Draft = {
    ...(formula ? { formula } : pointedRecipe(reading, memory, weights)),
    ...(size !== undefined ? { diameter_mm: size } : {}),
  };
  const yields = madeFor(reading, weights);
  if (yields) return { ...common, ...yields };
  const against = stockOfOne(reading, weights) ?? remade(reading, weights);
  if (against) return { ...common, ...against };
  const { lines, have } = partition(reading, weights, factor !== undefined, formula !== undefined);
  const before = memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  if (factor !== undefined)
    return {
      ...common,
      ...(lines.length > 0 ? { lines, factor } : timesBefore(before, memory, factor, reading)),
    };
  const [whites, fewer] = reading.amounts.filter(isWhitesCount);
  const recipe = says(reading, /(?:recipe|formula|card|book)(?: |$)/) && weights.length >= 3;
  if (whites && !fewer && recipe && weights.some((each) => each.thing?.ingredient === "whites"))
    return {
      ...common,
      lines: merged(
        weights.map((each) => ({
          name: each.thing?.ingredient ?? each.thing?.text ?? "",
          grams: each.grams,
        })),
      ),
      have: [{ name: "whites", grams: whites.value * white_g }],
    };
  if (whites && fewer && weights.length >= 2) {
    const own = weights.map((each) => ({
      name: each.thing?.ingredient ?? each.thing?.text ?? "",
      grams: each.grams,
    }));
    return {
      ...common,
      lines: merged([{ name: "whites", grams: whites.value * white_g }, ...own]),
      have: [{ name: "whites", grams: fewer.value * white_g }],
    };
  }
  const out: Draft = { ...common, ...(lines.length > 0 ? { lines } : {}) };
  const counted =
    whites && have.length > 0 && !have.some((each) => each.name === "whites")
      ? [{ name: "whites", grams: whites.value * white_g }]
      : [];
  if (memory.slot === "lines" && have.length > 1) out.lines = have;
  else if (have.length > 0) {
    const [only] = have;
    const isMore =
      have.length === 1 &&
      says(reading, /<weight> (?:more|extra) |(?:another|extra) \S*<weight>|on top of (?:that|those|them)/);
    out.have = only && isMore ? [moreOfLine(before, only)] : [...counted, ...have];
  } else if (whites && weighedWhites(reading) !== undefined)
    out.have = [{ name: "whites", grams: weighedWhites(reading) ?? 0 }];
  else if (whites) out.whites_count = moreOrFewer(reading, memory, before, whites.value);
  else Object.assign(out, sizeOf(reading, memory, before, lines));
  return out;
}

/** "recipe uses 96 g whites and i have 120": a bare number is of the one ingredient that was named. */
function stockOfOne(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  const [only] = weights;
  const name = only?.thing?.ingredient;
  if (weights.length !== 1 || !only || !name || !says(reading, /(?:recipe|formula|card|book|factor)(?: |$)/))
    return undefined;
  const own = reading.amounts.find(
    (each) =>
      each !== only.amount &&
      !each.of &&
      !each.fraction &&
      ((each.dim === "number" && each.unit === "") || each.dim === "weight") &&
      /(?:have|got|only|but|ive|left|just)(?: \S+){0,2} $/.test(reading.text.slice(0, each.at[0])),
  );
  if (!own) return undefined;
  const grams = own.dim === "weight" ? inBase(own.value, own.unit) : own.value;
  return { lines: [{ name, grams: only.grams }], have: [{ name, grams }] };
}

/** "this makes 500 g, i want 350 g: 200 g butter, ...": one weight over the other, or the lines brought to it. */
function remade(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  // "scale 250 g mascarpone, 90 g cream so that the cream is 150 g", "... I have 72 g of whites today"
  const twice = weights.at(-1);
  const rest = weights.slice(0, -1);
  if (
    twice?.thing?.ingredient &&
    rest.length > 1 &&
    rest.filter((each) => each.thing?.ingredient === twice.thing?.ingredient).length === 1 &&
    new Set(rest.map((each) => each.thing?.ingredient)).size === rest.length &&
    /(?:^| )(?:so|that|is|are|have|got|theres|only|left|today)(?: |$)/.test(
      reading.text.slice(rest.at(-1)?.amount.at[1], twice.amount.at[0]),
    )
  )
    return {
      lines: merged(
        rest.map((each) => ({ name: each.thing?.ingredient ?? each.thing?.text ?? "", grams: each.grams })),
      ),
      have: [{ name: twice.thing.ingredient, grams: twice.grams }],
    };
  const [target, ...listed] = weights;
  // "take this down to 70 g whites: 100 g whites, 125 g almond flour"
  if (
    target?.thing?.ingredient &&
    listed.length > 1 &&
    listed.some((each) => each.thing?.ingredient === target.thing?.ingredient) &&
    /(?:down|up|scale\w*|bring|take|make|get)\b.* to $/.test(reading.text.slice(0, target.amount.at[0]))
  )
    return {
      lines: merged(
        listed.map((each) => ({ name: each.thing?.ingredient ?? each.thing?.text ?? "", grams: each.grams })),
      ),
      have: [{ name: target.thing.ingredient, grams: target.grams }],
    };
  const loose = reading.amounts.filter((each) => each.dim === "weight" && !each.of);
  const [makes, wants] = loose;
  if (weights.length < 2 || !makes || !wants || loose.length !== 2) return undefined;
  if (!/(?:makes|gives|yields|comes to) $/.test(reading.text.slice(0, makes.at[0]))) return undefined;
  const factor = inBase(wants.value, wants.unit) / inBase(makes.value, makes.unit);
  return {
    lines: merged(
      weights.map((each) => ({ name: each.thing?.ingredient ?? each.thing?.text ?? "", grams: each.grams })),
    ),
    factor,
  };
}

/** "scale it to 135 g whites", right behind a recipe of her own that was saved or shown. */
function pointedRecipe(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft {
  // "90 whites, 117 almond, 117 powdered, 90 sugar. scale it to 300 g almond flour"
  const listed = memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  if (
    listed?.have &&
    listed.have.length > 2 &&
    weights.length === 1 &&
    /scale (?:it|that|this|them) /.test(reading.text)
  )
    return { lines: listed.have };
  const name = memory.last?.tool === "formula" ? (memory.last.inputs as { name?: string }).name : undefined;
  return name && memory.names.formulas.includes(name) && says(reading, /(?:^| )(?:it|this|that)(?: |$)/)
    ? { formula: name }
    : {};
}

/** "got 30 g more whites on top of those two": what was there and what has come. */
function moreOfLine(before: Draft | undefined, line: Line): Line {
  const had =
    before?.have?.find((each) => each.name === line.name)?.grams ??
    (line.name === "whites" && before?.whites_count !== undefined ? before.whites_count * white_g : 0);
  return { ...line, grams: had + line.grams };
}

/** "ive got 5 whites in the bowl, 172 g total": on the scale, so counted no more. */
function weighedWhites(reading: Reading): number | undefined {
  const all = reading.amounts.filter((each) => each.dim === "weight");
  const [only] = all;
  const said = /^(?:in )?(?:total|all|altogether|all together)\b/;
  // "3 whites 98 g", "3 whites, 98 g"
  if (
    all.length === 1 &&
    only &&
    (!only.of || only.of.ingredient === "whites") &&
    /\bwhites ?,? ?(?:are |is |at |weigh(?:ing|s)? |that weigh )?$/.test(reading.text.slice(0, only.at[0]))
  )
    return inBase(only.value, only.unit);
  return all.length === 1 &&
    only &&
    !only.of &&
    said.test(reading.text.slice(only.at[1]).trim()) &&
    /(?:^| )(?:got|have|ive|in the bowl|cracked|separated)(?: |$)/.test(reading.text)
    ? inBase(only.value, only.unit)
    : undefined;
}

/** "one more egg", "take two whites away": relative to the number before; else the number itself. */
function moreOrFewer(reading: Reading, memory: Memory, before: Draft | undefined, number: number): number {
  if (!memory.follows || before?.whites_count === undefined) return number;
  if (
    says(reading, /(?:take|minus|less|fewer|remove|drop|without|leave) .*<|<\S* (?:less|fewer|away|off|out)/)
  )
    return before.whites_count - number;
  return says(reading, /(?:^| )(?:more|extra|another|add|plus) /) ? before.whites_count + number : number;
}

/** "recipe for 30 macarons is 100 g whites ..., i want 45": the factor is one count over the other. */
function madeFor(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  if (
    weights.length < 2 ||
    !says(reading, /(?:recipe|formula|makes|does|gives|yields|for) (?:\S+ )?\S*<number/)
  )
    return undefined;
  const first = weights[0]?.amount.at[0] ?? 0;
  const counts = reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      (!each.of || each.of.count === "macarons" || each.of.count === "shells"),
  );
  const isMade = (each: Amount) =>
    each.of !== undefined || /(?:does|makes|gives|yields) $/.test(reading.text.slice(0, each.at[0]));
  const made = counts.find((each) => each.at[0] < first && isMade(each));
  const wanted = counts.findLast((each) => each !== made && each.at[0] > first);
  if (!made || !wanted) return undefined;
  const lines = weights.map((each) => ({
    name: each.thing?.ingredient ?? each.thing?.text ?? "",
    grams: each.grams,
  }));
  return { lines: merged(lines), factor: wanted.value / made.value };
}

/** "1.5 times", "double", "half the recipe". */
function factorOf(reading: Reading): number | undefined {
  const said = reading.amounts.find((each) => each.unit === "times");
  if (said) return said.value;
  const by = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      (!each.of || each.of.count === "bowls" || each.of.count === "batches") &&
      /(?:\bby(?: a)?(?: factor(?: of)?)?|factor(?: of)?|times|multiplied by) $/.test(
        reading.text.slice(0, each.at[0]),
      ),
  );
  if (by && says(reading, /multipl|factor|times|scale|recipe|formula|house|shells|^by /)) return by.value;
  const batches = reading.amounts.find(
    (each) => each.dim === "number" && each.of?.count === "batches" && !each.fraction && each.value > 1,
  );
  if (batches && says(reading, /(?:^| )(?:house|recipe|formula)(?: |$)/)) return batches.value;
  // "0.75 of it", "only 0,6 of the recipe"
  const less = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.of &&
      !each.fraction &&
      (each.value < 1 || /^ of the house/.test(reading.text.slice(each.at[1]))) &&
      /^ of (?:it|that|the (?:house )?(?:recipe|formula|batch))/.test(reading.text.slice(each.at[1])),
  );
  if (less) return less.value;
  // "cut this by a third" leaves two thirds
  const by_ = reading.amounts.find(
    (each) =>
      ((each.fraction && each.dim === "number") || each.dim === "percent") &&
      / by (?:a |an |about )?$/.test(reading.text.slice(0, each.at[0])),
  );
  const step = by_ && (by_.dim === "percent" ? by_.value / 100 : by_.value);
  if (
    step !== undefined &&
    step < 1 &&
    says(reading, /(?:^| )(?:cut|reduce|shrink|decrease|lower|drop|less)(?:<| |$)/)
  )
    return 1 - step;
  if (step !== undefined && says(reading, /(?:^| )(?:increase|raise|grow|bump|up|enlarge|more)(?:<| |$)/))
    return 1 + step;
  const cut = reading.amounts.find((each) => each.fraction && each.dim === "number");
  if (cut && /(?:down|cut|reduce|bring|scale)\b.*\bto (?:a |one )?$/.test(reading.text.slice(0, cut.at[0])))
    return cut.value;
  const part = reading.amounts.find((each) => each.fraction && each.dim === "number");
  return part &&
    says(
      reading,
      /<number,fraction> (?:of )?(?:the|a|my|this|that|it|batch|recipe|house)(?: |$)|<number,fraction> of |(?:it|this|that|recipe|everything) (?:down )?(?:in|by) \S*<number,fraction/,
    )
    ? part.value
    : undefined;
}

/** "double it": whatever set the size before, times the factor; at first the recipe on the table or the house formula. */
function timesBefore(before: Draft | undefined, memory: Memory, factor: number, reading: Reading): Draft {
  if (before && memory.follows) {
    if (before.have && before.formula !== undefined && !pointsBack(reading)) return { factor };
    if (before.have) return { have: before.have.map((each) => ({ ...each, grams: each.grams * factor })) };
    if (before.whites_count !== undefined) return { whites_count: before.whites_count * factor };
    if (before.total_g !== undefined) return { total_g: before.total_g * factor };
    if (before.macarons !== undefined) return { macarons: before.macarons * factor };
    const instead =
      /^(?:(?:no|oh|wait|sorry|ok|hm|hmm|,) )*(?:no|or|actually|rather|make it|only|just|wait|on second thoughts?)(?: |$)| instead(?: \?)?$| rather than |, (?:just|only|make it|rather) /.test(
        reading.text,
      );
    if (before.factor !== undefined)
      return { factor: pointsBack(reading) && !instead ? before.factor * factor : factor };
  }
  const table = memory.table.recipe;
  // "the house recipe but 0.75 of it" points at nothing said before
  const back =
    pointsBack(reading) && !says(reading, /(?:^| )house (?:shells?|recipe|formula|batter|mix)(?: |$)/);
  if (back && !table?.length) return { factor, pointed: true };
  return back && table?.length
    ? { lines: table.map(({ name, grams }) => ({ name, grams })), factor }
    : { factor };
}

/** Lines of a recipe from what is at hand: behind "but I only have", "I've got", or everything where no recipe is said. */
function partition(
  reading: Reading,
  weights: readonly Weighed[],
  scaled: boolean,
  saved: boolean,
): { lines: Line[]; have: Line[] } {
  const line = (each: Weighed): Line => ({
    name: each.thing?.chocolate
      ? `${each.thing.chocolate} chocolate`
      : (each.thing?.ingredient ?? each.thing?.text ?? ""),
    grams: each.grams,
  });
  if (scaled) return { lines: merged(weights.map(line)), have: [] };
  // "how big a batch can i make": all of it is at hand, whatever "only" stands before
  if (
    !saved &&
    /\b(?:how (?:big|large|much)|what size|biggest|largest) .*\bcan i (?:make|do|bake|get)\b/.test(
      reading.text,
    ) &&
    !/\b(?:recipe|formula|card) (?:says|is|calls|asks|wants)/.test(reading.text)
  )
    return { lines: [], have: merged(weights.map(line)) };
  const stock =
    /(?:but|only|just|ive|i have|have got|got|i ve|left|today there (?:are|is)|theres|there are just|there (?:are|is) only|with what|down to|instead of that)\b/g;
  const isRecipe =
    /(?:recipe|formula) (?:on|from|in) (?:the |my )?\w+ ?:|(?:recipe|formula|it) (?:says|calls for|asks for|needs|is|wants|has|goes|:)|^(?:my )?(?:recipe|formula)|^(?:my |our |the )?(?:shells|coques|batter|macarons) ?:|original|(?:^| )card(?: |:|$)|(?:shells|mine|batter|recipe) (?:take|takes|are|use|uses) (?=\d)|i use (?=\d)/.test(
      reading.text,
    ) ||
    (weights.length >= 3 &&
      /\b(?:but|only)\b/.test(reading.text) &&
      !/^(?:i|ive|we|got|have)\b/.test(reading.text));
  const whole =
    weights.length >= 2 &&
    reading.amounts.some((each) => each.dim === "weight" && (!each.of || each.of.base === "batter")) &&
    /(?:scale|bring|make|take|get|bake)\S* (?:it |this |that |all |them )?(?:up |down )?to (?:a total of )?\d|altogether|all together|in total|in all|of it|total|(?:out of|from|of|with) (?:this|these|that|it)\b/.test(
      reading.text,
    );
  if (whole) return { lines: merged(weights.map(line)), have: [] };
  if (!isRecipe || weights.length < 2 || saved) return { lines: [], have: merged(weights.map(line)) };
  const starts = [...reading.text.matchAll(stock)].map((match) => match.index);
  const cut = starts.findLast(
    (at) =>
      weights.some((each) => each.amount.at[0] > at) &&
      weights.filter((each) => each.amount.at[0] < at).length >= 2,
  );
  const seen = new Set<string>();
  // without such words the second mention of an ingredient is what is at hand
  const isStock = (each: Weighed) =>
    cut !== undefined ? each.amount.at[0] > cut : seen.has(each.thing?.ingredient ?? "");
  const lines: Line[] = [];
  const have: Line[] = [];
  for (const each of weights) {
    if (isStock(each)) have.push(line(each));
    else lines.push(line(each));
    seen.add(each.thing?.ingredient ?? "");
  }
  return { lines: merged(lines), have: merged(have) };
}

/** One line an ingredient. */
function merged(lines: readonly Line[]): Line[] {
  const byName = new Map<string, number>();
  for (const { name, grams } of lines) byName.set(name, (byName.get(name) ?? 0) + grams);
  return [...byName].map(([name, grams]) => ({ name, grams }));
}

/** The size by total, macarons or shells; by a bare number where one was said before; by what lies on the table. */
function sizeOf(reading: Reading, memory: Memory, before: Draft | undefined, lines: readonly Line[]): Draft {
  const numberOf = (what: string) =>
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === what && !each.fraction)?.value;
  const macarons = numberOf("macarons") ?? /* "40 macarons shell recipe" */ describedBy(reading);
  if (macarons !== undefined) return { macarons };
  const shells = numberOf("shells");
  if (shells !== undefined) return { shells };
  const total = reading.amounts.find((each) => each.dim === "weight" && (!each.of || each.of.base));
  const single = reading.things.filter((each) => each.ingredient && !each.base);
  if (
    total &&
    !total.of &&
    single.length === 1 &&
    single[0] &&
    !says(reading, /<base=batter/) &&
    !memory.follows
  )
    return { have: [{ name: single[0].ingredient ?? "", grams: inBase(total.value, total.unit) }] };
  if (total) {
    const grams = weighed(reading).find((each) => each.amount === total)?.grams;
    const isLoose = !total.of || total.of.base === "meringue";
    if (before && memory.follows && isLoose && before.total_g === undefined)
      return before.whites_count !== undefined
        ? { have: [{ name: "whites", grams: grams ?? 0 }] }
        : replaced(before, grams ?? 0);
    return { total_g: grams };
  }
  const bare = outcome(reading) ?? bareNumbers(reading)[0];
  if (bare && before && memory.follows) return replaced(before, bare.value);
  if (bare && memory.slot === "total_g") return { total_g: bare.value };
  const named = reading.things.find((each) => each.ingredient);
  const mass = memory.table.mass;
  if (mass && lines.length === 0 && memory.last?.tool !== "scale" && pointsAtStock(reading)) {
    if (named && (mass.thing === named.ingredient || mass.thing === "" || named.ingredient === "sugar"))
      return { have: [{ name: named.ingredient ?? mass.thing, grams: mass.grams }] };
    if (mass.thing === "batter") return { total_g: mass.grams };
    if (["whites", "almond flour", "powdered sugar", "granulated sugar", "sugar"].includes(mass.thing))
      return { have: [{ name: mass.thing, grams: mass.grams }] };
  }
  const batter = mass?.thing === "batter" && memory.last?.tool !== "scale" ? mass.grams : undefined;
  if (
    batter !== undefined &&
    lines.length === 0 &&
    says(reading, /recipe|weigh|ingredients|each|<ingredient/)
  )
    return { total_g: batter };
  return memory.table.macarons !== undefined && says(reading, /recipe|weigh|ingredients/)
    ? { macarons: memory.table.macarons }
    : {};
}

/** "and if two of them break, so five?": what comes of it is said. */
const outcome = (reading: Reading) =>
  bareNumbers(reading).findLast((each) =>
    /(?:^| )(?:so|leaves|thats) (?:only |just )?$/.test(reading.text.slice(0, each.at[0])),
  );

/** The number before "macarons", though "shell" stands behind that: "for 40 macarons shell recipe". */
const describedBy = (reading: Reading): number | undefined => {
  const said =
    /(?:^| )(\d+(?:\.\d+)?)<number> (?:\S+ )?\S*<count=macarons> \S*<count=shells> (?:recipe|batch|formula)/.exec(
      reading.mask,
    );
  return said ? Number(said[1]) : undefined;
};

function replaced(before: Draft, value: number): Draft {
  if (before.whites_count !== undefined) return { whites_count: value };
  if (before.have?.[0]) return { have: [{ ...before.have[0], grams: value }] };
  if (before.total_g !== undefined) return { total_g: value };
  if (before.macarons !== undefined) return { macarons: value };
  if (before.shells !== undefined) return { shells: value };
  return before.factor !== undefined ? { factor: value } : {};
}

/** "it", "the other weights": what lies on the table is one of them. */
const pointsAtStock = (reading: Reading): boolean =>
  pointsBack(reading) ||
  says(reading, /(?:^| )the (?:other|rest of the) (?:weights|ingredients|amounts)(?: |$)/);
