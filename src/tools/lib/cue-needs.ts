/** What a sentence has to hold for a cue to have a chance, read off the cue's pattern. */

import { alternatives, closing } from "./cue-groups.ts";

/**
 * What a sentence has to contain for the pattern to have a chance: for each part of the pattern a list, one of which
 * must be there. Parts that may be missing, or that say anything goes, ask for nothing.
 */
export function needed(pattern: string): string[][] {
  if (alternatives(pattern).length > 1) return [];
  const needs: string[][] = [];
  for (let i = 0; i < pattern.length; ) {
    const part = partAt(pattern, i);
    if (part.needs?.length && !/[?*]/.test(pattern[part.next] ?? "")) needs.push(part.needs);
    i = part.next;
  }
  return needs;
}

/** The part of a pattern that starts at `i`: a facet, a group, a word, or a sign that needs nothing. */
function partAt(pattern: string, i: number): { needs?: string[]; next: number } {
  const letter = pattern[i] ?? "";
  if (letter === "\\") return { next: i + 2 };
  if (letter === "{") {
    const end = pattern.indexOf("}", i);
    return { needs: facetNeeds(pattern.slice(i + 1, end)), next: end + 1 };
  }
  if (letter === "(") {
    const end = closing(pattern, i);
    return { needs: groupNeeds(pattern.slice(i + 1, end)), next: end + 1 };
  }
  letters.lastIndex = i;
  const word = letters.exec(pattern)?.[0];
  if (!word) return { next: i + 1 };
  // of "outs?" only "out" is sure
  const sure = /[?*]/.test(pattern[i + word.length] ?? "") ? word.slice(0, -1) : word;
  return { needs: sure.length > 1 ? [sure] : [], next: i + word.length + (sure === word ? 0 : 1) };
}

const letters = /[a-z_]+/y;

function groupNeeds(body: string): string[] {
  if (/^\?[!=<]/.test(body)) return [];
  const each = alternatives(body.replace(/^\?:/, "")).map((alternative) => needed(alternative)[0] ?? []);
  return each.some((any) => any.length === 0) ? [] : each.flat();
}

function facetNeeds(facet: string): string[] {
  const [name = "", value] = facet.replaceAll(" ", "_").split("=");
  const values = value?.replace(/^\((.*)\)$/, "$1");
  if (values === undefined || /[\\+*?.]/.test(values)) return [name];
  return values.split("|").map((each) => (/^[a-z_]+$/.test(each) ? `${name}=${each}` : name));
}
