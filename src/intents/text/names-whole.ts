/** Names that hold a number: "winter 7" is a recipe, and no seven of anything. */
import { type Token, tokenise } from "./tokens.ts";

/** Behind it a number is an amount, whatever stands before. */
const measure = /^(?:g|gr|grams?|kg|oz|ounces?|ml|cm|mm|mins?|minutes?|c|f|macarons?|shells?)$/;

/** The tokens with the numbers of such names as plain words. Pure. */
export function withNamesWhole(tokens: readonly Token[], names: readonly string[]): Token[] {
  const numbered = names
    .filter((name) => /\d/.test(name))
    .map((name) => tokenise(name.toLowerCase()).map(({ text }) => text))
    .filter((words) => words.length > 1);
  const out = [...tokens];
  for (const words of numbered)
    for (let at = 0; at + words.length <= out.length; at++) {
      if (!words.every((word, i) => out[at + i]?.text === word)) continue;
      const behind = out[at + words.length];
      if (out[at + words.length - 1]?.kind === "number" && measure.test(behind?.text ?? "")) continue;
      words.forEach((_, i) => {
        const token = out[at + i];
        if (token?.kind === "number")
          out[at + i] = { kind: "word", text: token.text, gap: token.gap, at: token.at };
      });
    }
  return out;
}
