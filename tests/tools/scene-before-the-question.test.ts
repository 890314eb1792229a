/** The scene is told first, then it is asked. Expected values are worked by hand, the rule beside each. */
import { describe, expect, it } from "vitest";
import { baker, figureOf, onlyOf } from "../support/ask.ts";

const near = (value: number) => ({ value: expect.closeTo(value, 4) });
const range = (low: number, high: number) => ({ low: expect.closeTo(low, 6), high: expect.closeTo(high, 6) });

/** flavor = base × p / 100; of the finished weight base × p / (100 − p) (arithmetic). */
describe("a share that is told, then its bowl", () => {
  it.each([
    // 310 × 4.5 %, 300 × 0.4 %, 250 × 4 %
    [
      "A lady from choir taught me to stop at 4.5 percent with the rose flavoring and not a bit more. My buttercream weighs 310 g, so what's that in grams?",
      "flavor",
      13.95,
    ],
    [
      "Never go past 0.4 percent salt, he told me. My buttercream is 300 g so what's that in grams?",
      "salt",
      1.2,
    ],
    [
      "My grandmother never went above 4 percent with her almond flavoring. I've 250 g of buttercream here, so how many grams is that?",
      "flavor",
      10,
    ],
    // 285 × 5 / 95, 380 × 5 / 95
    [
      "I'd like the passion fruit flavouring to end up at 5% of the finished filling, and there's 285 g of plain buttercream waiting for it. What do I weigh out, please?",
      "flavor",
      15,
    ],
    [
      "I want rum to make up 5 percent of the finished ganache. There's 380 g of plain ganache in the bowl, so what do I weigh?",
      "rum",
      20,
    ],
  ])("%s", async (said, name, value) => expect(await figureOf(name, said)).toMatchObject(near(value)));

  it("another share of the same bowl", async () => {
    // 310 × 3 %; 285 × 4 / 96
    expect(
      await figureOf(
        "flavor",
        "My aunt told me to stop at 4.5 percent with the rose flavoring. My buttercream weighs 310 g, so what's that in grams?",
        "hm, still a touch soapy for me, what would 3 percent be please",
      ),
    ).toMatchObject(near(9.3));
    expect(
      await figureOf(
        "flavor",
        "I'd like the mint flavouring to end up at 5% of the finished filling, and there's 285 g of plain buttercream waiting. What do I weigh out, please?",
        "My brother-in-law thinks that sounds a lot. What about 4% of the finished filling?",
      ),
    ).toMatchObject(near(11.875));
  });
});

/** A spirit is 2-5 % (from memory), a flavor 3-4 % of a ganache (common practice). */
describe("a ganache made out of something stands nowhere", () => {
  // 360 g of ganache; 252 g
  it.each([
    [
      "Dad's turning eighty and he'll want something with a kick. I made a ganache out of 200 g dark chocolate and 160 g cream, how much rum can I put in that?",
      "rum",
      7.2,
      18,
    ],
    [
      "The ganache is made out of 180 g white chocolate and 72 g cream. How much raspberry flavor should go in?",
      "flavor",
      7.56,
      10.08,
    ],
  ])("%s", async (said, name, low, high) =>
    expect(await figureOf(name, said)).toMatchObject(range(low, high)),
  );
  it("one that is left out does", async () =>
    expect(
      await onlyOf("leave out a ganache of 200 g dark chocolate and 160 g cream, for how long?"),
    ).toMatchObject({ tool: "keep" }));
});

/** House formula: 100 whites, 130 almond flour (common practice); 33 g a white (USDA SR, NDB 01124). */
describe("what is said twice is there once", () => {
  it.each([
    // 88 × 1.3; 150 of almond flour is 150 / 1.3 of whites
    ["I've only 88 g of whites today, so scale the house shells to 88 g whites.", "almond flour", 114.4],
    ["I've got 120 g of whites, so what do the house shells need for 120 g whites?", "almond flour", 156],
    [
      "There's 150 g of almond flour left, so scale the house recipe to 150 g almond flour",
      "whites",
      150 / 1.3,
    ],
    ["I made 400 g of ganache, please split the 400 g of ganache in three", "each", 400 / 3],
  ])("%s", async (said, name, value) => expect(await figureOf(name, said)).toMatchObject(near(value)));
  it("two cups of whites are two", async () =>
    // 60 + 40
    expect(
      await figureOf(
        "almond flour",
        "I have 60 g of whites in one cup and 40 g of whites in another, what do i weigh for the house shells",
      ),
    ).toMatchObject(near(130)));
});

describe("what became of it, then what holds", () => {
  const eggs = "ive six egg whites here, how much almond flour does that call for?";
  it.each([
    // 4 × 33 × 1.3
    "My husband has just pinched two for an omelette, so make it four egg whites.",
    "My daughter needs two for her meringue, so let's say four whites.",
    "My wife used two of those for breakfast. Make it four whites then.",
  ])("%s", async (said) => expect(await figureOf("almond flour", eggs, said)).toMatchObject(near(171.6)));

  const bowl = "how much flavor for 300 g buttercream";
  it.each([
    // 3-5 % of 250, of 350
    [bowl, "My son has eaten 50 g of it, so make it 250 g.", "flavor", 7.5, 12.5],
    [bowl, "I threw 50 g away, so that's 250 g now", "flavor", 7.5, 12.5],
    [bowl, "I added 50 g of cream, so it's 350 g", "flavor", 10.5, 17.5],
    // 180 / 1.25 of cream, 1-1.5 to 1
    [
      "200 g dark chocolate, how much cream for piping",
      "I ate 20 g of the chocolate, so make it 180 g",
      "cream",
      120,
      180,
    ],
  ])("%s %s", async (first, then, name, low, high) =>
    expect(await figureOf(name, first, then)).toMatchObject(range(low, high)),
  );
  it("a timer that runs", async () =>
    expect(
      await figureOf(
        "left",
        "set a timer for 20 minutes",
        "My two boys want feeding first, so make it 30 minutes.",
      ),
    ).toMatchObject(near(30)));
  it("a size is kept", async () =>
    // 110 shells of 4 cm for 50: 110 × 0.53 × 16 / 0.96 (from memory)
    expect(
      await figureOf("batter", "how much batter for 40 macarons", "I only want 4 cm ones so make it 50"),
    ).toMatchObject(near((110 * 0.53 * 16) / 0.96)));
});

/** 0.53 × 3.8² g of batter a shell, 4 % stays, 2.2 shells a macaron; 0.42 × 3.8² of filling, 8 % stays (from memory). */
describe("people are no macarons", () => {
  const batter = (shells: number) => near((shells * 0.53 * 3.8 ** 2) / 0.96);
  const filling = (macarons: number) => near((macarons * 0.42 * 3.8 ** 2) / 0.92);
  const both = "how much batter and how much filling for 34 macarons";
  it.each([
    ["The ladies from number nine are joining us as well, so what's the filling for 42?", 42],
    ["Number five heard about it and want some, so what's the filling for 50?", 50],
  ])("%s", async (said, macarons) =>
    expect(await figureOf("filling", both, said)).toMatchObject(filling(macarons)),
  );
  it.each([
    // ceil(22 × 45 / 10) = 99; of 40, 88
    ["how much batter for 60 macarons", "Three families have cried off, so call it 45.", 99],
    [
      "how much batter for 34 macarons",
      "two more of the ladies are coming, so what's the batter for 40?",
      88,
    ],
    ["how much batter for 34 macarons", "the twins want 5 each, so make it 50", 110],
  ])("%s %s", async (first, then, shells) =>
    expect(await figureOf("batter", first, then)).toMatchObject(batter(shells)),
  );
  it.each([
    // 8 × 3 = 24, ceil(52.8) = 53; 9 × 4 = 36, 80; 20 × 2 = 40, 88
    ["We have eight guests coming, how much batter for 3 macarons each?", 53],
    ["My book club is nine ladies, so 4 macarons apiece. How much batter do I need?", 80],
    ["20 guests at two macarons a head, how much batter", 88],
    // said as well as worked out: once
    ["There are 8 of us, 3 each, so 24 macarons. How much batter?", 53],
    ["I live at number 15 and the oven is small. How much batter for 40 macarons?", 88],
    ["I've promised three dozen for Saturday. How much batter do I need?", 80],
  ])("%s", async (said, shells) => expect(await figureOf("batter", said)).toMatchObject(batter(shells)));
  it("says how it was worked out", async () =>
    expect((await onlyOf("12 people, 3 each, how much filling?"))?.assumed?.[0]).toContain(
      "3 for each of 12",
    ));
  it("guests with weights of their own aren't multiplied", async () =>
    expect(await onlyOf("12 guests get 40 g of buttercream each")).not.toMatchObject({ status: "answered" }));
});

describe("one part instead of another", () => {
  const card = "I want a third of this: 240 g mascarpone, 90 g cream, 45 g powdered sugar.";
  // half and twice of 240
  it.each([
    ["My mum is popping over after all, so make it half of the recipe instead of a third.", 120],
    ["half of it instead of a third", 120],
    ["Not a third, half please", 120],
    ["double the recipe instead of a third of it", 480],
  ])("%s", async (said, grams) =>
    expect(await figureOf("mascarpone", card, said)).toMatchObject(near(grams)),
  );
});

describe("hands full", () => {
  it.each([
    "Would you mind setting me a timer, please? I've flour up to my elbows.",
    "Can you start a timer? I've got sugar all over my hands.",
    "Please set a timer, I've cream on my sleeves and can't reach the clock.",
    "Set me a timer would you, there's butter all over the phone.",
    "I've ganache in my hair. Can you set a timer?",
    "Start a timer for me, my hands are full of egg.",
  ])("%s", async (said) => {
    const { ask } = baker();
    expect(await ask(said)).toMatchObject([
      { tool: "timer", status: "asking", question: "How long shall the timer run?" },
    ]);
    expect(await ask("18 minutes, thanks")).toMatchObject([
      { status: "answered", headline: "18 min, rings 9:48" },
    ]);
  });
  it("a ganache that is timed is one", async () =>
    expect(await onlyOf("Would you mind setting the ganache timer?")).toMatchObject({ status: "answered" }));
});

describe("who asks it", () => {
  const notes = ["35", "50", "40"].map((min) => `note: hazelnut batch, rested ${min} min`);
  // the median of 35, 40 and 50
  it.each([
    "My cousin's having a go at these tomorrow and she asks how long I usually rest the hazelnut ones, what shall I tell her?",
    "My friend's making some on Sunday and wants to know how long I usually rest hazelnut.",
    "My sister is baking tomorrow, how long do I usually rest the hazelnut ones?",
  ])("%s", async (said) => expect(await figureOf("rest", ...notes, said)).toMatchObject({ value: 40 }));
  it.each([
    [
      "My brother-in-law keeps chickens and wants to know what to send over. How many egg whites do I need for 30 macarons?",
      "shells",
    ],
    [
      "My friend keeps goats, which is how all this started. How much cream for 200 g dark chocolate?",
      "ganache",
    ],
    ["I've no idea how I got roped into this. How much batter for 80 macarons?", "shells"],
    ["My son's on the phone asking how hot the oven should be for shells, what do I say to him?", "method"],
    [
      "My friend wonders how much raspberry flavor goes in 200 g of buttercream, what shall I tell her?",
      "dose",
    ],
    ["My sister wants to know how long they keep.", "keep"],
  ])("%s", async (said, tool) => expect(await onlyOf(said)).toMatchObject({ tool, status: "answered" }));
});

describe("what is exclaimed, and asked of nobody", () => {
  it.each([
    [
      "How clever. Let's try it then, I've 150 g of dark chocolate for a piping ganache, how much cream do I need?",
      "ganache",
    ],
    ["Goodness, how clever of you. So how much salt in 250 g buttercream?", "dose"],
    ["Now then, let's see what you're made of. How much batter for 40 macarons?", "shells"],
    ["It's been one of those days, hasn't it? How much lemon flavor for 180 g buttercream?", "dose"],
    [
      "Do you know, my mother never weighed a thing in her life. What's 2 cups of powdered sugar in grams?",
      "convert",
    ],
    ["Isn't it hot today? How long can they stay out?", "keep"],
    ["Where do the years go? My baby is eighteen on Friday. How much rum for 240 g of ganache?", "dose"],
    ["Remember I told you about my sister? She wants 30 macarons. How much batter?", "shells"],
    ["What with one thing and another I'm running late. How much batter for 24 macarons?", "shells"],
  ])("%s", async (said, tool) => expect(await onlyOf(said)).toMatchObject({ tool, status: "answered" }));
  // 3-5 % of 300
  it.each(["much obliged. and for 300 g?", "ta very much. and for 300 g?", "How lovely! What about 300 g?"])(
    "%s",
    async (said) =>
      expect(await figureOf("flavor", "how much rose flavor for 200 g buttercream", said)).toMatchObject(
        range(9, 15),
      ),
  );
  it("what is really asked so", async () => {
    expect(await onlyOf("Do you know how long they keep?")).toMatchObject({ tool: "keep" });
    expect(await onlyOf("Why do I always get cracked tops?")).toMatchObject({ tool: "trouble" });
  });
});

describe("told before a note", () => {
  it.each([
    [
      "I never wrote up last week's, so here goes. Note for March 7: black cherry batch, a bit wrinkled on top.",
      "what did i bake on march 7",
      "cherry",
    ],
    [
      "Before it slips my mind again. Note: coconut batch, hollow inside, oven was too hot.",
      "show me the last coconut batch",
      "hollow",
    ],
    [
      "I never got round to it on Sunday, what with one thing and another. Note for March 8: violet batch, went flat.",
      "what did i make last sunday",
      "violet",
    ],
  ])("%s", async (said, later, holds) => {
    const { ask } = baker();
    expect(await ask(said)).toMatchObject([{ tool: "note", status: "answered" }]);
    expect((await ask(later))[0]?.headline).toContain(holds);
  });
});

describe("what has slipped her mind isn't thrown away", () => {
  const saved = "save recipe velvet shells: 110 g whites, 140 g almond flour";
  it.each([
    "I forget what I've kept with you, what recipes do I have?",
    "I forget which recipes I've given you",
    "I've forgotten what I saved with you. Which recipes are there?",
    "I forget what's in velvet shells, can you show me?",
  ])("%s", async (said) => {
    const { ask, record } = baker();
    await ask(saved);
    expect(await ask(said)).toMatchObject([
      { tool: "formula", headline: expect.stringContaining("velvet shells") },
    ]);
    expect(record().formulas).toHaveLength(1);
  });
  it("an order to forget it is one", async () => {
    const { ask, record } = baker();
    await ask(saved);
    await ask("please forget the velvet shells recipe");
    expect(record().formulas).toHaveLength(0);
  });
});

/** What has passed while a ganache split is no timer. */
it("a back that was turned for a minute", async () =>
  expect(
    await onlyOf("i turned my back for one minute and my 420g of ganache has split, what do i do please"),
  ).toMatchObject({ tool: "ganache", status: "answered" }));

/** Gas mark 3 is 160 °C (common practice). */
it("the mark that is numbered", async () =>
  expect(await figureOf("result", "It only does gas marks. What's gas mark 3 in Celsius?")).toMatchObject({
    value: 160,
  }));
