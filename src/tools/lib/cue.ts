/**
 * Cues are written as short patterns over the masked sentence.
 *   {dose}            any thing with that facet      {base=ganache}   a thing with that very facet
 *   {weight}          an amount of that kind         ..               up to ten tokens between
 * Everything else in a pattern is a plain regular expression.
 */
import type { Cue } from "../contract/index.ts";

const tag = (name: string) => {
  const [facet, value] = name.replaceAll(" ", "_").split("=");
  return `\\S*<(?:[^>\\s]*,)?${facet}${value === undefined ? "" : `=(?:${value})`}(?:[=,][^>\\s]*)?>`;
};

/** Compiles one pattern of the little language above. */
export function sign(pattern: string): RegExp {
  const source = pattern
    .trimEnd()
    .replace(/\{([a-z][^}]*)\}/g, (_, name: string) => tag(name))
    .replace(/ \.\. /g, " (?:\\S+ ){0,10}");
  return new RegExp(`(?:^| )(?:${source})(?= |$)`);
}

/** A list of cues of one weight each. */
export function cues(...list: readonly (readonly [weight: number, ...patterns: string[]])[]): Cue[] {
  return list.flatMap(([weight, ...patterns]) => patterns.map((pattern) => ({ pattern, weight })));
}
