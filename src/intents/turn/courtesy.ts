/** "hi, ...", "please ...", "..., thanks": taken off a turn that asks something, so that it is no question of its own. */

import { nodWords, praiseWords, thanksWords } from "../../../data/words/small-talk.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { exclamation } from "./exclaimed.ts";
import { carriesAmount, type Ear, type Part } from "./part.ts";
import { wholeTurn } from "./whole-turn.ts";

const opening = new Set(
  "hi hello hey hiya please pls plz phew whew yay gosh blimey crikey goodness".split(" "),
);
const closing = new Set([...thanksWords, "thank"]);
/** "thank you": by itself it is no thanks, as in "what can i ask you". */
const thanksYou = (items: Part, at: number) =>
  wordOf(items[at]) === "you" && wordOf(items[at - 1]) === "thank";
/** Behind a question they are nobody's flavor: "how much, love". */
const dears = new Set([
  "love",
  "luv",
  "hun",
  "hon",
  "hunny",
  "dear",
  "darling",
  "duck",
  "pet",
  "mate",
  "babe",
  "sweetie",
  "chuck",
]);
/** With nothing but these behind it, a greeting is all there is. */
const small = new Set(
  "there again all everyone good morning afternoon evening how are you whats up thanks thank hi hello hey".split(
    " ",
  ),
);

/** The turn without a greeting or a "please" at its start and thanks at its end; all of it where that is all. */
export function withoutCourtesy(items: Part, ear: Ear): Part {
  let from = 0;
  while (opening.has(wordOf(items[from])) || (from > 0 && items[from]?.is === "sign" && isBreak(items[from])))
    from += 1;
  from = behindThanks(items, from, ear);
  from += exclamation(items.slice(from), ear);
  from = behindNod(items, from, ear);
  // "help!! 20 g violet went into 250 g", "help i put 11 g in it": what is to be helped with follows
  const told = items[from + 1];
  const isTold = isBreak(told) || told?.is === "amount" || /^(?:i|ive|we|weve)$/.test(wordOf(told));
  if (wordOf(items[from]) === "help" && isTold && carriesAmount(items.slice(from)))
    from += items.slice(from + 1).findIndex((item) => !isBreak(item)) + 1;
  const asked = from + leadIn(items.slice(from));
  if (asked > from && ear.claimed(items.slice(asked))) from = asked;
  const rest = items.slice(from);
  const greets = rest.every(
    (item) => item.is === "sign" || small.has(item.is === "when" ? item.when.text : wordOf(item)),
  );
  const opened = greets ? items : rest;
  let to = opened.length;
  while (closing.has(wordOf(opened[to - 1])) || thanksYou(opened, to - 1) || isBreak(opened[to - 1])) to -= 1;
  if (to > 2 && dears.has(wordOf(opened[to - 1]))) {
    const asked = opened.slice(0, to - 1);
    return ear.claimed(asked) || carriesAmount(asked) ? asked : opened;
  }
  const thanked = opened.slice(to).some((item) => closing.has(wordOf(item)));
  const before = opened.slice(0, to);
  return thanked && before.length > 0 && (ear.claimed(before) || carriesAmount(before)) ? before : opened;
}

/** "great. timer 16 minutes", "ok lovely, and for 300 g?", "anyway how much is left": heard, and on to the next. */
const nods = new Set([
  ...nodWords,
  ...praiseWords,
  ..."then well got it very thats that is sounds looks".split(" "),
]);
/** "anyway, back to the lemon one" goes back by its own means. */
const questionWords = new Set(
  "how what whats which when who why where is are can do does will would".split(" "),
);
function behindNod(items: Part, from: number, ear: Ear): number {
  const leaves = (to: number) => {
    const rest = items.slice(to);
    return carriesAmount(rest) || ear.claimed(rest) !== undefined || rest.length > 4;
  };
  if (["anyway", "anyhow"].includes(wordOf(items[from]))) {
    const to = from + (isBreak(items[from + 1]) ? 2 : 1);
    return questionWords.has(wordOf(items[to])) && leaves(to) ? to : from;
  }
  let to = from;
  while (nods.has(wordOf(items[to]))) to += 1;
  if (to > from && isBreak(items[to]) && leaves(to + 1)) return to + 1;
  const spoken = spokenNod(items, from);
  // the words of a note are the baker's from the first on
  return spoken > from && leaves(spoken) && !wholeTurn(ear.mask(items.slice(from))) ? spoken : from;
}

/** "haha okay and what about ...", "lovely so i've got ...": dictated, without a sign behind the nod. */
function spokenNod(items: Part, from: number): number {
  let to = from;
  while (heardWords.has(wordOf(items[to]))) to += 1;
  if (to === from) return from;
  let asked = to;
  while (["and", "then", "so", "but", "now"].includes(wordOf(items[asked]))) asked += 1;
  return asked > to && asked < items.length ? to : from;
}
const heardWords = new Set([
  ...nodWords,
  ...praiseWords,
  ..."haha ha hah lol phew gosh thanks thankyou cheers yeah yep yes".split(" "),
]);

/** "Thank you. And for 150 g ganache?": thanks at the start, where more follows behind a stop. */
function behindThanks(items: Part, from: number, ear: Ear): number {
  let to = from;
  while (closing.has(wordOf(items[to])) || thanksYou(items, to)) to += 1;
  const rest = items.slice(to + 1);
  return to > from && isBreak(items[to]) && (carriesAmount(rest) || ear.claimed(rest)) ? to + 1 : from;
}

/** How many items "could you please tell me," takes; none where it isn't said. "Can you freeze them" stays a question. */
function leadIn(items: Part): number {
  if (!["could", "can", "would", "will"].includes(wordOf(items[0])) || wordOf(items[1]) !== "you") return 0;
  let to = 2;
  if (opening.has(wordOf(items[to]))) to += 1;
  if (wordOf(items[to]) !== "tell" || wordOf(items[to + 1]) !== "me") return 0;
  to += 2;
  return isBreak(items[to]) ? to + 1 : to;
}

const isBreak = (item: Item | undefined) => item?.is === "sign" && [",", "!", ".", "-"].includes(item.text);
