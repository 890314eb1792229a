/** Another bake or good, named as what a question is about: "24 cupcakes for then?", "640 g of banana muffin batter". */
import {
  besideDishes,
  doughs,
  otherBakes,
  otherDishes,
  otherGoods,
  riskyDishes,
} from "../../../data/words/other-dishes.ts";
import type { Reading } from "../../tools/contract/index.ts";

interface Token {
  word: string;
  facets: string;
}

/** Calculators whose rules are of macarons alone. What only counts, keeps time or adds up is good for any dough. */
const ours: ReadonlySet<string> = new Set(
  "dose fill shells scale day label keep cost buy buttercream".split(" "),
);
/** These weigh or count: a mix without a weight is none that they could go by. */
const weighing: ReadonlySet<string> = new Set("fill shells scale day buy buttercream".split(" "));

const dish = new RegExp(`^(?:${otherDishes}|${otherBakes}|${otherGoods})$`);
const goods = new RegExp(`^(?:${otherGoods})$`);
const dough = new RegExp(`^(?:${doughs})$`);
const mixWord = /^(?:batter|dough|doughs|mix|mixture|base|wax|frosting|icing|filling|recipe)$/;
const article = /^(?:the|a|an|my|our|your|some|these|those|his|her|their|this|that|of|each|every|another)$/;
const amount = /<(?:number|weight|volume|length|factor)(?:,fraction)?>$/;

const tokensOf = (mask: string): Token[] =>
  mask.split(" ").map((each) => {
    const at = each.indexOf("<");
    return at < 0
      ? { word: each, facets: "" }
      : { word: each.slice(0, at).replaceAll("_", " "), facets: each.slice(at) };
  });

/** What a dish is called, and where it stands. */
interface Found {
  name: string;
  from: number;
  to: number;
}

/** Every dish that is spoken of as a thing, not as a taste or for its looks. */
function dishes(tokens: readonly Token[]): Found[] {
  return tokens.flatMap((token, at): Found[] => {
    const last = token.word.split(" ").at(-1) ?? "";
    const two = `${token.word} ${tokens[at + 1]?.word ?? ""}`;
    const next = tokens[at + 1];
    const isMix = mixWord.test(next?.word ?? "");
    const isTaste = /taste=|dose=/.test(token.facets);
    const isPair = dish.test(two) && !dish.test(token.word);
    const isDish =
      (token.facets === "" && (dish.test(token.word) || (isMix && dough.test(token.word)))) ||
      isPair ||
      // "a birthday cake" is one, "birthday cake macarons" are macarons
      (isTaste && dish.test(last) && last !== token.word && (isMix || isBare(tokens, at)));
    if (!isDish || isLikened(tokens, at) || isOfOthers(tokens, at)) return [];
    const end = isPair ? at + 1 : at;
    const behind = tokens[end + 1];
    if (behind && (besideDishes.has(behind.word) || /count=(?:macarons|shells|batches)/.test(behind.facets)))
      return [];
    // "carrot cake buttercream": a taste; a mix for shells is a dough here
    if (behind && /<(?:[^>]*,)?base=(?!batter|filling)/.test(behind.facets) && !goods.test(token.word))
      return [];
    const from = startOf(tokens, at);
    if (riskyDishes.has(token.word) && !isMix && !isThing(tokens, at)) return [];
    const to = isMix ? end + 1 : end;
    const name = tokens
      .slice(from, to + 1)
      .map(({ word }) => word)
      .join(" ");
    return [{ name, from, to }];
  });
}

/** Nothing follows that a taste would be of. */
const isBare = (tokens: readonly Token[], at: number): boolean =>
  /^(?:a|an|the|my|our|her|his|of|this|\d.*)$/.test(tokens[at - 1]?.word ?? "") &&
  !/base=|count=|dose=|^<batch/.test(tokens[at + 1]?.facets ?? "") &&
  !/^(?:flavou?r\S*|ones?|macs?|batch|filling|buttercream|ganache)$/.test(tokens[at + 1]?.word ?? "");

/** "flat like biscuits", "tastes of soap", "left over from a cake". */
const isLikened = (tokens: readonly Token[], at: number): boolean =>
  /(?:^| )(?:like|as|than|(?:tast|smell|remind)\w* (?:\w+ )?(?:of|like)|(?:left ?over|leftover|over|left|bits|it|this|that|some|\w+) from|no|not|without|instead of|after|before|during|next to|beside|near|while|with) (?:(?:a|an|the|my|our|her|his|some|wet|old|that|any|all) )*(?:\w+ )?$/.test(
    ` ${tokens
      .slice(Math.max(0, at - 6), at)
      .map(({ word }) => word)
      .join(" ")} `,
  );

/** "for her cake", "a cake too": somebody else's, or one thing more that is baked. */
const isOfOthers = (tokens: readonly Token[], at: number): boolean =>
  tokens.slice(Math.max(0, at - 3), at).some(({ word }) => /^(?:his|her|their)$/.test(word)) ||
  /^(?:too|also|as)$/.test(tokens[at + 1]?.word ?? "");

/** A word that is no dish everywhere stands for one behind an article, a number or "for". */
const isThing = (tokens: readonly Token[], at: number): boolean =>
  tokens
    .slice(Math.max(0, at - 2), at)
    .some(
      ({ word, facets }) => amount.test(facets) || article.test(word) || /^(?:for|make|bake)$/.test(word),
    );

/** "banana muffin", "lemon drizzle cake": what it is called begins behind the article. */
function startOf(tokens: readonly Token[], at: number): number {
  let from = at;
  while (from > 0 && at - from < 2) {
    const before = tokens[from - 1] as Token;
    const named = before.facets === "" ? kinds.has(before.word) : /taste=|color=/.test(before.facets);
    if (!named) break;
    from -= 1;
  }
  return from;
}
const kinds = new Set(
  "birthday wedding christmas easter fruit bundt layer drizzle sponge loaf swiss victoria pound chiffon angel banana carrot chocolate lemon coffee ginger cinnamon soy beeswax scented wholemeal rye white brown sourdough puff shortcrust blueberry cheese apple meat mince custard cream jam".split(
    " ",
  ),
);

/** A number, a weight or a size is said of it: "24 cupcakes", "a 900 g loaf", "2 litres of ice cream". */
const isSized = (tokens: readonly Token[], { from }: Found): boolean => {
  for (let at = from - 1; at >= Math.max(0, from - 4); at--) {
    const token = tokens[at] as Token;
    if (amount.test(token.facets)) return true;
    if (token.facets !== "" || /^(?:for|in|into|and|to|with|,)$/.test(token.word)) return false;
  }
  return false;
};

/** "how many cupcakes do i get", "how much muffin batter". */
const isCounted = (tokens: readonly Token[], { from }: Found): boolean =>
  /(?:how|hw|number|many) (?:many|much|of)(?: \w+)?(?: of)?(?: the)? $/.test(
    `${tokens
      .slice(Math.max(0, from - 4), from)
      .map(({ word }) => word)
      .join(" ")} `,
  ) && !/base=|count=|dose=|ingredient=/.test(tokens[from - 1]?.facets ?? "");

/** Something of ours is what it is about, whatever else is named. */
function isOurs(tokens: readonly Token[], found: readonly Found[], tool: string | undefined): boolean {
  const outside = tokens.map((token, at) => ({
    ...token,
    inside: found.some(({ from, to }) => at >= from && at <= to),
  }));
  const free = outside.filter(({ inside }) => !inside);
  if (free.some(({ facets }) => /count=(?:macarons|shells)/.test(facets))) return true;
  const mixes = free.filter(({ facets }) => /<(?:[^>]*,)?base=/.test(facets));
  const isMix = mixes.some(({ facets }) => !/base=(?:batter|filling)/.test(facets));
  if (tool === undefined || !weighing.has(tool)) {
    if (isMix) return true;
  }
  // a weight that is no dish's is of what is in the bowl
  const isWeighed = free.some(({ facets }) => /<(?:weight|volume)/.test(facets));
  const ofDish = found.some((each) => isSized(tokens, each));
  const ingredients = free.filter(({ facets }) => /ingredient=|chocolate=/.test(facets)).length;
  // "is 200 g of batter enough": a mix and its weight; two ingredients with weights are a recipe of her own
  return isWeighed && ((mixes.length > 0 && !ofDish) || (isMix && isWeighed) || ingredients > 1);
}

const isWeight = ({ facets }: Token): boolean => /<(?:weight|volume)/.test(facets);

/**
 * "50 g toasted waffle, 30 g butter", "waffle: 50 g": on a label's list it is an ingredient of ours, its weight before
 * it or behind. "24 cupcakes: 100 g sugar" is a list of theirs.
 */
const isListed = (tokens: readonly Token[], { from, to }: Found): boolean => {
  const stops = /^(?:for|in|into|and|to|with|plus|,|;)$/;
  const before = tokens
    .slice(Math.max(0, from - 4), from)
    .findLast(({ word, facets }) => facets !== "" || stops.test(word));
  const at = tokens.findIndex((token, at) => at > to && (isWeight(token) || stops.test(token.word)));
  const behind = tokens[at];
  const isItsOwn = at <= to + 3 && (at + 1 >= tokens.length || stops.test(tokens[at + 1]?.word ?? ""));
  return (
    tokens.some(
      ({ facets }, other) => (other < from || other > to) && /(?:ingredient|chocolate)=/.test(facets),
    ) &&
    ((before !== undefined && isWeight(before)) || (behind !== undefined && isWeight(behind) && isItsOwn))
  );
};

/** Where a turn says first what is made: "im making cupcakes. how much filling for 24". */
const scene = new RegExp(
  `\\b(?:i'?m|i am|we'?re|we are|today it'?s|it'?s|they'?re) (?:making|baking|doing|for|going to (?:make|bake)|gonna (?:make|bake))? ?(?:(?:a|an|some|the|my|our|\\d+) )?(?:[a-z]+ )?((?:${otherDishes}|${otherBakes}|${otherGoods}))\\b(?! (?:macarons?|shells?|flavou?r|buttercream|ganache|${[...besideDishes].join("|")}))`,
  "i",
);

const mixSaid = new RegExp(
  `\\b(${otherDishes}|${otherBakes}|${otherGoods}) (?:batter|dough|mix|mixture)\\b`,
  "i",
);

/** The dish that a turn says is made. Pure. */
export const saysWhatIsMade = (said: string): string | undefined =>
  (scene.exec(said) ?? mixSaid.exec(said))?.[1]?.toLowerCase();

/**
 * The dish that a question is about, by its name; undefined where none is, or where it is only told beside it. Pure.
 * @param tool that would answer it
 */
export function otherDish(reading: Reading, tool: string | undefined): string | undefined {
  if (tool !== undefined && !ours.has(tool)) return undefined;
  // what she saved is hers, whatever it is called
  if (reading.things.some((each) => each.formula) || reading.amounts.some(({ dim }) => dim === "money"))
    return undefined;
  const tokens = tokensOf(reading.mask);
  const found = dishes(tokens).filter((each) => tool !== "label" || !isListed(tokens, each));
  const [first] = found;
  if (first) {
    const counted = found.find((each) => isCounted(tokens, each));
    const ours = isOurs(tokens, found, tool);
    const isCountedAlone = counted && !tokens.some(({ facets }) => /count=macarons/.test(facets));
    return isCountedAlone ? counted.name : ours ? undefined : first.name;
  }
  if (tool === undefined || !weighing.has(tool)) return undefined;
  const said = saysWhatIsMade(reading.said);
  const isOwn = /\b(?:mac(?:aron|aroon)?s?|shells?)\b/i.test(reading.said) || isOurs(tokens, [], tool);
  return isOwn ? undefined : said;
}
