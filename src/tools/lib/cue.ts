/**
 * Cues are written as short patterns over the masked sentence and compiled once.
 *   {dose}            any thing with that facet      {base=ganache}   a thing with that very facet
 *   {weight}          an amount of that kind         ..               up to five tokens between
 */
import type { Cue } from "../contract/index.ts";

const tag = (name: string) => `\\S*<(?:[^>\\s]*,)?${name.replaceAll(" ", "_").replace("=", "=(?:").concat(name.includes("=") ? ")" : "")}(?:[=,][^>\\s]*)?>`;

/** Compiles one pattern of the little language above; everything else in it is a plain regular expression. */
export function sign(pattern: string): RegExp {
  const source = pattern
    .replace(/\{([^}]+)\}/g, (_, name: string) => tag(name))
    .replace(/ \.\. /g, " (?:\\S+ ){0,5}");
  return new RegExp(`(?:^| )(?:${source})(?= |$)`);
}

/** A list of cues of one weight each. */
export function cues(...list: readonly (readonly [weight: number, ...patterns: string[]])[]): Cue[] {
  return list.flatMap(([weight, ...patterns]) => patterns.map((pattern) => ({ sign: sign(pattern), weight })));
}
