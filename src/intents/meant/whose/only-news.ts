/**
 * News that asks for nothing: a fault that stayed away ("my ganache did not split today"), a fault of somebody else's
 * ("hers came out hollow, poor thing"), what lies in another cupboard, where the other bowl stands. Such a turn is heard
 * and answered with no figure.
 */
import { textOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { type Told, toldIn } from "./clauses-told.ts";
import { faultsIn } from "./faults.ts";
import { amountAt, lineOf, thingAt, thingOf } from "./telling.ts";

/** What a turn that only tells is read as: it is nodded at. */
const heard = "ok";

/** A question or an order stands in the turn: then it tells nothing in passing. */
const asking = new Set(
  `how what whats why which when where who whose can could should would shall may might must do does is are help fix
  save rescue repair mend stop avoid prevent please pls give show tell set start work make note log label plan scale save
  convert split divide halve double timer used use add buy list`
    .trim()
    .split(/\s+/),
);
/** Only at the beginning of a part are these questions: "is it ok", "it is split". */
const leading = new Set(
  "do does is are can could should would may might must make set work use used add buy list split".split(" "),
);

/** @param line of a part, a word an item */
function asks(line: string): boolean {
  const words = line.split(" ");
  return words.some((word, at) => asking.has(word) && (at === 0 || !leading.has(word)));
}

const isAsked = (text: string, parts: readonly Told[]): boolean =>
  text.includes("?") || parts.some(({ line }) => asks(line.replace(/^(?:(?:and|but|so|ok|oh|well) )+/, "")));

/** Asks in form only. */
const rhetorical =
  /^(?:can you imagine|can you believe (?:it|that)|would you believe (?:it|that)|guess what|what a .*|how about that)$/;

/** The text of such a turn; undefined where it isn't one. */
export function onlyNews(text: string, items: readonly Item[]): string | undefined {
  const parts = toldIn(items).filter(({ line }) => !rhetorical.test(line));
  if (isAsked(text, parts)) return undefined;
  const isNews =
    isSpared(items) ||
    isFaultOfOthers(items, parts) ||
    isStockOfOthers(items, parts) ||
    isWhereItStands(items);
  return isNews ? heard : undefined;
}

/** Every fault that is named stayed away. */
function isSpared(items: readonly Item[]): boolean {
  const faults = faultsIn(items);
  // "no, they weren't hollow": what was noted is put right
  const [first, second] = items;
  if (first && /^(?:no|sorry|wait|actually)$/.test(textOf(first)) && second?.is === "sign") return false;
  return faults.length > 0 && faults.every(({ isDenied }) => isDenied) && !isOfBatch(items);
}

/** "lime batch, no cracks": told for the notes. */
const isOfBatch = (items: readonly Item[]): boolean => /(?:^| )batch(?: |$)/.test(textIn(items));

const textIn = (items: readonly Item[]): string =>
  items.map((item) => (item.is === "amount" ? "#" : textOf(item))).join(" ");

/** What others made or have; what they say of the baker's own is no news. */
const theirOwn =
  /(?:^| )(?:hers|theirs|his|her|their|made|makes|make|baked|bakes|bake|tried|tries|did|does|brought|had|has|got|burnt|attempted|[a-z]{2,}s) /;
const reports =
  /(?:^| )(?:says?|said|thinks?|thought|asks?|asked|tells?|told|reckons?|wants?|wanted|found|finds|tasted|tastes|complain\w*|noticed|notices|pointed|keeps? saying|these|this|here|mine|my own|recipe|recipes|oven|mixer|mat|method|book|for me|gave|with me|me)(?: |$)/;

/** Others of the baker's own batch, or anybody. */
const anyone =
  /^(?:(?:and|but|so|the|my) )*(?:others?|some|another|one|people|everyone|everybody|they)(?: |$)/;

function isFaultOfOthers(items: readonly Item[], parts: readonly Told[]): boolean {
  const faults = faultsIn(items).filter(({ isDenied }) => !isDenied);
  if (faults.length === 0) return false;
  const [first] = parts.filter(({ owner }) => owner === "other");
  if (!first || parts.some(({ line, owner }) => owner === "other" && reports.test(withoutMine(line))))
    return false;
  if (anyone.test(first.line)) return false;
  if (!theirOwn.test(` ${withoutMine(first.line)} `)) return false;
  return faults.every(({ at }) => {
    const upTo = parts.filter(({ from }) => from <= at);
    const owners = upTo.flatMap(({ owner }) => owner ?? []);
    return owners.at(-1) === "other";
  });
}

/** "my sister": whose sister it is says nothing of what was baked. */
const withoutMine = (line: string): string =>
  line.replace(/^(?:(?:and|but|so|oh|well|poor|my|our|the|a) )+/, "");

const given =
  /(?:^| )(?:me|us|mine|our|ours|both|wants?|wanted|needs?|needed|order\w*|asks?|asked|gave|gives?|brought|brings|sent|sends|lent|lends|recipe|says?|said|ate|eaten|nicked|stole|took|taken|finished|spilt|spilled|dropped|pinched|scoffed|threw|binned)(?: |$)/;
const there =
  /(?:^| )(?:at|in) (?:my |our |the )?(?:[a-z]+ )?(?:[a-z]+s (?:house|place|cupboard|pantry|flat|kitchen|cellar)|mums|moms|sisters|dads|nans|grans|neighbours|neighbors)$/;

/** "my mother in law has 900 g almond flour": one ingredient, and nothing of the baker's own beside it. */
function isStockOfOthers(items: readonly Item[], parts: readonly Told[]): boolean {
  const amounts = items.flatMap((item, at) => (item.is === "amount" ? [at] : []));
  const [only, ...more] = amounts;
  if (only === undefined || more.length > 0 || parts.some(({ owner, line }) => owner === "me" && line !== ""))
    return false;
  const amount = amountAt(items, only);
  const thing = thingOf(items, only);
  if (
    !amount ||
    !["weight", "number", "volume"].includes(amount.dim) ||
    !thing?.ingredient ||
    thing.base ||
    thing.dose
  )
    return false;
  const line = parts.find(({ from, to }) => only >= from && only < to);
  if (!line || given.test(withoutMine(line.line))) return false;
  // "granny shells from 55 g whites": a recipe that goes by her name, to be sized
  if (/^(?:[a-z]+ ){1,3}@\d+f? (?:from|out of|with|for|on|to|using) #/.test(line.line)) return false;
  // "she only has 160 g": of whom was spoken before, in a question
  const isBefore = /^(?:(?:and|but|so) )*(?:she|he|they|shes|hes|theyve)(?: |$)/.test(line.line);
  if (isBefore && !/(?:^| )(?:at|in) (?:her|his|their) /.test(line.line)) return false;
  return line.owner === "other" || there.test(line.line.replace(/ @\d+f?/g, "").replace(/#\d+ /, ""));
}

const stands =
  /^(?:(?:and|but|oh|so|well) )*(?:the|my|that|our) (?:[a-z]+ |@\d+ |~ )?(?:~|one|ones|other|bowl|half|lot|@\d+)s? (?:is|are|was|sits?|sitting|lives?|went|stands?|lies) (?:already |still |now |safely )?(?:in|on|at the back of) the (?:freezer|fridge|@\d+|cellar|pantry|larder|balcony|side|shelf)(?: (?:behind|next|under|beside|above|below|somewhere|already|now|with|between|by|near) .*| already| now| somewhere)?$/;
/** Where the other bowl stands, and not how long it may. */
function isWhereItStands(items: readonly Item[]): boolean {
  const line = lineOf(items)
    .replace(/(?<=\b(?:one|other|half|bowl))s (?=(?:in|on) the )/, " is ")
    .replace(/(?: [!.])+$/, "");
  if (!stands.test(line) || items.some((item) => item.is === "amount")) return false;
  const [first] = items.flatMap((_, at) => thingAt(items, at) ?? []);
  return !first?.count && !first?.symptom && / one| other| old | good | fine /.test(textIn(items));
}
