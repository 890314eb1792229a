/**
 * What is told of something else, and isn't to be counted: "5 if you count the one on the floor, dont count it", "45 g
 * went in the pavlova already, not that", "the bowls are 310 g each and thats taken off", "the 60 i do tomorrow stay
 * empty". Walked piece by piece, since each may be said in many orders.
 */

import { otherDishes } from "../../../../data/words/other-dishes.ts";
import { containerWords } from "../../../../data/words/told-beside.ts";
import type { Amount } from "../../../tools/contract/index.ts";
import type { Item } from "../../found/scan.ts";
import { amountsOf, type Piece, piecesTold, withoutPieces } from "./pieces-told.ts";
import { listed, thingOf } from "./telling.ts";

const has = ({ words }: Piece, set: { has(word: string): boolean }) => words.some((word) => set.has(word));

const asking = listed("how what whats which please pls give tell scale flavor flavour");
/** "the 60 i do tomorrow": these ask only at the beginning, or with who does it behind them. */
const asksFirst = listed("do does should can could would is");
const whom = listed("i we you it they that this");
const asks = (piece: Piece): boolean =>
  has(piece, asking) ||
  piece.words.some((word, at) => asksFirst.has(word) && (at === 0 || whom.has(piece.words[at + 1] ?? "")));

/** A piece that ends so isn't to be counted: "but dont count those", "not that", "ignore it", "i dont trust it". */
const refusing = listed("dont not ignore forget disregard leave skip wont never without scrap discount");
const refusedWords = listed(
  "count counting counted it that those them these this the one ones use using include including included add adding added out in into want to need part of here mind about trust believe do i we lot all for now anyway please though listen follow any thats go by",
);
const beforeRefusal = listed(
  "but and so though i we id im ill please just lets thats its theyre those that is are was",
);
const goneBy = listed("gone separate apart");

/** From where on a piece refuses what was told: its first word, or behind "but"; -1 where it doesn't. */
function refusesFrom(words: readonly string[], told: ReadonlySet<string>): number {
  for (let at = 0; at < words.length; at++) {
    const rest = words.slice(at);
    if (rest.length > 8 || rest.includes("#")) continue;
    let begun = 0;
    while (beforeRefusal.has(rest[begun] ?? "")) begun += 1;
    const own = rest.slice(begun);
    const [first = ""] = own;
    if (
      begun > 0 &&
      goneBy.has(first) &&
      own.slice(1).every((word) => refusedWords.has(word) || word === "~")
    )
      return at;
    // "never mind that", and no "never" by itself
    if (!refusing.has(first) || (first === "never" && own[1] !== "mind")) continue;
    // "if i had 500 g (i dont, 150 is all)": what one hasn't got
    if (own.length === 1 && /^(?:i|we)$/.test(rest[begun - 1] ?? "")) continue;
    if (own.slice(1).every((word) => refusedWords.has(word) || told.has(word))) return at;
  }
  return -1;
}

/** The pieces that are refused, each with the one that refuses it. */
function refused(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  pieces.forEach((piece, at) => {
    const before = pieces[at - 1];
    const told: ReadonlySet<string> = new Set(before?.words);
    const from = refusesFrom(piece.words, told);
    if (from < 0) return;
    const own = piece.words.slice(0, from);
    if (piece.amounts.length > 0) {
      // "32 with the broken ones but dont count those", "the packet says 2 tsp but forget that"
      if (own.includes("#") && !asks({ ...piece, words: own })) out.push(piece);
    } else if (from === 0 && before && before.amounts.length > 0 && !asks(before)) out.push(before, piece);
  });
  return out;
}

const dish = new RegExp(`^(?:${otherDishes}|pavlova|cake|cakes|sponge|pie)$`);
const went = listed("went gone used put");
const whither = listed("in into on to for");

/** "30 g went into the cake yesterday". */
const wentElsewhere = (piece: Piece): boolean =>
  has(piece, went) &&
  has(piece, whither) &&
  piece.words.some((word) => dish.test(word)) &&
  !/(?:^| )(?:macs?|macarons?|shells)(?: |$)/.test(piece.words.join(" "));

const remains = listed("rest left still remaining remain remains stay stays other");
/** "the rest of the bottle 28 g", "27 g still in the bottle". */
const leftInPack = (piece: Piece): boolean => has(piece, remains) && has(piece, containerWords);
const later =
  /(?:^| )(?:remaining|other|rest)(?: \S+)*? # (?:\S+ )?(?:is|are|stays?|goes|go|be) (?:for|till|until) (?:~|next|later|another)/;

const offWords = listed("subtracted deducted tared minused discounted");
/** "already taken off", "thats not included", "i took off the 12 g of the bag". */
function isTakenOff({ words }: Piece): boolean {
  const line = ` ${words.join(" ")} `;
  if (/ (?:if|when|after|before|should|can|could|until|not yet|without) /.test(line)) return false;
  return (
    words.some((word) => offWords.has(word)) ||
    / (?:taken|took) (?:\S+ )?off | already (?:off|out|gone) | (?:off|out) already /.test(line) ||
    / (?:not|isnt|arent) (?:included|counted|in that|in it|in there) /.test(line)
  );
}

/** "enough for", "how far does it go": then what is left is what is asked of. */
const reaches =
  /(?:^| )(?:enough|how far|cover|covers|stretch|last|reach|use up|more|need|missing|short)(?: |$)/;

const vessel = listed("bowl bowls bag bags waste spatula pan tin jug container tub paper lid tray");

const emptyState = listed("empty plain unfilled bare naked");
const laterOn = listed("~ tomorrow later freezer next");
const becoming = listed("stay stays get gets are is need needs dont go goes do be will wait");
/** "the 60 i do tomorrow stay empty", "another 10 stay plain for the kids", "the other 30 get filled on sunday". */
function areOthers(piece: Piece): boolean {
  const { words } = piece;
  const at = words.indexOf("#");
  const isOther =
    words.slice(0, at).every((word) => /^(?:and|but|the|then|so|another|other|my|plus|those)$/.test(word)) &&
    (words.slice(0, at).some((word) => /^(?:the|another|other)$/.test(word)) ||
      /^(?:more|others|extra)$/.test(words[at + 1] ?? ""));
  return isOther && has(piece, becoming) && (has(piece, emptyState) || has(piece, laterOn));
}

const isCount = ({ dim, unit, fraction, of }: Amount): boolean =>
  dim === "number" && unit === "" && !fraction && (of === undefined || of.count === "macarons");

const haves = listed("i ive got have has we weve theres there are is in the my fridge here only of a box");
/** "got 11 eggs", beside "how many eggs for 26 macarons". */
const eggsThere = (items: readonly Item[], piece: Piece): boolean =>
  piece.words.every((word) => word === "#" || /^eggs?$/.test(word) || haves.has(word)) &&
  piece.amounts.some((at) => thingOf(items, at)?.ingredient === "egg");
const asksEggs = /(?:^| )how many (?:\S+ ){0,2}?(?:eggs?|whites)(?: |$)/;

const makes =
  /^(?:and |it |which |that )*(?:makes?|made|gives|serves|yields|feeds|enough for) (?:about |around |roughly )?#(?: (?:macarons|macs|people|of them|pieces|shells|pairs))?$/;
const mine = /(?:^| )(?:my|mine|ive|i have|i only have|i got|ive got)(?: |$)/;

/** A share of a number and nothing else: "whats half of 375". */
const isShareAsked = (text: string): boolean =>
  /^(?:(?:so|and|ok|oh|please|whats|what is|what's|how much is|give me|tell me|just),? )*(?:(?:an?|one|two|three) )?(?:half|thirds?|quarters?|fifths?|\d\/\d) of \d+(?:[.,]\d+)?(?: please| then)?[ ?.=!]*$/.test(
    text,
  );
const restShare = listed("other rest last remaining second saving keeping stay stays");
/** "other half is for monday". */
const isRestShare = (piece: Piece): boolean =>
  has(piece, restShare) && piece.words.length > 2 && !asks(piece);

/** The turn without what is set apart; undefined where nothing is, or nothing to ask of would be left. */
export function withoutSetApart(text: string, items: readonly Item[]): string | undefined {
  const pieces = piecesTold(items);
  if (pieces.length < 2) return undefined;
  const line = pieces.map(({ words }) => words.join(" ")).join(" , ");
  const weighs = (all: readonly Piece[], but: Piece): number =>
    all
      .filter((piece) => piece !== but)
      .flatMap((piece) => amountsOf(items, piece))
      .filter(({ dim }) => dim === "weight").length;
  const refusals = refused(pieces);
  const gone = new Set(refusals);
  const isRecipe = pieces.flatMap(({ amounts }) => amounts).length > 4 && !/how many|macarons/.test(line);
  // "i used 100 g on a cake, flavor for whats left": then it counts
  const ofRest = pieces.some(
    (piece) => asks(piece) && /(?:^| )(?:left|rest|remains?|remaining)(?: |$)/.test(piece.words.join(" ")),
  );
  pieces.forEach((piece, at) => {
    const before = pieces[at - 1];
    if (asks(piece)) return;
    if (piece.amounts.length === 0) {
      // "bowls weigh 280 g each, already taken off"
      if (isTakenOff(piece) && before?.amounts.length === 1 && !asks(before) && has(before, vessel)) {
        gone.add(before);
        gone.add(piece);
      }
      return;
    }
    if (piece.amounts.length > 1) return;
    const [amount] = amountsOf(items, piece);
    const isWeight = amount?.dim === "weight" && !ofRest;
    const isOfElse =
      (isWeight && (wentElsewhere(piece) || later.test(piece.words.join(" ")))) ||
      (isWeight && leftInPack(piece) && weighs(pieces, piece) > 1 && !reaches.test(line)) ||
      (isWeight && isTakenOff(piece)) ||
      (amount !== undefined && isCount(amount) && areOthers(piece)) ||
      (asksEggs.test(line) && eggsThere(items, piece) && !/ enough|left/.test(line)) ||
      (isRecipe && makes.test(piece.words.join(" ")) && mine.test(line));
    if (isOfElse) gone.add(piece);
  });
  if (gone.size === 0) return withoutRestShare(text, items, pieces);
  const kept = pieces.filter((piece) => !gone.has(piece));
  const amounts = kept.flatMap((piece) => amountsOf(items, piece));
  const own = [...gone].flatMap((piece) => amountsOf(items, piece));
  // "4 tbsp butter, ignore that": nothing would be left to work from
  const isLeft = amounts.some((each) => own.some((other) => isRival(each, other)));
  return isLeft ? withoutPieces(text, items, [...gone]) : undefined;
}

/** It could stand in its place, or is a weight or a count to work from. */
const isRival = (kept: Amount, gone: Amount): boolean =>
  kept.dim === gone.dim || (["weight", "volume", "number"].includes(kept.dim) && !kept.fraction);

function withoutRestShare(
  text: string,
  items: readonly Item[],
  pieces: readonly Piece[],
): string | undefined {
  const gone = pieces.filter(isRestShare);
  if (gone.length === 0) return undefined;
  const left = withoutPieces(text, items, gone);
  return isShareAsked(left) ? left : undefined;
}

const onlyWanted = listed("only just");
/** "320 F for 18 min or 145 C fan. i only need 320 F in C": of all that was read out, this alone. */
export function onlyNeeded(items: readonly Item[]): string | undefined {
  const pieces = piecesTold(items);
  const piece = pieces.at(-1);
  if (!piece || pieces.length < 2 || piece.amounts.length !== 1) return undefined;
  const line = piece.words.join(" ");
  const at = piece.words.indexOf("#");
  const isOnly =
    piece.words.slice(0, at).some((word) => onlyWanted.has(word)) ||
    /^(?:\S+ )?all i (?:need|want)/.test(line);
  if (!isOnly || !/ convert |#(?: is)? (?:in|to|into|as) \S+/.test(` ${line}`)) return undefined;
  const [meant] = amountsOf(items, piece);
  const others = pieces.slice(0, -1).flatMap((each) => amountsOf(items, each));
  const isReadOut = others.some((each) => each.value === meant?.value && each.unit === meant.unit);
  if (!meant || !isReadOut || others.length < 2) return undefined;
  const rest = piece.words
    .slice(at + 1)
    .join(" ")
    .replace(/^is /, "");
  return rest === "" ? `convert ${meant.text}` : `what is ${meant.text} ${rest}`;
}
