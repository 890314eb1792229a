/** Words that are meant as they were typed, whatever they are near. */
import type { Token } from "./tokens.ts";

/**
 * "annas batch", "note: bens, pink": whose it is. A short unknown word in "s" in front of a batch or right behind "note:"
 * is somebody's name, and no flavor.
 */
function isOwner(tokens: readonly Token[], at: number): boolean {
  const [two, one, own, next] = [at - 2, at - 1, at, at + 1].map((each) => tokens[each]?.text ?? "");
  return (
    /^[a-z]{3,5}s$/.test(own ?? "") &&
    (/^(?:batch|batches|order|orders|birthday|party|wedding|shower|cake)$/.test(next ?? "") ||
      (two === "note" && one === ":"))
  );
}

/** What leads in a name that she gives: "save recipe stoep cream: ...", "keep this as my dusk shells", "call it brekkie". */
const names =
  /(?:(?:save|keep|new|store|the|a|my) (?:recipe|formula)(?: called| named| for)?|called|named|(?:call|name) (?:it|that|this|them)(?: the)?|(?:save|keep|store) (?:it|that|this|them) as(?: (?:my|our|the))?|rename (?:\S+ )+to(?: the)?)(?: (?!(?:an?|the|my)$)[a-z]+)?$/;

const isNaming = (out: readonly Token[]): boolean =>
  names.test(
    out
      .slice(-5)
      .map(({ text }) => text)
      .join(" "),
  );

/** "r96": a letter before its number is meant as it was typed. */
const standsAsTyped = ({ text }: Token, next: Token | undefined): boolean =>
  text.length === 1 && next?.kind === "number" && !next.gap;

/** Somebody's name, a name being given, one of hers: no typo. */
export const stands = (
  tokens: readonly Token[],
  at: number,
  out: readonly Token[],
  own: ReadonlySet<string>,
) => {
  const token = tokens[at];
  return (
    !token ||
    own.has(token.text) ||
    isOwner(tokens, at) ||
    standsAsTyped(token, tokens[at + 1]) ||
    isNaming(out)
  );
};
