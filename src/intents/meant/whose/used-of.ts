/** "there's 2 kg almond flour in the cupboard but i'd only use 180 g of it": what is used counts, not what there is. */
import type { Thing } from "../../../tools/contract/index.ts";
import { spanOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { amountAt, isSameStuff, isStuff, lineOf, placeIn, sizeOf, thingAt, thingOf } from "./telling.ts";

const only = "(?:only|just|about|roughly|maybe|exactly|now|today|really|up|out)";
const use =
  "(?:use|uses|using|take|takes|taking|need|needs|needing|want|wants|wanting|flavou?r|flavou?rs|flavou?ring|@\\d+f|weigh|weighing|thaw|thawed|thawing|pipe|piping|fill|work with|working with|dose|dosing|go for|set aside|scoop|open|opened|spare|put in|make do with|go with|going with|crack|cracking|separate|separating|do|doing|goes in)";
const doer =
  "(?:(?:i|im|id|ill|ive|we|well|wed|were|am|are|going|gonna|to|want|wanna|plan|planning|like|would|will|can|shall|might|may|do|have|so|then|of which|from which|from that|from it|from this|out of (?:it|that)|and|but|though|only|just|today|now|let|lets|me|still) )*";
const ofIt =
  "(?:of (?:it|that|this|them|those|these|which|the lot)|from (?:it|that|this|them|those)|out of (?:it|that|them)|(?:of |for )?(?:the|its|their) @\\d+f?|of @\\d+f?)";
/** Stock first, then what is used of it: groups are the two amounts, what joins them, and "of it". */
const stockFirst = new RegExp(
  `(?<stock>#\\d+)(?<between> (?:[^#]*? )?)(?<doer>${doer})(?<verb>${use}) (?<more>(?:${only} |for |@\\d+f? for |with )*)(?<used>#\\d+)(?<of> ${ofIt})?(?= |$)`,
);
/** "260 g of it goes in", "only 2 whites go in". */
const goesIn = new RegExp(
  `(?<stock>#\\d+)(?<between> (?:[^#]*? )?)(?<doer>(?:(?:and|but|so|though|only|just) )*)(?<used>#\\d+)(?<of> ${ofIt}| @\\d+f?)? (?<verb>(?:(?:is|are|will|gets?) )?(?:go(?:es)? in|going in|go in|used|needed|taken|for this|for now|for today|is all i use|is all i need|will do|is enough|are enough|is plenty|does it|is for (?:now|today|this|that|these|the|my|shells|me|\\S+))(?: @\\d+f?)?)(?= |$)`,
);
/** "i take 200 g out of the 500 g of buttercream". */
const usedFirst = new RegExp(
  `(?<doer>(?:^|(?<= ))(?:(?:i|im|id|ill|we|if|well|just|only|and|so|say|would|will|want to|going to) )*)(?<verb>${use}) (?<more>(?:${only} )*)(?<used>#\\d+)(?<of> of (?:it|them))? (?:out of|from|of) (?:(?:the|my|our|a|an|that|those|these) )*(?<stock>#\\d+)(?: (?:of )?(?:(?:the|my) )*@\\d+f?)?(?= |$)`,
);
/** "i keep 500 g plain and flavor 250 g". */
const keptPlain = new RegExp(
  `(?<stock>#\\d+)(?<between> (?:[^#]*? )?)(?:keep|keeping|leave|leaving|save|set aside|put aside|put away) (?:\\S+ )?#\\d+(?: of (?:it|that))?(?: (?:plain|@\\d+|aside|back|white|as it is|for later|away|unflavou?red))+ (?:(?:, )?(?:and|then|so|,) )(?<doer>${doer})(?<verb>${use}) (?<more>(?:${only} |the other |the )*)(?<used>#\\d+)(?<of> ${ofIt})?(?= |$)`,
);

/** Something is asked, and not what is left, what it costs, or to put down what there is. */
const asks =
  /\?|\b(?:how|what|whats|which|flavou?r|recipe|weights?|rest of|scale|cream|chocolate|sugars?|whites|dose|please|pls)\b/;
const asksOther =
  /\b(?:left|leftovers?|remain\w*|remainder|price|pay|paid|costs?|worth|save|note|log|stock|shelf|pantry list|label|used|split|divide|share|percent|timer|remind|color|colou?r|pink|blue|green|yellow|red|sell|expire\w*)\b|%|\$/;

/** The turn with what is used in the place of what there is; undefined where none is told. */
export function ofStock(text: string, items: readonly Item[]): string | undefined {
  if (!asks.test(text) || asksOther.test(text)) return undefined;
  const line = lineOf(items);
  for (const pattern of [keptPlain, usedFirst, stockFirst, goesIn]) {
    const match = pattern.exec(line);
    const found = match?.groups;
    if (!match || !found) continue;
    const [stock, used] = [placeIn(found.stock), placeIn(found.used)];
    const thing = stuffOf(items, stock, used);
    if (thing === undefined || !isPart(items, stock, used)) continue;
    if (pattern !== usedFirst && pattern !== keptPlain && !isSaidSo(items, line, found)) continue;
    // "color the rest", "the rest stays plain": of the bowl, and both weights count
    if (thing.base && /\b(?:rest|other half|others?)\b/.test(text)) continue;
    return said(text, items, match, thing);
  }
  return undefined;
}

type Found = Record<string, string | undefined>;

/** "only", "but", "of it", "out of" say that it is a part; "i have 300 g, take 20 g" may be two things. */
function isSaidSo(items: readonly Item[], line: string, found: Found): boolean {
  const { of = "", between = "", doer = "", more = "" } = found;
  const link = ` ${between} ${doer} ${more} `.replace(/ +/g, " ");
  const lead = line.slice(0, line.indexOf(found.stock ?? ""));
  return (
    / (?:of|from|out of|the) /.test(of) ||
    / (?:only|just|but|though|of which|from which|from it|from that) /.test(link) ||
    /(?:^|[,.;] |and )(?:so )?(?:out of|from|of) (?:(?:the|my|our|a|an|that) )*$/.test(lead) ||
    isPlainlyPart(items, line, found)
  );
}

const plainVerbs =
  /^(?:uses?|using|takes?|taking|crack|cracking|separat\w+|thaw\w*|go(?:es)? in|going in|will do|(?:is|are) (?:enough|plenty)|is for .*|is all i (?:use|need))$/;

/** "a dozen eggs, i'm using four whites", "3 kg of chocolate, i'll use 250 g": what else could be used of it. */
function isPlainlyPart(items: readonly Item[], line: string, found: Found): boolean {
  const [stock, used] = [placeIn(found.stock), placeIn(found.used)];
  const thing = stuffOf(items, stock, used);
  if (thing === undefined || thing.base || !plainVerbs.test(found.verb ?? "")) return false;
  const own = thingOf(items, used);
  return own !== undefined ? own.ingredient === "whites" : (line.match(/#/g) ?? []).length === 2;
}

/** What there is, where nothing else is named with what is used of it. */
function stuffOf(items: readonly Item[], stock: number, used: number): Thing | undefined {
  const there = thingOf(items, stock);
  const own = thingOf(items, used);
  const isPack = there?.count === "boxes" || there === undefined;
  const thing = isPack ? packed(items, stock) : there;
  if (!thing || !isStuff(thing)) return undefined;
  if (own && !isStuff(own)) return undefined;
  return own && !isSameStuff(own, thing) ? undefined : (own ?? thing);
}

/** "500 g pack of almond flour", "box of 12 eggs". */
const packed = (items: readonly Item[], stock: number): Thing | undefined => {
  const behind =
    /^(?:(?:of|the|a|an|my|pack|packet|bag|tub|box|jar|bowl|bottle|carton|tin|sack|block|slab|bar|brick|batch|@\d+) )*?@(\d+)(?= |$)/;
  const line = lineOf(items, stock + 1, stock + 6);
  const found = behind.exec(line);
  const last = found ? thingAt(items, placeIn(found[1])) : undefined;
  if (last && isStuff(last) && last.count !== "boxes") return last;
  const next = /@(\d+)(?= |$)/g;
  for (const [, place] of line.matchAll(next)) {
    const thing = thingAt(items, Number(place));
    if (thing && isStuff(thing) && thing.count !== "boxes") return thing;
  }
  return undefined;
};

/** Less than what there is, of the same measure; a weight may be used of so much by volume. */
function isPart(items: readonly Item[], stock: number, used: number): boolean {
  const [whole, part] = [amountAt(items, stock), amountAt(items, used)];
  if (!whole || !part || whole.high !== undefined || part.high !== undefined) return false;
  if (
    [whole, part].some(({ dim, unit }) => unit === "times" || !["weight", "number", "volume"].includes(dim))
  )
    return false;
  if (part.dim === "volume" || (part.dim === "number" && part.fraction)) return false;
  if (whole.dim === part.dim) return sizeOf(part) < sizeOf(whole);
  return whole.dim !== "number" && part.dim === "weight";
}

/** "there's 2 kg almond flour in the cupboard but i'd only use" gives way to "i have". */
function said(text: string, items: readonly Item[], found: RegExpExecArray, thing: Thing): string {
  const used = items[placeIn(found.groups?.used)] as Item;
  // every item is one word of the line
  const begun = wordsIn(found.input.slice(0, found.index));
  const end = wordsIn(found.input.slice(0, found.index + found[0].length));
  const from = clauseStart(items, begun);
  const kinds = items
    .slice(from, end)
    .flatMap((item) => (item.is === "thing" && isKind(item.thing) ? item.thing.text : []));
  const named = [...kinds.filter((kind) => !thing.text.includes(kind)), thing.text].join(" ");
  const next = items[end];
  const rest = next ? text.slice(spanOf(next)[0]) : "";
  // "only need flavor for 150 g of it" asks as well
  const flavor = thingAt(items, placeIn(/@\d+f/.exec(found.groups?.more ?? "")?.[0]));
  const asked = flavor ? `, how much ${flavor.text}` : "";
  const tail = thing.base
    ? rest
    : rest.replace(/ (?:for|with|from) (?:it|that|them|those|these)(?= ?[?.!]*$)/, "");
  const isFlavored = /^(?:flavou?r|@)/.test(found.groups?.verb ?? "") && !/flavou?r/.test(rest);
  const behind = isFlavored ? tail.replace(/\bhow much\b(?= ?(?:[?.!,]|$))/, "how much flavor") : tail;
  const joint = /^(?:[.,;:?!)]|$)/.test(rest) ? "" : /^(?:and|for|so|into?|to)\b/.test(rest) ? " " : ", ";
  return `${text.slice(0, spanOf(items[from] as Item)[0])}i have ${text.slice(...spanOf(used))} ${named}${asked}${joint}${behind}`;
}

const wordsIn = (piece: string): number => (piece.trim() ? piece.trim().split(" ").length : 0);

/** "dark", said apart from the chocolate or the ganache. */
const isKind = (thing: Thing): boolean =>
  thing.chocolate !== undefined && thing.base === undefined && /^(?:dark|milk|white)$/.test(thing.text);

/** The clause that tells of the first amount begins behind the sign before it. */
function clauseStart(items: readonly Item[], at: number): number {
  let from = at;
  while (from > 0 && items[from - 1]?.is !== "sign") from -= 1;
  return from;
}
