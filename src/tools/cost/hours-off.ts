/** Hours of the day that are none: in a question of money "a box of 12 at 22" and "2 h at 15" are sums. */
import type { Reading } from "../contract/index.ts";

const numeric = /^\d+(?:[.,]\d+)?(?=<when>$)/;

/** "a box of 12 at 22", "2 h at 15": in a question of money no hour of the day. */
export function withoutHours(reading: Reading): Reading {
  const tokens = reading.mask.split(" ");
  let [amounts, whens] = [[...reading.amounts], [...reading.whens]];
  let [amountsBefore, whensBefore] = [0, 0];
  const mask = tokens.map((token, at) => {
    if (!token.endsWith("<when>")) {
      if (isAmount.test(token)) amountsBefore++;
      return token;
    }
    const when = whens[whensBefore];
    const number = numeric.exec(token)?.[0];
    const left = tokens.slice(0, at).join(" ");
    if (!number || !when || !beforeSum.test(left)) {
      whensBefore++;
      return token;
    }
    const amount = {
      dim: "number" as const,
      unit: "",
      value: Number(number.replace(",", ".")),
      text: number,
      at: when.at,
    };
    amounts = [...amounts.slice(0, amountsBefore), amount, ...amounts.slice(amountsBefore)];
    whens = whens.filter((each) => each !== when);
    amountsBefore++;
    return `${number}<number>`;
  });
  return whens.length === reading.whens.length
    ? reading
    : { ...reading, mask: mask.join(" "), amounts, whens };
}

const isAmount = /<(?:weight|volume|length|time|temperature|percent|money|number|factor)(?:,fraction)?>$/;
const beforeSum =
  /<count=boxes> of \S*<number>(?: \S*<count=macarons>)? (?:at|for)$|<time[^>]*>(?: (?:of|my|time|work|labou?r))* (?:at|@|for)$/;
