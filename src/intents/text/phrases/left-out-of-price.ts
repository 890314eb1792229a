/** "mixer was $300 years ago, leave it out": a price that is told and not to be counted, beside others that are. */
import type { Phrase } from "./phrase.ts";

const money = /[$£€] ?\d|\d(?:[.,]\d+)? ?(?:dollars?|euros?|quid|bucks|pounds)\b/;
/** What isn't counted, by name: with its price in the same breath. */
const leaves =
  /\b(?:leave (?:(?:it|that|this|them) )?out|leaving out|left out|don'?t (?:count|add|include)|do not (?:count|add|include)|ignor(?:e|ing)|forget(?: about)?|skip|without|never ?mind|not counting|excluding|excluded|not (?:counted|included|part of it|in it|in there)|(?:doesn'?t|does not|isn'?t|is not) (?:count|counted|included|part of (?:it|this)))\b/;
/** Of what was said just before. */
const leavesIt =
  /\b(?:leave (?:it|that|this|them) out|ignore (?:it|that)|(?:don'?t|do not) (?:count|add|include) (?:it|that)|(?:doesn'?t|does not|didn'?t) count|not (?:counted|included)|leave out|skip (?:it|that)|forget (?:it|that)|(?:that'?s|it'?s|is|was) (?:not (?:in|part of) (?:it|this)|paid off|long paid off|a gift))\b/;
const bare = /^(?:[$£€] ?[\d.,]+|[\d.,]+ ?[a-z]+)$/;
const priced = /\b(?:prices?|margin|markup|mark up|charge|profit|costs?)\b/;
const ordinary = /\b(?:price|margin|markup|charge) /;

interface Part {
  text: string;
  /** The sign in front of it. */
  sign: string;
}

const joint =
  /(\s*[,;:()]\s*|\.\s+|\.$| - | but | and (?=(?:leave|don|do not|ignore|forget|skip|the \w+ (?:was|cost)))| so (?=leave|ignore|don|not))/;

function partsOf(text: string): Part[] {
  const pieces = text.split(joint);
  return pieces.flatMap((piece, at) =>
    at % 2 === 0 && piece.trim() ? [{ text: piece.trim(), sign: (pieces[at - 1] ?? "").trim() }] : [],
  );
}

function counted(text: string): string {
  if (!priced.test(text)) return text;
  const parts = partsOf(text);
  const gone = new Set<number>();
  parts.forEach((part, at) => {
    if (leaves.test(part.text) && money.test(part.text) && !ordinary.test(part.text)) gone.add(at);
    if (!leavesIt.test(part.text) || money.test(part.text)) return;
    const before = parts[at - 1];
    if (!before || !money.test(before.text) || ordinary.test(before.text)) return;
    gone.add(at).add(at - 1);
    // "the mixer ($300) doesn't count": what it is of stands in front
    if (before.sign === "(" && bare.test(before.text)) gone.add(at - 2);
  });
  const rest = parts.filter((_, at) => !gone.has(at));
  if (gone.size === 0 || !rest.some((part) => money.test(part.text))) return text;
  return rest.map((part) => part.text).join(", ");
}

const marks = [
  "leave",
  "left out",
  "leaving",
  "count",
  "ignor",
  "forget",
  "skip",
  "without",
  "mind",
  "includ",
  "part of it",
  "not in it",
  "not add",
  "n't add",
  "nt add",
  "paid off",
  "excluding",
  "a gift",
];

export const leftOutOfPrice = (): readonly Phrase[] => [
  { marks, from: /^[\s\S]{12,300}$/g, to: (text) => counted(String(text)) },
];
