/** What the classifier sees of a sentence: stems and facets of the mask, alone and in pairs, no numbers. */
import porter from "natural/lib/natural/stemmers/porter_stemmer.js";

/** Words that say nothing about which calculator is meant. */
const silent = new Set([
  "a",
  "an",
  "the",
  "and",
  "of",
  "to",
  "is",
  "it",
  "my",
  "i",
  "so",
  "please",
  "pls",
  "ok",
]);

/**
 * Tokens of a masked sentence. "230_g<weight>" is `<weight>`, "buttercream<base=buttercream>" is `<base=buttercream>`;
 * tastes and colors only count as such, since any may be named. `last` is the calculator of the turn before: "and for
 * 300?" says little without it.
 */
export function featuresOf(mask: string, last?: string): string[] {
  const tokens = mask.split(" ").flatMap((token): string[] => {
    const tag = /<([^>]*)>$/.exec(token)?.[1];
    if (tag === undefined) return /^[a-z]+$/.test(token) && !silent.has(token) ? [porter.stem(token)] : [];
    const facet = tag.split(",")[0] ?? "";
    const [name = "", value] = facet.split("=");
    return value === undefined || ["taste", "color", "dose"].includes(name) ? [`<${name}>`] : [`<${facet}>`];
  });
  if (tokens.length === 0) return [];
  const pairs = tokens.slice(1).map((token, at) => `${tokens[at]} ${token}`);
  const length = Math.min(6, Math.floor(mask.split(" ").length / 3));
  return [...new Set([...tokens, ...pairs]), `first ${tokens[0]}`, `last ${last ?? ""}`, `length ${length}`];
}
