/** The same sentence as somebody else would say it: dictated, without its marks, with talk before or thanks behind. */
import { smallNumbers, tens } from "../../data/words/numbers.ts";

type Next = () => number;
const pick = (list: readonly string[], next: Next): string => list[Math.floor(next() * list.length)] ?? "";

const wordFor = (table: Readonly<Record<string, number>>, value: number): string | undefined =>
  Object.keys(table).find((word) => table[word] === value);

/** Whole numbers up to 999 in words: "two hundred and thirty". */
function inWords(value: number, next: Next): string {
  const one = wordFor(smallNumbers, value);
  if (one) return one;
  if (value < 100) {
    const ten = wordFor(tens, Math.floor(value / 10) * 10) ?? "";
    return value % 10 ? `${ten} ${wordFor(smallNumbers, value % 10)}` : ten;
  }
  const hundreds = `${wordFor(smallNumbers, Math.floor(value / 100))} hundred`;
  return value % 100 ? `${hundreds}${pick([" and ", " "], next)}${inWords(value % 100, next)}` : hundreds;
}

/** Counts and measures, no times of day, prices, ratios or decimals. */
const counted =
  /(?<![\d.,:/°%$€£-])\b(\d{1,3}) ?(?=(?:g|grams?|min|minutes?|macarons?|shells?|trays?|percent|egg|whites?|mm|cm)\b)/g;

export const saidOtherwise: Readonly<Record<string, (say: string, next: Next) => string>> = {
  "with um and er in it": (say, next) =>
    say
      .split(" ")
      .flatMap((word, at, all) =>
        at > 0 && /^[a-z]/i.test(word) && !/^[\d.,]+$/.test(all[at - 1] ?? "") && next() < 0.12
          ? [pick(["um", "uh", "er"], next), word]
          : [word],
      )
      .join(" "),
  "numbers in words": (say, next) =>
    say.replace(counted, (_said, digits: string) => `${inWords(Number(digits), next)} `),
  "no marks, no capitals": (say) => say.replace(/[,;.?!](?=\s|$)/g, "").toLowerCase(),
  "with talk before it": (say, next) =>
    pick(["ok so ", "right, ", "hey, ", "quick one: ", "hi there, ", "so, ", "one more thing: "], next) + say,
  "with thanks behind it": (say, next) =>
    say.replace(/[?.!]+$/, "") + pick([" please", ", thanks", "? ta", " thank you", ", cheers"], next),
};
