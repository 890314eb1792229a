/** Tastes that only a saved bottle knows: "cola for 250 g buttercream", where her bottle of cola was saved before. */
import type { Amount, Reading, Thing } from "../tools/contract/index.ts";

/** The reading with each plain word that is a saved bottle's taste as that taste. Pure. */
export function withBottles(reading: Reading, bottles: readonly string[]): Reading {
  return bottles
    .filter((name) => /^[a-z]+(?: [a-z]+)?$/.test(name))
    .reduce(
      (read, name) => (read.things.some((each) => each.taste === name) ? read : named(read, name)),
      reading,
    );
}

function named(reading: Reading, name: string): Reading {
  const at = ` ${reading.text} `.indexOf(` ${name} `);
  const tokens = reading.mask.split(" ");
  const words = name.split(" ");
  const place = tokens.findIndex((_, from) => words.every((word, i) => tokens[from + i] === word));
  if (at < 0 || place < 0) return reading;
  const thing: Thing = { id: name, taste: name, text: name, at: [at, at + name.length] };
  const slug = name.replaceAll(" ", "_");
  return {
    ...reading,
    mask: [...tokens.slice(0, place), `${slug}<taste=${slug}>`, ...tokens.slice(place + words.length)].join(
      " ",
    ),
    things: [...reading.things, thing].sort((a, b) => a.at[0] - b.at[0]),
    unknown: reading.unknown.filter((word) => !words.includes(word)),
    amounts: reading.amounts.map((each) => (isOf(each, thing, reading.text) ? { ...each, of: thing } : each)),
  };
}

/** "6 g cola", "6 g of cola". */
const isOf = (amount: Amount, thing: Thing, text: string): boolean =>
  amount.of === undefined && /^ (?:of )?(?:the |my )?$/.test(text.slice(amount.at[1], thing.at[0]));
