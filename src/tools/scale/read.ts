/** Reads a scaling question: what sets the size, tried in order, and what stays of the size before. */
import { houseFormula } from "../../../data/rules/shells.ts";
import { takesBack } from "../../../data/words/openers.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { eggsTold } from "../lib/eggs-told.ts";
import { diameter, egg_g, isWhitesCount, says, type Weighed, weighed, white_g } from "../lib/find.ts";
import { sameIngredient } from "../lib/lines.ts";
import { moreSparesSaid, sparesSaid } from "../lib/spares.ts";
import { stillThere, withCupboard } from "./at-hand.ts";
import { besideThing } from "./beside-said.ts";
import type { Draft } from "./draft.ts";
import { factorOf, madeAnew, madeFor, timesBefore } from "./factor-said.ts";
import {
  type Line,
  merged,
  ofItsLine,
  partition,
  pointedRecipe,
  remade,
  stockOfOne,
  withEqualParts,
} from "./recipe-said.ts";
import { sizeOf } from "./size-said.ts";
import { broughtTo } from "./target-said.ts";
import { besideStock, isApartFrom, toMake } from "./told-lists.ts";
import { unknownRecipe } from "./unknown-recipe.ts";
import { byOne, leftOver, moreOfLine, moreOrFewer, weighedWhites, whitesInstead } from "./whites-said.ts";

const scaleAlone =
  /^(?:(?:can|could|will|would|you|please|pls|ok|now|just|so|and) )*(?:scale|rescale|resize|upscale) (?:it|this|that|them|the (?:recipe|shells?\S*|batch\S*))(?: (?:up|down|bigger|smaller|a bit|a little))*(?: (?:for me|please|pls|now|then))*(?: [?.!])*$/;

export function readScale(reading: Reading, memory: Memory): Draft {
  const order = readOrder(reading, memory);
  const isOpen =
    Object.keys(order).length === 0 &&
    !memory.follows &&
    reading.amounts.length === 0 &&
    says(reading, asksOneLine) &&
    !says(reading, /(?:^| )(?:house|recipe|formula|batch|book)(?:<| |$)/);
  // "overwhipped the whites" asks for no recipe
  const isTalk =
    Object.keys(order).length === 0 &&
    !memory.follows &&
    reading.amounts.length === 0 &&
    !says(
      reading,
      /(?:^| )(?:recipe|formula|shells?|batter|batch|house|scale|scaling|rescale|weigh|weights?|ingredients|need|double|triple|half|what|how|whats)\S*(?: |$)|<count=|<formula|<base=batter|<factor/,
    );
  // "scale it up for me": by how much isn't said
  const isBare = Object.keys(order).length === 0 && reading.amounts.length === 0 && says(reading, scaleAlone);
  const draft: Draft = isOpen || isTalk || isBare ? { unsized: true } : withEqualParts(order);
  const before = memory.follows && memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  // the same list, pointed at once more, makes as many
  if (
    before?.makes !== undefined &&
    draft.lines &&
    JSON.stringify(draft.lines) === JSON.stringify(before.lines)
  )
    draft.makes = before.makes;
  const { have } = draft;
  const had = stillThere(before?.have, reading);
  // "there are 270 g of powdered sugar now", of several that are at hand
  return have?.length &&
    had &&
    !says(reading, /(?:^| )(?:scale|rescale|resize)(?: |$)/) &&
    have.length < had.length &&
    have.every(({ name }) => had.some((each) => each.name === name))
    ? {
        ...draft,
        have: had.map((each) => have.find(({ name }) => name === each.name) ?? each),
        ...(before?.at_hand ? { at_hand: true } : {}),
      }
    : withCupboard(draft, reading, before, memory);
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
  // "almond flour 10 g too much": what it is over by is no weight of it
  const beside = besideThing(reading, (name) => canHave(name, memory, formula));
  const loose = weighed(reading).filter(({ amount }) => beside.every((each) => each.amount !== amount));
  const told = [...ofItsLine(reading, memory, loose), ...beside]
    .sort((a, b) => a.amount.at[0] - b.amount.at[0])
    .filter(({ amount }) => !/^ (?:too (?:much|many)|over|short)\b/.test(reading.text.slice(amount.at[1])));
  const eggs = wholeEggs(reading, told);
  const weights = [...told, ...tasted, ...eggs]
    .sort((a, b) => a.amount.at[0] - b.amount.at[0])
    .filter(
      (each) =>
        each.thing?.ingredient ||
        each.thing?.chocolate ||
        each.thing?.dose ||
        (each.thing?.taste && !each.thing.base),
    );
  const common: Draft = {
    ...(eggs.length > 0 ? { counted_eggs: true } : {}),
    ...(formula ? { formula } : nameless(reading, memory, weights)),
    ...(size !== undefined ? { diameter_mm: size } : {}),
    ...(moreSparesSaid(reading, memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined) ??
      sparesSaid(reading)),
  };
  // "house recipe for that many grams", behind a sum
  if (
    weights.length === 0 &&
    reading.amounts.length === 0 &&
    memory.last?.tool === "convert" &&
    memory.table.number !== undefined &&
    says(reading, /(?:that|so) (?:many|much|amount)(?: of)?(?: \S*<unit=g>| batter)?/)
  )
    return { ...common, total_g: memory.table.number };
  // "if it all goes in shells, how much of the other things", behind a weight of one of them
  const { mass } = memory.table;
  const atHand =
    weights.length === 0 &&
    reading.amounts.length === 0 &&
    mass !== undefined &&
    memory.last?.tool === "convert" &&
    houseFormula.some((each) => sameIngredient(each.name, mass.thing)) &&
    says(
      reading,
      /<remainder>|(?:how (?:much|many)|what|weights?) (?:\S+ )?of the (?:others?|rest)(?: |$)|(?:what|whats|how much|anything) else (?:goes|go|do i|should|must|is|are|for|to|in|into|with|i need|the|would|will|it)(?: |$)/,
    );
  if (atHand && mass) return { ...common, have: [{ name: mass.thing, grams: mass.grams }] };
  // "scale this up: 8 oz butter, ...": by how much isn't said, and it is asked
  const listed =
    /^(?:please |ok |can you )*(?:scale|resize|rescale) (?:this|it|that|these)(?: (?:up|down))?(?: for me)? ?[:,-] /;
  if (weights.length > 1 && factor === undefined && listed.test(reading.mask) && formula === undefined) {
    const { lines } = partition(reading, weights, true, false);
    const loose = reading.amounts.some((each) => each.dim === "weight" && !each.of);
    if (!loose && new Set(lines.map(({ name }) => name)).size === weights.length) return { ...common, lines };
  }
  const instead = whitesInstead(
    reading,
    memory,
    memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined,
  );
  if (instead !== undefined) return { ...common, whites_count: instead };
  const yields =
    madeFor(reading, weights) ??
    (weights.length === 0 && factor === undefined && size === undefined
      ? madeAnew(reading, memory, memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined)
      : undefined);
  if (yields) return { ...common, ...yields };
  const against =
    besideStock(reading, weights) ??
    (formula === undefined && factor === undefined ? toMake(reading, weights) : undefined) ??
    stockOfOne(reading, weights) ??
    remade(reading, weights) ??
    broughtTo(reading, weights);
  if (against) return { ...common, ...against };
  const { lines, have } = partition(reading, weights, factor !== undefined, formula !== undefined);
  const before = memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  if (factor !== undefined) {
    const { lines: onTable, ...times } = timesBefore(before, memory, factor, reading);
    // "double it", of a recipe that was saved or shown: by its name
    const whole = common.formula === undefined && onTable ? { lines: onTable } : {};
    const counted = lines.length > 1 ? withCounted(lines, reading, weights) : undefined;
    return { ...common, ...(lines.length > 0 ? { lines, ...counted, factor } : { ...times, ...whole }) };
  }
  const [whites, fewer] = reading.amounts.filter(
    (amount) => isWhitesCount(amount) && eggs.every((each) => each.amount !== amount),
  );
  const recipe =
    weights.length >= 3 &&
    (says(reading, /(?:recipe|formula|card|book)(?: |$)/) || isApartFrom(reading, weights, whites));
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
  const one =
    leftOver(reading, memory.follows ? before?.whites_count : undefined) ?? byOne(reading, memory, before);
  if (memory.slot === "lines" && have.length > 1) out.lines = have;
  else if (have.length > 0) {
    const [only] = have;
    const isMore =
      have.length === 1 &&
      says(reading, /<weight> (?:more|extra) |(?:another|extra) \S*<weight>|on top of (?:that|those|them)/);
    out.have = only && isMore ? [moreOfLine(before, only)] : [...counted, ...have];
  } else if (whites && weighedWhites(reading) !== undefined)
    out.have = [{ name: "whites", grams: weighedWhites(reading) ?? 0 }];
  else if (one !== undefined) out.whites_count = one;
  else if (whites)
    Object.assign(out, {
      whites_count: moreOrFewer(reading, memory, before, whites.value),
      ...eggsTold(reading),
    });
  else Object.assign(out, sizeOf(reading, memory, before, lines));
  // "one broke, 3 whites", of the recipe that was scaled
  const goesOn =
    before?.formula !== undefined &&
    out.formula === undefined &&
    out.lines === undefined &&
    (out.have !== undefined || out.whites_count !== undefined) &&
    !says(reading, /(?:house|book|usual|normal|standard)(?: |$)|recipe|formula|macarons?</);
  return { ...out, ...(goesOn ? { formula: before?.formula } : {}), ...withStock(out, before, reading) };
}

/** "2 eggs, 60 g sugar, 250 g milk": of a custard they are whole ones, where shells take their whites. */
function wholeEggs({ amounts }: Reading, weights: readonly Weighed[]): Weighed[] {
  const isOther = weights.some(
    ({ thing }) =>
      thing?.ingredient !== undefined &&
      !houseFormula.some((each) => sameIngredient(each.name, thing.ingredient ?? "")),
  );
  if (weights.length < 2 || !isOther) return [];
  return amounts.flatMap((amount): Weighed[] =>
    isWhitesCount(amount) && amount.of?.ingredient === "egg"
      ? [{ grams: amount.value * egg_g, thing: amount.of, amount, estimate: true }]
      : [],
  );
}

/** "halve: 200 g butter, 120 g sugar, 4 whites": a line of the list too, by what a white weighs. */
function withCounted(
  lines: readonly Line[],
  { amounts, things }: Reading,
  weights: readonly Weighed[],
): Draft | undefined {
  const [whites, ...more] = amounts.filter((each) => isWhitesCount(each) && each.of?.ingredient !== "egg");
  if (!whites || more.length > 0 || lines.some(({ name }) => name === "whites")) return undefined;
  // "whites" named twice are at hand, and no line
  if (things.filter((each) => each.ingredient === "whites").length > 1) return undefined;
  const place = weights.filter((each) => each.amount.at[0] < whites.at[0]).length;
  const line = { name: "whites", grams: whites.value * white_g };
  return { lines: lines.toSpliced(place, 0, line), counted_whites: whites.value };
}

/** The recipe that is pointed at, or one by a name that isn't saved: that is asked for. */
function nameless(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft {
  const pointed = pointedRecipe(reading, memory, weights);
  const before = memory.last?.tool === "scale" ? (memory.last.inputs as Draft) : undefined;
  const isTold = Object.keys(pointed).length > 0 || before?.lines !== undefined || weights.length > 2;
  const formula = isTold ? undefined : unknownRecipe(reading);
  if (formula) return { formula };
  return !isTold && isHers(reading, memory, weights) ? { own: true } : pointed;
}

/** "triple my recipe pls": hers, which nobody has told yet, and no house formula. */
const isHers = ({ text, things }: Reading, { last }: Memory, weights: readonly Weighed[]): boolean =>
  weights.length === 0 &&
  last?.tool !== "scale" &&
  !things.some((each) => each.formula) &&
  /\b(?:my|our) (?:own )?(?:recipe|formula)\b(?! (?:says|said|is|for|from))/.test(text);

/** What the recipe that is spoken of may have: of a saved one only its name is known here. */
function canHave(name: string, { last }: Memory, formula: string | undefined): boolean {
  const { lines = [], have = [], formula: before } = last?.tool === "scale" ? (last.inputs as Draft) : {};
  const known = [...houseFormula, ...lines, ...have];
  return (formula ?? before) !== undefined || known.some((each) => sameIngredient(each.name, name));
}

const takenBack = new RegExp(`^${takesBack}`);

/** "found another 20 g almonds so 170": the other lines that are at hand stay. */
function withStock({ have }: Draft, before: Draft | undefined, { text, mask }: Reading): Draft {
  const [only, ...others] = have ?? [];
  const stock = before?.have ?? [];
  const isOneOf =
    only !== undefined &&
    others.length === 0 &&
    stock.length > 1 &&
    stock.some((each) => each.name === only.name) &&
    (/\b(?:another|found|extra|actually|turns out|now|no|sorry|wait|wrong)\b/.test(text) ||
      takenBack.test(mask));
  return isOneOf ? { have: stock.map((each) => (each.name === only.name ? only : each)) } : {};
}
