/** "if i had 500 g buttercream (i don't, 150 is all)": what is asked about is what is supposed, not what there is. */
import type { Item } from "../../found/scan.ts";
import {
  amountAt,
  isAlike,
  isSameStuff,
  isStuff,
  lineOf,
  placeIn,
  sizeOf,
  textFrom,
  thingOf,
} from "./telling.ts";

const supposes =
  /(?:^| )(?:if|suppose|supposing|supposed|say|imagine|imagining|pretend|pretending|assume|assuming|hypothetically|theoretically|had i|were i|lets say|what if|in theory|would)(?: |$)/;
const surely =
  /(?:^| )(?:suppose|supposing|imagine|pretend|pretending|hypothetically|theoretically|in theory|if)(?: |$)/;

/** Words by which what there is in truth is told beside it, and nothing else. */
const truth =
  "(?:i|we|ive|weve|id|it|its|theres|there|that|thats|is|are|was|were|have|havent|had|got|dont|do|not|only|just|but|though|although|even|really|actually|truth|in|fact|reality|to be honest|be|tell|the|though|know|which|and|sadly|all|much|many|that|as|still|now|at|moment|alas|unfortunately|no|wish|right|so|making|made|make|today|here|if|only|of|mine|one|what|real|honest|honestly|being|than|less|more|yet|a|bit|really|for|however)";
const fact = new RegExp(`^(?:${truth} )*(#\\d+)(?: (?:of )?(?:@\\d+f?))?(?: ${truth})*$`);
/** Words that deny or limit, one of them at least where nothing but "would" supposes. */
const denies =
  /(?:^| )(?:only|just|dont|havent|not|really|actually|truth|fact|reality|is all|wish|sadly|alas|unfortunately|though|even|know|no)(?: |$)/;
/** "i dont", "i havent", "i wish": said without an amount. */
const denial =
  /^(?:(?:which|but|and|not that|i know|well|no|sadly|alas|of course|obviously) )*(?:i|we|it|there|they|that)? ?(?:dont|havent|do not|have not|isnt|is not|arent|wish|doesnt|not|wasnt|hadnt|im not|aint)(?: (?:have|got|that|much|so|any|as|many|it|though|obviously|of course|sadly|true|make|making|i))*$/;
/** "instead of the 200 g i've got", "not the 30 im making". */
const instead =
  /(?: ,)? (?:instead of|rather than|and not|not|in place of) (?:(?:the|my|just|only|our) )*(#\d+)(?: (?:of )?@\d+f?)?(?: (?:that|which|i|we|ive|weve|im|were|its|theres|it|there|got|have|had|really|actually|is|are|making|make|made|here|now|baking|planned|in|hand|the|bowl))*(?= [,.?!;()-]|$| (?:how|what|flavou?r|and|then|so) )/;

/** "hypothetically, with 450 g": the comma ends nothing. */
const leadsIn =
  /^(?:(?:but|and|so|just) )*(?:hypothetically|theoretically|in theory|suppose|supposing|imagine|pretend|say|lets say|what if)$/;

interface Piece {
  from: number;
  to: number;
  line: string;
}

function piecesOf(items: readonly Item[]): Piece[] {
  const out: Piece[] = [];
  let from = 0;
  const end = (to: number, next: number) => {
    if (to > from) out.push({ from, to, line: lineOf(items, from, to) });
    from = next;
  };
  items.forEach((item, at) => {
    if (item.is === "sign" && /^[,.;:?!()-]$/.test(item.text) && !leadsIn.test(lineOf(items, from, at)))
      end(at, at + 1);
    if (item.is === "word" && /^(?:but|though|although|even|and)$/.test(item.text)) {
      const next = lineOf(items, at + 1, at + 4);
      if (
        /^(?:if|i|ive|its|it|theres|there|how|what|whats|really|actually|only|though|give)(?: |$)/.test(
          next,
        ) &&
        at > from
      )
        end(at, at);
    }
    // "i have 200 g buttercream if i had 300 g": the condition begins
    if (
      item.is === "word" &&
      item.text === "which" &&
      /^which (?:i|we|it) (?:dont|havent|isnt)/.test(lineOf(items, at, at + 3)) &&
      at > from
    )
      end(at, at);
  });
  end(items.length, items.length);
  return out;
}

const amountsOf = ({ line }: Piece): number[] => [...line.matchAll(/#(\d+)/g)].map(([, at]) => Number(at));

/** The turn without what there is in truth; undefined where nothing of the kind is told. */
export function asSupposed(text: string, items: readonly Item[]): string | undefined {
  const line = lineOf(items);
  if (!supposes.test(line)) return undefined;
  const beside = instead.exec(line);
  if (beside && surely.test(line)) {
    const [start, end] = [beside.index, beside.index + beside[0].length].map(
      (to) => line.slice(0, to).trim().split(" ").length,
    );
    const own = placeIn(beside[1]);
    const other = items.findIndex((item, at) => at < own && item.is === "amount" && isOfOne(items, at, own));
    if (other >= 0 && start !== undefined && end !== undefined)
      return `${textFrom(text, items, 0, start)} ${textFrom(text, items, end, items.length)}`.trim();
  }
  const pieces = piecesOf(items);
  const facts = pieces.filter(
    (piece) =>
      fact.test(piece.line) &&
      amountsOf(piece).length === 1 &&
      !surely.test(piece.line.replace(/ if only$/, "")) &&
      !/^(?:and )?(?:what|how)/.test(piece.line) &&
      !/\bwould\b/.test(piece.line) &&
      !/^(?:say|lets say|assume|had i) /.test(piece.line),
  );
  const guesses = pieces.filter(
    (piece) => !facts.includes(piece) && supposes.test(piece.line) && amountsOf(piece).length > 0,
  );
  const [guess] = guesses;
  const [real, ...more] = facts;
  if (!guess || !real || more.length > 0) return undefined;
  const [supposed, had] = [amountsOf(guess)[0] ?? -1, amountsOf(real)[0] ?? -1];
  if (!isOfOne(items, supposed, had)) return undefined;
  // "if i find another 2 g, so 6 in all": the sum, and no truth beside it
  if (/(?:^| )(?:another|more|extra|add|added)(?: |$)/.test(guess.line)) return undefined;
  if (/(?:^| )(?:in all|total|altogether|makes|so)(?: |$)/.test(real.line)) return undefined;
  // "would 500 g take 12 g? i only have 8": the second may be of the flavor
  const [one, other] = [amountAt(items, supposed), amountAt(items, had)];
  if (!one || !other || sizeOf(other) * 10 < sizeOf(one) || sizeOf(one) * 10 < sizeOf(other))
    return undefined;
  const hasDenial = denies.test(real.line) || pieces.some((piece) => denial.test(piece.line));
  if (!surely.test(guess.line) && !hasDenial) return undefined;
  // what there is in truth is asked about by its number
  const isAskedOf = pieces.some(
    (piece) =>
      piece !== real &&
      piece !== guess &&
      amountsOf(piece).some((at) => sameValue(items, at, had)) &&
      !amountsOf(piece).some((at) => sameValue(items, at, supposed)),
  );
  if (isAskedOf) return undefined;
  const stuff = thingOf(items, supposed) ? undefined : thingOf(items, had);
  const kept = pieces.filter((piece) => piece !== real && !denial.test(piece.line));
  return kept
    .map((piece) => {
      const own =
        /^(?:but|though|although|and|even though|even) /.exec(piece.line)?.[0].trim().split(" ").length ?? 0;
      const begin = piece.from + own;
      const place = piece === guess && stuff ? supposed : -1;
      const said =
        place < 0
          ? textFrom(text, items, begin, piece.to)
          : `${textFrom(text, items, begin, place + 1)} ${stuff?.text} ${textFrom(text, items, place + 1, piece.to)}`.trim();
      const sign = items[piece.to];
      return (
        said +
        (sign?.is === "sign" && /^[?.,;!]$/.test(sign.text) ? sign.text : piece.to < items.length ? "," : "")
      );
    })
    .join(" ")
    .replace(/,$/, "");
}

const sameValue = (items: readonly Item[], one: number, other: number): boolean =>
  amountAt(items, one)?.value === amountAt(items, other)?.value;

/** Two amounts of which one could stand for the other. */
function isOfOne(items: readonly Item[], one: number, other: number): boolean {
  const [first, second] = [amountAt(items, one), amountAt(items, other)];
  if (!first || !second || one === other || !isAlike(first, second)) return false;
  const [a, b] = [thingOf(items, one), thingOf(items, other)];
  if (a && b) return isSameStuff(a, b);
  return [a, b].every((thing) => thing === undefined || isStuff(thing));
}
