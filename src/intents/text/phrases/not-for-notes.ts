/**
 * "don't write this down but the lime ones were a disaster": what is told so is not noted. Where nothing else is asked or
 * ordered beside it, the turn is only heard.
 */
import type { Phrase } from "./phrase.ts";

const clause = /[^,.;:!?-]+/g;
const refusal =
  /^(?:(?:and|but|so|ok|well|oh|please|pls|just|you|i|we|saying) )*(?:don'?t|do not|never|needn'?t|need not|no need to|(?:don'?t|do not) (?:need|have) to|(?:don'?t|do not) want (?:this|that|it)(?: to be)?) (?:write|note|log|save|record|jot|put|noted|written|logged|saved|recorded|keep)(?: (?:this|that|it|any of (?:this|that)|these|them))?(?: (?:down|up|in|into|on|record))?(?: (?:my|the|your) (?:notes?|log|record|book|diary))?(?: (?:please|pls|ok|okay|yet|anywhere|though|but|either))*$/;
const aside =
  /^(?:(?:and|but|so|ok|well|this is|that's|thats|its|it's) )*(?:off the record|not for (?:the|my) (?:notes?|log|record|book)|no (?:need for a )?notes?(?: needed)?(?: please)?|(?:please )?keep (?:this|that|it) out of (?:my|the) (?:notes?|log)|nothing to (?:write down|note|log))$/;
/** Something else is asked or ordered, or is a sum: then the turn is about that. */
const more =
  /\?|\b(?:how|what|whats|which|when|why|where|note|log|jot|write|save|record|show|scale|halve|double|convert|set|timer|split|flavou?r|i have|ive got|make|undo|delete|cancel)\b|\d ?(?:g|grams?|ml|oz|kg|min|minutes|%|\$)\b/;

/** "don't log this but lime was a disaster": the clause ends at the joint. */
const parted = (text: string): string[] =>
  text
    .replace(/ (?=but |because |cos |only )/g, ", ")
    .match(clause)
    ?.map((each) => each.trim())
    .filter(Boolean) ?? [];

function heard(text: string): string {
  const parts = parted(text);
  const rest = parts.filter((each) => !refusal.test(each) && !aside.test(each));
  if (rest.length === parts.length) return text;
  return more.test(rest.join(" , ")) || text.includes("?") ? text : "ok";
}

const marks = [
  "n't ",
  "dont ",
  "do not ",
  "never ",
  "no need ",
  "neednt ",
  "off the record",
  "not for the ",
  "not for my ",
  "no note",
  "out of my ",
  "nothing to ",
];

export const notForNotes = (): readonly Phrase[] => [
  { marks, from: /^[\s\S]{8,200}$/g, to: (text) => heard(String(text)) },
];
