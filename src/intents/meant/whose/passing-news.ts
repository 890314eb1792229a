/**
 * What is told of the things around, and changes nothing of what was worked out: "one of the bowls is chipped on the
 * rim", "11 eggs is 8 from us and 3 from next door", "he says his grandma did it with 2 litres of milk", "i used to make
 * 100 of them". Such a turn is heard, and no calculator runs on its numbers.
 */
import { people } from "../../../../data/words/people.ts";
import { containerWords } from "../../../../data/words/told-beside.ts";
import { wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { type Told, toldIn } from "./clauses-told.ts";
import { amountsOf, type Piece, piecesTold } from "./pieces-told.ts";
import { listed, thingAt, thingOf } from "./telling.ts";

/** A question, an order, or something that may change what is made. */
const asking = listed(
  "how what whats why which when where who can could should would shall will may please pls give show tell set start note log plan scale save convert split divide halve double make use add take leave want wants need needs order ordered now instead so then left more less only actually sorry wait no not",
);

const leads = listed("and but oh so well ok btw also haha lol by the way");
const isBe = listed(
  "is are was were has have dont doesnt arent isnt got had came come look looks matches match seem seems",
);
/** What becomes of some of them so that there are fewer, or of another kind, to work with. */
const tellsChange = listed(
  "plain bigger smaller larger double full empty gone broken broke burnt missing ruined done over for finished dropped lost smashed cracked spare extra free used ready filled coloured colored bare enough ones",
);
const whoseWords = listed("the my our these those");
const gear = listed("bowls trays boxes");
const isKnown = (items: readonly Item[], from: number, to: number): boolean =>
  items.slice(from, to).some((item, at) => {
    if (item.is !== "thing") return false;
    const { base, taste, dose, step, use, chocolate, symptom, color } = item.thing;
    // "blue glass" is no color of what is in it
    const colored = at === to - from - 1 ? color : undefined;
    return Boolean(base ?? taste ?? dose ?? step ?? use ?? chocolate ?? symptom ?? colored);
  });

/** "one of the bowls is chipped on the rim", "3 of my friends are coming to help". */
function tellsOfSome(items: readonly Item[], piece: Piece): boolean {
  const { from, to, words } = piece;
  const [amount, ...others] = amountsOf(items, piece);
  const at = words.findIndex((word) => word === "#" || word === "one");
  const isNumber = amount?.dim === "number" && amount.unit === "" && !amount.fraction;
  if (words[at] === "#" && !isNumber) return false;
  // "one of my trays is from 1990"
  const years = words[at] === "#" ? others : amountsOf(items, piece);
  if (years.some(({ value, dim, unit }) => unit !== "times" && (dim !== "number" || value < 1900)))
    return false;
  const [of, whose = "", named = "", verb = "", ...rest] = words.slice(at + 1);
  if (of !== "of" || !whoseWords.has(whose) || !isBe.has(verb)) return false;
  if (!words.slice(0, at).every((word) => leads.has(word))) return false;
  const thing = items.slice(from, to).flatMap((item) => (item.is === "thing" ? item.thing : []))[0];
  const isEgg = thing?.ingredient === "egg" && /^eggs?$/.test(named);
  if (!people.has(named) && !isEgg && !gear.has(thing?.count ?? "")) return false;
  // "3 of my friends are coming over"
  const changes =
    !people.has(named) &&
    rest.some((word) => tellsChange.has(word)) &&
    !(isEgg && /^double yolk/.test(rest.join(" ")));
  return !changes && !isKnown(items, from, to);
}

/** "11 eggs is 8 from us and 3 from next door", "the eggs are from 3 different hens": where they come from. */
function tellsWhence(items: readonly Item[], { words, amounts, from }: Piece): boolean {
  const be = words.findIndex((word) => /^(?:is|are|was|were|came|come)$/.test(word));
  const rest = words.slice(be + 1);
  if (be < 1 || !/^(?:(?:all|mostly|just|the) )*(?:# )?(?:of them )?from /.test(rest.join(" "))) return false;
  const named = words.slice(0, be).filter((word) => !leads.has(word));
  if (!named.every((word) => /^(?:#|the|my|our|these|those|all|eggs?|whites?|of|them)$/.test(word)))
    return false;
  const isEgg = [0, 1, 2, 3].some((at) =>
    /^(?:egg|whites)$/.test(thingAt(items, from + at)?.ingredient ?? ""),
  );
  const verb = items.findIndex(
    (item, at) => at >= from && /^(?:is|are|was|were|came|come)$/.test(wordOf(item)),
  );
  return isEgg && amounts.every((at) => at < verb || thingOf(items, at) === undefined);
}

/** "he says his grandma did it with 2 litres of milk", "my gran used 3 pints of milk for everything". */
function tellsOfOthers(items: readonly Item[], parts: readonly Told[], piece: Piece): boolean {
  const part = parts.find(({ from }) => from === piece.from);
  const amounts = amountsOf(items, piece);
  if (part?.owner !== "other" || amounts.length === 0) return false;
  const line = ` ${piece.words.join(" ")} `;
  return (
    / (?:says|said|thinks|thought|reckons|swears|used|did|made|put|does|uses|makes|puts) /.test(line) &&
    !/ (?:me|i|mine|it was|bowl) | in (?:my|it|there) /.test(line) &&
    // "my sister says 50 is plenty" is another number of what was worked out
    piece.amounts.every(
      (at, place) =>
        amounts[place]?.dim === "volume" ||
        [1, 2].some((next) => containerWords.has(wordOf(items[at + next]))),
    ) &&
    !isKnown(items, piece.from, piece.to)
  );
}

const usedTo =
  /(?:^| )(?:i|we|she|he|they) (?:always |once )?used to (?:make|bake|do|pipe|sell|use|have) (?:[a-z]+ )*#/;
const onOffer = /(?:^| )(?:on offer|on sale|reduced|a bargain|half price|a steal|on special)(?: |$)/;

/** Nothing but such news stands in the turn. */
export function isPassingNews(text: string, items: readonly Item[]): boolean {
  if (text.includes("?")) return false;
  const pieces = piecesTold(items).filter(({ words }) => !words.every((word) => leads.has(word)));
  const [piece, ...others] = pieces;
  if (!piece || others.length > 0) return false;
  const line = piece.words.join(" ");
  if (tellsOfOthers(items, toldIn(items), piece) || (usedTo.test(line) && piece.amounts.length === 1))
    return true;
  if (piece.words.some((word) => asking.has(word))) return false;
  return (
    tellsOfSome(items, piece) || tellsWhence(items, piece) || (piece.amounts.length > 0 && onOffer.test(line))
  );
}
