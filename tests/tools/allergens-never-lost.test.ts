/**
 * No allergen that was typed may vanish from a label or from the answer to which allergens to declare. The lists worked
 * by hand follow Regulation (EU) No 1169/2011, Annex II, and FDA, "Questions and Answers Regarding Food Allergens",
 * edition 5, 2025.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allergens } from "../../data/rules/allergens.ts";
import { preparedAllergens } from "../../data/rules/prepared-allergens.ts";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

type Market = "us" | "eu";
const markets: readonly Market[] = ["us", "eu"];

interface Word {
  word: string;
  brings: readonly string[];
  unsure?: string | undefined;
}

/** Accents are folded when a sentence is read. */
const plainly = (text: string) => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
const words: readonly Word[] = [
  ...preparedAllergens.flatMap(({ words, brings, unsure }) =>
    words.map((word) => ({ word, brings, unsure })),
  ),
  ...allergens.flatMap(({ id, words = [] }) => [id, ...words].map((word) => ({ word, brings: [id] }))),
];

const plural = (word: string) => {
  if (/(?:s|x|z|ch|sh)$/.test(word)) return `${word}es`;
  // nobody says it of several
  if (word === "celery") return word;
  return /[^aeiou]y$/.test(word) ? word.replace(/y$/, "ies") : `${word}s`;
};
const hyphened = (word: string) => word.replaceAll(" ", "-");

/** Ways to name a thing on a list, or in a question that names no law: United States law. */
const lists: readonly ((word: string, market: Market) => string)[] = [
  (word, market) => `${market} label: 60 g ${word} buttercream, 100 g sugar`,
  (word, market) => `${market} label: 50 g ${word}, 30 g butter`,
  (word, market) => `${market} label: 50 g ${word}, 30 g butter`.toUpperCase(),
  (word, market) => `${market} label: 100 g sugar, 50 g ${plural(word)}`,
  (word, market) => `${market} label: 30 g butter, 60 g ${hyphened(word)}`,
  (word, market) => `${market} label: 30 g butter, 60 g ${hyphened(word)}-buttercream`,
  (word, market) => `${market} label: 130 g almond flour, 100 g egg whites, 20 g cream, 15 g ${word}`,
  (word, market) => `${market} label: ${word} 50 g, butter 30 g`,
  (word, market) => `${market} label: butter: 30 g, ${word}: 50 g`,
  (word, market) => `${market} label\n100 g sugar\n50 g ${word}\n30 g butter`,
  (word, market) => `can you do an ${market} label with 50g of homemade ${word} plus 30g of butter`,
  (word, market) => `${market} label: 100 g sugar, 30 g butter, 2 tbsp ${word}`,
  (word, market) => `${market} label for ${word} macarons: 100 g sugar, 50 g butter`,
  (word, market) => `${market} label: 30 g butter, 12 g ${word} powder`,
];
const questions: readonly ((word: string) => string)[] = [
  (word) => `allergens in ${word} ganache`,
  (word) => `what do i declare for ${word} macarons`,
  (word) => `allergens for lemon macarons with ${word}`,
  (word) => `my macarons have ${word} in the filling, which allergens go on the label`,
  (word) => `allergens for macarons filled with ${plural(word)} and raspberry jam`,
  (word) => `which allergens in macarons that contain ${word}`,
];

const nameOf = (id: string, market: Market) => allergens.find((row) => row.id === id)?.[market];
const itemsOf = (answers: readonly Answer[]) =>
  answers.flatMap(({ items = [] }) => items as Record<string, unknown>[]);

/** What an answer declares, by the law's own names. */
function declaredIn(answers: readonly Answer[], market: Market): string[] {
  const items = itemsOf(answers);
  const lines = items.flatMap(({ line, text }) =>
    line === "allergens"
      ? String(text)
          .replace(/^[^:]*: /, "")
          .split(", ")
      : [],
  );
  const named = items.flatMap(({ allergen }) => (allergen ? [nameOf(String(allergen), market) ?? ""] : []));
  return [...new Set([...lines, ...named].map((each) => each.toLowerCase()))].sort();
}
const checksIn = (answers: readonly Answer[]) =>
  itemsOf(answers)
    .flatMap(({ check }) => (check ? [plainly(String(check))] : []))
    .join("; ");

/** "Is "halvahs" halves?": it is asked what was typed, and nothing is declared yet. */
const asksWhatItWas = (answers: readonly Answer[]) => answers.some(({ headline }) => /^Is "/.test(headline));

async function holds(line: string, { word, brings, unsure }: Word, market: Market): Promise<void> {
  const answers = await baker().ask(line);
  if (asksWhatItWas(answers)) return;
  const said = `${line} -> ${answers.map((each) => each.headline).join(" // ")}`;
  for (const id of brings) {
    const name = nameOf(id, market)?.toLowerCase();
    if (name) expect(declaredIn(answers, market), said).toContain(name);
  }
  // by its name, or by what only its wrapper tells
  const checks = checksIn(answers);
  if (unsure && !checks.includes(plainly(word))) expect(checks, said).toContain(plainly(unsure));
}

describe("whatever word of the tables is typed, wherever it stands", () => {
  /** Every word goes through a few of the frames: which, and under which law, follows from its place. */
  const perWord = 3;
  test("on a list", { timeout: 120_000 }, async () => {
    for (const [at, word] of words.entries())
      for (let nth = 0; nth < perWord; nth++) {
        const frame = lists[(at * perWord + nth) % lists.length];
        const market = markets[(at + nth) % markets.length] ?? "us";
        if (frame) await holds(frame(word.word, market), word, market);
      }
  });
  test("in a question", { timeout: 120_000 }, async () => {
    for (const [at, word] of words.entries()) {
      const frame = questions[at % questions.length];
      if (frame) await holds(frame(word.word), word, "us");
    }
  });
  test("drawn anew each time", { timeout: 120_000 }, async () => {
    const from = <T>(list: readonly T[]) => fc.constantFrom(...list);
    await fc.assert(
      fc.asyncProperty(from(words), from(lists), from(markets), (word, frame, market) =>
        holds(frame(word.word, market), word, market),
      ),
      { numRuns: 200 },
    );
    await fc.assert(
      fc.asyncProperty(from(words), from(questions), (word, frame) => holds(frame(word.word), word, "us")),
      { numRuns: 100 },
    );
  });
  test("behind a word that nobody knows, which is named as well", { timeout: 120_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...words), fc.constantFrom(...markets), async (word, market) => {
        const line = `${market} label: 50 g zorp ${word.word}, 30 g sugar`;
        await holds(line, word, market);
        expect(checksIn(await baker().ask(line)), line).toContain("zorp");
      }),
      { numRuns: 80 },
    );
  });
});

describe("lists worked by hand", () => {
  // macaron shells are almond and egg, a buttercream butter and egg whites, a ganache cream: common practice
  test.each<[string, Market, string[]]>([
    ["us label: 60 g peanut buttercream, 100 g sugar", "us", ["egg", "milk", "peanut"]],
    ["us label: 60 g black walnut, 100 g sugar", "us", ["black walnut"]],
    ["eu label: 60 g black walnut, 100 g sugar", "eu", ["walnut"]],
    ["us label: 60 g pine nuts, 100 g sugar", "us", ["pine nut"]],
    ["eu label: 60 g pine nuts, 100 g butter", "eu", ["milk"]],
    ["eu label: 20 g queensland nuts, 100 g sugar", "eu", ["macadamia"]],
    ["eu label: 20 g celery, 100 g butter", "eu", ["celery", "milk"]],
    ["us label: 20 g celery, 100 g butter", "us", ["milk"]],
    ["us label: 20 g spelt, 100 g sugar", "us", ["wheat"]],
    ["eu label: 20 g kamut, 100 g sugar", "eu", ["wheat"]],
    ["us label: 20 g triticale, 100 g sugar", "us", ["wheat"]],
    ["eu label: 20 g malt extract, 100 g sugar", "eu", ["barley"]],
    ["us label: 20 g malted milk powder, 100 g sugar", "us", ["milk", "wheat"]],
    ["eu label: 20 g malted milk powder, 100 g sugar", "eu", ["barley", "milk", "wheat"]],
    ["eu label: 20 g rye flour, 10 g oats, 100 g sugar", "eu", ["oats", "rye"]],
    ["us label: 60 g soy milk, 100 g sugar", "us", ["soy"]],
    ["eu label: 60 g soy milk, 100 g sugar", "eu", ["soya"]],
    ["us label: 60 g cashew butter, 100 g sugar", "us", ["cashew"]],
    ["eu label: 60 g oat milk, 100 g sugar", "eu", ["oats"]],
    ["us label: 60 g gianduja paste, 30 g butter", "us", ["hazelnut", "milk"]],
    ["us label: 60 g creme patissiere, 30 g sugar", "us", ["egg", "milk"]],
    ["us label: 60 g egg nog, 30 g sugar", "us", ["egg", "milk"]],
    ["us label: 50 g graham cracker, 30 g butter", "us", ["milk", "wheat"]],
    ["us label: waffle 50 g, butter 30 g", "us", ["egg", "milk", "wheat"]],
    ["us label: 30 g butter, 10 g soy sauce", "us", ["milk", "soy", "wheat"]],
    ["us label: 40 g prawns, 30 g butter", "us", ["crustacean shellfish", "milk"]],
    ["eu label: 40 g mussels, 30 g butter", "eu", ["milk", "molluscs"]],
    ["us label: 40 g groundnuts, 30 g sugar", "us", ["peanut"]],
    ["eu label: 40 g mulled wine, 30 g sugar", "eu", ["sulphites"]],
    ["us label: 40 g casein, 20 g egg lecithin", "us", ["egg", "milk"]],
    ["us label: 100 g free range egg whites, 100 g sugar", "us", ["egg"]],
    ["us label: 100 g butter free from salt, 30 g sugar", "us", ["milk"]],
    ["us label for pistachio macarons: 30 g butter, 20 g sugar", "us", ["milk", "pistachio"]],
    ["allergens in meringue ganache", "us", ["egg", "milk"]],
    ["allergens in curd macarons", "us", ["almond", "egg", "milk"]],
    ["allergens for macarons filled with cookies and jam", "us", ["almond", "egg", "wheat"]],
    [
      "allergens for macarons that contain peanut butter and milk chocolate",
      "us",
      ["almond", "egg", "milk", "peanut"],
    ],
    [
      "my macarons contain pistachio, cream and wheat biscuit. which allergens?",
      "us",
      ["almond", "egg", "milk", "pistachio", "wheat"],
    ],
    ["what allergens do they have: cashew butter, tahini", "us", ["cashew", "sesame"]],
    ["what do i declare, they contain walnut paste and buttercream", "us", ["egg", "milk", "walnut"]],
    ["is walnut buttercream with pecans nut free", "us", ["egg", "milk", "pecan", "walnut"]],
  ])("%s", async (line, market, list) => {
    expect(declaredIn(await baker().ask(line), market)).toEqual(list);
  });
});

describe("what only sounds like an allergen", () => {
  test.each([
    "coconut cream",
    "coconut milk",
    "cocoa butter",
    "shea butter",
    "apple butter",
    "cream soda",
    "cream of tartar",
    "butternut squash",
    "butter beans",
    "crab apple",
    "oyster mushroom",
    "ginger beer",
    "nutmeg",
    "chestnut puree",
  ])("%s brings none", async (word) => {
    for (const market of markets)
      expect(
        declaredIn(await baker().ask(`${market} label: 50 g ${word}, 130 g almond flour`), market),
        market,
      ).toEqual(["almond"]);
  });
});

describe("what isn't in them", () => {
  test.each<[string, string[]]>([
    ["allergens in lemon macarons with no milk", ["almond", "egg"]],
    ["allergens for lemon macarons without peanut, with white chocolate ganache", ["almond", "egg", "milk"]],
    ["allergens in peanut-free sesame macarons", ["almond", "egg", "sesame"]],
    ["allergens for macarons with lemon curd, white chocolate, not praline", ["almond", "egg", "milk"]],
    ["us label: 30 g butter, 20 g sugar, no nuts", ["milk"]],
    ["us label: 30 g butter, 20 g tahini, without peanut", ["milk", "sesame"]],
    // asked about
    ["is there peanut in my pistachio macarons", ["almond", "egg", "pistachio"]],
    ["walnut allergy, are lemon macarons ok", ["almond", "egg"]],
    ["does my hazelnut buttercream contain soy", ["egg", "hazelnut", "milk"]],
    ["allergens for macarons with peanut butter, also any sesame in them?", ["almond", "egg", "peanut"]],
  ])("%s", async (line, list) => {
    expect(declaredIn(await baker().ask(line), "us")).toEqual(list);
  });
});

describe("what nobody knows is named as to be checked", () => {
  test.each([
    ["us label: 60 g zorp butter, 30 g sugar", "zorp butter"],
    ["us label: 60 g butter, zorp, 30 g sugar", "zorp"],
    ["us label: 60 g zorp, 30 g sugar", "zorp"],
    ["allergens for macarons with butter and zorp", "zorp"],
    ["what do i declare for zorp macarons", "zorp"],
    ["us label: 50 g sunflower butter, 30 g sugar", "sunflower butter"],
    ["us label for caramel macarons: 100 g sugar, 50 g butter", "milk"],
  ])("%s", async (line, name) => {
    expect(checksIn(await baker().ask(line))).toContain(name);
  });
  test("a list of another bake is still none of ours", async () => {
    for (const line of [
      "label for brownies",
      "label for a 900 g loaf of bread",
      "us label for 24 cupcakes: 100 g sugar",
    ])
      expect((await baker().one(line)).status, line).toBe("declined");
  });
});
