/**
 * Questions and orders put indirectly and politely: the context first, two questions in a turn, "I wonder whether you
 * could", "what of a smaller bowl". Expected values are worked by hand from the rules named beside them.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

/** The answers to the last of some turns. */
async function last(turns: string) {
  const { ask } = baker();
  let answers: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of turns.split("|")) answers = await ask(turn);
  return answers;
}

/** A figure of one of the answers, by its calculator and name. */
const figure = (answers: Awaited<ReturnType<typeof last>>, tool: string, name: string) =>
  answers.find((each) => each.tool === tool)?.figures?.find((each) => each.name === name);

describe("a dose that is asked for indirectly: base × p / 100", () => {
  it.each([
    // a concentrated flavor in buttercream, 3-5 %
    [
      "I wonder whether you could tell me how much pear flavour suits 240 g of buttercream.",
      "flavor",
      7.2,
      12,
    ],
    [
      "Of buttercream I have 230 g. How much rose flavouring might I put in, do you think?",
      "flavor",
      6.9,
      11.5,
    ],
    ["I wonder whether you could tell me, I have 230 g buttercream, how much flavor?", "flavor", 6.9, 11.5],
    // in ganache, 3-4 %: chocolate, cream and butter together, whatever they are for; 180 + 72 + 20 = 272 g
    [
      "My filling is 180 g white chocolate, 72 g cream and 20 g butter, melted together. How much passion fruit flavouring does that call for?",
      "flavor",
      8.16,
      10.88,
    ],
    // instant coffee, 1-2 %
    [
      "I've 430 g of plain buttercream which is to taste of coffee, by way of instant powder. How much of that goes in?",
      "instant coffee",
      4.3,
      8.6,
    ],
    // her bottle's own 0.8-1.2 %
    [
      "The bottle of violet flavouring says 0.8 to 1.2 %. Would you kindly save that?|I've 350 g of buttercream. How much violet?|What of a smaller bowl, 125 g?",
      "flavor",
      1,
      1.5,
    ],
    // the table's range again, and not the 3.2 % before
    [
      "3.2 % lime flavour in 165 g buttercream|And the ordinary range of lime flavouring for 165 g of buttercream, what does that run to?",
      "flavor",
      4.95,
      8.25,
    ],
    // two thirds of 360 g are 240 g
    [
      "Two thirds of the buttercream, 360 g in all, is to be rose. How much flavour for that part?",
      "flavor",
      7.2,
      12,
    ],
    // 390 / 3 = 130 g in each
    [
      "Would you divide 390 g of buttercream into three equal bowls? I wonder, too, how much lavender flavouring each of them would then need.",
      "flavor",
      3.9,
      6.5,
    ],
  ])("%s", async (turns, name, low, high) => {
    const dose = figure(await last(turns), "dose", name);
    expect(dose?.low).toBeCloseTo(low, 9);
    expect(dose?.high).toBeCloseTo(high, 9);
  });
  it("is asked for once, where the flavor is told before it", async () =>
    expect(
      (await last("430 g of buttercream which is to taste of rum. How much of that goes in?")).map(
        ({ tool }) => tool,
      ),
    ).toEqual(["dose"]));
});

describe("a recipe so many times over: the house formula on 100 g of whites", () => {
  it.each([
    [
      "I've a notion to make twice and a half the house recipe for shells. What would the weights be?",
      250,
      325,
    ],
    [
      "I've a mind to make half as much again of the house shell recipe. What would each weight come to?",
      150,
      195,
    ],
    [
      "The house recipe is what I use for shells. What would it come to with 85 g of whites, might I ask?",
      85,
      110.5,
    ],
  ])("%s", async (said, whites, flour) => {
    const answers = await last(said);
    expect(answers).toHaveLength(1);
    expect(figure(answers, "scale", "whites")?.value).toBeCloseTo(whites, 9);
    expect(figure(answers, "scale", "almond flour")?.value).toBeCloseTo(flour, 9);
  });
});

describe("a ganache that is told before it is asked about", () => {
  it("estimates its water activity, and says nothing else", async () => {
    const answers = await last(
      "150 g of milk chocolate melted into 75 g of heavy cream is what I made. Would you estimate the water activity of that?",
    );
    // Norrish: sugar 79.3425 g, water 45.5325 g, X = 0.08400, a_w = 0.91600 × exp(−6.47 × 0.007056)
    expect(answers).toHaveLength(1);
    expect(figure(answers, "ganache", "aw")?.value).toBeCloseTo(0.8751, 3);
  });
  it("sets the timer that is ordered behind it: 210 / 2.5 = 84 g, 45 min", async () => {
    const answers = await last(
      "I've a slab of white chocolate, 210 g, and am after a ganache I can pipe. What cream does it take, and would you set the ganache timer going?",
    );
    expect(figure(answers, "ganache", "cream")?.value).toBeCloseTo(84, 9);
    expect(figure(answers, "timer", "left")?.value).toBe(45);
  });
  it("mends one that runs off the shell: 1.25 × 150 − 150 = 37.5 g", async () =>
    expect(
      figure(
        await last(
          "I've made a ganache from 150 g of dark chocolate and 150 g of cream, and it runs off the shell. How much chocolate should I add, would you say?",
        ),
        "ganache",
        "add chocolate",
      )?.value,
    ).toBeCloseTo(37.5, 9));
});

describe("timers", () => {
  it.each([
    ["timer 16 min bake|The oven is sluggish, so allow it 3 minutes more, please.", 19],
    ["timer 16 min bake|I'd rather it were 18 minutes.", 18],
    ["Would you be so good as to set a timer of 35 minutes for the rest?", 35],
    ["I'm off to the garden. Would you wake me in 20 minutes?", 20],
  ])("%s", async (turns, left) => expect(figure(await last(turns), "timer", "left")?.value).toBe(left));
  it("is stopped, however kindly", async () => {
    const { ask, record } = baker();
    await ask("timer 16 min bake");
    await ask("You might stop it now, thank you.");
    expect(record().timers.map(({ state }) => state)).toEqual(["stopped"]);
  });
  it("is called what she would like", async () => {
    const { ask, record } = baker();
    await ask("timer 12 min");
    await ask("I should like it called tray one.");
    expect(record().timers.map(({ label }) => label)).toEqual(["tray 1"]);
  });
});

describe("notes keep her words, and none of the order", () => {
  it.each([
    ["I'd like a batch noted: rhubarb today, 40 of them", "rhubarb today, 40 of them"],
    [
      "It would be nice to have this on paper: cardamom batch today, 8 out of 10",
      "cardamom batch today, 8 out of 10",
    ],
    [
      "Kindly put it on record that today's plum batch came out cracked",
      "today's plum batch came out cracked",
    ],
    ["Please be so good as to note today's cherry batch: flat", "today's cherry batch: flat"],
  ])("%s", async (said, text) => {
    const { ask, record } = baker();
    await ask(said);
    expect(record().notes.map((each) => each.text)).toEqual([text]);
  });
  it.each([
    ["Would you add to that note that they were better on day three?", "better on day three"],
    ["I'd like it added that the feet were tall.", "the feet were tall"],
    ["A correction to that note: rested 25 min.", "corrected: rested 25 min"],
    ["A small correction there: baked 17 min.", "corrected: baked 17 min"],
  ])("%s", async (said, text) => {
    const { ask, record } = baker();
    await ask("note: fig today, rested 20 min, baked 15 min");
    await ask(said);
    expect(record().notes).toHaveLength(1);
    expect((await ask("Might I see the fig note, in full?"))[0]?.headline).toContain(text);
  });
});

describe("the shelf", () => {
  it.each([
    // 1500 − 320
    [
      "There's 1.5 kg of icing sugar in the press. Would you put it in the pantry?|I've used 320 g of the icing sugar.|icing sugar left?",
      1180,
    ],
    // 2000 − 350
    [
      "There are 2 kg of almond flour come in. Would you put them on the shelf?|I used 350 g of it this morning.|almond flour left?",
      1650,
    ],
  ])("%s", async (turns, left) => expect((await last(turns))[0]?.figures?.[0]?.value).toBe(left));
  it.each([
    "And would you remind me what directions you're holding for the violet bottle?",
    "What did I tell you of the violet bottle's directions?",
  ])("%s", async (said) => {
    const [answer] = await last(`my violet bottle says 0.8 to 1.2 %|${said}`);
    expect([answer?.tool, answer?.headline]).toEqual(["shelf", expect.stringContaining("0.8")]);
  });
});

describe("whose a question is", () => {
  it.each([
    ["explain", "200 g buttercream, how much fig flavor?|By what reasoning, may I ask?"],
    ["explain", "200 g buttercream, how much fig flavor?|Might I ask on what grounds?"],
    ["help", "I've never sat down with one of these before. What sort of thing can you do?"],
    ["help", "We haven't met before. Might I ask what you're good for?"],
    ["help", "In what ways can you be of help?"],
    ["bench", "I wonder how my bench is set just now?"],
    ["undo", "note: fig today|Oh, I'm mistaken, would you take that back?"],
    // 5 × 28.349523125
    ["convert", "I wonder what 5 ounces of butter come to in grams."],
    ["undo", "note: fig today|I'd like the last thing undone, please."],
    // two shells a macaron, a spare tenth: 2.2 × 60 = 132
    ["shells", "I've been asked for 5 dozen macarons. What does that come to in shells?"],
    ["fill", "Should I have 45 macarons to fill, how much filling is that?"],
    // advice is no order
    ["keep", "Would you keep macarons with buttercream in the fridge?"],
  ])("%s: %s", async (tool, turns) => {
    const [answer] = await last(turns);
    expect([answer?.tool, answer?.status]).toEqual([tool, "answered"]);
  });
  it.each([
    "We did optics on Friday. Would you know the refractive index of crown glass?",
    "I've a guest who can't have nuts. What might I use instead of almond flour, would you say?",
    "My nephew is at school. Would you know the capital of Peru?",
  ])("nobody's: %s", async (said) =>
    expect((await last(said)).map(({ status }) => status)).toEqual(["declined"]),
  );
});
