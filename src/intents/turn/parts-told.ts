/**
 * One question told in little sentences: "its 230 g. buttercream. lemon. 4 percent.", "55 macarons. each 4.5 cm. how much
 * filling". Each of its parts comes once and the rest is talk, so the stops between them part no questions.
 */

/** What may stand around the parts; any other word, and the turn is cut as all others are. */
const talk = new Set(
  `its it is i im ive have got the my a an of in into there theres weighs weigh came to made bowl flavor flavour flavoring
  flavouring flavored this time one ones want with please pls going for at go say make lets like strength use dosed how much
  many grams goes what do does can could will would should need amount left only bottle still holds has down enough far cover
  them they are each wide across size diameter measure order be work out and so that up fill filling filled needed me
  then today bag jar ring center centre outside inside middle around ? , . ; : - !`.split(/\s+/),
);

interface Parts {
  weight: number;
  percent: number;
  length: number;
  macarons: number;
  bases: Set<string>;
  flavors: Set<string>;
  /** What a plan for macarons is asked for: shells, trays, batter, whites. */
  asked: Set<string>;
}

/** @returns undefined where a word or an amount is none of the parts */
function partsIn(mask: string): Parts | undefined {
  const words = mask.split(" ");
  if (words.length > 60) return undefined;
  const parts: Parts = {
    weight: 0,
    percent: 0,
    length: 0,
    macarons: 0,
    bases: new Set(),
    flavors: new Set(),
    asked: new Set(),
  };
  for (const [at, word] of words.entries()) {
    const facets = /<(.*)>$/.exec(word)?.[1] ?? "";
    const value = (name: string) => new RegExp(`(?:^|,)${name}=([^,]+)`).exec(facets)?.[1];
    if (talk.has(word)) continue;
    if (facets === "weight" || facets === "percent" || facets === "length") parts[facets] += 1;
    else if (facets === "number" && isMacarons(words[at + 1])) parts.macarons += 1;
    else if (/^(?:count=(?:trays|shells)|base=batter|ingredient=(?:whites|egg))$/.test(facets))
      parts.asked.add(facets);
    else if (value("base")) parts.bases.add(value("base") ?? "");
    else if (value("taste")) parts.flavors.add(value("taste") ?? "");
    else if (/^(?:dose=flavor|unit=g|use=piping|count=macarons)$/.test(facets)) continue;
    else return undefined;
  }
  return parts;
}
/** "55 macarons", "81 filled macarons". */
const isMacarons = (next = ""): boolean => /<count=macarons>$/.test(next) || next === "filled";

/** A bowl and its flavor, or a bottle and what it is enough for. */
const isDose = ({ weight, percent, length, macarons, bases, flavors }: Parts): boolean =>
  weight === 1 &&
  percent <= 1 &&
  length + macarons === 0 &&
  bases.size === 1 &&
  flavors.size === 1 &&
  !bases.has("batter");

/** Macarons, their size, and what fills them; batter or shells beside it are a question of their own. */
const isFill = (
  { weight, percent, length, macarons, bases, flavors, asked }: Parts,
  placed: boolean,
): boolean =>
  macarons === 1 &&
  length === 1 &&
  weight + percent + asked.size === 0 &&
  (placed ||
    (flavors.size === 0 && bases.size === 0) ||
    (flavors.size === 0 && bases.size === 1 && bases.has("filling")));

/** "a ring of buttercream and a jam center": what is named is in the macarons. */
const inPlaces =
  /(?:^| )ring .*(?:center|middle)|(?:^| )(?:center|middle)(?:<\S*)? .*(?:ring|around)|(?:^| )outside .*inside/;

/** Macarons, their size, and what is asked of the plan for them. */
const isPlan = ({ weight, percent, length, macarons, bases, flavors, asked }: Parts): boolean =>
  macarons === 1 && length === 1 && weight + percent + flavors.size + bases.size === 0 && asked.size === 1;

/** Whether all of a turn is one question told in parts. Pure. */
export function toldInParts(mask: string): boolean {
  // "what goes in, and how much lemon oil": two are asked
  if (/(?: |^)and (?:how|what)(?: |$)/.test(mask)) return false;
  const parts = partsIn(mask);
  return parts !== undefined && (isDose(parts) || isFill(parts, inPlaces.test(mask)) || isPlan(parts));
}
