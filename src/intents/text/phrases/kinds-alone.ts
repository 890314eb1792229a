/** "18 rose, 12 lemon, 10 coffee, how much filling": so many of each kind, and nobody needs to say that they are macarons. */
import { kind, kindNames, ofKinds } from "./counts-of-kinds.ts";
import { isNamed, isSized, isToldOf, isWeighed, many, manySaid } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

const of = "(?: (?:of )?(?:the |a |her |my )?(?:plain )?)";
const some = `${many}${of}${kind}(?: ones)?`;
const joint = "(?:,? and |, ?| & | ?\\+ ?|,? plus |,? with )";
const parts = new RegExp(`(${many})${of}(${kind})(?![a-z])`, "g");
/** How many of something else are counted there: then those aren't macarons for sure. */
const isOther =
  /\b\d+ (?:shells|trays|bowls|boxes|parts)\b|\b(?:drops?|gels?|dye|ratio|parts|bowls?|tsp|tbsp|spoons?|as many)\b|\beach\b(?!(?: (?:flavou?r|colou?r|kind|sort|one|of (?:them|those)))*[ ?.!]*$)/;

const times: Readonly<Record<string, number>> = { half: 0.5, twice: 2, double: 2, "three times": 3, "": 1 };

const asMany = `${joint}(?:half|twice|double|three times)? ?(?:as many|the same(?: number)?|that many)(?: again)? (?:of |in )?(?:the )?${kind}(?: ones)?`;
const oneAsMany = () => new RegExp(asMany.replace("(?:half", "(half").replace(kind, `(${kind})`), "g");
const oneKind = new RegExp(`${kind}(?![a-z])`, "g");

const kindWords: ReadonlySet<string> = new Set(kindNames.flatMap((words) => words.split(" ").slice(-1)));
/** How many of its words are of a kind, at most. */
const kindsNamed = (text: string): number =>
  text.split(/[^a-z-]+/).reduce((sum, word) => sum + (kindWords.has(word) ? 1 : 0), 0);
const isElsewhere = (text: string): boolean =>
  [isNamed, isToldOf, isWeighed, isOther].some((each) => each.test(text));

const isTogether =
  /\bfilling (?:is that |do i need )?(?:all ?together|altogether|in all|in total|for the lot)[ ?.!]*$/;

/** So many of each of them; gel, grams and prices of each are of no order. */
function eachOf(said: string, list: string, number: string, whole: string): string {
  const isElse =
    [isToldOf, isWeighed].some((each) => each.test(whole)) || isOther.test(whole.replace(said, ""));
  return isElse || !isSized.test(whole)
    ? said
    : [...list.matchAll(oneKind)].map(([name]) => `${manySaid(number)} ${name}`).join(" and ");
}

export const kindsAlone = (): readonly Phrase[] => [
  // "they share one plain base, so how much filling": of all of them
  {
    marks: [" share", " same ", " one "],
    from: /(?:[,.;:-] ?| )+(?:but |and )?(?:(?:they|they'?ll|all|will|of them|these|those|both) )+(?:share|shares|get|gets|have|has|use|uses|take) (?:(?:the|a|one|same|single|and|plain|common) )+(?:base|filling)(?:,|\.|;| -)? (?:so |and )*(?=how much filling|what filling|filling)/g,
    to: ", ",
  },
  // "twenty of the rose, and half as many lemon", "24 orange, as many lemon, half as many coffee"
  {
    marks: ["as many", "the same", "that many"],
    from: new RegExp(`(?<![\\d.,/-])\\b(${many})${of}(${kind})(?: ones)?((?:${asMany})+)(?![a-z])`, "g"),
    to: (said, ...found) => {
      const [number = "", first = "", others = ""] = found;
      const all: [number, string][] = [[manySaid(number), first]];
      for (const [, factor = "", name = ""] of others.matchAll(oneAsMany())) {
        const counts = [all[0], all.at(-1)].map((each) => (each?.[0] ?? 0) * (times[factor] ?? 0));
        const [count = 0, other = 0] = counts;
        // "half as many" of the first or of the last of them
        if (count !== other || !Number.isInteger(count) || count < 1) return said;
        all.push([count, name]);
      }
      return all.map(([count, name]) => `${count} ${name}`).join(" and ");
    },
  },
  // "ten of each colour, pink, blue and white", "10 each of pink, blue and white"
  {
    marks: [" each", " every"],
    from: new RegExp(
      `(?<![\\d.,/-])\\b(${many})(?: of)? each(?: (?:colou?r|flavou?r|kind|sort))?(?:,|:| -| of| in)? (${kind}(?:(?:,? and |, ?| & )${kind})+)(?![a-z])`,
      "g",
    ),
    to: (said, ...found) => {
      const [number = "", list = ""] = found;
      return eachOf(said, list, number, found.at(-1) ?? "");
    },
  },
  // "pink, blue and white, ten of each"
  {
    marks: [" each", " every"],
    from: new RegExp(
      `(?<![a-z\\d] )\\b(${kind}(?:(?:,? and |, ?| & )${kind})+)(?:,|:| -)? (${many})(?: of)? each(?: (?:colou?r|flavou?r|kind|sort|one))?(?= ?[,.;?!]| ?$)`,
      "g",
    ),
    to: (said, ...found) => {
      const [list = "", number = ""] = found;
      return eachOf(said, list, number, found.at(-1) ?? "");
    },
  },
  {
    marks: [" and ", ",", " & ", "+", " plus ", " with "],
    only: (text) => kindsNamed(text) > 1 && isSized.test(text) && !isElsewhere(text),
    from: new RegExp(
      `(?<![\\d.,/:-])\\b(?:(${many})(?:,|:| -)+ )?${some}(?:${joint}${some}){1,5}(?![a-z\\d])`,
      "g",
    ),
    to: (said, ...found) => {
      const whole = found.at(-1) ?? "";
      const all = [...said.matchAll(parts)].map(
        ([, count = "", name = ""]) => [manySaid(count), name] as const,
      );
      // "36: 12 lime, 12 rose, 12 plain"
      const sum = all.reduce((before, [count]) => before + count, 0);
      const isOdd = found[0] !== undefined && manySaid(found[0]) !== sum;
      if (all.length < 2 || isOdd || all.some(([count]) => count < 2)) return said;
      // one filling for the lot of them
      return isTogether.test(whole) && !/batter/.test(whole) ? `${sum} macarons` : ofKinds(all, whole);
    },
  },
];
