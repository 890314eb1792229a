/**
 * A bowl split in another way, a recipe brought to another size, a tray and a size that were told: said as bakers say it,
 * with a wish, an opinion or a mishap around the numbers. Every value is arithmetic, worked by hand, but for those beside
 * which a rule of data/rules stands.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

/** The figures of the last answer by their names, to a hundredth of a gram. */
const figuresOf = async (...turns: string[]): Promise<Record<string, number>> => {
  const { figures } = await talk(...turns);
  return Object.fromEntries(
    (figures ?? []).map(({ name, value }) => [name, Math.round((value ?? 0) * 100) / 100]),
  );
};

describe("a split with other shares", () => {
  const first = "540 g batter into three parts green and one part white";
  it.each([
    // 540 × 2/3 and 1/3
    ["two parts to one looks nicer", 360, 180],
    ["i'd prefer two to one", 360, 180],
    ["hmm thats too green, 2 to 1", 360, 180],
    ["actually id rather have two parts green for every part white", 360, 180],
    ["two green to one white would be prettier", 360, 180],
    ["i think the white should be one part in three", 360, 180],
    ["make the white one part and the green two", 360, 180],
    // 540 × 5/9 and 4/9
    ["my sister says five to four", 300, 240],
    // 540 × 5/6 and 1/6, in the order of the names or as the words ask
    ["too much white. five to one", 450, 90],
    ["less white, one to five", 450, 90],
    ["more white, 5 to 1", 90, 450],
    // 540 × 1/3 and 2/3
    ["2 to 1 with white the big one", 180, 360],
    ["id like it the other way round", 135, 405],
  ])("%s", async (say, green, white) => {
    expect(await figuresOf(first, say)).toEqual({ green, white });
  });
  it.each(["hm too much cream, make it 5 to 1", "less cream, 5 to 1", "not so much cream please, 5 to 1"])(
    "a color that is an ingredient too, 570 × 5/6 and 1/6: %s",
    async (say) => {
      const told =
        "570 g of batter, id like three parts lilac to two parts cream coloured, whats in each bowl";
      expect(await figuresOf(told, say)).toEqual({ lilac: 475, cream: 95 });
    },
  );
  it.each([
    ["no just two bowls, even", 300],
    ["i changed my mind, just two colours, same amount each", 300],
    ["too fiddly, in two, evenly", 300],
    ["just halves", 300],
    ["lets do it in four equal", 150],
    ["make it five even bowls instead", 120],
  ])("another number of parts of 600 g: %s", async (say, each) => {
    expect(await figuresOf("600 g batter three colours 1:2:3", say)).toEqual({ each });
  });
  it("behind the color for one of them, and with a third color it is no other ratio", async () => {
    expect(await figuresOf(first, "how much gel for the green", "hmm two parts to one looks nicer")).toEqual({
      green: 360,
      white: 180,
    });
    // 540 / 3 each
    const joined = await figuresOf(first, "no, one part green, one part white and one part pink");
    expect(Object.values(joined)).toEqual([180, 180, 180]);
  });
  it("drops are no ratio", async () => {
    // 540 × 3/4 and 1/4
    expect(await figuresOf(first)).toEqual({ green: 405, white: 135 });
    // drops weigh nothing that is known: asked back for in grams
    const { tool, status, question, figures } = await talk(first, "gel for the white, 2 to 3 drops ok?");
    expect([tool, status, figures ?? []]).toEqual(["dose", "asking", []]);
    expect(question).toMatch(/in grams/);
  });
});

describe("a bowl told in shares", () => {
  it.each([
    "a quarter of my 380 g buttercream gets raspberry, the remainder stays vanilla",
    "raspberry gets a quarter of my 380 g buttercream, vanilla the rest",
    "from 380 g buttercream a quarter goes raspberry and the remainder vanilla",
    "i put raspberry in a quarter of my 380 g buttercream and leave the rest vanilla",
    "25 percent of my 380 g buttercream gets raspberry, the remainder stays vanilla",
    "three quarters of my 380 g buttercream stay vanilla, the other quarter gets raspberry",
  ])("380 / 4 and what is left: %s", async (say) => {
    expect(await figuresOf(say)).toEqual({ raspberry: 95, vanilla: 285 });
  });
  it("and then in five: 380 / 5", async () => {
    const told = "a quarter of my 380 g buttercream gets raspberry, the remainder stays vanilla";
    expect(await figuresOf(told, "wait make it 5 equal portions")).toEqual({ each: 76 });
  });
  // zest is 0.5 to 1.5 % of a buttercream (from memory, as in data/rules)
  it.each([
    "ok the 140 g bowl first, how much lemon zest in that buttercream",
    "take the 140 g bowl, how much lemon zest",
    "for the 140 g one, lemon zest?",
  ])("one of the bowls by its weight, 140 × 0.5 % to 1.5 %: %s", async (say) => {
    const told =
      "this 400 g buttercream wants to be 35 percent lemon and 65 percent poppy seed, how do i divide it";
    const { tool, figures } = await talk(told, say);
    const [zest] = figures ?? [];
    expect([tool, Number(zest?.low?.toFixed(6)), Number(zest?.high?.toFixed(6))]).toEqual(["dose", 0.7, 2.1]);
  });
});

describe("a recipe with how many it makes", () => {
  const told =
    "a recipe for 20 macarons has 90 g almond flour 80 g icing sugar 70 g whites 60 g sugar, id like 30";
  it.each([
    ["what about 50", 2.5],
    ["and for 50 macarons", 2.5],
    ["how about 10 only", 0.5],
    ["hmm better 36", 1.8],
    ["what about 2 times", 2],
  ])("%s", async (say, factor) => {
    expect((await figuresOf(told, say)).factor).toBe(factor);
  });
  it("behind what is at hand a number is of that, unless it is for so many", async () => {
    // 40 / 20 of 70 g
    expect((await figuresOf(told, "ive only got 80 g whites", "and for 40")).whites).toBe(140);
    expect((await figuresOf(told, "ive only got 80 g whites", "no 75")).whites).toBe(75);
  });
  it.each([
    ["100 g whites 130 g almond flour 130 g icing sugar 90 g sugar makes 24, i want 48", 2],
    [
      "recipe for 24 macarons: 100 g whites 130 g almond flour 130 g icing sugar 90 g sugar. scale to 36",
      1.5,
    ],
  ])("%s", async (say, factor) => {
    expect((await figuresOf(say)).factor).toBe(factor);
  });
});

describe("what to weigh", () => {
  // 66 shells of 0.53 × 3.8², 4 % lost: 526.16 g batter, of which 100 / 460 are whites (from memory and common practice)
  it.each([
    "what goes on the scale to get shells for 30 macarons",
    "what do i put on the scale for shells for 30 macarons",
    "shells for 30 macarons, what goes on the scale",
    "what goes into the bowl to make shells for 30 macarons",
  ])("%s", async (say) => {
    const { tool, of } = await talk(say);
    expect([tool, Number(of("whites")?.value?.toFixed(2))]).toEqual(["scale", 114.38]);
  });
  const eggs = "well 136 g of white came out of these eggs, for the house shells what goes with that";
  it("whites out of eggs: 136 × 1.3 of each flour and sugar", async () => {
    const { whites, ...all } = await figuresOf(eggs);
    expect([whites, all["almond flour"], all["granulated sugar"]]).toEqual([136, 176.8, 136]);
  });
  it.each([
    ["oops a blob went on the floor, scale says 128 now", 128],
    ["argh i spilled some, 120 on the scale", 120],
    ["some stuck to the bowl, now it reads 131", 131],
    // 136 - 20
    ["i lost 20 g", 116],
    ["i spilled some sugar, 120 left", 120],
    // of another ingredient: 136 - 20; (176.8 - 15) / 1.3
    ["i lost 20 g of the sugar", 116],
    ["spilled 15 g almond flour on the floor", 124.46],
  ])("%s", async (say, whites) => {
    expect((await figuresOf(eggs, say)).whites).toBe(whites);
  });
  it.each([
    "hmm my bowl wont hold that will it, do 600",
    "my mixer cant take that, go 600",
    "that wont fit in my bowl, so 600",
  ])("too much for what it is mixed in: %s", async (say) => {
    const told = "i want to land on 900 g of shell batter, not a gram over, tell me what to weigh";
    expect((await figuresOf(told, say)).total).toBe(600);
  });
  it.each([
    "and what would that make, in macarons i mean",
    "in macarons, whats that",
    "which makes what, in macarons",
    "so how many do i end up with",
  ])("175 × 4.6 / 1.3 = 619.2 g, × 0.96 / (0.53 × 3.8²) = 77 shells, in twos: %s", async (say) => {
    expect((await figuresOf("shells from 175 g almond flour", say)).macarons).toBe(38);
  });
});

describe("a tray and a size that were told", () => {
  it("24 and 48 on a tray of 400 by 300: floor(400 / 62) × floor(300 / 62), floor(400 / 48) × floor(300 / 48)", async () => {
    const her = baker();
    const first = await her.one("ive one tray clean, what will it hold if my shells are 42 mm across");
    const second = await her.one("aww and baby ones, 28 mm");
    expect([first, second].map(({ figures }) => figures?.[0]?.value)).toEqual([24, 48]);
  });
  it.each([
    "how many 38 mm shells on it",
    "so how many shells of 38 mm go on",
    "what does it hold at 38 mm",
    "38 mm shells, how many on that",
  ])("floor(450 / 58) × floor(350 / 58), and nothing is kept: %s", async (say) => {
    const her = baker();
    await her.ask("my tray measures 450 by 350 mm, remember");
    const { figures } = await her.one(say);
    expect([figures?.[0]?.value, her.record().bench.diameter_mm]).toEqual([42, undefined]);
  });
  it.each([
    "save this: all my shells get piped at 4.2 cm",
    "save this: i pipe all my shells 4.2 cm wide",
    "please save: every shell of mine is 42 mm",
    "remember this, my macarons all get piped to 42 mm",
  ])("44 shells of 0.53 × 4.2², 4 % lost: %s", async (say) => {
    const her = baker();
    await her.ask(say);
    const { figures } = await her.one("20 macarons, batter?");
    expect(Number(figures?.[0]?.value?.toFixed(1))).toBe(428.5);
  });
  it("what came out so today is a note", async () => {
    expect((await baker().one("note this: my shells came out at 42 mm today")).tool).toBe("note");
  });
});
