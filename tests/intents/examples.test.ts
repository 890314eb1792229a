/**
 * Every example that a calculator gives of itself, said differently: louder, wider, politer, with numbers in words.
 * None of it may change which calculator answers, what state the answer is in, or any of its figures.
 */
import { describe, expect, it } from "vitest";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";

/** Greetings and thanks are left out: more of the same is another thing to say. So are lines that wait for more. */
const examples = tools.flatMap((tool) =>
  tool.examples.flatMap(({ say, inputs }) =>
    "talk" in inputs || say.endsWith(":") ? [] : [{ tool: tool.name, say }],
  ),
);

const answers = async (said: string) =>
  (await baker().ask(said)).map(({ tool, status, figures = [] }) => ({
    tool,
    status,
    figures: figures.map(({ name, value, low, high, unit }) => ({ name, value, low, high, unit })),
  }));

const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = "x x twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** A whole number below a thousand in words. */
function inWords(value: number): string {
  if (value < 20) return ones[value] ?? "";
  if (value < 100) return `${tens[Math.floor(value / 10)]}${value % 10 ? ` ${ones[value % 10]}` : ""}`;
  return `${ones[Math.floor(value / 100)]} hundred${value % 100 ? ` and ${inWords(value % 100)}` : ""}`;
}

/** Whole numbers that stand alone, with a full unit word or none behind them. */
const spelt = (say: string) =>
  say
    .replace(/(\d) g\b/g, "$1 grams")
    .replace(/(\d) f\b/gi, "$1 fahrenheit")
    .replace(/(\d) c\b/gi, "$1 celsius")
    .replace(/(?<![\d.,/:$€£-])\b\d{1,3}\b(?![.,]\d|[/:%]|\s*(?:x|st|nd|rd|th)\b)/g, (digits) =>
      inWords(Number(digits)),
    );

const variants: Readonly<Record<string, (say: string) => string>> = {
  "in capitals": (say) => say.toUpperCase(),
  "in small letters": (say) => say.toLowerCase(),
  "with wide spaces": (say) => `  ${say.replaceAll(" ", "   ")}\t`,
  "with please before it": (say) => `please ${say}`,
  "with please behind it": (say) => (say.endsWith("?") ? `${say.slice(0, -1)} please?` : `${say} please`),
  "with thanks behind it": (say) => `${say}, thanks`,
  "with a greeting before it": (say) => `hi, ${say}`,
  "with an exclamation mark": (say) => `${say.replace(/[?.]$/, "")}!`,
  "with round quotes": (say) => say.replaceAll("'", "’"),
  "with numbers in words": spelt,
};

it("there are at least five examples of each calculator that computes", () => {
  for (const tool of tools) expect(tool.examples.length, tool.name).toBeGreaterThanOrEqual(5);
});

describe.each(Object.entries(variants))("%s", (_, say) => {
  it.each(examples)("$tool: $say", async (example) => {
    expect(await answers(say(example.say)), say(example.say)).toEqual(await answers(example.say));
  });
});
