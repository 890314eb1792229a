/** Which amount belongs to which thing: "230 g of soft butter", "whites 100 g", "24 pistachio macarons". */
import type { Amount, Thing } from "../../tools/contract/index.ts";
import { describes } from "./described.ts";
import { gradeEnd } from "./grade.ts";
import { isWord } from "./items.ts";
import type { Item } from "./scan.ts";
import { topicOf } from "./topic.ts";

const between = new Set(
  "l xl de d du des di von of the my a some any plain soft softened big small little filled finished large extra fresh more other warm hot cold raw whole equal nice good pure worth melted chopped total aged new our this that these those them my your fine ripe really very stiff loose runny firm finely roughly room temperature temp unsalted about already ready made left in one single half batches or so tiny mini medium jumbo standard normal usual size sized diameter wide shell bowls oz bag bags bar bars block tub carton packet pack jar".split(
    " ",
  ),
);
const behind = new Set(
  "is are was were out says reads shows i ive weve theyve at of to about on hand left here packet pack bag tub carton weighs weigh came come comes with = : ( - got have only just has needs need want than around roughly comes".split(
    " ",
  ),
);

/** "the little bowl is 145 g": a bowl, a box or a tray has no weight of its own; it holds one. */
const containers = new Set(["bowls", "boxes", "batches", "trays"]);

const canOwn = (thing: Thing, amount: Amount) =>
  Boolean(
    thing.ingredient ||
      thing.base ||
      thing.chocolate ||
      thing.dose ||
      thing.taste ||
      thing.color ||
      (thing.count && !(amount.dim === "weight" && containers.has(thing.count))),
  );

/** Sets `of` on each amount, looking forward first, then back. Lists written "name amount" bind back throughout. */
export function bind(items: readonly Item[]): void {
  const owned = new Set<Thing>();
  const backward = amountsComeLast(items);
  items.forEach((item, i) => {
    if (item.is !== "amount" || !needsOwner(item.amount)) return;
    const found = backward
      ? (lookBack(items, i, owned) ?? lookAhead(items, i))
      : (lookAhead(items, i) ?? topicOf(items, i) ?? lookBack(items, i, owned));
    const meant = found ?? pronounOf(items, i, owned) ?? barOf(items, i);
    if (!meant) return;
    item.amount.of = meant;
    // a grade leaves the thing free for its weight: "cream 35 % 150 ml"
    if (item.amount.dim !== "percent") owned.add(meant);
  });
}

/** "whites are out of the fridge, 138 g of them": the ingredient named last, which has no weight yet. */
function pronounOf(items: readonly Item[], i: number, owned: ReadonlySet<Thing>): Thing | undefined {
  const { dim } = amountAt(items, i);
  if (dim !== "weight" || !isWord(items[i + 1], "of") || !pronouns.some((each) => isWord(items[i + 2], each)))
    return undefined;
  const last = items
    .slice(0, i)
    .findLast((item) => item.is === "thing" && canOwn(item.thing, amountAt(items, i)));
  if (last?.is !== "thing" || owned.has(last.thing)) return undefined;
  return staples.has(last.thing.ingredient ?? "") || isOfGanache(items, i, last.thing)
    ? last.thing
    : undefined;
}

/** "milk chocolate, i have 260 g of it, ganache to pipe": what the ganache is to be made of, and none yet. */
function isOfGanache(items: readonly Item[], i: number, thing: Thing): boolean {
  const told = items.slice(0, i);
  const isMade = told.some((item) => item.is === "thing" && item.thing.base !== undefined);
  if (isMade || told.some((item) => item.is === "amount")) return false;
  if (thing.ingredient === "cream") return true;
  // "the chocolate's dark, i've 175 g of it"
  return (
    Boolean(thing.chocolate ?? /chocolate/.test(thing.ingredient ?? "")) &&
    told.some((item) => item.is === "thing" && /choc/.test(item.thing.text))
  );
}

/** "i got a 200 g bar": of the chocolate that is spoken of. */
function barOf(items: readonly Item[], i: number): Thing | undefined {
  if (
    amountAt(items, i).dim !== "weight" ||
    !["bar", "bars", "block", "slab", "tablet"].some((each) => isWord(items[i + 1], each))
  )
    return undefined;
  const kinds = items.flatMap((item) =>
    item.is === "thing" && (item.thing.chocolate || item.thing.ingredient === "chocolate")
      ? [item.thing]
      : [],
  );
  return kinds.length === 1 ? kinds[0] : undefined;
}

/** What is weighed out by itself; "the milk one, 600 g of it" is a ganache. */
const staples = new Set([
  "whites",
  "egg",
  "almond flour",
  "powdered sugar",
  "granulated sugar",
  "sugar",
  "butter",
]);
const pronouns = ["them", "it", "those", "that", "em"];

const needsOwner = (amount: Amount) =>
  ["weight", "volume", "number", "percent"].includes(amount.dim) && amount.unit !== "times";

/** What was done to a thing before it was weighed. */
const isMadeSo =
  /^(?:reduced|strained|sieved|cooked|toasted|roasted|sifted|defrosted|thawed|frozen|leftover|homemade|browned|warmed|cooled|chilled|diced|grated|pitted|powdered|dried)$/;

/** A count may have a word or two of description before its noun: "84 dainty macarons". These words end that. */
const breaks = new Set(
  "and for in to at is are with or but if from into on so how what that it them do i we you per more".split(
    " ",
  ),
);

function lookAhead(items: readonly Item[], i: number): Thing | undefined {
  let described = 0;
  const start = items[i] as Item;
  const counting = start.is === "amount" && start.amount.dim === "number" && !start.amount.fraction;
  const weighing = start.is === "amount" && ["weight", "volume"].includes(start.amount.dim);
  for (let at = i + 1; at < items.length; at++) {
    const item = items[at] as Item;
    if (described > 0 && item.is === "thing" && !item.thing.count) return undefined;
    if (item.is === "word" && between.has(item.text)) continue;
    // "two bowls of 150 each buttercream"
    const [next] = items.slice(at + 1);
    if (item.is === "word" && item.text === "each" && next?.is === "thing" && next.thing.base) continue;
    // "200 the rest pink": what is left over has no weight yet
    if (item.is === "thing" && item.thing.text === "rest" && isWord(items[at - 1], "the")) return undefined;
    // "40 g of reduced raspberry jam"
    if (weighing && item.is === "word" && isMadeSo.test(item.text) && items[at + 1]?.is === "thing") continue;
    if (weighing && describes(items, at)) continue;
    const graded = weighing ? gradeEnd(items, at) : undefined;
    if (graded !== undefined) {
      at = graded - 1;
      continue;
    }
    if (counting && item.is === "word" && !breaks.has(item.text) && described < 2) {
      described += 1;
      continue;
    }
    if (item.is === "sign" && (item.text === "(" || item.text === '"')) continue;
    // "24 38 mm macarons"
    if (counting && item.is === "amount" && item.amount.dim === "length") continue;
    if (item.is !== "thing") return undefined;
    // "24 in a box of 6": they go into boxes, and are none
    if (counting && item.thing.count === "boxes" && isPackedIn(items, i, at)) return undefined;
    if (item.thing.manner || (item.thing.step && !canOwn(item.thing, amountAt(items, i)))) continue;
    if (!canOwn(item.thing, amountAt(items, i))) return undefined;
    // "20 macarons batter weight": macarons are counted, batter is weighed
    if (counting && item.thing.count && item.thing.count !== "bowls") return item.thing;
    return headOf(items, at);
  }
  return undefined;
}

/** "24 in a box of 6", "24 into boxes of six": the number behind is what a box holds. */
function isPackedIn(items: readonly Item[], i: number, at: number): boolean {
  const behind = items[at + 2];
  const holds = behind?.is === "amount" && behind.amount.dim === "number";
  const goesIn = items.slice(i + 1, at).some((each) => isWord(each, "in") || isWord(each, "into"));
  return goesIn && isWord(items[at + 1], "of") && holds;
}

/** In a run of things without words between them, the last that is a mix or a count owns: "200 g milk choc ganache". */
function headOf(items: readonly Item[], at: number): Thing {
  let head = (items[at] as Item & { is: "thing" }).thing;
  // "5 whites smbc", "150 g cream ganache": what it is made from, not what it is
  if (/\bwhites$|^egg$|^cream$|^butter$/.test(head.ingredient ?? "")) return head;
  for (let next = at + 1; next < items.length; next++) {
    const item = items[next] as Item;
    if (item.is === "word" && ["colored", "coloured", "flavored", "flavoured", "filled"].includes(item.text))
      continue;
    if (item.is !== "thing") break;
    if (item.thing.use && !item.thing.base) {
      // "400 g white choc piping ganache": the ganache is weighed, whatever it is of and for
      if (!isMix(items[next + 1]) || (head.chocolate && asksForCream(items, at))) break;
      continue;
    }
    // "150 dark choc ganache to pipe, cream?"
    if (item.thing.base === "ganache" && /choc/.test(head.text) && asksForCream(items, at)) break;
    if (item.thing.base || item.thing.count)
      head = item.thing.count === "bowls" && head.base ? head : item.thing;
    else if (!(head.color || head.taste || head.chocolate)) break;
  }
  return head;
}

/** "150 g dark chocolate piping ganache, cream?": where the cream alone is asked for, it goes onto the chocolate. */
const asksForCream = (items: readonly Item[], at: number) =>
  items.some((item) => item.is === "thing" && item.thing.ingredient === "cream") &&
  !items.some((item, i) => i !== at && item.is === "thing" && /chocolate/.test(item.thing.ingredient ?? ""));

const isMix = (item: Item | undefined) => item?.is === "thing" && item.thing.base !== undefined;

const amountAt = (items: readonly Item[], i: number) => (items[i] as Item & { is: "amount" }).amount;

function lookBack(items: readonly Item[], i: number, owned: ReadonlySet<Thing>): Thing | undefined {
  for (let at = i - 1; at >= 0; at--) {
    const item = items[at] as Item;
    if (item.is === "word" && behind.has(item.text)) continue;
    if (item.is === "sign" && behind.has(item.text)) continue;
    if (item.is === "sign" && item.text === "," && at === i - 1 && saysMore(items, i)) continue;
    // "cream 35 % 150 ml": a grade between
    if (
      item.is === "amount" &&
      item.amount.dim === "percent" &&
      ["weight", "volume"].includes(amountAt(items, i).dim)
    )
      continue;
    // "how many macs at 35": their size
    const at35 = items[i - 1]?.is === "word" && (items[i - 1] as { text: string }).text === "at";
    if (at35 && item.is === "thing" && item.thing.count && amountAt(items, i).dim === "number")
      return undefined;
    // "3 egg whites weigh 96 g": counted and weighed
    // "a tray of 30": what is on it, and not so many trays
    if (isWord(items[i - 1], "of") && item.is === "thing" && item.thing.count === "trays") return undefined;
    const weighs = items[i - 1]?.is === "word" && /^weighs?$/.test((items[i - 1] as { text: string }).text);
    if (item.is === "thing" && canOwn(item.thing, amountAt(items, i)) && (weighs || !owned.has(item.thing)))
      return item.thing;
    return undefined;
  }
  return undefined;
}

/**
 * "white chocolate, 300 g, for piping", "mango powder, 12 g is all thats left": the first weight behind a comma says
 * more of what was named, not asked for, before; of a flavor only where it says that this is what there is.
 */
function saysMore(items: readonly Item[], i: number): boolean {
  const named = items[i - 2];
  if (amountAt(items, i).dim !== "weight" || named?.is !== "thing") return false;
  const before = items.slice(0, i);
  // "85 % dark chocolate, 200 g": a grade is no amount of anything
  const isAmount = (item: Item, at: number) => item.is === "amount" && gradeEnd(before, at) === undefined;
  if (before.some((item, at) => isAmount(item, at) || (item.is === "word" && asking.has(item.text))))
    return false;
  const next = items[i + 1];
  const flavors = Boolean(named.thing.dose || named.thing.taste) && !named.thing.chocolate;
  return !flavors || (next?.is === "word" && ["is", "are", "left", "thats", "remaining"].includes(next.text));
}

const asking = new Set("how what whats which much many wat wats hw".split(" "));

/** "whites 100 almond 130 sugar 100": from the first thing on they alternate and end with an amount. */
function amountsComeLast(items: readonly Item[]): boolean {
  const named = (item: Item | undefined) =>
    item?.is === "thing" && Boolean(item.thing.count || item.thing.base);
  // "pistachio macarons, ingredients: sugar 130 g": what they are called is none of what is in them
  const isThing = (item: Item) =>
    item.is === "thing" &&
    Boolean(item.thing.ingredient || item.thing.chocolate) &&
    !named(items[items.indexOf(item) + 1]);
  // "milk choc 320 g cream 110 g, too stiff, how much more cream": what is asked stands behind the list
  const asks = items.findIndex((item, at) => at > 0 && isWord(item, "how") && items[at - 1]?.is === "sign");
  if (asks > 3) return amountsComeLast(items.slice(0, asks));
  const first = items.findIndex(isThing);
  const before = items.slice(0, first).findLast((item) => item.is !== "word");
  // "90 g whites 150 g almond flour, and I want 300 g": the first thing has its weight before it
  if (first < 0 || (before?.is === "amount" && needsOwner(before.amount))) return false;
  const run = items
    .slice(first)
    .filter((item) => isThing(item) || (item.is === "amount" && needsOwner(item.amount)));
  // "EW 95 AF 125 PS 120 GS 90, ive only got 76 g whites": what follows the list is said the other way round
  const broken = run.findIndex((item, at) => isThing(item) !== (at % 2 === 0));
  if (broken >= 6) return true;
  return (
    run.length >= 4 &&
    run.at(-1)?.is === "amount" &&
    run.every((item, at) => isThing(item) === (at % 2 === 0))
  );
}
