/** The recipe's lines apart from what is at hand, and the recipe that was listed, saved or shown before. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { says, type Weighed } from "../lib/find.ts";
import { sameIngredient } from "../lib/lines.ts";
import { gramsOf, inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import { isFromSource } from "./source-said.ts";

export type Line = { name: string; grams: number };

/** "mine goes 90 whites 115 almond flour": a recipe of her own is told. "i have 90 whites" tells what there is. */
const tellsOwn =
  /(?:^|[.,;:] )(?:(?:so|ok|well|and|hi|hey|hello),? )*(?:mine|ours|(?:my|our) (?:own |usual |normal |standard )?(?:one|recipe|list|shells?|batter|formula|mix|mixture)|(?:what )?(?:i|we)(?= (?:use|do|take|go)\b)) (?:usually |normally |always )?(?:goes?|go with|go by|is|are|takes?|has|uses?|needs?|does|do|wants?|calls? for|runs|reads)(?: (?:like (?:this|so)|as follows))? ?[:,-]? ?(?=\d)/;

/** "custard is 2 eggs, 60 g sugar, 250 g milk": told of a thing by its name, and of no shells. */
const tellsNamed =
  /^(?:(?:so|ok|well|and),? )*(?!(?:there|here|what|this|that|it|stock|cupboard|pantry|shelf|left|all|everything|all i|i|we|today)\b)(?:[a-z]+ ){1,4}(?:is|are|takes?|goes|uses?|needs?|has) (?=\d|(?:one|two|three|four|five|six) (?:whole |large )?eggs?\b)/;
const isOther = ({ thing }: Weighed): boolean =>
  thing?.ingredient !== undefined &&
  !houseFormula.some((each) => sameIngredient(each.name, thing.ingredient ?? ""));

/** Lines of a recipe from what is at hand: behind "but I only have", "I've got", or everything where no recipe is said. */
export function partition(
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
    /\b(?:how (?:big|large|much)|what size|biggest|largest) .*\b(?:(?:can|could) (?:i|we) (?:make|do|bake|get|pull off|swing)|(?:is|would be) possible|(?:does|do|will|would) (?:that|this|it|they|all (?:that|this)) (?:make|get me|give me|come to))\b/.test(
      reading.text,
    ) &&
    !/\b(?:recipe|formula|card) (?:says|is(?! possible)|calls|asks|wants)/.test(reading.text)
  )
    return { lines: [], have: merged(weights.map(line)) };
  const stock =
    /(?:but|only|just|ive|i have|have got|got|i ve|left|today there (?:are|is)|theres|there are just|there (?:are|is) only|with what|down to|instead of that)\b/g;
  // where amounts come last, the first thing begins the list
  const first =
    weights[0] && Math.min(weights[0].amount.at[0], weights[0].thing?.at[0] ?? Number.POSITIVE_INFINITY);
  const isRecipe =
    (weights.length >= 3 && first !== undefined && isFromSource(reading, first)) ||
    tellsOwn.test(reading.text) ||
    (weights.length >= 3 && tellsNamed.test(reading.text) && weights.some(isOther)) ||
    /(?:recipe|formula) (?:on|from|in) (?:the |my )?\w+ ?:|(?:recipe|formula|it) (?:says|calls for|asks for|needs|is|wants|has|goes|:)|^(?:my )?(?:recipe|formula)|^(?:my |our |the )?(?:shells|coques|batter|macarons) ?:|original|(?:^| )card(?: |:|$)|(?:shells|mine|batter|recipe) (?:take|takes|are|use|uses) (?=\d)|i use (?=\d)/.test(
      reading.text,
    ) ||
    (weights.length >= 3 &&
      /\b(?:but|only)\b/.test(reading.text) &&
      !/^(?:i|ive|we|got|have)\b/.test(reading.text));
  const whole =
    weights.length >= 2 &&
    reading.amounts.some((each) => each.dim === "weight" && (!each.of || each.of.base === "batter")) &&
    /(?:scale|bring|make|take|get|bake)\S* (?:it |this |that |all |them )?(?:come (?:out )?)?(?:up |down )?(?:to|at) (?:a total of )?\d|altogether|all together|in total|in all|of it|total|(?:out of|from|of|with) (?:this|these|that|it)\b/.test(
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
export function merged(lines: readonly Line[]): Line[] {
  const byName = new Map<string, number>();
  for (const { name, grams } of lines) byName.set(name, (byName.get(name) ?? 0) + grams);
  return [...byName].map(([name, grams]) => ({ name, grams }));
}

/** Tant pour tant is almond flour and powdered sugar in equal weights. */
export function withEqualParts({ have, lines, ...rest }: Draft): Draft {
  const split = (some: Line[]) =>
    some.flatMap((each) =>
      each.name === "tant pour tant"
        ? ["almond flour", "powdered sugar"].map((name) => ({ name, grams: each.grams / 2 }))
        : [each],
    );
  return { ...rest, ...(have ? { have: split(have) } : {}), ...(lines ? { lines: split(lines) } : {}) };
}

/** "recipe uses 96 g whites and i have 120": a bare number is of the one ingredient that was named. */
export function stockOfOne(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
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
  const grams = gramsOf(own);
  return { lines: [{ name, grams: only.grams }], have: [{ name, grams }] };
}

/** "this makes 500 g, i want 350 g: 200 g butter, ...": one weight over the other, or the lines brought to it. */
export function remade(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  // "scale 250 g mascarpone, 90 g cream so that the cream is 150 g", "... I have 72 g of whites today"
  const twice = weights.at(-1);
  const rest = weights.slice(0, -1);
  if (
    twice?.thing?.ingredient &&
    rest.length > 1 &&
    rest.filter((each) => each.thing?.ingredient === twice.thing?.ingredient).length === 1 &&
    new Set(rest.map((each) => each.thing?.ingredient)).size === rest.length &&
    /(?:^| )(?:so|that|is|are|have|ive|got|theres|only|just|left|today|(?:scale|scaled|bring|take|cut|make|get)\S* (?:(?:it|this|that|all) )?(?:up |down )?(?:to|for))(?: |$)/.test(
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

/** "the lemons gave me 100 g juice", where lemon juice is a line of the recipe: that line. */
export function ofItsLine(reading: Reading, memory: Memory, weights: readonly Weighed[]): Weighed[] {
  const before = memory.last?.tool === "scale" ? ((memory.last.inputs as Draft).lines ?? []) : [];
  // "takes 80 g lemon juice, ... but only 50 g of juice came out": of its own list, where it has one
  const own = weights.flatMap(({ thing }) => (thing?.ingredient ? [{ name: thing.ingredient }] : []));
  const lines: readonly { name: string }[] = own.length >= 3 ? own : before;
  return weights.map((each) => {
    const word = /^ (?:of )?(?:the |my )?([a-z]+)\b/.exec(reading.text.slice(each.amount.at[1]))?.[1];
    const meant = lines.filter(({ name }) => word !== undefined && name.split(" ").at(-1) === word);
    const [line] = meant;
    const { text, at } = each.amount;
    return line && meant.length === 1 && !each.thing
      ? { ...each, thing: { id: line.name, ingredient: line.name, text, at } }
      : each;
  });
}

/** "scale it to 135 g whites", right behind a recipe of her own that was saved or shown. */
export function pointedRecipe(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft {
  // "90 whites, 117 almond, 117 powdered, 90 sugar. scale it to 300 g almond flour"
  const listed = memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  if (
    listed?.have &&
    listed.have.length > 2 &&
    weights.length === 1 &&
    /scale (?:it|that|this|them) /.test(reading.text)
  )
    return { lines: listed.have };
  // "found another egg, 132 g whites", right behind her own lines
  const own =
    listed?.lines &&
    weights.length === 1 &&
    !says(reading, /(?:^| )(?:house|book|standard|usual|normal)(?: |$)/);
  if (own && listed.lines?.some((each) => each.name === weights[0]?.thing?.ingredient))
    return { lines: listed.lines };
  const name = memory.last?.tool === "formula" ? (memory.last.inputs as { name?: string }).name : undefined;
  const known = memory.names.formulas.find((each) => each.toLowerCase() === name?.toLowerCase());
  // "now with 190 g whites": of the recipe just saved or shown, where no other is named
  const isPointed =
    says(reading, /(?:^| )(?:it|this|that|my recipe|my formula)(?: |$)/) ||
    (!says(reading, /(?:^| )(?:house|book|standard|usual|normal)(?: |$)/) &&
      (says(reading, /(?:^| )(?:the|same) (?:whole |same )?(?:recipe|formula)(?: |$)/) ||
        (reading.amounts.length === 1 &&
          says(
            reading,
            /^(?:[a-z]+ )+\S*<(?:weight|number)[^>]*> (?:of )?(?:[a-z]+ )*\S*<[^>]*ingredient=/,
          ))));
  return known && isPointed ? { formula: known } : {};
}
