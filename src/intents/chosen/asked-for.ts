/**
 * What a question asks the amount of: "how much cream for 200 g buttercream", "how long", "what temperature". An answer
 * that has no figure of it answers another question.
 */
import type { Figure, Reading } from "../../tools/contract/index.ts";

/** The thing as it was said, and names or units of which a figure has to have one. */
export interface Asked {
  said: string;
  names?: readonly string[];
  units?: readonly string[];
  /** It is a flavor or a color: of a dose, whichever it is, that is the figure. */
  dosed?: boolean;
  /** It is an ingredient of another kind than flavors and colors. */
  isIngredient?: boolean;
  /** It was said so that only a dose could answer it. */
  onlyDose?: boolean;
}

/** Calculators whose figures are named by what they weigh or count. */
const naming = new Set(["dose", "ganache", "buttercream", "scale", "fill", "shells"]);

const fillers =
  "(?:(?:of|the|my|more|extra|plain|additional|warm|cold|soft|unsalted|salted|g|grams|(?:g|grams)<unit=g>) )*";
// "thats how much ganache i have" tells
const amountOf = new RegExp(
  `(?:^| )(?<!(?:thats|that is|this is) )(?:how|hw) (?:much|many) ${fillers}(\\S+)`,
  "g",
);
/** "grams of rum?" */
const gramsOf = /(?:^| )grams(?:<\S*>)? of (\S+<[^>]*(?:dose|taste)=[^>]*>)/;
/** "i want strawberry flavor in it" */
const wish =
  /(?:^| )(?:i|we) (?:want|need|would like) (?:some )?(\S+<[^>]*(?:dose|taste)=[^>]*>) (?:in|into) (?:it|that|all|the)(?: |$)/;
const opening = new RegExp(
  `^(?:(?:please|pls|ok|and|so|now|hi|hey) )*${fillers}(\\S+) (?:for|in|into|to) (?:the |my )?\\S+<weight>`,
);

/** The words that ask for a quantity of their own, whatever the thing. */
const wanted: readonly [mark: string, RegExp, readonly string[]][] = [
  ["how long", /(?:^| )how long\b/, ["min", "h", "d", "months", "s"]],
  [" temp", /(?:^| )(?:what|which) temp(?:erature)?\b/, ["°C", "°F", "gas mark"]],
  ["percent", /(?:^| )(?:what|which) (?:percentage|percent)\b/, ["%"]],
  [" share", /(?:^| )(?:what|which) share\b/, ["%"]],
  [" g", /(?:^| )how (?:many|much) (?:grams|g)(?:<\S*>)?(?: (?!of )|$)/, ["g"]],
];

/** Undefined where nothing sure is asked for. Pure. */
export function askedFor({ mask, unknown }: Reading): Asked | undefined {
  // a pattern is compiled only where its mark stands in the sentence
  const units = wanted.find(([mark, said]) => mask.includes(mark) && said.test(mask));
  if (units) return { said: units[1].exec(mask)?.[0].trim() ?? "", units: units[2] };
  const [only, ...others] = /\bh(?:o?w) m/.test(mask) ? [...mask.matchAll(amountOf)] : [];
  if (others.length > 0) return undefined;
  // "how many grams of sprinkles go in": a plain word, of which no table has a row
  const plain =
    /(?:^| )how (?:many|much) (?:grams|g)(?:<unit=g>)? of ([a-z]{4,}) (?:go|goes|do|should|can|in|into|for|to)(?: |$)/.exec(
      mask,
    )?.[1];
  if (plain && !generic.has(plain))
    return { said: plain, names: [plain], isIngredient: true, onlyDose: true };
  const start = opening.exec(mask)?.[1];
  const token =
    only?.[1] ??
    gramsOf.exec(mask)?.[1] ??
    wish.exec(mask)?.[1] ??
    // "squeezed in 9 g": what was done, and no ingredient
    (start?.includes("<") ? start : undefined);
  if (!token) return stranger(mask);
  // "parts for 450 g of buttercream": what it is made of, and no bowls
  if (/^parts<count=bowls>$/.test(token)) return undefined;
  // "how much shells mix": what they are piped from
  if (
    /count=/.test(token) &&
    / (?:mix|mixture|batter|recipe|formula)\b/.test(mask.slice(mask.indexOf(token)))
  )
    return undefined;
  // "how much white choc ganache": the ganache
  const next = /chocolate=|ingredient=milk/.test(token) ? mask.slice(mask.indexOf(token) + token.length) : "";
  const mix = /^ (\S+<base=[^>]*>)/.exec(next)?.[1];
  const [word = "", facets = ""] = (mix ?? token).split(/[<>]/);
  const said = word.replaceAll("_", " ");
  if (!facets)
    return unknown.includes(word)
      ? { said, names: [word] }
      : only === undefined || generic.has(word)
        ? stranger(mask)
        : undefined;
  const names = namesOf(facets);
  // "almond" is the flour or the flavor
  if (/(?:^|,)ingredient=almond_flour/.test(facets) && !/(?:^|,)dose=/.test(facets))
    return { said, names: ["almond", "flavor"] };
  // "how much caramel for 30 macarons as center" is a filling; caramel for a bowl is a flavor
  const fills = /<count=macarons/.test(mask) && !/(?:^|,)dose=/.test(facets);
  const dosed = !fills && /(?:^|,)(?:dose|taste)=/.test(facets);
  if (fills && /(?:^|,)taste=/.test(facets)) return undefined;
  const isIngredient = !dosed && /(?:^|,)ingredient=/.test(facets) && !/(?:^|,)(?:base|count)=/.test(facets);
  return names.length > 0 ? { said, names, dosed, isIngredient } : undefined;
}

/**
 * "xanthan gum for 300 g buttercream": a thing that no table has, in plain words before the bowl and nothing else said.
 * Only a dose could be meant, and there is none.
 */
function stranger(mask: string): Asked | undefined {
  const [, said = ""] =
    /^((?:[a-z]+ )?[a-z]{3,}) for (?:the |my )?\S+<weight> (?:of )?\S*<base=\S+(?: \?)?$/.exec(mask) ?? [];
  const words = said.split(" ");
  return said !== "" && !words.some((word) => generic.has(word))
    ? { said, names: [said], isIngredient: true, onlyDose: true }
    : undefined;
}

/** Words that may stand there without naming anything. */
const generic = new Set(
  "its it is thats theyre theres this that these those them each both everything how much many what whats amount amounts weight weights dose doses something stuff range same usual and so ok or but now then only just also again what about enough good some any more little bit need want have got make making use using give dosage quantity right correct max maximum minimum sums numbers figures outs weigh recipe recipes formula ingredients quantities proportions ratio ratios breakdown list shopping everything total parts portions timer plan label price cost batch split water batter".split(
    " ",
  ),
);

/** The words that figures may have for a thing, from its facets in the mask. */
function namesOf(facets: string): string[] {
  const of = (facet: string) => new RegExp(`(?:^|,)${facet}=([^,]+)`).exec(facets)?.[1]?.replaceAll("_", " ");
  const [base, count, ingredient] = [of("base"), of("count"), of("ingredient")];
  if (of("chocolate")) return ["chocolate"];
  if (of("dose") || of("taste"))
    return [of("dose"), of("taste"), "flavor", "color"].filter((each) => each !== undefined);
  if (base) return [base, "base", "filling", "total", "ring", "center", "batter"];
  if (count) return [count];
  if (ingredient === "egg") return ["egg", "whites"];
  return ingredient ? [ingredient] : [];
}

/** Which calculators of those that weigh have figures of flavors, and of whole macarons. */
const ofFlavors = new Set(["dose"]);
const ofPieces = new Set(["shells", "fill", "scale"]);
const counts = /^(?:macarons|shells|trays)$/;

/**
 * How far a calculator is from what is asked for, in points of its cues: "150 g chocolate, 120 g cream; how much rum"
 * weighs a ganache, but asks for no part of it. 0 where it may have the figure, or where nothing sure is asked for.
 */
export function against(tool: string, asked: Asked | undefined): number {
  // "xanthan gum for 300 g buttercream" builds no buttercream
  if (asked?.onlyDose) return ["buttercream", "ganache", "fill", "scale"].includes(tool) ? -6 : 0;
  if (!asked || asked.units || !naming.has(tool)) return 0;
  const wrong = asked.dosed
    ? !ofFlavors.has(tool)
    : (asked.names ?? []).every((name) => counts.test(name)) && !ofPieces.has(tool);
  return wrong ? -6 : 0;
}

/** True where an answer's figures hold what was asked for, or where that can't be told. Pure. */
export function holds(tool: string, asked: Asked | undefined, figures: readonly Figure[] = []): boolean {
  if (!asked || figures.length === 0) return true;
  if (asked.units && ["recall", "note"].includes(tool)) return true;
  if (asked.units) return figures.some(({ unit }) => asked.units?.includes(unit));
  if (asked.onlyDose && tool !== "dose") return true;
  if (!naming.has(tool) || (tool === "dose" && asked.dosed)) return true;
  const words = (asked.names ?? []).flatMap((name) => name.split(" ")).map((word) => word.replace(/s$/, ""));
  // what is stirred into a mix is named by how much of it goes in
  return figures.some(({ name }) => name.startsWith("at ") || words.some((word) => name.includes(word)));
}
