/**
 * "give the bake 3 more", "5 off the rose", "how long on the blue ones": said of a timer that runs by a word of its name,
 * whatever was asked since. The words are walked, each has to be of the order, of the name, or of talk.
 */
import { smallNumbers } from "../../../data/words/numbers.ts";
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import { type State, sizing } from "./state.ts";

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

/** They say nothing of which timer it is, or how much more. */
const talk =
  list(`and ok okay so now then please pls also oh right just actually maybe can could you will would we i
  let lets me give have get gets got needs need wants want put stick pop on onto to from for the my that them this it in
  think better another an a min mins minutes minute well too again bit`);
const more = list("more extra longer another add plus onto additional further increase extend");
const less = list("less off fewer shorter minus take knock shave cut lop trim");
/** Behind these a number is part of a name: "tray 2". */
const counted = list("tray batch sheet timer bowl number oven");
const behindName = list("one ones timer tray batch lot");

interface Walked {
  plain: string[];
  amount?: Amount;
}

/** The words with the one number that isn't a name's as "#". */
function walked({ text, amounts }: Reading): Walked | undefined {
  const free = amounts.filter(({ at }) => !counted.has(text.slice(0, at[0]).trim().split(" ").at(-1) ?? ""));
  // "give the lemon tray 3 more": the one number there is
  const [amount, ...others] = free.length > 0 ? free : amounts;
  if (others.length > 0 || (amount && amount.dim !== "number" && amount.dim !== "time")) return undefined;
  const put = amount ? `${text.slice(0, amount.at[0])} # ${text.slice(amount.at[1])}` : text;
  const plain = spaced(put.toLowerCase()).split(" ").filter(Boolean);
  return { plain, ...(amount ? { amount } : {}) };
}

/** One word as a name has it: "cooling" is of the cool timer, "trays" of a tray, "one" behind a tray its number. */
const asNamed = (word: string): string => {
  const stem = word.length > 5 ? word.replace(/ing$/, "") : word;
  if (stem === "bak") return "bake";
  return stem.length > 4 && stem.endsWith("s") ? stem.slice(0, -1) : stem;
};

/** The one timer that all of some words are of; "the blue icing" is of no blue tray. */
function timerOf(words: readonly string[], timers: readonly string[]): string | undefined {
  if (words.length === 0) return undefined;
  const own = (label: string) => label.toLowerCase().split(" ").map(asNamed);
  const said = words.map((word, at) =>
    at > 0 && Object.hasOwn(smallNumbers, word) ? String(smallNumbers[word]) : asNamed(word),
  );
  const exact = timers.filter((label) => own(label).join(" ") === said.join(" "));
  const found =
    exact.length > 0 ? exact : timers.filter((label) => said.every((word) => own(label).includes(word)));
  return found.length === 1 ? found[0] : undefined;
}

/** What the last question was about is named so too: "10 more lemon" may be of those macarons. */
const isOfLast = ([word = "", ...others]: readonly string[], { last, turn }: State): boolean =>
  // "the lemon tray" is no flavor
  last !== undefined &&
  (sizing.has(last.tool) || last.tool === "day") &&
  others.length === 0 &&
  word.length > 2 &&
  `${JSON.stringify(last.inputs)} ${turn?.text}`
    .toLowerCase()
    .split(/[^a-z]+/)
    .includes(word);

/** Their answers hold nothing that could be more or less: "give it 3 more" behind them is of the timer. */
const unsized = list("method recall trouble note keep");
const itself = list("it that this them");

/** "10 more on it", behind a timer and what 145 °C are in one turn: a heat is never more "on" anything. */
const isOn = (plain: readonly string[], { last, turn }: State): boolean =>
  last?.tool === "convert" &&
  turn?.topics.some(({ tool }) => tool === "timer") === true &&
  plain.some((word, at) => onIt.has(word) && itself.has(plain[at + 1] ?? ""));
const onIt = list("on onto to off from give");

/** The one timer that runs, said as "it" behind a rule or a note. */
const alone = (plain: readonly string[], timers: readonly string[], state: State): string | undefined =>
  timers.length === 1 &&
  (unsized.has(state.last?.tool ?? "") || isOn(plain, state)) &&
  plain.some((word) => itself.has(word))
    ? timers[0]
    : undefined;

/** "the right tray", "left one": which of them it is, where those words say something else otherwise. */
const isWhich = (plain: readonly string[], at: number): boolean =>
  /^(?:left|right|top|bottom)$/.test(plain[at] ?? "") &&
  (behindName.has(plain[at + 1] ?? "") || /^(?:the|my)$/.test(plain[at - 1] ?? ""));

/** The words of a name, without what only goes behind one; none where they stand apart from each other. */
function nameIn(plain: readonly string[], isOther: (word: string) => boolean): string[] | undefined {
  const named = plain.flatMap((word, at) => (isOther(word) && !isWhich(plain, at) ? [] : [at]));
  const [first, last] = [named[0], named.at(-1)];
  if (first === undefined || last === undefined) return [];
  return last - first + 1 === named.length ? plain.slice(first, last + 1) : undefined;
}

/** "the pink one", "blue ones": the name alone, unless the timer has that word. */
const withoutOnes = (words: readonly string[]): string[] =>
  words.length > 1 && behindName.has(words.at(-1) ?? "") ? words.slice(0, -1) : [...words];

/** "tray a" stands by itself: "a timer" would be another one. */
const called = (label: string, said: readonly string[] = []): string => {
  if (/ a$/.test(label)) return label;
  // "take the butter out" is called by its one word: the others are an order
  const isErrand = label.split(" ").length > 3 && said.length > 0;
  return `the ${isErrand ? withoutOnes(said).join(" ") : label} timer`;
};

function changed({ plain, amount }: Walked, timers: readonly string[], state: State): string | undefined {
  if (!amount || amount.value <= 0 || amount.high !== undefined) return undefined;
  // "another timer of 10 min", "a second one"
  if (/\b(?:a|another|new|second|# min) (?:timer|one)\b/.test(plain.join(" "))) return undefined;
  const isLess = plain.some((word) => less.has(word));
  if (!isLess && !plain.some((word) => more.has(word))) return undefined;
  // "the rest" is a name here, and the letter of a tray
  const isTalk = (word: string) =>
    word === "#" || more.has(word) || less.has(word) || (talk.has(word) && word !== "rest");
  const words = nameIn(plain, isTalk);
  const last = plain.at(-1) ?? "";
  const lettered =
    words && /^[a-z]$/.test(last) && counted.has(words.at(-1) ?? "") ? [...words, last] : words;
  if (!lettered || isOfLast(lettered, state)) return undefined;
  const length = amount.dim === "time" ? amount.text : `${amount.value} min`;
  // of several it is the one that was set last, or it is asked which
  if (lettered.length === 0 && timers.length > 1 && isOn(plain, state))
    return isLess ? `take ${length} off it` : `add ${length} to it`;
  const label =
    lettered.length === 0
      ? alone(plain, timers, state)
      : (timerOf(lettered, timers) ?? timerOf(withoutOnes(lettered), timers));
  if (label === undefined) return undefined;
  return isLess
    ? `take ${length} off ${called(label, lettered)}`
    : `add ${length} to ${called(label, lettered)}`;
}

const asks = list(
  "how long much time longer left still has have got is there do i we on the my for now then ?",
);

/** "how long on a", "how long on the blue ones": left on it, and no rule of how long that takes. */
function asked({ plain, amount }: Walked, timers: readonly string[]): string | undefined {
  const on = plain.indexOf("on");
  if (amount || on < 2 || plain[0] !== "how" || !/^(?:long|much)$/.test(plain[1] ?? "")) return undefined;
  if (!plain.slice(0, on).every((word) => asks.has(word))) return undefined;
  const words = plain.slice(on + 1).filter((word, at) => !asks.has(word) || isWhich(plain, on + 1 + at));
  const label = timerOf(words, timers) ?? timerOf(withoutOnes(words), timers);
  return label === undefined ? undefined : `how long left on ${called(label, words)}`;
}

/** The sentence put plainly, by the timer's whole name; undefined where it isn't of one that runs. */
export function forATimer(reading: Reading, state: State, timers: readonly string[]): string | undefined {
  if (timers.length === 0 || reading.whens.length > 0) return undefined;
  const words = walked(reading);
  if (!words || words.plain.length > 14) return undefined;
  return changed(words, timers, state) ?? asked(words, timers);
}
