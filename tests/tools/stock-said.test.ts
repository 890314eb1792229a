/**
 * Stock in plain words: what is taken out, what is counted, what nobody ordered. All sums are arithmetic, written beside the
 * sentences. An egg counts 50 g, a white 33 g (USDA SR28, NDB 01123 and 01124, large). House formula 100 : 130 : 130 : 100,
 * so 100 g almond flour is 100 / 130 of 460 g batter.
 */
import { describe, expect, it, test } from "vitest";
import { goneWord, takingWord } from "../../src/tools/shelf/moves.ts";
import { baker } from "../support/ask.ts";
import { figure } from "../support/world.ts";

/** What stands on the shelf after the turns. */
async function stocked(turns: string, start = {}) {
  const her = baker(start);
  for (const turn of turns.split("|")) await her.ask(turn);
  return Object.fromEntries(her.record().stock.map(({ name, grams }) => [name, grams]));
}

const butter = { record: { stock: [{ id: 1, name: "butter", grams: 1000 }] } };

describe("taking out", () => {
  test.each([
    // a weight is so much of it, and not the whole of it
    [
      "pantry: 1 kg almond flour, 500 g butter|remove 100 g almond flour",
      { "almond flour": 900, butter: 500 },
    ],
    ["pantry: 1 kg butter|delete 250 g of the butter", { butter: 750 }],
    // 12 eggs are 600 g, 3 of them 150
    ["pantry: 12 eggs|take away 3 eggs", { egg: 450 }],
    ["pantry: 12 eggs|dropped 2 eggs", { egg: 500 }],
    // 30 eggs are 1500 g, less 150
    ["pantry: 30 eggs|took 3 eggs", { egg: 1350 }],
    // 1000 - 200 - 100 - 50 - 20 - 10
    [
      "pantry: 1 kg AF|take 200 g AF|take out 100 g AF|deduct 50 g AF|reduce AF by 20 g|ate 10 g AF",
      { "almond flour": 620 },
    ],
    // butter 1000 - 20 - 30; almond flour 1000 - 50 - 50 - 50 - 30 - 20
    [
      "pantry: 1 kg butter, 1 kg AF|gave 20 g butter to my sister|lent 30 g butter|gave away 50 g AF|subtract 50 g AF|minus 50 g AF|threw out 30 g|lost 20 g",
      { butter: 950, "almond flour": 800 },
    ],
    ["pantry: 1 kg butter|take 50 off the butter", { butter: 950 }],
    ["pantry: 1 kg butter|butter minus 20 g", { butter: 980 }],
    ["pantry: 1 kg butter|less 40 g butter", { butter: 960 }],
    ["pantry: 1 kg butter|100 g butter went into the curd", { butter: 900 }],
    ["pantry: 1 kg butter|my kid ate 50 g butter", { butter: 950 }],
    ["pantry: 1 kg butter|gave my sister half the butter", { butter: 500 }],
    // a tenth of 1000
    ["pantry: 1 kg butter|used 10 percent of the butter", { butter: 900 }],
    ["pantry: 1 kg butter|subtract 50|and another 30", { butter: 920 }],
    // the second goes the way of the first
    ["pantry: 1 kg butter, 500 g sugar|used 100 g butter|and 50 g sugar", { butter: 900, sugar: 450 }],
    // put right in the place of what was taken: 1000 - 150, 600 - 5 x 50
    ["pantry: 1 kg butter|used 100 g|it was 150", { butter: 850 }],
    ["pantry: 12 eggs|used 4 eggs|no wait 5", { egg: 350 }],
  ])("%s", async (turns, expected) => expect(await stocked(turns)).toEqual(expected));

  // each of these words, and never one that adds
  const verbs =
    "take|remove|deduct|subtract|gave away|lent|loaned|donated|sold|tossed|dumped|discarded|lost|dropped|burnt|wasted|ruined|spoiled|ate".split(
      "|",
    );
  test.each(verbs)("%s 50 g butter: 1000 - 50", async (verb) => {
    expect(await stocked(`pantry: 1 kg butter|${verb} 50 g butter`)).toEqual({ butter: 950 });
    expect(verb.split(" ")[0]).toMatch(new RegExp(`^${takingWord}$`));
  });

  test.each(["gave away", "donated", "threw out", "wasted", "sold", "lost"])(
    "%s, as the first thing that is said",
    async (verb) => {
      expect(verb).toMatch(new RegExp(`^${goneWord}$`));
      expect(await stocked(`${verb} 50 g butter`, butter)).toEqual({ butter: 950 });
    },
  );

  test("what sounds of going and comes: 1000 + 200", async () => {
    for (const said of [
      "my sister gave me 200 g butter",
      "put 200 g butter back",
      "took delivery of 200 g butter",
    ])
      expect(await stocked(`pantry: 1 kg butter|${said}`), said).toEqual({ butter: 1200 });
  });

  test("how much is asked where only a verb of less is said", async () => {
    const { ask, one, record } = baker(butter);
    await ask("whats in the pantry");
    expect((await one("reduce the butter")).status).toBe("asking");
    expect(record().stock[0]?.grams).toBe(1000);
  });
});

describe("a verb that nobody knows", () => {
  test.each([
    "fermented 20 g butter",
    "frobbed 20 g butter",
    "i did not use 20 g butter",
    "can i take 20 g butter",
    "put 20 g butter into a cake",
    "i made curd with 20 g butter",
    "20 g butter",
    "and 50",
  ])("%s: asked, and nothing is changed", async (said) => {
    const { ask, one, record } = baker();
    await ask("pantry: 1 kg butter");
    const answer = await one(said);
    expect([answer.tool, answer.status]).toEqual(["shelf", "asking"]);
    expect(record().stock[0]?.grams).toBe(1000);
    await ask("whats in the pantry");
    expect(record().stock[0]?.grams).toBe(1000);
  });

  // 1000 - 20, 1000 + 20, 20
  test.each([
    ["taken off", 980],
    ["take it off", 980],
    ["i used it", 980],
    ["put on the shelf", 1020],
    ["thats all there is", 20],
    ["for the bowl", 1000],
    ["no", 1000],
  ])("and the answer counts: %s", async (said, grams) => {
    const { ask, record } = baker();
    await ask("pantry: 1 kg butter");
    await ask("fermented 20 g butter");
    expect(record().stock[0]?.grams).toBe(1000);
    await ask(said);
    expect(record().stock.map((each) => each.grams)).toEqual([grams]);
  });

  test("of several things the one is asked: 500 - 20", async () => {
    const { ask, one, record } = baker();
    await ask("pantry: 1 kg AF, 500 g butter");
    expect((await one("lost 20 g")).headline).toBe("Of which: almond flour or butter?");
    await ask("the butter");
    expect(record().stock.map(({ grams }) => grams)).toEqual([1000, 480]);
  });
});

describe("a count is what there is", () => {
  test.each([
    ["pantry: 300 g butter|there's only 100 g butter", { butter: 100 }],
    ["pantry: 300 g butter|there's only 100 g butter|make that 120", { butter: 120 }],
    ["pantry: 1 kg AF|the AF is 800 g now", { "almond flour": 800 }],
    // four eggs of 50 g, then five
    ["pantry: 6 eggs|i only have 4 eggs", { egg: 200 }],
    ["pantry: 6 eggs|i only have 4 eggs|no wait 5", { egg: 250 }],
    ["pantry: 6 eggs|i have 4 eggs left", { egg: 200 }],
    ["pantry: 1 kg butter|down to 200 g butter", { butter: 200 }],
    ["pantry: 1 kg butter|the butter is down to 200 g", { butter: 200 }],
    ["pantry: 1 kg butter|reduce the butter to 200 g", { butter: 200 }],
    ["pantry: 1 kg butter|i counted 200 g butter", { butter: 200 }],
    ["pantry: 1 kg butter|i have 200 g butter", { butter: 200 }],
    ["pantry: 1 kg butter|my mistake, its 900", { butter: 900 }],
    // what comes on top is said to: 200 + 100
    ["pantry: 1 kg butter|i have 200 g butter|i also have 100 g butter", { butter: 300 }],
    ["pantry: 1 kg butter|i have 200 g butter|got another 100 g butter", { butter: 300 }],
  ])("%s", async (turns, expected) => expect(await stocked(turns)).toEqual(expected));

  test("taken and left in one sentence: which of them is there is asked", async () => {
    const { ask, one, record } = baker();
    await ask("pantry: 1 kg butter");
    expect((await one("used 100 g butter, 200 g left")).status).toBe("asking");
    expect(record().stock[0]?.grams).toBe(1000);
  });
});

describe("a dose is no stock", () => {
  test("nothing was ordered, so nothing is stored", async () => {
    const { ask, one, record } = baker();
    await ask("my bc is split");
    for (const said of ["add 20 g rum", "it was 30", "whats in the pantry"]) {
      await one(said);
      expect(record().stock, said).toEqual([]);
    }
  });

  // the bottle's 1 to 2 % of 200 g
  test("a bottle is put right in bare numbers, and the dose goes by it", async () => {
    const { ask, one, record } = baker();
    await ask("my mint bottle says 0.5 to 1 percent save that");
    await ask("no it is 1 to 2");
    expect(record().bottles).toMatchObject([{ taste: "mint", low_percent: 1, high_percent: 2 }]);
    const dose = await one("mint in 200 g bc");
    expect(dose.tool).toBe("dose");
    expect(dose.figures?.[0]).toMatchObject({ low: 2, high: 4, unit: "g" });
    expect(record().stock).toEqual([]);
  });

  test.each([
    ["no 2", 2, 2],
    ["make that 1.5 to 2", 1.5, 2],
    ["oops it says 1 to 1.5", 1, 1.5],
  ])("%s", async (said, low_percent, high_percent) => {
    const { ask, record } = baker();
    await ask("my mint bottle says 0.5 to 1 percent save that");
    await ask(said);
    expect(record().bottles).toMatchObject([{ low_percent, high_percent }]);
    expect(record().stock).toEqual([]);
  });
});

describe("a second thing from the cupboard", () => {
  const house = "save recipe house bc: 100 g whites, 150 g sugar, 250 g butter|house bc for 300 g|";
  test.each([
    // 100 / 130 is below 150 / 100
    ["i have 100 g AF what can i make|and 150 g whites", (100 / 130) * 460],
    // 90 / 130 is below all others
    ["i have 100 g AF what can i make|and 90 g powdered sugar|and 200 g whites", (90 / 130) * 460],
    // three whites are 99 g: 100 / 130 is below 99 / 100, and that is below 200 / 130
    ["i have 100 g AF what can i make|and 3 whites", (100 / 130) * 460],
    ["i have 3 whites, how much can i make|i also have 200 g AF", 0.99 * 460],
    ["only got 100 g AF|and 150 g whites", (100 / 130) * 460],
    // one of them counted anew: 150 / 100 is below 300 / 130
    ["i have 100 g AF what can i make|and 150 g whites|actually 300 g AF", 1.5 * 460],
    ["120 g egg whites what do i need of the rest|but i only have 200 g almond flour", 1.2 * 460],
    // butter 180 / 250 is below whites 90 / 100; whites 60 / 100 below it
    [`${house}i have 180 g butter how much can i make|and 90 g whites`, 0.72 * 500],
    [`${house}i have 180 g butter how much can i make|and 60 g whites|and 200 g sugar`, 0.6 * 500],
  ])("%s", async (turns, total) => {
    const { ask, one } = baker();
    const all = turns.split("|");
    for (const turn of all.slice(0, -1)) await ask(turn);
    const said = await one(all.at(-1) as string);
    expect(figure(said, "total").value).toBeCloseTo(total, 9);
  });

  it("names what runs out", async () => {
    const { ask, one } = baker();
    await ask("i have 100 g AF what can i make");
    const said = await one("and 150 g whites");
    expect(said.headline).toContain("almond flour runs out first");
    // 150 less 100 / 130 of 100
    expect(figure(said, "whites left").value).toBeCloseTo(150 - 1000 / 13, 9);
  });
});
