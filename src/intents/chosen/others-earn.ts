/** "the bakery on the corner asks $38, what do they earn on it": what it costs others is nowhere told. */
import type { Reading } from "../../tools/contract/index.ts";

const earning = /\b(?:earn|earns|earning|make|makes|making|profit|margin|mark ?up|in it for)\b/;
const mine = /\b(?:i|me|my|mine|we|us|our|ours|im|ill|id|ive)\b/;
/** Whose it is: "what do they earn", "whats her margin", "profit for them". */
const theirs: readonly RegExp[] = [
  /\b(?:do|does|did|would|will|is|are) (?:they|she|he|the [a-z]+|my [a-z]+|that [a-z]+) (?:really |even |actually )?(?:earn|make|making|earning|get)\b/,
  /\b(?:her|his|their|hers|theirs|[a-z]{3,}s) (?:profit|margin|mark ?up|share|cut|earnings)\b/,
  /\b(?:profit|margin|earned|in it|left) for (?:them|her|him|the [a-z]+)\b/,
  /\b(?:profit|margin|mark ?up) (?:is|are|does|do|would|has|have) (?:they|she|he|that)\b/,
];
const hers =
  /(?:^| )(?:friends?|rivals?|deli|theirs|sisters?|cousins?|aunts?|mums?|neighbou?rs?|bakery|shop|cafe|baker|competition|supermarket|patisserie|market|lady|woman|they|she|he|somebody|someone)(?: |$)/;

/** Only one price is told: with what it costs them beside it, it could be worked out. Pure. */
export function othersEarn({ text, amounts }: Reading): boolean {
  if (!earning.test(text) || amounts.filter(({ dim }) => dim === "money").length > 1) return false;
  const asked = text.replace(/['’]/g, "").replace(/\b(?:my|our) (?=[a-z]+s? )/g, "");
  const question = asked.slice(Math.max(0, asked.search(/\b(?:what|whats|how)\b/)));
  return (
    hers.test(asked.replace(/[^a-z ]/g, " ")) &&
    !mine.test(question) &&
    theirs.some((each) => each.test(question))
  );
}
