/**
 * "my sister has half a kilo, i have 130 g buttercream, flavor for mine": what somebody else has, makes or puts into hers
 * is told beside it, and the question is of the baker's own; or the other way round, where hers is asked for.
 */
import type { Amount, Thing } from "../../../tools/contract/index.ts";
import type { Item } from "../../found/scan.ts";
import { namesOther, type Told, toldIn } from "./clauses-told.ts";
import { amountAt, isAlike, isSameStuff, isStuff, textFrom, thingOf } from "./telling.ts";

/** "my nan's card says 110 g whites, 140 g almond flour": what is scaled to what the baker has. */
function isRecipe(items: readonly Item[], dropped: readonly Told[]): boolean {
  const stuff = dropped
    .flatMap((part) => amountsIn(items, part))
    .flatMap((at) => thingOf(items, at) ?? [])
    .filter(isStuff);
  return new Set(stuff.map(({ id }) => id)).size > 1;
}

/** What one has or does by habit; what one wants, brings or spills is of the baker's own. */
const holds =
  /(?:^| )(?:has|have|had|got|gets|ive|weve|theyve|holds|held|makes|make|made|making|does|doing|did|bakes|baking|baked|uses|use|used|using|takes|took|is|was|are|were|weighs|weighed|says|said|reckons|swears|recommends|im|theyre|shes|hes|[a-z]+s got|with|only|just) /;
const puts = /(?:^| )(?:puts|adds|tips|pours|stirs|mixes|goes|put|added|stirred|mixed|poured) /;
const bare =
  /^(?:(?:and|but|for|only|just|the|a|my|our|her|his|their|me|mine|hers|theirs|[a-z]+) ){1,4}#\d+(?: (?:of|@\d+f?))*$/;
const wants =
  /(?:^| )(?:wants?|wanted|needs?|needed|ordered|orders|asked|asks|asking|likes?|gave|gives|brought|brings|bought|buys|sent|sends|paid|pays|sells|sold|told|tells|spilled|spilt|dropped|ate|eats|knocked|tipped|turned|turns|wont|cant|lent|owes|come|coming|comes|expects|gets) /;
const hers = /(?:^| )(?:her|his|their|hers|theirs)(?: |$)/;

const ofMine =
  /(?:^| )(?:mine|my own|(?:for|to|with|in) me|for (?:my|this|these|us here)|in my|my (?:bowl|batch|bit|lot|part|half|one|portion|recipe|mix)|(?:for |over |in )?here(?: only)?)(?: |$)/;
const ofHers =
  /(?:^| )(?:hers|theirs|his(?: one| bowl| batch)?|(?:for|in|into|to) (?:her|his|him|them|their)|(?:her|their) (?:bowl|batch|one|lot|bit|part|mix|recipe)|the other(?: one| bowl)?)(?: |$)/;
const ofBoth =
  /(?:^| )(?:both|each|together|total|in all|altogether|combined|sum|we|us|ours|between|difference|compared?|compares|than|stronger|weaker|more|less|same|double|twice|half|share|split|left|over|ratio|so much|as much|like hers|hers too)(?: |$)/;

const perHead = /(?:^| )(?:apiece|a head|per (?:person|head|guest)|each of (?:them|us))(?: |$)/;

const amountsIn = (items: readonly Item[], { from, to }: Told): number[] =>
  items.flatMap((item, at) =>
    at >= from &&
    at < to &&
    item.is === "amount" &&
    (item.amount.dim !== "number" || item.amount.unit !== "times") &&
    item.amount.dim !== "time" &&
    item.amount.dim !== "temperature"
      ? [at]
      : [],
  );

const asks = /(?:^| )(?:how|what|whats|which|do|should|scale|give|tell|work|please|pls) /;
/** "flavor for mine", "cream for piping": a thing that is asked for, without a word for asking. */
const names = /^(?:(?:and|so|ok|then|just|the) )*@\d+f?(?: |$)/;

/** A part that tells an amount and asks nothing. */
function tells(items: readonly Item[], part: Told, owner: "me" | "other"): boolean {
  const amounts = amountsIn(items, part);
  if (part.owner !== owner || amounts.length === 0) return false;
  if (/(?:^| )how (?:much|many) /.test(part.line) || wants.test(`${part.line} `)) return false;
  if (holds.test(part.line) || bare.test(part.line) || /^(?:and )?#/.test(part.line)) return true;
  // "puts 15 g in her 300 g batch"; what somebody put into a bowl by the way is in the baker's
  return puts.test(part.line) && (amounts.length > 1 || hers.test(part.line));
}

/** The turn without what isn't asked of; undefined where nothing is to be left out. */
export function withoutOthers(text: string, items: readonly Item[]): string | undefined {
  if (!namesOther(text)) return undefined;
  const parts = toldIn(items);
  const theirs = parts.filter((part) => tells(items, part, "other"));
  if (theirs.length === 0) return undefined;
  const rest = parts.filter((part) => !theirs.includes(part));
  const own = rest.filter((part) => amountsIn(items, part).length > 0);
  const asked = rest.filter((part) => part.line !== "");
  // "my book club is nine ladies, so 4 macarons apiece": counted by them
  if (rest.some((part) => perHead.test(part.line))) return undefined;
  const question = asked.filter(({ line }) => asks.test(`${line} `) || names.test(line));
  const line = (question.length > 0 ? question : asked.slice(-1)).map((each) => each.line).join(" , ");
  const [mine, others] = [asked.some((each) => saysMine(each.line)), ofHers.test(line)];
  const each = ofEach(text, items, rest, [...theirs, ...own], question);
  if (each !== undefined) return each;
  if (ofBoth.test(line.replace(/ (?:no|any) more /, " "))) return undefined;
  const left = others && !ofMine.test(line) ? theirs : own;
  const dropped = left === own ? theirs : own.filter((part) => tells(items, part, "me"));
  if (left === own ? own.length === 0 && !ofMine.test(line) : dropped.length === 0) return undefined;
  if (!isRival(items, dropped, left, mine || others)) return undefined;
  return isRecipe(items, dropped) ? undefined : plainly(text, items, parts, dropped, left);
}

/** "flavor for each?", behind what she has and what i have: of the one and of the other. */
function ofEach(
  text: string,
  items: readonly Item[],
  rest: readonly Told[],
  told: readonly Told[],
  question: readonly Told[],
): string | undefined {
  const [asked, ...more] = question;
  const amounts = told.flatMap((part) => amountsIn(items, part));
  const lead =
    asked && /^(.*) for (?:each|both)(?: (?:of (?:us|them)|one|bowl|batch))*$/.exec(asked.line)?.[1];
  if (!asked || lead === undefined || more.length > 0 || amounts.length !== 2 || rest.length !== 2)
    return undefined;
  const stuff = amounts.map((at) => thingOf(items, at)).find(isStuff);
  if (!stuff?.base || amounts.some((at) => amountAt(items, at)?.dim !== "weight")) return undefined;
  const words = textFrom(text, items, asked.from, asked.from + lead.split(" ").length);
  return amounts
    .map((at) => `${words} for ${textFrom(text, items, at, at + 1)} of ${stuff.text}`)
    .join(" and ");
}

const saysMine = (line: string): boolean => /(?:^| )(?:mine|for me|and me)(?: |$)/.test(line);

/**
 * What is dropped could stand in the place of what is left: "my sister has 20 g of flavor, i have 300 g buttercream" are
 * two parts of one bowl.
 */
function isRival(
  items: readonly Item[],
  dropped: readonly Told[],
  left: readonly Told[],
  isSaid: boolean,
): boolean {
  const [gone, kept] = [dropped, left].map((parts) => parts.flatMap((part) => amountsIn(items, part)));
  if (!gone || !kept) return false;
  if (kept.length === 0) return isSaid;
  const pairs = gone.flatMap((one) => kept.map((other) => [one, other] as const));
  const isHabit = dropped.some(({ line }) =>
    /(?:^| )(?:says|said|uses|used|puts|took|takes|adds) /.test(line),
  );
  const competes = pairs.some(([one, other]) => {
    const amounts = [amountAt(items, one), amountAt(items, other)] as [Amount, Amount];
    if (!isAlike(...amounts)) return false;
    const [a, b] = [thingOf(items, one), thingOf(items, other)];
    if (a && b && isStuff(a) && isStuff(b)) return isSameStuff(a, b);
    return !(isFlavor(a) || isFlavor(b)) || isHabit || gone.length > 1;
  });
  return competes && (isSaid || dropped.every(({ line }) => !/(?:^| )(?:put|added|with) /.test(line)));
}

const isFlavor = (thing: Thing | undefined): boolean => Boolean(thing && !isStuff(thing));

/** What is left, with the mix and the flavor that only the dropped part names put where they belong. */
function plainly(
  text: string,
  items: readonly Item[],
  parts: readonly Told[],
  dropped: readonly Told[],
  left: readonly Told[],
): string {
  const kept = parts.filter((part) => !dropped.includes(part));
  const things = (of: readonly Told[]) =>
    of.flatMap((part) =>
      items.slice(part.from, part.to).flatMap((item) => (item.is === "thing" ? item.thing : [])),
    );
  const [gone, said] = [things(dropped), things(kept)];
  const goneStuff =
    dropped
      .flatMap((part) => amountsIn(items, part))
      .flatMap((at) => thingOf(items, at) ?? [])
      .find(isStuff) ?? gone.find(isStuff);
  const isNamed = said.some(
    (thing) =>
      goneStuff !== undefined &&
      isStuff(thing) &&
      !isAsked(thing) &&
      (isSameStuff(thing, goneStuff) || (goneStuff.count === undefined && thing.count === undefined)),
  );
  const stuff = isNamed ? undefined : goneStuff;
  const flavor = said.some(isFlavor)
    ? undefined
    : gone.find((thing) => isFlavor(thing) && thing.unit === undefined);
  const target = left.flatMap((part) => amountsIn(items, part)).find((at) => !thingOf(items, at));
  // "mum does 5 cm ones, mine 4": in the unit of theirs
  const isBare = target !== undefined && amountAt(items, target)?.dim === "number";
  const size = isBare
    ? dropped.flatMap((part) => amountsIn(items, part)).find((at) => amountAt(items, at)?.dim === "length")
    : undefined;
  const unit = size === undefined ? "" : amountAt(items, size)?.unit;
  const pieces = kept.map((part) => {
    if (unit && target !== undefined && target >= part.from && target < part.to)
      return `${textFrom(text, items, part.from, target + 1)} ${unit} ${textFrom(text, items, target + 1, part.to)}`.trim();
    const has = target !== undefined && target >= part.from && target < part.to && stuff;
    const own = part.line.replace(/^(?:and|but|while|whereas|though|although|whilst) /, "");
    const begin = part.from + (part.line.length > own.length ? 1 : 0);
    if (!has) return withFlavor(textFrom(text, items, begin, part.to), flavor);
    const behind = /^ ?of (?:it|that|them|those)\b/;
    const after = textFrom(text, items, target + 1, part.to).replace(behind, "");
    return withFlavor(`${textFrom(text, items, begin, target + 1)} ${stuff.text} ${after}`.trim(), flavor);
  });
  const all = pieces.map((piece, at) => piece + signBehind(items, kept[at])).join(" ");
  // "what's right for mine": so much of the flavor that only she has named
  return flavor && !all.includes(flavor.text) ? all.replace(whatsRight, `how much ${flavor.text}`) : all;
}

const whatsRight =
  /\bwhat'?s? (?:is |about )?(?:right|good|best|mine)\b(?: (?:for|in) (?:mine|me|it|that))?(?= ?(?:[?.!,]|$))/;

/** Cream and sugar that are asked for are not what there is. */
const isAsked = (thing: Thing): boolean => !thing.base && !thing.chocolate && thing.ingredient === "cream";

/** "for mine" says nothing more where only that is left. */
const ofMineAlone =
  /(?<=\S) (?:for|in|into|to) (?:mine|me|my own)(?: (?:only|alone|then|please))*(?=[ ,.?]*$)/;

function withFlavor(piece: string, flavor: Thing | undefined): string {
  const plain = piece.replace(ofMineAlone, "");
  return flavor
    ? plain.replace(/\bhow (?:much|many grams?)\b(?! flavou?r)/, (said) => `${said} ${flavor.text}`)
    : plain;
}

/** A question mark or a comma stays where it was; a full stop may end a part of which nothing follows. */
function signBehind(items: readonly Item[], part: Told | undefined): string {
  const sign = part && items[part.to];
  return sign?.is === "sign" && /^[?.,;!:]$/.test(sign.text)
    ? sign.text
    : part && part.to < items.length
      ? ","
      : "";
}
