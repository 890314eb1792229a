/** What a timer is called, from the words around its time: "for tray 1", "the bake timer", "to flip the tray". */
import { smallNumbers } from "../../../data/words/numbers.ts";
import {
  errandEdges,
  errandStops,
  nameEdges,
  nameStops,
  pointerStops,
  pointers,
} from "../../../data/words/timer-talk.ts";
import { isSign, type Piece, textOf } from "../lib/pieces.ts";

const joints = new Set(["for", "about", "on"]);
const asksToBeTold =
  /(?:^| )(?:remind(?:er|ing)?|ping|nudge|tell|ring|wake|buzz|alert|let me know|lemme know|alarm|shout|call me)(?: |$)/;

/** Steps that name a timer by themselves, whatever form of the word was used. */
const ownName: Readonly<Record<string, string>> = {
  rest: "rest",
  bake: "bake",
  cool: "cool",
  mature: "mature",
  "ganache sets": "ganache",
  chill: "chill",
  thaw: "thaw",
  macaronage: "macaronage",
};

/** One piece as a name has it: "resting" as "rest", and as digits a number that counts, "tray two". */
function word(piece: Piece, counts = true): string {
  // "the rest" is what remains anywhere else
  if (/(?:^| )the rest$/.test(piece.text)) return "rest";
  // "set the ganache timer": the order is no part of the name
  if (piece.thing?.step === "ganache sets" && /^set /.test(piece.text)) return "ganache";
  const step =
    piece.thing?.step !== undefined && !piece.text.includes(" ") ? ownName[piece.thing.step] : undefined;
  // "drying" stays her word for it, "chilled shells" is hers too; "resting" is the rest
  const isForm = step && piece.text.startsWith(step.slice(0, 3)) && !/ed$/.test(piece.text);
  return (
    (isForm ? step : undefined) ??
    piece.text
      .split(" ")
      .map((each) => (counts ? digits(each) : each))
      .join(" ")
  );
}

const digits = (text: string) =>
  Object.hasOwn(smallNumbers, text) && text !== "zero" && text !== "nil" ? String(smallNumbers[text]) : text;

const isMoment = (piece: Piece | undefined) => piece?.amount?.dim === "time" || piece?.when !== undefined;

/** "tray one", "tray a": the pronoun or article that tells trays apart; "the shells one" is none. */
const isNumberOne = (some: readonly Piece[], at: number) =>
  /^(?:one|[a-z])$/.test(some[at]?.text ?? "") &&
  some[at - 1]?.thing?.count !== undefined &&
  !some[at - 1]?.text.endsWith("s");

/** "the dark one": no number, and so no digit. */
const isOwnWord = (some: readonly Piece[], at: number): boolean =>
  some[at]?.text === "one" &&
  at > 0 &&
  !isNumberOne(some, at) &&
  !/^(?:tray|batch|sheet|bowl|box|number|oven|mat)$/.test(some[at - 1]?.text ?? "");

/** "top tray", "left tray": which of them it is, where those words say nothing otherwise. */
const isWhichTray = (some: readonly Piece[], at: number): boolean =>
  /^(?:top|left|right|middle|bottom|front|back)$/.test(some[at]?.text ?? "") &&
  /^(?:tray|sheet|shelf|rack)$/.test(some[at + 1]?.text ?? "");

/** Takes articles, pronouns and talk off both ends; what is left is the name, or "". A number alone is none. */
export function nameFrom(some: readonly Piece[], edges: ReadonlySet<string> = nameEdges): string {
  let [from, to] = [0, some.length];
  const bare = (at: number) =>
    !some[at]?.thing &&
    !isNumberOne(some, at) &&
    !isWhichTray(some, at) &&
    (edges.has(some[at]?.text ?? "") || isSign(some[at]));
  while (from < to && bare(from)) from += 1;
  while (to > from && bare(to - 1)) to -= 1;
  const name = some
    .slice(from, to)
    .map((each, at) => word(each, !isOwnWord(some, from + at)))
    .join(" ")
    .slice(0, 60)
    .trim()
    // "for it to firm up"
    .replace(/^to (?=firm|stiffen)/, "")
    // "time the rest for 30 min"
    .replace(/ (?:for|of|at|until)$/, "")
    .replace(/^the (?=rest$)/, "");
  // "1:30 minutes" leaves its unit behind
  const isUnit = some.slice(from, to).every((each) => each.thing?.unit !== undefined);
  // "25 grams" is no name either; "the ten minute one" may be
  const isAmount = some
    .slice(from, to)
    .every((each) => each.amount !== undefined && each.amount.dim !== "time");
  return isUnit || isAmount || /^[\d. ]+$/.test(name) ? "" : name;
}

/** From `at` on as far as a name can go. */
function run(some: readonly Piece[], at: number, ends: ReadonlySet<string> = nameStops): Piece[] {
  let to = at;
  while (
    to < some.length &&
    !isMoment(some[to]) &&
    !isSign(some[to]) &&
    (!ends.has(some[to]?.text ?? "") || isNumberOne(some, to) || some[to]?.thing)
  )
    to += 1;
  return some.slice(at, to);
}

/** Backwards from before `at`, as far as a name can go. */
function runBack(some: readonly Piece[], at: number): Piece[] {
  let from = at;
  while (from > 0) {
    const before = some[from - 1] as Piece;
    const ends =
      !before.thing &&
      !isNumberOne(some, from - 1) &&
      (nameStops.has(before.text) ||
        [
          "the",
          "a",
          "an",
          "my",
          "set",
          "start",
          "begin",
          "run",
          "put",
          "another",
          "time",
          "of",
          "to",
          "with",
        ].includes(before.text));
    if (isMoment(before) || isSign(before) || ends) break;
    from -= 1;
  }
  return some.slice(from, at);
}

/** "oven to heat up" is the oven: what it is to do there is cut off. */
function head(some: readonly Piece[]): Piece[] {
  const to = some.findIndex(
    (each, at) =>
      at > 0 &&
      !each.thing &&
      ["to", "is", "are", "needs", "need", "has", "have", "going"].includes(each.text),
  );
  return (to < 0 ? [...some] : some.slice(0, to)).map((each) =>
    each.thing?.step === "preheat" && /^oven/.test(each.text) ? { text: "oven" } : each,
  );
}

/** What may stand around a name that is given as one. */
const aroundName = new Set("the a an my it please pls then too now and for ok thanks".split(" "));

/** A name for a new timer from the pieces that belong to it; "" where nothing names it. */
export function newName(some: readonly Piece[], remind = asksToBeTold.test(textOf(some))): string {
  const called = some.findIndex((each) =>
    ["called", "named", "label", "labelled", "labeled"].includes(each.text),
  );
  // "called top shelf": all of it is the name
  if (called >= 0) return nameFrom(run(some, called + 1, new Set(["please", "pls"])), aroundName);
  const call = some.findIndex(
    (each, at) => ["call", "name"].includes(each.text) && ["it", "that"].includes(some[at + 1]?.text ?? ""),
  );
  // "call it top tray": all of that too
  if (call >= 0) return nameFrom(run(some, call + 2, new Set(["please", "pls"])), aroundName);
  // "buttercream has to cool an hour, put a timer"
  const subject = some.findIndex(
    (each, at) => ["has", "have", "needs", "need"].includes(each.text) && some[at + 1]?.text === "to",
  );
  if (subject > 0 && some.slice(0, subject).some((each) => each.thing)) {
    const name = nameFrom(some.slice(0, subject));
    if (name) return name;
  }
  const step = beforeTimer(some);
  const purpose = afterJoint(some);
  if (purpose && step && purpose !== step && ownName[step])
    return purpose.includes(step) ? purpose : `${purpose} ${step}`;
  // "bake timer tray 1"
  const on = step ? tray(some) : "";
  if (on && step && ownName[step] && !step.includes("tray")) return `${on} ${step}`;
  const errand = remind ? afterTo(some) : "";
  return (
    errand ||
    purpose ||
    step ||
    timed(some) ||
    beforeMoment(some) ||
    afterComma(some) ||
    stepBehind(some) ||
    tray(some)
  );
}

/** "tray 2 is resting, 30": no time with its unit, and the tray in front. */
function tray(some: readonly Piece[]): string {
  const at = some.findIndex((each) => each.thing?.count === "trays");
  return at >= 0 && (some[at + 1]?.amount || isNumberOne(some, at + 1))
    ? nameFrom(some.slice(at, at + 2))
    : "";
}

/** "timer 8 min macaronage". */
function stepBehind(some: readonly Piece[]): string {
  const next = some[some.findIndex(isMoment) + 1];
  if (next?.thing?.step && ownName[next.thing.step]) return word(next);
  const at = some.findIndex(isMoment);
  return at < 0 ? "" : nameFrom(head(run(some, at + 1)));
}

/** "for tray 1", "about the ganache". */
function afterJoint(some: readonly Piece[]): string {
  for (let at = 0; at < some.length; at++) {
    if (!joints.has(some[at]?.text ?? "")) continue;
    const name = nameFrom(head(run(some, at + 1)));
    if (name) return name;
  }
  return "";
}

/** "remind me to flip the tray". */
function afterTo(some: readonly Piece[]): string {
  const at = some.findIndex((each, i) => each.text === "to" && !isMoment(some[i + 1]));
  return at < 0 ? "" : nameFrom(run(some, at + 1, errandStops), errandEdges);
}

/** "the bake timer", "the oven one". */
function beforeTimer(some: readonly Piece[]): string {
  for (let at = 0; at < some.length; at++) {
    if (
      !["timer", "timers", "alarm", "countdown", "one"].includes(some[at]?.text ?? "") ||
      isNumberOne(some, at)
    )
      continue;
    const name = nameFrom(runBack(some, at));
    if (name) return name;
  }
  return "";
}

/** "time the sugar syrup". */
function timed(some: readonly Piece[]): string {
  const at = some.findIndex((each) => ["time", "timing"].includes(each.text));
  return at < 0 ? "" : nameFrom(head(run(some, at + 1)));
}

/** "tray one 15 minutes", "ganache needs an hour". */
function beforeMoment(some: readonly Piece[]): string {
  let at = Math.max(0, some.findIndex(isMoment));
  while (
    at > 0 &&
    (isSign(some[at - 1]) || ["for", "in", "at", "until", "till"].includes(some[at - 1]?.text ?? ""))
  )
    at -= 1;
  return nameFrom(head(runBack(some, beforeOnes(some, at))));
}

/** "lemon ones 12 minutes", "the lime ones need 12": the word behind the name is no end of it. */
function beforeOnes(some: readonly Piece[], at: number): number {
  const verb = /^(?:needs?|wants?|gets?|takes?|bake|rest|go in|are in)$/.test(some[at - 1]?.text ?? "")
    ? at - 1
    : at;
  const isOnes =
    verb > 1 && some[verb - 1]?.text === "ones" && !isMoment(some[verb - 2]) && !isSign(some[verb - 2]);
  return isOnes ? verb - 1 : at;
}

/** "30 minutes, the shells are drying". */
function afterComma(some: readonly Piece[]): string {
  const at = some.findIndex((each, i) => isSign(each) && i > 0);
  return at < 0 ? "" : nameFrom(head(run(some, at + 1)));
}

const pointerEnds = new Set([...nameStops, ...pointerStops]);

/** The words that point at a timer already running: "how long on tray 1", "stop the oven one", "is the bake timer done". */
export function pointedAt(some: readonly Piece[]): string {
  const one = beforeTimer(some);
  if (one) return one;
  for (let at = 0; at < some.length; at++) {
    if (some[at]?.thing || !pointers.has(some[at]?.text ?? "")) continue;
    const name = nameFrom(run(some, at + 1, pointerEnds));
    if (name) return name;
  }
  return "";
}
