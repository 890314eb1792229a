/** Plain arithmetic in a sentence: "3/4 of 260", "12 x 45", "230 divided by 3", "half of 300 g". */
import type { Amount, Reading } from "../contract/index.ts";
import { digits, type Piece, unitOf } from "./sum-unit.ts";

export interface Sum {
  /** Digits, operators and brackets only, for the parser. */
  sum: string;
  /** The unit that the result is in, when something in the sum was said in one. */
  sum_unit?: string;
}

/** Words around a sum that are no part of it. */
const talk = new Set(
  "what whats is how much calculate work out compute tell me give us can could you do for the and so then now ok okay please pls just quick quickly um hm hmm er uh well right hey does make makes come comes to get equals equal answer say but also oh i need want sum maths math exactly again it thats that hi hello when if you we be would will did at out".split(
    " ",
  ),
);

const signs: Record<string, string> = {
  "+": "+",
  plus: "+",
  "-": "-",
  minus: "-",
  less: "-",
  "*": "*",
  x: "*",
  times: "*",
  "/": "/",
  over: "/",
  "^": "^",
};

/** "my head is mush, whats 17 times 24", "help me with a sum: 3/8 of 640": told before it, with nothing in it. */
const toldFirst =
  /^(?:(?:(?:is|are|to|like) [a-z']+<(?:dose|ingredient|symptom|base)=[^>]*>|[a-z']+(?:<[a-z_]+>)?) )+(?:[,:;-] )+(?=[^<>]*<(?:number|percent|factor|weight|volume|length|time)[,>])/;

/** "45 off 300": what is taken off stands first. */
function turnedRound(pieces: Piece[]): Piece[] {
  const [off, sign, from] = pieces;
  const isOff = pieces.length === 3 && off?.is === "value" && sign?.text === "off" && from?.is === "value";
  return isOff ? [from, { text: "-", is: "sign" }, off] : pieces;
}

/** The sum that a sentence consists of, or undefined: anything else in it, and it isn't arithmetic. */
export function sumOf(reading: Reading): Sum | undefined {
  // "24 divided by 4 how many boxes"
  const mask = reading.mask
    .replace(/ (?:, )?(?:is |are |thats |makes )?how many \S+<count=[^>]*>(?: (?:is that|\?))*$/, "")
    .replace(toldFirst, "");
  const pieces = turnedRound(trimTalk(piecesOf({ ...reading, mask })));
  if (pieces.length === 0 || pieces.some((each) => each.is === "other" || each.is === "talk"))
    return undefined;
  if (!pieces.some((each) => each.is === "sign" || (each.is === "part" && /^\d+ \//.test(each.text))))
    return undefined;
  const unit = unitOf(pieces);
  return unit === undefined
    ? undefined
    : { sum: pieces.map((each) => each.text).join(" "), ...(unit ? { sum_unit: unit } : {}) };
}

function piecesOf(reading: Reading): Piece[] {
  const amounts = [...reading.amounts];
  const tokens = reading.mask.split(" ");
  const pieces: Piece[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i] as string;
    const tag = /<(number|percent|factor|weight|volume|length|time|temperature|money)[^>]*>$/.exec(token);
    if (tag) pieces.push(...fromAmount(amounts.shift() as Amount, token, pieces.at(-1)));
    else if (/<when>$/.test(token)) pieces.push(fromHour(token, tokens[i - 1]));
    else if (/<[^>]*>$/.test(token)) pieces.push({ text: token, is: "other" });
    else if (["divided", "multiplied"].includes(token) && tokens[i + 1] === "by") {
      pieces.push({ text: token === "divided" ? "/" : "*", is: "sign" });
      i += 1;
    } else pieces.push(fromOrder(token, tokens.slice(0, i), i) ?? fromWord(token, pieces.at(-1)));
  }
  return pieces;
}

/** "divide 900 by 7", "add 45 to 260", "subtract 30 from 260": the order comes first, its sign stands between. */
function fromOrder(token: string, before: readonly string[], at: number): Piece | undefined {
  if (
    ["divide", "multiply", "add"].includes(token) &&
    (at < 6 || !before.some((word) => /<[^>]*>$/.test(word)))
  )
    return { text: token, is: "talk" };
  if (token === "subtract" || (token === "take" && at < 3)) return { text: "-", is: "sign" };
  const joint = before
    .map((word) => (Object.hasOwn(joints, word) ? joints[word] : undefined))
    .find((each) => each?.[token]);
  return joint ? { text: joint[token] as string, is: "sign" } : undefined;
}

const joints: Record<string, Record<string, string>> = {
  divide: { by: "/" },
  multiply: { by: "*", with: "*" },
  add: { to: "+", and: "+" },
  subtract: { from: "+", off: "+" },
  take: { from: "+", off: "+" },
};

function fromWord(token: string, before: Piece | undefined): Piece {
  if (token === "of")
    return before?.is === "percent" ||
      before?.is === "part" ||
      // "0,35 of 480"
      (before?.is === "value" && Number(before.text) > 0 && Number(before.text) < 1)
      ? { text: "*", is: "sign" }
      : { text: token, is: "other" };
  if (token === "squared" || token === "cubed")
    return { text: token === "squared" ? "^ 2" : "^ 3", is: "sign" };
  // "whats 8 by 35"
  if (token === "by" && before?.is === "value") return { text: "*", is: "sign" };
  const sign = Object.hasOwn(signs, token) ? signs[token] : undefined;
  if (sign) return { text: sign, is: "sign" };
  if (token === "(") return { text: token, is: "open" };
  if (token === ")") return { text: token, is: "close" };
  return /^[?!=,.]$/.test(token) || talk.has(token)
    ? { text: token, is: "talk" }
    : { text: token, is: "other" };
}

function fromAmount(amount: Amount, token: string, before: Piece | undefined): Piece[] {
  // "240 minus 85": the sign belongs to the sum, not to the number
  const minus =
    amount.value < 0 &&
    /^(?:minus|negative)/.test(amount.text) &&
    before &&
    ["value", "close", "part", "percent"].includes(before.is);
  if (minus)
    return [
      { text: "-", is: "sign" },
      ...fromAmount({ ...amount, value: -amount.value, text: "" }, token, before),
    ];
  const text = digits(amount.value);
  if (text === "?" || amount.dim === "money" || amount.dim === "temperature")
    return [{ text: token, is: "other" }];
  if (amount.unit === "times" && /^x/.test(amount.text))
    return [
      { text: "*", is: "sign" },
      { text, is: "value" },
    ];
  if (amount.unit === "times")
    return [
      { text, is: "value" },
      { text: "*", is: "sign" },
    ];
  if (amount.dim === "percent")
    return [
      amount.high === undefined ? { text: `(${text} / 100)`, is: "percent" } : { text: token, is: "other" },
    ];
  if (amount.unit !== "")
    return [
      amount.high === undefined ? { text, is: "value", unit: amount.unit } : { text: token, is: "other" },
    ];
  if (amount.of) return [{ text: token, is: "other" }];
  // "30 - 45" looks like a range until it stands in a sum
  if (amount.high !== undefined)
    return [
      { text, is: "value" },
      { text: "-", is: "sign" },
      { text: digits(amount.high), is: "value" },
    ];
  if (!amount.fraction) return [{ text, is: "value" }];
  const [up, down] = amount.fraction;
  return [{ text: amount.text.includes("/") ? `${up} / ${down}` : `(${up} / ${down})`, is: "part" }];
}

/** "divided by 8": behind "by" a number looks like an hour. */
function fromHour(token: string, before: string | undefined): Piece {
  const hour = /^(\d+)(?:\.\d+)?<when>$/.exec(token);
  return hour && ["by", "to", "from"].includes(before ?? "")
    ? { text: token.replace("<when>", ""), is: "value" }
    : { text: token, is: "other" };
}

function trimTalk(pieces: Piece[]): Piece[] {
  let [from, to] = [0, pieces.length];
  while (from < to && pieces[from]?.is === "talk") from += 1;
  while (to > from && pieces[to - 1]?.is === "talk") to -= 1;
  return pieces.slice(from, to);
}
