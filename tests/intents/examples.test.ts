/**
 * Every example that a calculator gives of itself, said differently: louder, wider, politer, with numbers in words.
 * None of it may change which calculator answers, what state the answer is in, or any of its figures.
 */
import { describe, expect, it } from "vitest";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";
import { chance } from "../support/chance.ts";
import { slipped, withSlip, wordsToSlip } from "../support/slips.ts";

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

/** Each unit by another of its spellings; those that mean the same in every sentence. */
const spellings: readonly (readonly [RegExp, string])[] = [
  [/(\d) ?(?:g|grams?)\b/gi, "$1 gr"],
  [/(\d) ?(?:kg|kilos?)\b/gi, "$1 kilograms"],
  [/(\d) ?oz\b/gi, "$1 ounces"],
  [/(\d) ?lbs?\b/gi, "$1 pounds"],
  [/(\d) ?mm\b/gi, "$1 millimetres"],
  [/(\d) ?cm\b/gi, "$1 centimeters"],
  [/(\d) ?ml\b/gi, "$1 millilitres"],
  [/(\d) ?tsp\b/gi, "$1 teaspoons"],
  [/(\d) ?tbsp\b/gi, "$1 tablespoons"],
  [/(\d) ?min(?:ute)?s?\b/gi, "$1 mins"],
  [/(\d) ?(?:h|hours?)\b/gi, "$1 hrs"],
  [/(\d) ?%/g, "$1 percent"],
];
const respelt = (say: string) => spellings.reduce((text, [unit, other]) => text.replace(unit, other), say);

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
  "with its first letter large": (say) => say.charAt(0).toUpperCase() + say.slice(1),
  // only what asks can be asked for like this
  "politely asked": (say) => (/\bhow\b|\bwhat\b/i.test(say) ? `could you tell me, ${say}` : say),
  "politely asked without a comma": (say) =>
    /^(?:how|what)\b/i.test(say) ? `can you please tell me ${say}` : say,
  "with units spelt otherwise": respelt,
  "with units close to their numbers": (say) => say.replace(/(\d) (g|kg|oz|lb|ml|mm|cm|min)\b/g, "$1$2"),
};

it("there are at least five examples of each calculator that computes", () => {
  for (const tool of tools) expect(tool.examples.length, tool.name).toBeGreaterThanOrEqual(5);
});

describe.each(Object.entries(variants))("%s", (_, say) => {
  it.each(examples)("$tool: $say", async (example) => {
    expect(await answers(say(example.say)), say(example.say)).toEqual(await answers(example.say));
  });
});

/**
 * A slip in every longer word, all at once. What is kept as it was said (a note, a name) changes with its letters, so
 * what is held is figures.
 */
const slips: Readonly<Record<string, (word: string) => string>> = {
  "two letters swapped": (word) => word.slice(0, 3) + word.charAt(4) + word.charAt(3) + word.slice(5),
  "a letter left out": (word) => word.slice(0, 3) + word.slice(4),
  "a letter twice": (word) => word.slice(0, 4) + word.slice(3),
};

type Answered = Awaited<ReturnType<typeof answers>>;
const figures = (list: Answered) => JSON.stringify(list.map((each) => each.figures));
const hasNumber = (list: Answered) =>
  list.some((each) => each.status === "answered" && each.figures.length > 0);

describe.each(Object.entries(slips))("a slip in every longer word: %s", (_, slip) => {
  it("never another number, and nearly always the same ones", async () => {
    const others: unknown[] = [];
    let same = 0;
    for (const { say } of examples) {
      const typed = say.replace(/\b(?!minutes)[a-z]{7,}/g, slip);
      const [said, meant] = [await answers(typed), await answers(say)];
      if (figures(said) === figures(meant)) same += 1;
      else if (hasNumber(said)) others.push({ typed, got: figures(said), meant: figures(meant) });
    }
    expect(others).toEqual([]);
    expect(same / examples.length).toBeGreaterThan(0.9);
  });
});

/** Three letters are few: "sat" for "salt" and "ink" for "pink" are words as well. So the law is one of shares. */
describe.each([1, 2, 3])("a slip of chance in any one word, seed %i", (seed) => {
  it("nearly always the same figures, and hardly ever others", async () => {
    const next = chance(seed);
    const others: unknown[] = [];
    let [same, all] = [0, 0];
    for (const { say } of examples) {
      const meant = await answers(say);
      for (const word of wordsToSlip(say)) {
        const typed = withSlip(say, word, slipped(word.word.toLowerCase(), next));
        const said = await answers(typed);
        all += 1;
        if (said[0]?.tool === meant[0]?.tool && figures(said) === figures(meant)) same += 1;
        else if (hasNumber(said)) others.push({ typed, got: figures(said), meant: figures(meant) });
      }
    }
    expect(same / all).toBeGreaterThan(0.95);
    expect(others.length / all, JSON.stringify(others, null, 1)).toBeLessThan(0.02);
  });
});
