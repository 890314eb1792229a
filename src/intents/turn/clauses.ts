/** Splits a turn into its questions and orders. A part that asks nothing belongs to the one that does. */
import type { Tool } from "../../tools/contract/index.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { withoutAsides } from "./asides.ts";
import { askedThenNoted } from "./asked-then-noted.ts";
import { withoutCourtesy } from "./courtesy.ts";
import { cutWithin } from "./cut.ts";
import { orderedBehindNote } from "./note-ended.ts";
import { pairedKinds } from "./paired-kinds.ts";
import { pairedSizes } from "./paired-sizes.ts";
import { asks, carriesAmount, type Ear, earFor, longest, type Part } from "./part.ts";
import { toldInParts } from "./parts-told.ts";
import { join } from "./rejoin.ts";
import { sharedCount, sharedEnd, sharedHour } from "./shared-end.ts";
import { timerAtEnd, timerOrdered } from "./timer-ordered.ts";
import { beginsNote, endsNote, notesAnother, resizesSaved, wholeTurn } from "./whole-turn.ts";

/** Splits items into questions. Linear in their number but for the scoring of each candidate. */
export function clauses(all: readonly Item[], tools: readonly Tool[]): Part[] {
  const ear = earFor(tools);
  const asked = fromNote(withoutCourtesy(all, ear), ear);
  const noted = askedThenNoted(asked, ear);
  if (noted) return [...clauses(noted.asked, tools), [...noted.order]];
  const whole = wholeTurn(ear.mask(asked));
  if (whole) return whole === "note" ? splitNote(asked, ear) : splitTimer(withoutStops(asked, ear), ear);
  const items = withoutAsides(asked, ear);
  const cuts = cutSentences(items).flatMap((sentence) => {
    const bases = pairedBases(sentence);
    const kinds = bases.length > 1 ? bases : pairedKinds(sentence, ear);
    const pair = kinds.length > 1 ? kinds : pairedSizes(sentence, ear);
    const cut = pair.flatMap((each) => cutWithin(each, ear));
    return pair.length > 1 ? cut.map((each) => ({ ...each, whole: true })) : cut;
  });
  // signs alone are a question too, one that nobody understands
  return cuts.length === 0 ? [items] : sharedHour(sharedCount(sharedEnd(join(cuts, ear), ear), ear), ear);
}

/** What is told in little sentences reads as if commas stood between them: the same words, the same question. */
const withoutStops = (items: Part, ear: Ear): Part =>
  toldInParts(ear.mask(items))
    ? items.map((item, at) =>
        item.is === "sign" && /^[.;]$/.test(item.text) && at < items.length - 1
          ? { ...item, text: "," }
          : item,
      )
    : items;

/** "I never wrote up last week's, so here goes. Note for March 7: ...": what is told before a note is none of it. */
function fromNote(items: Part, ear: Ear): Part {
  if (items.length > longest) return items;
  const found = items.findIndex(
    (item, i) =>
      i > 1 &&
      item.is === "sign" &&
      /^[.!;]$/.test(item.text) &&
      i < items.length - 3 &&
      beginsNote(ear.mask(items.slice(i + 1))),
  );
  const at = found < 0 ? spokenNote(items, ear) : found;
  const lead = items.slice(0, found < 0 ? at + 1 : at);
  if (at < 0 || carriesAmount(lead) || wholeTurn(ear.mask(lead))) return items;
  if (asks(lead, ear) && (ear.claimed(lead) || lead.some((item) => item.is === "sign" && item.text === "?")))
    return items;
  // "baked these yesterday. note: ...": the day is the note's, where that says none
  const isDay = (item: Item) => item.is === "when";
  const isOther = (item: Item) => item.is === "when" && item.when.text !== "today";
  if (lead.some(isOther) && !items.slice(at).some(isDay)) return items;
  const told = lead.some(
    (item) =>
      item.is === "thing" &&
      Boolean(item.thing.taste ?? item.thing.symptom ?? item.thing.base ?? item.thing.ingredient),
  );
  return told ? items : items.slice(at + 1);
}

/** Nothing that is told before it and ends in a note: "can you note that", "i want to note the ..." is one order. */
const leadsToNote =
  /(?:^| )(?:a|an|the|my|this|another|one|to|can|could|would|will|you|please|of|first|last|quick|write|make|take|add|put|save|and) $/;
const isToldOf =
  /^(?:(?:so|ok|right|and|oh|well|now|thats|yeah|yes|hm|good|,) )*(?:i|ive|im|we|weve|they|theyre|theyve|these|those|its|it|thats|that|the|just|all|\S*<when>) \S+/;

/** "they're out of the oven note that the rose ones cracked": dictated, where the word before ends what is told. */
function spokenNote(items: Part, ear: Ear): number {
  for (let i = 3; i < items.length - 2; i++) {
    if (!["note", "log"].includes(wordOf(items[i]))) continue;
    const lead = items.slice(0, i);
    const [before, mask] = [items[i - 1], `${ear.mask(lead)} `];
    const isComma = before?.is === "sign" && before.text === ",";
    const ends = ["so", "and"].includes(wordOf(before)) ? items.slice(0, i - 1) : lead;
    const told = `${ear.mask(ends)} `;
    if (!isComma && leadsToNote.test(told)) continue;
    if (!isToldOf.test(mask) || !beginsNote(ear.mask(items.slice(i)))) continue;
    return i - 1;
  }
  return -1;
}

/** A note keeps everything behind it, but "and set a timer" ends it. */
function splitNote(items: Part, ear: Ear): Part[] {
  for (let i = 1; i < items.length; i++) {
    const item = items[i] as Item;
    const joint =
      (item.is === "word" && ["and", "then", "also"].includes(item.text)) ||
      (item.is === "sign" && /[.;]/.test(item.text));
    const rest = items.slice(i + 1);
    const comma = item.is === "sign" && item.text === ",";
    if ((comma || joint) && resizesSaved(ear.mask(items.slice(0, i)), ear.mask(rest)))
      return [items.slice(0, i), rest];
    if (joint && notesAnother(ear.mask(items.slice(0, i)), ear.mask(rest)))
      return [items.slice(0, i), ...splitNote(rest, ear)];
    const ends = (comma && endsNote(ear.mask(rest), "comma")) || (joint && endsNote(ear.mask(rest), "word"));
    // "they have to come out in 5 minutes so set a timer"
    const dash =
      (item.is === "sign" && /^[-&+]$/.test(item.text)) || (item.is === "word" && item.text === "so");
    // "note pear batch leaked. timer: 12 min"
    if (item.is === "sign" && /[.;]/.test(item.text) && /^timer : \S*<time[^ ]*$/.test(ear.mask(rest)))
      return [items.slice(0, i), rest];
    if (ends || ((comma || joint || dash) && orderedBehindNote(rest, ear))) {
      // ", and whats 500 g in oz": the "and" is no part of what is asked
      const isLed = comma && /^(?:and|then|also|plus)$/.test(wordOf(rest[0])) && rest.length > 1;
      return [items.slice(0, i), ...join(cutWithin(isLed ? rest.slice(1) : rest, ear), ear)];
    }
  }
  return splitTimer(items, ear);
}

/** "made plum today, spread flat, save that. then 20 min timer", "... spread flat 20 min timer": no part of the note. */
function splitTimer(items: Part, ear: Ear): Part[] {
  for (let i = Math.max(2, items.length - 16); i < items.length; i++) {
    const item = items[i] as Item;
    const isJoint =
      (item.is === "word" && ["and", "then", "also", "plus"].includes(item.text)) ||
      (item.is === "sign" && /^[.;,&+-]$/.test(item.text));
    const rest = items.slice(isJoint ? i + 1 : i);
    if (isJoint && timerOrdered(ear.mask(rest))) return [items.slice(0, i), rest];
    const isTold =
      item.is === "amount" && !/^(?:a|an|the|my|by|with|of|on|after|used|for|at)$/.test(wordOf(items[i - 1]));
    if (!isJoint && isTold && timerAtEnd(ear.mask(rest))) return [items.slice(0, i), rest];
  }
  return [items];
}

/** Hard ends: ? ! ; and a full stop. */
function cutSentences(items: Part): Part[] {
  const out: Item[][] = [[]];
  for (const item of items) {
    const end = item.is === "sign" && /^[?!;.]$/.test(item.text);
    if (!end) out.at(-1)?.push(item);
    else if (out.at(-1)?.length) {
      if (item.text === "?") out.at(-1)?.push(item);
      out.push([]);
    }
  }
  return out.filter((part) => part.some((item) => item.is !== "sign"));
}

/** "weight of batter, and weight of filling". */
const measures = new Set(["and", "the", "weight", "amount", "quantity", "grams", "of"]);

/** "batter and filling for 24 macarons" asks the same of two mixes: the rest of the sentence belongs to each. */
function pairedBases(sentence: Part): Part[] {
  const isMix = (item: Item | undefined, base: string) => item?.is === "thing" && item.thing.base === base;
  for (const [first, second] of [
    ["batter", "filling"],
    ["filling", "batter"],
  ] as const) {
    const at = sentence.findIndex((item) => isMix(item, first));
    // "batter weight, and the filling weight"
    let joined = at + 1;
    while (measures.has(wordOf(sentence[joined])) && wordOf(sentence[joined]) !== "and") joined += 1;
    const next = sentence[joined];
    const joint = next?.is === "sign" && next.text === "," ? sentence[joined + 1] : next;
    const end = sentence.findIndex((item, i) => i > joined && i <= joined + 5 && isMix(item, second));
    const plain = sentence
      .slice(joined + 1, Math.max(end, 0))
      .every(
        (item) =>
          (item.is === "word" &&
            (end <= joined + 3 ? !/^(?:how|what|whats|which)$/.test(item.text) : measures.has(item.text))) ||
          (item.is === "sign" && item.text === ","),
      );
    if (at < 0 || end < 0 || !plain || !(joint?.is === "word" && joint.text === "and")) continue;
    return [
      [...sentence.slice(0, at + 1), ...sentence.slice(end + 1)],
      [...sentence.slice(0, at), ...sentence.slice(end)],
    ];
  }
  return [sentence];
}
